"""Whether two files are issues of one drawing, by what is drawn in them: their names may be any.

Lines are compared by their sizes, which a move, a mirror or another program leaves as they are,
and by their handles, which a renumbering gives out anew: either is enough.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum

from enclosure_app.geometry.runs.likeness import length
from enclosure_app.model.place import Points
from enclosure_app.model.project import Project
from enclosure_app.model.section import Section
from enclosure_app.planning.revision.drawings import file_of
from enclosure_app.planning.revision.outlines import outline_points

_SHORTEST = 20.0  # mm: shorter lines are dashes, dots and letters, and alike everywhere
_LIKELY, _DOUBTFUL = 0.6, 0.2  # samples and their mended issues share 0.9 of their lines

Size = tuple[int, int, int]


class Same(StrEnum):
    """Whether a drawing is a later issue of another one."""

    LIKELY = "most of it is drawn in both"
    DOUBTFUL = "some of it is drawn in both"
    NO = "they have little in common"


@dataclass(frozen=True, slots=True)
class Likeness:
    """How much two drawings have in common, as shares of 1: of sizes of lines, and of handles.

    `found` is how much of the earlier one is drawn in the later one, which may hold more besides.
    """

    drawn: float
    handles: float
    found: float = 0.0

    @property
    def same(self) -> Same:
        """Whether the one is a later issue of the other."""
        if self.most >= _LIKELY:
            return Same.LIKELY
        return Same.DOUBTFUL if self.most >= _DOUBTFUL else Same.NO

    @property
    def most(self) -> float:
        """The largest of the shares."""
        return max(self.drawn, self.handles, self.found)


def likeness(before: Project, later: Project) -> Likeness:
    """Return how much a drawing has in common with that of a project which is most like it."""
    new = _lines(later.sections)
    files = {file_of(before, each) for each in before.sections}
    found = [
        _compared(_lines(e for e in before.sections if file_of(before, e) == file), new)
        for file in files
    ]
    return max(found, key=lambda each: each.most, default=Likeness(0.0, 0.0))


def _compared(old: dict[str, set[Size]], new: dict[str, set[Size]]) -> Likeness:
    sizes, others = (set().union(*held.values()) for held in (old, new))
    if not sizes or not others:
        return Likeness(0.0, 0.0)
    drawn = 2.0 * len(sizes & others) / (len(sizes) + len(others))
    kept = sum(bool(held & new.get(handle, set())) for handle, held in old.items())
    found = len(sizes & others) / len(sizes)
    return Likeness(drawn, 2.0 * kept / (len(old) + len(new)), found)


def _lines(sections: Iterable[Section]) -> dict[str, set[Size]]:
    """Return the sizes of what is drawn, by handle; what was sketched by hand is left out."""
    held: dict[str, set[Size]] = {}
    for section in sections:
        for stroke in (*section.strokes, *section.taken):
            _put(held, stroke.handle, stroke.points)
        for piece in section.pieces if not section.taken else ():
            for handle in piece.handles:
                _put(held, handle, outline_points(piece.shape))
    return held


def _put(held: dict[str, set[Size]], handle: str, points: Points) -> None:
    long = length(points)
    if long >= _SHORTEST:
        xs, ys = zip(*points, strict=True)
        size = (round(long), round(max(xs) - min(xs)), round(max(ys) - min(ys)))
        held.setdefault(handle, set()).add(size)
