"""Finds break lines in linework that nobody mapped, and looks for them only where it may matter.

Words: a *gap* is where a run of a product stops and one of the same product goes on in the same
line. Only there is linework read and searched for two break lines.
"""

from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from itertools import product as every
from math import atan2, degrees, dist, floor

from enclosure_app.files.breaks import is_break_line
from enclosure_app.files.raw import RawPath
from enclosure_app.geometry.chaining import chain
from enclosure_app.model.place import Line, Point, Points
from enclosure_app.model.section import Piece

KINDS = frozenset({"LINE", "LWPOLYLINE", "POLYLINE"})
"""The entities that break lines are drawn with."""

WIDTH = (2.0, 1500.0)  # mm between the two ends
OFFSET = 10.0  # mm sideways between two runs in one line
TURN = 3.0  # degrees between them
UPRIGHT = 0.05  # below this share of x a direction counts as upright, with its drafting slop
AROUND = 600.0  # mm: so far about a gap break lines are looked for


def gaps_in(pieces: Iterable[Piece]) -> tuple[tuple[Point, Point], ...]:
    """Return the pairs of ends of one product that face each other in one line."""
    ends = [
        (piece.product, end, before)
        for piece in pieces
        if isinstance(piece.shape, Line) and not piece.shape.closed
        for end, before in _ends(piece.shape.points)
    ]
    if not ends:
        return ()
    origin = ends[0][1]
    cells: dict[tuple[str, int, int], list[tuple[Point, Point]]] = defaultdict(list)
    found = []
    for key, end, before in ends:
        angle, offset = _bearing(end, before, origin)
        for turn, side in every((-1, 0, 1), repeat=2):
            for other, its_before in cells[key, angle + turn, offset + side]:
                if _facing(end, before, other, its_before):
                    found.append((end, other))
        cells[key, angle, offset].append((end, before))
    return tuple(found)


def break_lines_at(
    gaps: Sequence[tuple[Point, Point]], linework: Iterable[RawPath]
) -> tuple[Points, ...]:
    """Return the break lines (mm) that are drawn about the gaps, also in separate lines."""
    boxes = [_box(gap, AROUND) for gap in gaps]
    near: dict[str, list[Points]] = defaultdict(list)
    for path in linework:
        if path.tag.kind in KINDS and not path.closed and _meets(path.points, boxes):
            near[path.tag.layer].append(path.points)
    return tuple(
        run.points
        for runs in near.values()
        for run in chain(runs)
        if not run.closed and is_break_line(run.points)
    )


def _ends(points: Points) -> Iterator[tuple[Point, Point]]:
    yield points[0], points[1]
    yield points[-1], points[-2]


def _bearing(end: Point, before: Point, origin: Point) -> tuple[int, int]:
    """Return the cell of the line that a run ends in: its direction and where it passes."""
    span = dist(end, before)
    ux, uy = (end[0] - before[0]) / span, (end[1] - before[1]) / span
    if (uy if abs(ux) < UPRIGHT else ux) < 0:
        ux, uy = -ux, -uy
    offset = ux * (end[1] - origin[1]) - uy * (end[0] - origin[0])
    return floor(degrees(atan2(uy, ux)) / TURN), floor(offset / OFFSET)


def _facing(a: Point, before_a: Point, b: Point, before_b: Point) -> bool:
    wide = dist(a, b)
    if not WIDTH[0] < wide <= WIDTH[1]:
        return False
    ux, uy = (b[0] - a[0]) / wide, (b[1] - a[1]) / wide
    out = ux * (a[0] - before_a[0]) + uy * (a[1] - before_a[1])
    back = ux * (before_b[0] - b[0]) + uy * (before_b[1] - b[1])
    return out > 0.97 * dist(a, before_a) and back > 0.97 * dist(b, before_b)


def _box(points: Sequence[Point], margin: float) -> tuple[float, float, float, float]:
    xs, ys = zip(*points, strict=True)
    return min(xs) - margin, min(ys) - margin, max(xs) + margin, max(ys) + margin


def _meets(points: Points, boxes: Sequence[tuple[float, float, float, float]]) -> bool:
    x0, y0, x1, y1 = _box(points, 0.0)
    return any(
        x1 >= left and x0 <= right and y1 >= low and y0 <= high for left, low, right, high in boxes
    )
