"""What was said of single lines by their handles, where the revised drawing numbers its lines anew.

Handles that another program gave out again mean nothing, or another line. The line itself is looked
for: on the same layer, of the same size, at the same place of the drawing.
"""

from collections import Counter, defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from math import floor

from enclosure_app.model.layer import LayerRow
from enclosure_app.model.place import Point
from enclosure_app.model.project import Project
from enclosure_app.model.section import Stroke

_NEAR = 1.0  # mm: two lines this near to each other, and alike, are one
_CELL = 4.0  # mm: votes for a motion within this are one
_HELD = 0.5  # of the lines known by their handles: the drawing was not numbered anew

Box = tuple[float, float, float, float]


@dataclass(frozen=True, slots=True)
class RowsNow:
    """The rows for the revised drawing, and the handles of lines that are not found in it again."""

    rows: tuple[LayerRow, ...]
    lost: tuple[str, ...] = ()


def rows_now(before: Project, revised: Project) -> RowsNow:
    """Return a project's rows with the handles that its lines have in a revised drawing."""
    wanted = {handle for row in before.layers for handle in row.handles}
    if not wanted:
        return RowsNow(before.layers)
    old, new = _lines(before), _lines(revised)
    if _hold(old, new):
        return RowsNow(before.layers)
    own = {handle: _of(handle, old) for handle in wanted}
    by_layer: dict[str, list[tuple[str, Box]]] = defaultdict(list)
    for handle, lines in new.items():
        for layer, box in lines:
            by_layer[layer].append((handle, box))
    shift = _shift(own.values(), by_layer)
    now = {
        handle: _now(lines, _depth(handle, old), by_layer, shift)
        for handle, lines in own.items()
        if lines
    }
    rows = (_row_now(row, now) for row in before.layers)
    lost = sorted(handle for handle, found in now.items() if not found)
    return RowsNow(tuple(row for row in rows if row), tuple(lost))


def _row_now(row: LayerRow, now: Mapping[str, str]) -> LayerRow | None:
    """Return a row for the lines as they are numbered now; none where not one is left of it.

    Without handles it would be for all of its layer.
    """
    if not row.handles:
        return row
    handles = tuple(dict.fromkeys(now[each] for each in row.handles if now.get(each)))
    return replace(row, handles=handles) if handles else None


Lines = Mapping[str, Sequence[tuple[str, Box]]]


def _lines(project: Project) -> Lines:
    """Return what is drawn by handle: on which layer, and the box that it fills."""
    held: dict[str, list[tuple[str, Box]]] = defaultdict(list)
    for section in project.sections:
        for stroke in (*section.taken, *section.strokes):
            held[stroke.handle].append((stroke.layer, _box(stroke)))
    return held


def _box(stroke: Stroke) -> Box:
    xs, ys = zip(*stroke.points, strict=True)
    return (min(xs), min(ys), max(xs), max(ys))


def _of(handle: str, lines: Lines) -> list[tuple[str, Box]]:
    """Return the lines of a handle, and all that came in with a block of that handle."""
    own = (held for name, held in lines.items() if handle in name.split("/"))
    return [each for held in own for each in held]


def _depth(handle: str, lines: Lines) -> int:
    """Return how deep in blocks a handle stands: 0 for what is drawn in the drawing itself."""
    return next(parts.index(handle) for name in lines if handle in (parts := name.split("/")))


def _hold(old: Lines, new: Lines) -> bool:
    """Whether handles still mean what they meant."""
    both = old.keys() & new.keys()
    kept = sum(any(_alike(a, b) for a in old[name] for b in new[name]) for name in both)
    return kept >= _HELD * min(len(old), len(new))


def _alike(one: tuple[str, Box], other: tuple[str, Box]) -> bool:
    (layer, a), (like, b) = one, other
    wide, high = (a[2] - a[0]) - (b[2] - b[0]), (a[3] - a[1]) - (b[3] - b[1])
    return layer == like and abs(wide) <= _NEAR and abs(high) <= _NEAR


def _shift(
    own: Iterable[Sequence[tuple[str, Box]]], new: Mapping[str, Sequence[tuple[str, Box]]]
) -> Point:
    """Return the motion that most lines of one layer and size vote for; none, where many do."""
    votes: Counter[tuple[int, int]] = Counter()
    shifts: dict[tuple[int, int], Point] = {}
    for lines in own:
        for layer, box in lines:
            for _, other in new.get(layer, ()):
                if _alike((layer, box), (layer, other)):
                    by = (other[0] - box[0], other[1] - box[1])
                    cell = (floor(by[0] / _CELL + 0.5), floor(by[1] / _CELL + 0.5))
                    votes[cell] += 1
                    shifts.setdefault(cell, by)
    if not votes:
        return (0.0, 0.0)
    best = max(votes, key=lambda cell: (votes[cell], cell == (0, 0)))
    return shifts[best]


def _now(
    lines: Sequence[tuple[str, Box]],
    depth: int,
    new: Mapping[str, Sequence[tuple[str, Box]]],
    shift: Point,
) -> str:
    """Return the handle that a line has now, "" where none, or more than one, lies in its place."""
    found = {
        parts[depth]
        for layer, box in lines
        for handle, other in new.get(layer, ())
        if _lies_on(box, other, shift) and len(parts := handle.split("/")) > depth
    }
    return found.pop() if len(found) == 1 else ""


def _lies_on(box: Box, other: Box, shift: Point) -> bool:
    moved = (box[0] + shift[0], box[1] + shift[1], box[2] + shift[0], box[3] + shift[1])
    return all(abs(a - b) <= _NEAR for a, b in zip(moved, other, strict=True))
