"""What comes of two copies of one project, without a widget: what is united, and what is chosen."""

from collections.abc import Mapping
from dataclasses import dataclass, replace

from enclosure_app.files.projects import limits_of
from enclosure_app.model import edits
from enclosure_app.model.place import Area, Point, Points, Shape
from enclosure_app.model.project import Project
from enclosure_app.model.report import SectionResult
from enclosure_app.model.said.decision import Decision
from enclosure_app.model.section import Section
from enclosure_app.planning.merging import Drawn, Merged, Part, Side, merged
from enclosure_app.window.judging import judge

Chosen = Mapping[tuple[Part, str], Side]
Settled = Mapping[tuple[str, str], Decision]
"""The verdict that a person lets hold of those that stand side by side, by section and key."""


@dataclass(frozen=True, slots=True)
class Joined:
    """Two copies of a project made one, with what was found in each."""

    ours: Project
    theirs: Project
    merged: Merged
    found: tuple[SectionResult, ...]
    found_theirs: tuple[SectionResult, ...]

    @property
    def counts(self) -> "Counts":
        """How much comes from the other copy without a question."""
        return counted(self.ours, self.merged.project)

    @property
    def nothing_new(self) -> bool:
        """Whether the other copy holds nothing that is not here, and differs in nothing."""
        more = {*self.merged.project.carried} - {*self.ours.carried}
        if self.merged.differences or more or self.counts != Counts():
            return False
        # the same may stand in another order
        same = {each: getattr(self.ours, each) for each in _SAID}
        return replace(self.merged.project, **same) == self.ours


_SETTINGS = ("title", "units", "book", "layers")
_SAID = ("decisions", "remarks", "site_checks", "sign_offs", "photographs", "carried")


@dataclass(frozen=True, slots=True)
class Counts:
    """How many of each are new in a project; `links` are people's, from a revision.

    `drawn` are sections that only the other copy drew on in, `away` those it took away.
    """

    verdicts: int = 0
    remarks: int = 0
    looks: int = 0
    signatures: int = 0
    photographs: int = 0
    sections: int = 0
    drawn: int = 0
    away: int = 0
    pictures: int = 0
    settings: int = 0
    links: int = 0


def counted(ours: Project, both: Project) -> Counts:
    """Return what a project made of two copies has more than ours, or otherwise."""
    mine, now = ({each.name: each for each in of.sections} for of in (ours, both))
    return Counts(
        verdicts=len(both.decisions) - len(ours.decisions),
        remarks=len(both.remarks) - len(ours.remarks),
        looks=len(both.site_checks) - len(ours.site_checks),
        signatures=len(both.sign_offs) - len(ours.sign_offs),
        photographs=len(both.photographs) - len(ours.photographs),
        sections=len(now.keys() - mine.keys()),
        drawn=sum(Drawn(mine[name]) != Drawn(now[name]) for name in mine.keys() & now.keys()),
        away=len(mine.keys() - now.keys()),
        pictures=len(both.underlays) - len(ours.underlays),
        settings=_changed(ours.figures, both.figures)
        + _changed(ours.severities, both.severities)
        + sum(getattr(ours, each) != getattr(both, each) for each in _SETTINGS),
        links=sum(bool(each.who) for each in {*both.carried} - {*ours.carried}),
    )


def _changed(ours: Mapping[str, object], both: Mapping[str, object]) -> int:
    names = ours.keys() | both.keys()
    return sum(ours.get(name) != both.get(name) for name in names)


def joined(ours: Project, theirs: Project) -> Joined:
    """Return two copies made one, with ours where they differ until somebody chooses.

    Raises:
        EnclosureError: the two are not copies of one project, or a rule book is not there.
    """
    both = merged(ours, theirs)
    found, found_theirs = (judge(each, limits_of(each)).results for each in (ours, theirs))
    return Joined(ours, theirs, both, found, found_theirs)


def as_chosen(of: Joined, chosen: Chosen, settled: Settled, by: tuple[str, str]) -> Project:
    """Return one project of two copies as a person chose.

    A verdict that was let hold is said again, by whoever let it hold: so the history tells it.

    Args:
        of: The two copies.
        chosen: The side for each difference.
        settled: The verdict that holds of those that stand side by side.
        by: Who chooses, and when.

    Raises:
        EnclosureError: a verdict is settled, and nobody says it.
    """
    done = merged(of.ours, of.theirs, chosen=chosen)
    project = done.project
    for place, verdict in settled.items():
        if (
            place in done.contested
        ):  # another drawing may have been chosen than the one it is about
            who, when = by
            again = replace(verdict, who=who, when=when, revision="", id="", after=())
            project = edits.set_decision(project, again)
    return project


def differing(ours: Section, theirs: Section) -> tuple[Point, tuple[Points, ...]] | None:
    """Return the middle of what two versions of a section draw differently, and its lines (mm).

    None where every piece is the same: then marks, the frame or seals differ.
    """
    drawn = [{(p.product, p.shape) for p in each.pieces} for each in (ours, theirs)]
    lines = tuple(sorted(_line(shape) for _, shape in drawn[0] ^ drawn[1]))
    if not lines:
        return None
    xs, ys = zip(*(point for line in lines for point in line), strict=True)
    return ((min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2), lines


def _line(shape: Shape) -> Points:
    return (*shape.outer, shape.outer[0]) if isinstance(shape, Area) else shape.points
