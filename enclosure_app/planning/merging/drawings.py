"""The drawing of a project that is made of two copies."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from itertools import count

from enclosure_app.model import edits
from enclosure_app.model.project import Project
from enclosure_app.model.section import Section
from enclosure_app.model.states import drawn_as
from enclosure_app.planning.merging.differences import (
    Difference,
    Drawn,
    Part,
    Side,
    Weighing,
)
from enclosure_app.planning.merging.subjects import Version


@dataclass(frozen=True, slots=True)
class Copies:
    """Our copy and theirs."""

    ours: Project
    theirs: Project


def named_alike(copies: Copies, weighing: Weighing) -> Copies:
    """Return copies in which a section that only one of the two renamed has its new name in both."""
    for mine, other in _renamed(copies.ours.sections, copies.theirs.sections):
        older = weighing.knew(Side.THEIRS, Part.SECTION, mine)
        if older and not weighing.knew(Side.OURS, Part.SECTION, other):
            copies = replace(copies, ours=edits.rename_section(copies.ours, mine, other))
        else:
            copies = replace(copies, theirs=edits.rename_section(copies.theirs, other, mine))
    return copies


def _renamed(ours: Iterable[Section], theirs: Iterable[Section]) -> Iterator[tuple[str, str]]:
    """Yield the names of sections that are drawn the same and that only one copy knows by it."""
    names = {each.name for each in ours}, {each.name for each in theirs}
    mine = {drawn_as(each): each.name for each in ours if each.name not in names[1]}
    for each in theirs:
        if each.name not in names[0] and each.pieces and (own := mine.pop(drawn_as(each), "")):
            yield own, each.name


def whole_drawing(weighing: Weighing, copies: Copies) -> Project:
    """Return the copy whose drawing is taken, where one of the two is of another revision.

    It is the later one, unless a person chooses otherwise. Where the earlier one is as it was, there
    is nothing to choose.
    """
    later = _later(copies)
    key = (Part.DRAWING, "")
    side = weighing.chosen.get(key, later or Side.OURS)
    if later is None or _drawn_on(weighing, copies, later):
        asked = key not in weighing.chosen
        names = copies.ours.source, copies.theirs.source
        weighing.differences.append(Difference(*key, *names, side, asked))
    return copies.theirs if side is Side.THEIRS else copies.ours


def _later(copies: Copies) -> Side | None:
    """Return the copy that has left the other's revision behind, None where neither has."""
    if any(link.earlier.revision == copies.ours.revision for link in copies.theirs.carried):
        return Side.THEIRS
    if any(link.earlier.revision == copies.theirs.revision for link in copies.ours.carried):
        return Side.OURS
    return None


def _drawn_on(weighing: Weighing, copies: Copies, later: Side) -> bool:
    """Whether the earlier drawing was changed after the later one had left it, for all we know."""
    earlier = copies.ours if later is Side.THEIRS else copies.theirs
    return not all(
        weighing.has_been(later, Part.SECTION, each.name, each) for each in earlier.sections
    )


def sections_weighed(
    weighing: Weighing, copies: Copies
) -> tuple[tuple[Section, ...], tuple[Version, ...]]:
    """Return the sections of both copies, and where two versions of one were to be chosen from."""
    mine, other = _by_name(copies.ours), _by_name(copies.theirs)
    taken: list[Section] = []
    versions: list[Version] = []
    beside: list[Section] = []
    names = {*mine, *other}
    for name in dict.fromkeys((*mine, *other)):
        a, b = mine.get(name), other.get(name)
        side = weighing.taken((Part.SECTION, name), a and Drawn(a), b and Drawn(b))
        first, second = (b, a) if side is Side.THEIRS else (a, b)
        if first:
            taken.append(first)
        elif second and side is Side.BOTH:
            taken.append(second)
        if first and second and Drawn(first) != Drawn(second):
            free = _free(name, names) if side is Side.BOTH else ""
            if free:
                names.add(free)
                beside.append(replace(second, name=free))
            by, known = (
                (copies.ours, copies.theirs) if first is b else (copies.theirs, copies.ours)
            )
            versions.append(Version(first, second, by, known, free))
    return (*taken, *beside), tuple(versions)


def _by_name(project: Project) -> dict[str, Section]:
    return {each.name: each for each in project.sections}


def _free(name: str, taken: set[str]) -> str:
    return next(each for n in count(2) if (each := f"{name}-{n}") not in taken)
