"""The foot of the walk's page: on and back, and the drawing closer or wider."""

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QWidget

_CLOSER = 1.5


class Foot(QWidget):
    """`stepped`: 1 on, -1 back. `zoomed`: by this factor. `all_wanted`: the whole section."""

    stepped = Signal(int)
    zoomed = Signal(float)
    all_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("panel")
        self.before = self._made(self.tr("‹ Before"), self.tr("The stop before (←)"))
        self.onward = self._made(self.tr("Next ›"), self.tr("The next stop (→)"))
        self.closer = self._made(self.tr("Closer"), self.tr("Look closer (+)"))
        self.wider = self._made(self.tr("Wider"), self.tr("Look wider (−)"))
        self.whole = self._made(self.tr("All"), self.tr("The whole section (0)"))
        self.before.clicked.connect(lambda: self.stepped.emit(-1))
        self.onward.clicked.connect(lambda: self.stepped.emit(1))
        self.closer.clicked.connect(lambda: self.zoomed.emit(_CLOSER))
        self.wider.clicked.connect(lambda: self.zoomed.emit(1 / _CLOSER))
        self.whole.clicked.connect(self.all_wanted)
        line = QHBoxLayout(self)
        line.setContentsMargins(10, 8, 10, 8)
        line.setSpacing(10)
        line.addWidget(self.before, 2)
        for button in (self.closer, self.wider, self.whole):
            line.addWidget(button, 1)
        line.addWidget(self.onward, 3)

    def show_where(self, *, first: bool, last: bool, done: bool) -> None:
        """Say which ways are open; what is done offers the next one."""
        self.before.setEnabled(not first)
        self.onward.setEnabled(not last)
        name = "main" if done else ""
        if self.onward.objectName() != name:
            self.onward.setObjectName(name)
            self.onward.style().unpolish(self.onward)
            self.onward.style().polish(self.onward)

    def _made(self, text: str, tip: str) -> QPushButton:
        button = QPushButton(text, self)
        button.setToolTip(tip)
        button.setAccessibleName(tip)
        return button
