"""The drawing of a project that is made of two copies."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from itertools import count

from enclosure_app.model import edits
from enclosure_app.model.project import Project
from enclosure_app.model.said.sign_off import fingerprint
from enclosure_app.model.section import Section
from enclosure_app.planning.merging.differences import (
    UNKNOWN,
    Difference,
    Drawn,
    Part,
    Side,
    Weighing,
)
from enclosure_app.planning.merging.subjects import Version


@dataclass(frozen=True, slots=True)
class Copies:
    """Our copy and theirs, and the one that both began from, where it is at hand."""

    ours: Project
    theirs: Project
    base: Project | None = None


def named_alike(copies: Copies) -> Copies:
    """Return copies in which a section that only one of the two renamed has its new name in both."""
    before = {each.name for each in copies.base.sections} if copies.base else set[str]()
    for mine, other in _renamed(copies.ours.sections, copies.theirs.sections):
        if mine in before:
            copies = replace(copies, ours=edits.rename_section(copies.ours, mine, other))
        else:
            copies = replace(copies, theirs=edits.rename_section(copies.theirs, other, mine))
    return copies


def _renamed(ours: Iterable[Section], theirs: Iterable[Section]) -> Iterator[tuple[str, str]]:
    """Yield the names of sections that are drawn the same and that only one copy knows by it."""
    names = {each.name for each in ours}, {each.name for each in theirs}
    mine = {fingerprint(each): each.name for each in ours if each.name not in names[1]}
    for each in theirs:
        if each.name not in names[0] and each.pieces and (own := mine.pop(fingerprint(each), "")):
            yield own, each.name


def whole_drawing(weighing: Weighing, copies: Copies) -> Project:
    """Return the copy whose drawing is taken, where one of the two is of another revision.

    It is the later one, unless a person chooses otherwise. Where the earlier one is as it was, there
    is nothing to choose.
    """
    later = _later(copies)
    key = (Part.DRAWING, "")
    side = weighing.chosen.get(key, later or Side.OURS)
    if later is None or _drawn_on(copies, later):
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


def _drawn_on(copies: Copies, later: Side) -> bool:
    """Whether the earlier drawing was changed after the later one had left it, for all we know."""
    earlier = copies.ours if later is Side.THEIRS else copies.theirs
    if copies.base is None or copies.base.revision != earlier.revision:
        return True
    return [*map(Drawn, earlier.sections)] != [*map(Drawn, copies.base.sections)]


def sections_weighed(
    weighing: Weighing, copies: Copies
) -> tuple[tuple[Section, ...], tuple[Version, ...]]:
    """Return the sections of both copies, and where two versions of one were to be chosen from."""
    mine, other, base = (_by_name(each) for each in (copies.ours, copies.theirs, copies.base))
    taken: list[Section] = []
    versions: list[Version] = []
    beside: list[Section] = []
    names = {*mine, *other}
    for name in dict.fromkeys((*mine, *other)):
        if name not in mine or name not in other:
            taken += _alone(mine.get(name) or other[name], base.get(name))
            continue
        a, b = mine[name], other[name]
        side = weighing.taken((Part.SECTION, name), Drawn(a), Drawn(b), _was(name, base))
        first, second = (b, a) if side is Side.THEIRS else (a, b)
        taken.append(first)
        if Drawn(a) != Drawn(b):
            free = _free(name, names) if side is Side.BOTH else ""
            if free:
                names.add(free)
                beside.append(replace(second, name=free))
            by, known = (
                (copies.ours, copies.theirs) if first is b else (copies.theirs, copies.ours)
            )
            versions.append(Version(first, second, by, known, free))
    return (*taken, *beside), tuple(versions)


def _by_name(project: Project | None) -> dict[str, Section]:
    return {each.name: each for each in project.sections} if project else {}


def _was(name: str, base: dict[str, Section]) -> object:
    return Drawn(base[name]) if name in base else UNKNOWN


def _alone(section: Section, was: Section | None) -> list[Section]:
    """Return a section that only one copy has: kept, unless the other took it away unchanged."""
    return [] if was is not None and Drawn(was) == Drawn(section) else [section]


def _free(name: str, taken: set[str]) -> str:
    return next(each for n in count(2) if (each := f"{name}-{n}") not in taken)
