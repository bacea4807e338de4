"""A strip above the drawing that asks for a name; nothing waits for it."""

from collections.abc import Callable

from PySide6.QtCore import QCoreApplication, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QLineEdit, QPushButton, QWidget

from enclosure_app.errors import EnclosureError

Take = Callable[[str], None]
"""What is done with a name; it may refuse it with an `EnclosureError`."""


class NameStrip(QWidget):
    """Asks for a name. `refused`: why it cannot be had; `closed`: the person is done with it."""

    refused = Signal(str)
    closed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("step")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._take: Take = _nothing
        self.words = QLabel(self)
        self.field = QLineEdit(self)
        self.field.setMaximumWidth(360)
        self.field.returnPressed.connect(self._done)
        self.button = QPushButton(say("Done"), self)
        self.button.clicked.connect(self._done)
        line = QHBoxLayout(self)
        line.setContentsMargins(14, 5, 10, 5)
        line.addWidget(self.words)
        line.addWidget(self.field, 1)
        line.addWidget(self.button)
        line.addStretch(1)
        self.hide()

    def ask(self, words: str, name: str, take: Take) -> None:
        """Ask for a name, with the one that it has to begin with."""
        self._take = take
        self.words.setText(words)
        self.field.setAccessibleName(words)
        self.field.setText(name)
        self.field.selectAll()
        self.show()
        self.field.setFocus()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Go at Escape."""
        if event.key() == Qt.Key.Key_Escape:
            self._go()
        elif event.key() not in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            super().keyPressEvent(event)

    def _done(self) -> None:
        """Take the name; one that cannot be had is told, and may be changed."""
        try:
            self._take(self.field.text())
        except EnclosureError as error:
            self.refused.emit(str(error))
            return
        self._go()

    def _go(self) -> None:
        self.hide()
        self.closed.emit()


def _nothing(name: str) -> None:
    """Do nothing with a name: none is asked for."""


def say(text: str) -> str:
    """Return a text in the window's language."""
    return QCoreApplication.translate("Sizes", text)
