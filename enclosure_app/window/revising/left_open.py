"""What revisions and merges left open, asked about again beside the drawing."""

from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication, QSize, Qt, Signal
from PySide6.QtWidgets import (
    QDialog,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from enclosure_app.model.project import Project
from enclosure_app.model.report import SectionResult
from enclosure_app.model.standing.questions import open_questions
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.revising.laying import Choices
from enclosure_app.window.revising.open_card import OpenCard

_SIZE = (620, 660)


class LeftOpen(QDialog):
    """Lists the questions; nothing waits for it. `taken`: what the person said, and their name."""

    taken = Signal(object, str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("What a revision left open"))
        self.resize(QSize(*_SIZE).boundedTo(self.screen().availableSize()))
        self.project: Project | None = None
        self.cards: list[OpenCard] = []
        self.told = QLabel(self)
        self.told.setWordWrap(True)
        self.who = QLineEdit(self)
        self.who.setPlaceholderText(self.tr("Your name"))
        self.who.setAccessibleName(self.who.placeholderText())
        self.who.textChanged.connect(lambda _: self._check())
        self.leave = QPushButton(self.tr("Close"), self)
        self.leave.clicked.connect(self.close)
        self.take = QPushButton(self.tr("Put down what you said"), self)
        self.take.setObjectName("main")
        self.take.clicked.connect(
            lambda _=False: self.taken.emit(self.said, self.who.text().strip())
        )
        self._room = QScrollArea(self)
        self._room.setWidgetResizable(True)
        self._room.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._lay_out()

    @property
    def said(self) -> Choices:
        """What the person says of each, where they say something."""
        return {card.question.earlier: card.now for card in self.cards if card.now is not None}

    def show_questions(
        self, project: Project, found: Sequence[SectionResult], look: Look, who: str
    ) -> None:
        """Ask everything that is open in a project."""
        self.project = project
        self.cards = [OpenCard(each, self) for each in open_questions(project)]
        inside = QWidget(self._room)
        column = QVBoxLayout(inside)
        column.setSpacing(8)
        for card in self.cards:
            card.show_in(project, found, look)
            card.changed.connect(self._check)
            column.addWidget(card)
        column.addStretch(1)
        self._room.setWidget(inside)
        self.who.setText(who)
        self.told.setText(
            self.tr(
                "Something was said of these findings in an earlier drawing, and nobody could "
                "tell yet which ones they are now: {}."
            ).format(len(self.cards))
        )
        self._check()

    def _lay_out(self) -> None:
        buttons = QHBoxLayout()
        buttons.addStretch(1)
        for part in (self.who, self.leave, self.take):
            buttons.addWidget(part)
        column = QVBoxLayout(self)
        column.addWidget(self.told)
        column.addWidget(self._room, 1)
        column.addLayout(buttons)

    def _check(self) -> None:
        self.take.setEnabled(bool(self.said) and bool(self.who.text().strip()))


def left_open_words(project: Project) -> str:
    """Return in a sentence how much is open in a project and where it is answered, "" for nothing."""
    count = len(open_questions(project))
    told = say("Left open: {}. File, “Answer what a revision left open”, asks again.")
    return told.format(count) if count else ""


def say(text: str) -> str:
    """Return a text in the window's language."""
    return QCoreApplication.translate("LeftOpen", text)
