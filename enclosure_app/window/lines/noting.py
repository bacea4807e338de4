"""Reads the drawing's notes and offers what they say: one after the other, or all at once."""

from collections.abc import Callable, Sequence

from PySide6.QtCore import QObject, Signal

from enclosure_app.errors import EnclosureError
from enclosure_app.model.project import Project
from enclosure_app.model.section import Section
from enclosure_app.planning.notes.reading import Proposal, proposals
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.lines.giving import given_product


class Noting(QObject):
    """Offers what the notes of the section in view say.

    `asked`: a question with its answers; `said`: a sentence; `shown`: look at this place.
    """

    asked = Signal(str, object)
    said = Signal(str)
    shown = Signal(object)

    def __init__(self, place: Workplace) -> None:
        super().__init__(place)
        self._place = place
        self._left: list[Proposal] = []

    def read(self) -> None:
        """Read the notes, and ask what to do with them."""
        section = self._place.section
        if section is None:
            return
        self._left = [each for each in proposals(section) if tells_more(section, each)]
        if not self._left:
            self.said.emit(self.tr("No note here says more than is known of the lines already."))
            return
        names = [names for each in self._left for names in _meant(section, each)[0]]
        lines = [line for each in self._left for line in _meant(section, each)[1]]
        self._place.pick(names, lines)
        question = self.tr("{} notes say what a line is made of.").format(len(self._left))
        answers: dict[str, Callable[[], object]] = {
            self.tr("Take all"): self._take_all,
            self.tr("One by one"): self._next,
        }
        self.asked.emit(question, answers)

    def _take_all(self) -> None:
        self._apply(self._left)
        self._left = []

    def _next(self) -> None:
        """Show the next note with the line it means, and ask."""
        section = self._place.section
        if section is None or not self._left:
            self._place.pick(())
            self.said.emit(self.tr("These were all the notes."))
            return
        each = self._left.pop(0)
        self._place.pick(*_meant(section, each))
        self.shown.emit(each.tip)
        question = self.tr("“{}”: is this line {}?").format(
            " ".join(each.text.split()), section.products[each.product].name
        )

        def take() -> None:
            self._apply([each])
            self._next()

        answers: dict[str, Callable[[], object]] = {
            self.tr("Yes"): take,
            self.tr("No"): self._next,
        }
        self.asked.emit(question, answers)

    def _apply(self, taken: Sequence[Proposal]) -> None:
        place = self._place
        try:
            after = with_notes(place.document.project, place.index, taken)
        except EnclosureError as error:
            place.refuse(error)
            return
        place.document.apply(self.tr("Take what the notes say"), after)


def tells_more(section: Section, proposal: Proposal) -> bool:
    """Whether a note says something that is not known of the line it means."""
    names, lines = _meant(section, proposal)
    known = {section.by_name[name].product for name in names}
    return bool(lines) or bool(known - {proposal.product})


def with_notes(project: Project, which: int, taken: Sequence[Proposal]) -> Project:
    """Return the project with what notes say taken as true.

    Raises:
        EnclosureError: a piece or product that is meant is not there.
    """
    before = project.sections[which]
    for each in taken:
        names, lines = _meant(before, each)
        there = project.sections[which].by_name
        project = given_product(
            project, which, ([name for name in names if name in there], lines), each.product
        )
    return project


def _meant(section: Section, proposal: Proposal) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """Return the piece, or else the line by its handle, that lies nearest to the arrow."""
    if proposal.pieces:
        return proposal.pieces[:1], ()
    handles = (section.strokes[i].handle for i in proposal.strokes)
    return (), tuple(handle for handle in handles if handle)[:1]
