"""Two copies of the project beside the drawing: what is united, and what is to be chosen."""

from PySide6.QtCore import QCoreApplication, Qt, Signal
from PySide6.QtWidgets import QLabel, QWidget

from enclosure_app.model.said.decision import Decision
from enclosure_app.planning.merging import Part, Side
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.merging.cards import ContestCard, DifferenceCard
from enclosure_app.window.merging.joining import Joined
from enclosure_app.window.merging.merging_words import counts_words, new_words
from enclosure_app.window.revising.card_window import CardWindow

_SIZE = (860, 660)


class MergeWindow(CardWindow):
    """Shows where two copies differ; nothing is changed by it.

    `taken`: the person makes them one, as they chose, with their name.
    """

    taken = Signal(object, object, str)

    def __init__(self, parent: QWidget | None = None) -> None:
        title, leave = say("Another copy of this project"), say("Leave the project as it was")
        super().__init__((title, leave, say("Make them one")), _SIZE, parent)
        self.joined: Joined | None = None
        self.differences: list[DifferenceCard] = []
        self.contests: list[ContestCard] = []
        self.bar.taken.connect(lambda: self.taken.emit(self.chosen, self.settled, self.bar.name))

    def show_joined(self, of: Joined, name: str, look: Look, who: str) -> None:
        """Show what two copies come to; `name` is the other one's.

        Where the same copy was shown before, what was chosen then and is asked again stays chosen,
        and the name that was typed stays.
        """
        again = self.joined is not None and self.joined.theirs == of.theirs
        before = (self.differences, self.contests) if again else ([], [])
        self.joined = of
        self.differences = [DifferenceCard(d, of, look, self) for d in of.merged.differences]
        self.contests = [
            ContestCard(place, sides, self) for place, sides in of.merged.contested.items()
        ]
        for difference in self.differences:
            difference.remember(before[0])
        for contest in self.contests:
            contest.show_place(of, look)
            contest.remember(before[1])
        cards: list[DifferenceCard | ContestCard] = [*self.differences, *self.contests]
        for card in cards:
            card.changed.connect(self.look_over)
        united = say("{} adds without a question: {}.").format(name, counts_words(of.counts))
        self.told.setText(f"{united} {self._asked()}")
        news = [_told(text, self) for text in new_words(of.ours, of.merged.project)]
        self.show_cards([*cards, *news], (again and self.bar.name) or who)

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
            return say("The two differ in nothing else.")
        return say("To be chosen: {}. Decided differently: {}.").format(
            len(self.differences), len(self.contests)
        )

    def look_over(self) -> None:
        """Say what is still to be chosen, and ask for a name once a verdict is settled."""
        left = len(self.differences) - len(self.chosen)
        told = say("Still to be chosen: {}.").format(left) if left else ""
        self.bar.show_state(says=bool(self.settled), lacking=told, ready=not left)


def _told(text: str, parent: QWidget) -> QLabel:
    label = QLabel(text, parent)
    label.setTextFormat(Qt.TextFormat.PlainText)
    label.setWordWrap(True)
    return label


def say(text: str) -> str:
    """Return a text in the window's language."""
    return QCoreApplication.translate("MergeWindow", text)
