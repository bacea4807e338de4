"""What two copies differ in, each on a card: both sides beside each other, to be chosen in place."""

from collections.abc import Iterable, Sequence
from typing import Generic, TypeVar

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QButtonGroup, QFrame, QHBoxLayout, QLabel, QVBoxLayout, QWidget

from enclosure_app.model.project import Project
from enclosure_app.model.report import SectionResult
from enclosure_app.model.said.decision import Decision
from enclosure_app.model.section import Section
from enclosure_app.planning.merging import Difference, Part, Side
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.canvas.underlay.layer import lying_under
from enclosure_app.window.judging import unjudged
from enclosure_app.window.merging.choice import Choice
from enclosure_app.window.merging.joining import Joined, differing
from enclosure_app.window.merging.merging_words import title_of, value_words, verdict_words
from enclosure_app.window.walk.place_view import PlaceView

_PICTURE = 210  # dots

V = TypeVar("V")


class Card(QFrame, Generic[V]):
    """A question with its answers beside each other. `changed`: one of them was chosen.

    Two cards ask the same where their `asked` are equal.
    """

    changed = Signal()

    def __init__(self, title: str, asked: object, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.asked = asked
        self.setObjectName("card")
        self.title = QLabel(title, self)
        self.title.setObjectName("panel-title")
        self.title.setWordWrap(True)
        self.choices: list[Choice] = []
        self._values: list[V] = []
        self._group = QButtonGroup(self)
        self._group.idToggled.connect(lambda *_: self.changed.emit())
        self._row = QHBoxLayout()
        self._row.setSpacing(14)
        self.column = QVBoxLayout(self)
        self.column.setContentsMargins(12, 8, 12, 10)
        self.column.addWidget(self.title)
        self.column.addLayout(self._row)

    @property
    def value(self) -> V | None:
        """What was chosen, None while nothing was."""
        which = self._group.checkedId()
        return None if which < 0 else self._values[which]

    def remember(self, earlier: "Iterable[Card[V]]") -> None:
        """Choose what was chosen on an earlier card, if one asked the same."""
        for each in earlier:
            if each.asked == self.asked and each.value in self._values:
                self.choices[self._values.index(each.value)].button.setChecked(True)

    def offer(self, text: str, told: str, value: V, *, stretch: int = 1) -> Choice:
        """Add one answer."""
        choice = Choice(text, told, self)
        self._group.addButton(choice.button, len(self.choices))
        self.choices.append(choice)
        self._values.append(value)
        self._row.addWidget(choice, stretch)
        return choice


class DifferenceCard(Card[Side]):
    """One thing in which the copies differ: ours, theirs, of a section both."""

    def __init__(
        self, difference: Difference, of: Joined, look: Look, parent: QWidget | None = None
    ) -> None:
        versions = difference.ours, difference.theirs
        super().__init__(title_of(difference), (difference.key, versions), parent)
        self.difference = difference
        self.pictures: list[PlaceView] = []
        held = difference.ours is not None and difference.theirs is not None
        drawn = difference.part is Part.SECTION
        words = _values(difference)
        ours = self.offer(self.tr("Keep what is here"), words[0], Side.OURS)
        theirs = self.offer(self.tr("Take the other copy's"), words[1], Side.THEIRS)
        if drawn and held:
            self.offer(self.tr("Keep both"), "", Side.BOTH, stretch=0)
        if drawn and difference.ours:
            self._picture(ours, of.ours, _result(of.found, difference.ours.section), look)
        if drawn and difference.theirs:
            other = _result(of.found_theirs, difference.theirs.section)
            self._picture(theirs, of.theirs, other, look)

    def _picture(
        self, choice: Choice, project: Project, result: SectionResult, look: Look
    ) -> None:
        """Show a version of the section, at the place where the two differ."""
        picture = PlaceView(choice)
        picture.show_result(result, look, lying_under(project, result.section))
        versions = self.difference.ours, self.difference.theirs
        place = differing(*(each.section for each in versions)) if all(versions) else None
        if place:
            picture.go_to(*place)
        else:
            picture.go_nowhere()
        choice.show_picture(picture, _PICTURE)
        self.pictures.append(picture)


class ContestCard(Card[Decision | None]):
    """One finding about which people decided differently without knowing of each other."""

    def __init__(
        self, place: tuple[str, str], sides: Sequence[Decision], parent: QWidget | None = None
    ) -> None:
        section, key = place
        about = next((each.about for each in sides if each.about), key)
        super().__init__(f"{section} · {about}", (place, tuple(sides)), parent)
        self.place = place
        self.picture: PlaceView | None = None
        for each in sides:
            self.offer(self.tr("Let this hold"), verdict_words(each), each)
        both = self.offer(
            self.tr("Leave them side by side"),
            self.tr("The more cautious one counts until somebody decides again."),
            None,
        )
        both.button.setChecked(True)

    def show_place(self, of: Joined, look: Look) -> None:
        """Show the finding's place, if it is found in the drawing that is open."""
        section, key = self.place
        for result in of.found:
            finding = next((each for each in result.findings if each.key == key), None)
            if result.section.name == section and finding:
                self.picture = PlaceView(self)
                self.picture.setMinimumHeight(_PICTURE)
                self.picture.show_result(result, look, lying_under(of.ours, result.section))
                self.picture.go_to(finding.at, finding.extent)
                self.column.insertWidget(1, self.picture)


def _values(difference: Difference) -> tuple[str, str]:
    part = difference.part
    ours, theirs = (
        "" if part is Part.SECTION and each else value_words(part, each)  # what is there is seen
        for each in (difference.ours, difference.theirs)
    )
    return ours, theirs


def _result(found: Sequence[SectionResult], section: Section) -> SectionResult:
    """Return what was found in a section; one that was renamed to be compared is only shown."""
    return next((each for each in found if each.section is section), unjudged(section))
