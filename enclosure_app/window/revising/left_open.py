"""What revisions and merges left open, asked about again beside the drawing."""

from collections.abc import Iterable

from PySide6.QtCore import QCoreApplication, Signal
from PySide6.QtWidgets import QWidget

from enclosure_app.model.project import Project
from enclosure_app.model.said.question import Question
from enclosure_app.model.standing.questions import open_questions
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.revising.card_window import CardWindow
from enclosure_app.window.revising.laying import Choices
from enclosure_app.window.revising.open_card import Held, OpenCard

_SIZE = (620, 660)


class LeftOpen(CardWindow):
    """Lists the questions. `taken`: what the person said, and their name."""

    taken = Signal(object, str)

    def __init__(self, parent: QWidget | None = None) -> None:
        words = (say("What a revision left open"), say("Close"), say("Put down what you said"))
        super().__init__(words, _SIZE, parent)
        self.project: Project | None = None
        self.cards: list[OpenCard] = []
        self.bar.taken.connect(lambda: self.taken.emit(self.said, self.bar.name))

    @property
    def said(self) -> Choices:
        """What the person says of each, where they say something."""
        return {about: now for card in self.cards for about, now in card.now.items()}

    def show_questions(
        self,
        project: Project,
        held: Held,
        look: Look,
        who: str,
    ) -> None:
        """Ask everything that is open in a project."""
        self.project = project
        self.cards = [OpenCard(each, self) for each in asked_at_once(open_questions(project))]
        for card in self.cards:
            card.show_in(project, held, look)
            card.changed.connect(self.look_over)
        self.told.setText(
            say(
                "Something was said of these in an earlier drawing, and nobody could tell yet "
                "which ones they are now: {}."
            ).format(len(self.cards))
        )
        self.show_cards(self.cards, who)

    def look_over(self) -> None:
        """Let what was said be put down, with a name."""
        self.bar.show_state(says=bool(self.said), ready=bool(self.said))


def asked_at_once(questions: Iterable[Question]) -> list[tuple[Question, ...]]:
    """Return the questions in the order they are asked: of one place of the site list all at once."""
    found: dict[tuple[str, ...], list[Question]] = {}
    for each in questions:
        key = each.earlier.key
        place = key.rpartition(":")[0] if each.on_list else key
        row = (str(each.on_list), each.earlier.revision, each.earlier.section, place)
        found.setdefault(row, []).append(each)
    return [tuple(each) for each in found.values()]


def left_open_words(project: Project) -> str:
    """Return in a sentence how much is open in a project and where it is answered, "" for nothing."""
    count = len(asked_at_once(open_questions(project)))
    told = say("Left open: {}. File, “Answer what a revision left open”, asks again.")
    return told.format(count) if count else ""


def say(text: str) -> str:
    """Return a text in the window's language."""
    return QCoreApplication.translate("LeftOpen", text)
