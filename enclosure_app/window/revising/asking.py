"""What a person says of an earlier finding that nobody can be sure of."""

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QButtonGroup, QLabel, QRadioButton, QWidget

from enclosure_app.window.revising.rows import Answer, Told
from enclosure_app.window.surround.flow_layout import FlowLayout


class Asking(QWidget):
    """Asks which one it is now. `answered`: the person chose; `answer` is what."""

    answered = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.question = QLabel(self.tr("Which one is it now?"), self)
        self.buttons: list[QRadioButton] = []
        self._answers: list[Answer] = []
        self._group = QButtonGroup(self)
        self._row = FlowLayout()
        self._row.addWidget(self.question)
        self.setLayout(self._row)

    @property
    def answer(self) -> Answer:
        """What the person says."""
        return self._answers[self._group.checkedId()]

    def ask(
        self, asked: Sequence[tuple[Told, int | None]], answer: Answer, gone: str = ""
    ) -> None:
        """Offer later findings by their numbers in the revised drawing, later places by their names.

        `gone` are the words for that it is none of them.
        """
        for button in self.buttons:
            self._group.removeButton(button)
            self._row.removeWidget(button)
            button.hide()
            button.deleteLater()
        self.buttons, self._answers = [], []
        for told, number in asked:
            words = self.tr("It is number {} now") if number else self.tr("It is “{}” now")
            self._offer(words.format(number or told.message), told, answer)
        self._offer(gone or self.tr("It is gone"), "", answer)
        self._offer(self.tr("Leave it open"), None, answer)

    def _offer(self, text: str, means: Answer, answer: Answer) -> None:
        button = QRadioButton(text, self)
        button.setChecked(means is answer or means == answer)
        self._group.addButton(button, len(self.buttons))
        self.buttons.append(button)
        self._answers.append(means)
        self._row.addWidget(button)
        button.show()
        button.clicked.connect(lambda _=False: self.answered.emit())
