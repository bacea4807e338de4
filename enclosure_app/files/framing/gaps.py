"""Finds break lines in linework that nobody mapped, and looks for them only where it may matter.

Words: a *gap* is where a run of a product stops and one of the same product goes on in the same
line. Only there is linework read and searched for two break lines.
"""

from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from itertools import product as every
from math import atan2, degrees, dist, floor, inf

from enclosure_app.files.dxf.raw import RawPath
from enclosure_app.files.framing.breaks import is_break_line
from enclosure_app.geometry.outlines.chaining import chain
from enclosure_app.geometry.rims.touching import near_lines
from enclosure_app.model.place import Line, Point, Points
from enclosure_app.model.section import Piece

KINDS = frozenset({"LINE", "LWPOLYLINE", "POLYLINE"})
"""The entities that break lines are drawn with."""

WIDTH = (2.0, 1500.0)  # mm between the two ends
OFFSET = 10.0  # mm sideways between two runs in one line
TURN = 3.0  # degrees between them
NEVER = (inf, -1)
IN_LINE = 0.97  # cosine of the angle between a run and the gap
UPRIGHT = 0.05  # below this share of x a direction counts as upright, with its drafting slop
STEP = 20.0  # mm into a gap, where a sheet running along it must be near
BESIDE = 15.0  # mm between that place and the sheet
AROUND = 600.0  # mm: so far about a gap break lines are looked for

Cell = tuple[int, int]


def gaps_in(pieces: Sequence[Piece]) -> tuple[tuple[Point, Point], ...]:
    """Return the pairs of ends of one product that face each other in one line, the nearest."""
    ends = [
        (piece.product, end, before)
        for piece in pieces
        if isinstance(piece.shape, Line) and not piece.shape.closed
        for end, before in _ends(piece.shape.points)
    ]
    if not ends:
        return ()
    origin = ends[0][1]
    cells: dict[tuple[str, bool, int, int], list[int]] = defaultdict(list)
    nearest: dict[int, tuple[float, int]] = {}
    for i, (key, end, before) in enumerate(ends):
        ahead, angle, offset = _bearing(end, before, origin)
        around = (
            (key, not ahead, angle + turn, offset + side)
            for turn, side in every((-1, 0, 1), repeat=2)
        )
        for k in (k for cell in around for k in cells.get(cell, ())):
            wide = dist(end, ends[k][1])
            closer = wide < nearest.get(i, NEVER)[0] or wide < nearest.get(k, NEVER)[0]
            if closer and _facing((end, before), ends[k][1:], wide):
                nearest[i] = min(nearest.get(i, NEVER), (wide, k))
                nearest[k] = min(nearest.get(k, NEVER), (wide, i))
        cells[key, ahead, angle, offset].append(i)
    gaps = tuple(
        (ends[i][1], ends[k][1]) for i, (_, k) in nearest.items() if i < k and nearest[k][1] == i
    )
    return _open(gaps, [p.shape for p in pieces if isinstance(p.shape, Line)])


def _open(
    gaps: tuple[tuple[Point, Point], ...], lines: Sequence[Line]
) -> tuple[tuple[Point, Point], ...]:
    """Leave out the gaps along which another sheet runs, as between the courses of a wall."""
    probes = [_stepped(*gap) for gap in gaps] + [_stepped(b, a) for a, b in gaps]
    near = near_lines(probes, [line.points for line in lines], BESIDE)
    covered = near[: len(gaps)] & near[len(gaps) :]
    return tuple(
        gap
        for gap, lapped in zip(gaps, covered, strict=True)
        if not lapped or dist(*gap) < 2 * STEP
    )


def _stepped(a: Point, b: Point) -> Point:
    share = STEP / dist(a, b)
    return a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])


def break_lines_at(
    gaps: Sequence[tuple[Point, Point]], linework: Iterable[RawPath]
) -> tuple[Points, ...]:
    """Return the break lines (mm) that are drawn about the gaps, also in separate lines."""
    cells = {cell for gap in gaps for end in gap for cell in around(end)}
    near: dict[str, list[Points]] = defaultdict(list)
    for path in linework:
        if path.tag.kind in KINDS and not path.closed and meets(path.points, cells):
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


def _bearing(end: Point, before: Point, origin: Point) -> tuple[bool, int, int]:
    """Return which way along its line a run ends, and the line's cell: direction and offset."""
    span = dist(end, before)
    ux, uy = (end[0] - before[0]) / span, (end[1] - before[1]) / span
    ahead = (uy if abs(ux) < UPRIGHT else ux) >= 0
    if not ahead:
        ux, uy = -ux, -uy
    offset = ux * (end[1] - origin[1]) - uy * (end[0] - origin[0])
    return ahead, floor(degrees(atan2(uy, ux)) / TURN), floor(offset / OFFSET)


def _facing(a: tuple[Point, Point], b: tuple[Point, Point], wide: float) -> bool:
    """Whether two runs (each its end and the point before) look at each other across a gap."""
    if not WIDTH[0] < wide <= WIDTH[1]:
        return False
    (ax, ay), (bx, by) = a[0], b[0]
    ux, uy = (bx - ax) / wide, (by - ay) / wide
    out = ux * (ax - a[1][0]) + uy * (ay - a[1][1])
    back = ux * (b[1][0] - bx) + uy * (b[1][1] - by)
    return out > IN_LINE * dist(*a) and back > IN_LINE * dist(*b)


def around(point: Point) -> Iterator[Cell]:
    """Yield the cells of the sheet in which a break line about a place may begin or end."""
    column, row = _cell(point)
    return ((column + dx, row + dy) for dx, dy in every((-1, 0, 1), repeat=2))


def _cell(point: Point) -> Cell:
    return floor(point[0] / AROUND), floor(point[1] / AROUND)


def meets(points: Points, cells: set[Cell]) -> bool:
    """Whether a path begins or ends near a gap; the parts of a break line are short."""
    return _cell(points[0]) in cells or _cell(points[-1]) in cells
