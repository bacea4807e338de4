"""Makes one project of two copies of it."""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from types import MappingProxyType

from enclosure_app.errors import EnclosureError
from enclosure_app.language import say
from enclosure_app.model.project import Project
from enclosure_app.model.said.carried import WHOLE, Carried, Subject
from enclosure_app.model.said.decision import Decision
from enclosure_app.model.said.sign_off import fingerprint
from enclosure_app.model.standing.standing import new_id
from enclosure_app.model.standing.verdicts import contested_in
from enclosure_app.model.states import drawn_as, past_of
from enclosure_app.planning.merging.differences import (
    Chosen,
    Difference,
    Weighing,
    settings_weighed,
)
from enclosure_app.planning.merging.drawings import (
    Copies,
    named_alike,
    sections_weighed,
    whole_drawing,
)
from enclosure_app.planning.merging.subjects import Version, doubtful, links_over
from enclosure_app.planning.merging.united import united

_NOTHING: Chosen = MappingProxyType({})


@dataclass(frozen=True, slots=True)
class Merged:
    """One project of two, and where they differ: each difference says which side was taken."""

    project: Project
    differences: tuple[Difference, ...]

    @property
    def asked(self) -> tuple[Difference, ...]:
        """The differences about which nobody chose yet."""
        return tuple(each for each in self.differences if each.asked)

    @property
    def contested(self) -> Mapping[tuple[str, str], tuple[Decision, ...]]:
        """The verdicts that stand side by side about one finding, by section and key."""
        return MappingProxyType(
            {
                (section.name, key): sides
                for section in self.project.sections
                for key, sides in contested_in(self.project, section.name).items()
            }
        )


def merged(ours: Project, theirs: Project, chosen: Chosen = _NOTHING) -> Merged:
    """Return one project of two copies of it.

    A copy that was kept by an older version of the program knows no past (`model.states`): all that
    differs in it is asked about.

    Args:
        ours: Our copy.
        theirs: The other one.
        chosen: What a person chose, by the key of a difference; ours, where nobody chose.

    Raises:
        EnclosureError: the two are not copies of one project.
    """
    if not _are_copies(ours, theirs):
        raise EnclosureError(
            say(
                '"{ours}" and "{theirs}" are not copies of one project: they have nothing in '
                "common. Open the other one by itself.",
                ours=ours.title,
                theirs=theirs.title,
            )
        )
    pasts = past_of(ours), past_of(theirs)
    weighing = Weighing(chosen, [], pasts)
    copies = named_alike(Copies(ours, theirs), weighing)
    settings = settings_weighed(weighing, copies.ours, copies.theirs)
    drawn = _drawn(weighing, copies, united(settings, copies.theirs))
    both = tuple(sorted(pasts[0] | pasts[1]))
    return Merged(replace(drawn, past=both), tuple(weighing.differences))


def _are_copies(ours: Project, theirs: Project) -> bool:
    """Whether two projects have anything in common: a name, something said, a section."""
    return ours.id == theirs.id or bool(_marks(ours) & _marks(theirs))


def _marks(project: Project) -> set[str]:
    sections = (fingerprint(each) for each in project.sections if each.pieces)
    said = {each.id for each in project.decisions} | {each.id for each in project.sign_offs}
    return {*sections, *said} - {""}


def _drawn(weighing: Weighing, copies: Copies, project: Project) -> Project:
    """Return the project with the drawing that was chosen, or that is put together of both."""
    if copies.ours.revision != copies.theirs.revision:
        of = whole_drawing(weighing, copies)
        return replace(
            project,
            sections=of.sections,
            source=of.source,
            notes=of.notes,
            layouts=of.layouts,
            revision=of.revision,
        )
    sections, versions = sections_weighed(weighing, copies)
    return _with_doubts(replace(project, sections=sections), versions)


def _with_doubts(project: Project, versions: tuple[Version, ...]) -> Project:
    """Return the project as a revision of its own where something was said of what is not drawn.

    Keys mean what they meant in the copy where something was said. All that is certain is carried
    on at once; the rest is asked about, as after a revised drawing.
    """
    if not any(doubtful(each, on_list=listed) for each in versions for listed in (False, True)):
        return project
    drawn = [drawn_as(each) for v in versions for each in (v.taken, v.left)]
    kept = [drawn_as(each) for each in project.sections]
    revision = new_id("merged", project.revision, *sorted(drawn), *sorted(kept))
    links = [
        link
        for listed in (False, True)
        for link in links_over(project, versions, revision, on_list=listed)
    ]
    links += [_whole(each.name, project.revision, revision) for each in project.sections]
    return replace(project, revision=revision, carried=(*project.carried, *links))


def _whole(name: str, earlier: str, later: str) -> Carried:
    """Return that a section is the same one, for who signed it."""
    before, after = Subject(earlier, name, WHOLE), Subject(later, name, WHOLE)
    return Carried(before, after, id=new_id("carried", False, *before, *after))
