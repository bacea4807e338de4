"""Two bars above the drawing: the next sensible step, and what went wrong. Neither stops anybody."""

from collections.abc import Callable, Mapping

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QAccessible, QAccessibleEvent, QResizeEvent
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QLabel, QPushButton, QSizePolicy, QWidget

from enclosure_app.window.surround.flow_layout import FlowLayout
from enclosure_app.window.surround.next_step import Step

_LEAST = 320  # dots: so much room the words of a message have at least


class StepBar(QWidget):
    """Offers the next sensible step in one sentence. `taken`: the name of the action to do."""

    taken = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("step")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.words = QLabel(self)
        self.words.setWordWrap(True)
        self.words.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self.button = QPushButton(self)
        kept = self.button.sizePolicy()
        kept.setRetainSizeWhenHidden(True)  # the drawing below does not jump where there is none
        self.button.setSizePolicy(kept)
        self._action = ""
        self.button.clicked.connect(lambda: self.taken.emit(self._action))
        line = QHBoxLayout(self)
        line.setContentsMargins(14, 5, 10, 5)
        line.addWidget(self.words, 1)
        line.addWidget(self.button)
        self.setAccessibleName(self.tr("Next step"))

    def offer(self, step: Step) -> None:
        """Offer a step."""
        self.words.setText(step.text)
        self.words.setToolTip(step.text)
        self._action = step.action
        self.button.setText(step.button)
        self.button.setVisible(bool(step.action))


class MessageBar(QWidget):
    """Says in one sentence what could not be done; stays until it is closed or outdated."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("message")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.words = QLabel(self)
        self.words.setWordWrap(True)
        self.words.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.answers = FlowLayout()
        close = QPushButton(self.tr("Understood"), self)
        close.clicked.connect(self.hide)
        self.close_button = close
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(14, 7, 10, 7)
        self._grid.setHorizontalSpacing(6)
        self._grid.setColumnStretch(0, 1)
        self._grid.addWidget(self.words, 0, 0)
        self._grid.addLayout(self.answers, 0, 1)
        self._grid.addWidget(close, 0, 2, Qt.AlignmentFlag.AlignTop)
        self._below = False
        self.setAccessibleName(self.tr("Message"))
        self.hide()

    def say(self, sentence: str) -> None:
        """Show a sentence."""
        self._clear()
        self.words.setText(sentence)
        self.show()
        self.setAccessibleDescription(sentence)
        told = QAccessibleEvent(self, QAccessible.Event.Alert)  # read aloud wherever the keys are
        QAccessible.updateAccessibility(told)

    def ask(self, question: str, answers: Mapping[str, Callable[[], object]]) -> None:
        """Ask a question; each answer is a button with what it calls."""
        self.say(question)
        for text, does in answers.items():
            button = QPushButton(text, self)
            button.clicked.connect(self.hide)
            button.clicked.connect(lambda _=False, do=does: do())
            self.answers.addWidget(button)
            button.show()  # what is hidden asks for no room
        self._arrange()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Put the answers where there is room for them."""
        super().resizeEvent(event)
        self._arrange()

    def _arrange(self) -> None:
        """Put the answers beside the words, or below them where the words would be squeezed."""
        beside = self.answers.sizeHint().width() + self.close_button.sizeHint().width()
        below = self.width() - beside < _LEAST
        if below != self._below:
            self._below = below
            self._grid.removeItem(self.answers)
            if below:
                self._grid.addLayout(self.answers, 1, 0, 1, 3)
            else:
                self._grid.addLayout(self.answers, 0, 1)

    def _clear(self) -> None:
        while (item := self.answers.takeAt(0)) is not None:
            widget = item.widget()
            if widget:
                widget.hide()
                widget.deleteLater()
