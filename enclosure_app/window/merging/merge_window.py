"""Two copies of the project beside the drawing: what is united, and what is to be chosen."""

from PySide6.QtCore import QSize, Qt, Signal
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

from enclosure_app.model.said.decision import Decision
from enclosure_app.planning.merging import Part, Side
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.merging.cards import ContestCard, DifferenceCard
from enclosure_app.window.merging.joining import Joined
from enclosure_app.window.merging.merging_words import counts_words

_SIZE = (860, 660)


class MergeWindow(QDialog):
    """Shows where two copies differ; nothing waits for it, nothing is changed by it.

    `taken`: the person makes them one, as they chose, with their name.
    """

    taken = Signal(object, object, str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Another copy of this project"))
        self.resize(QSize(*_SIZE).boundedTo(self.screen().availableSize()))
        self.joined: Joined | None = None
        self.differences: list[DifferenceCard] = []
        self.contests: list[ContestCard] = []
        self.told, self.lacking = QLabel(self), QLabel(self)
        for label in (self.told, self.lacking):
            label.setWordWrap(True)
            label.setTextFormat(Qt.TextFormat.PlainText)
        self.who = QLineEdit(self)
        self.who.setPlaceholderText(self.tr("Your name"))
        self.who.setAccessibleName(self.who.placeholderText())
        self.who.textChanged.connect(lambda _: self._check())
        self.leave = QPushButton(self.tr("Leave the project as it was"), self)
        self.leave.clicked.connect(self.close)
        self.take = QPushButton(self.tr("Make them one"), self)
        self.take.setObjectName("main")
        self.take.clicked.connect(self._take)
        self._room = QScrollArea(self)
        self._room.setWidgetResizable(True)
        self._room.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._lay_out()

    def show_joined(self, of: Joined, name: str, look: Look, who: str) -> None:
        """Show what two copies come to; `name` is the other one's."""
        self.joined = of
        self.differences = [DifferenceCard(d, of, look, self) for d in of.merged.differences]
        self.contests = [
            ContestCard(place, sides, self) for place, sides in of.merged.contested.items()
        ]
        for contest in self.contests:
            contest.show_place(of, look)
        inside = QWidget(self._room)
        column = QVBoxLayout(inside)
        column.setSpacing(8)
        cards: list[DifferenceCard | ContestCard] = [*self.differences, *self.contests]
        for card in cards:
            card.changed.connect(self._check)
            column.addWidget(card)
        column.addStretch(1)
        self._room.setWidget(inside)
        self.who.setText(who)
        united = self.tr("{} adds without a question: {}.").format(name, counts_words(of.counts))
        self.told.setText(f"{united} {self._asked()}")
        self._check()

    @property
    def chosen(self) -> dict[tuple[Part, str], Side]:
        """The side chosen for each difference, where one was."""
        return {c.difference.key: c.value for c in self.differences if c.value is not None}

    @property
    def settled(self) -> dict[tuple[str, str], Decision]:
        """The verdicts that are to hold."""
        return {c.place: c.value for c in self.contests if c.value is not None}

    def _asked(self) -> str:
        if not self.differences and not self.contests:
            return self.tr("The two differ in nothing else.")
        return self.tr("To be chosen: {}. Decided differently: {}.").format(
            len(self.differences), len(self.contests)
        )

    def _lay_out(self) -> None:
        buttons = QHBoxLayout()
        buttons.addWidget(self.lacking, 1)
        for part in (self.who, self.leave, self.take):
            buttons.addWidget(part)
        column = QVBoxLayout(self)
        column.addWidget(self.told)
        column.addWidget(self._room, 1)
        column.addLayout(buttons)

    def _check(self) -> None:
        """Say what is still to be chosen, and ask for a name once a verdict is settled."""
        left = len(self.differences) - len(self.chosen)
        nameless = bool(self.settled) and not self.who.text().strip()
        self.who.setVisible(bool(self.settled))
        self.take.setEnabled(not left and not nameless)
        if left:
            told = self.tr("Still to be chosen: {}.").format(left)
        elif nameless:
            told = self.tr("Type your name: it is put beside what you say.")
        else:
            told = ""
        self.lacking.setText(told)

    def _take(self) -> None:
        self.taken.emit(self.chosen, self.settled, self.who.text().strip())
