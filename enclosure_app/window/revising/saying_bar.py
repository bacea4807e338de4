"""The foot of a window that asks: what is still lacking, who says it, leave it, or take it."""

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QLineEdit, QPushButton, QWidget


class SayingBar(QWidget):
    """Asks for the name of who says something. `changed`: another name; `left`, `taken`: clicked."""

    changed = Signal()
    left = Signal()
    taken = Signal()

    def __init__(self, leave: str, take: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.lacking = QLabel(self)
        self.lacking.setWordWrap(True)
        self.who = QLineEdit(self)
        self.who.setPlaceholderText(self.tr("Your name"))
        self.who.setAccessibleName(self.who.placeholderText())
        self.who.textChanged.connect(lambda _: self.changed.emit())
        self.leave = QPushButton(leave, self)
        self.leave.clicked.connect(lambda _=False: self.left.emit())
        self.take = QPushButton(take, self)
        self.take.setObjectName("main")
        self.take.clicked.connect(lambda _=False: self.taken.emit())
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self.lacking, 1)
        for part in (self.who, self.leave, self.take):
            row.addWidget(part)

    @property
    def name(self) -> str:
        """Who says it."""
        return self.who.text().strip()

    def show_state(self, *, says: bool, lacking: str = "", ready: bool = True) -> None:
        """Ask for a name once the person `says` something; nothing is taken before it is `ready`."""
        nameless = says and not self.name
        self.who.setVisible(says)
        self.take.setEnabled(ready and not nameless)
        name = self.tr("Type your name: it is put beside what you say.")
        self.lacking.setText(name if nameless and not lacking else lacking)
