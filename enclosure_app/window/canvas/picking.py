"""Finds what the mouse means: the piece or line nearest to it, and all that lies in a box."""

from itertools import pairwise
from math import dist

from enclosure_app.drawing.placement import Box, box_around
from enclosure_app.model.edits.looking_up import runs_of
from enclosure_app.model.place import Area, Line, Point, Points
from enclosure_app.model.section import Piece, Section


def piece_at(section: Section, at: Point, reach: float) -> str:
    """Return the name of the piece at a place: the nearest line within reach, else the area there."""
    near = [(_off(piece, at, reach), piece.name) for piece in reversed(section.pieces)]
    lines = [pair for pair in near if pair[0] <= reach]
    if lines:
        return min(lines, key=lambda pair: pair[0])[1]
    around = (piece for piece in reversed(section.pieces) if _is_in(piece, at))
    return next((piece.name for piece in around), "")


def line_piece_at(section: Section, at: Point, reach: float) -> Piece | None:
    """Return the line piece nearest to a place, None if none is within reach."""
    lines = (piece for piece in reversed(section.pieces) if isinstance(piece.shape, Line))
    near = [(_off(piece, at, reach), number, piece) for number, piece in enumerate(lines)]
    found = min(near, default=None)
    return found[2] if found and found[0] <= reach else None


def line_at(section: Section, at: Point, reach: float) -> str:
    """Return the handle of the office's line nearest to a place, "" if none is within reach."""
    near = [
        (_off_run(stroke.points, at), stroke.handle)
        for stroke in section.strokes
        if stroke.handle and _about(stroke.points, at, reach)
    ]
    found = min(near, default=(reach + 1.0, ""))
    return found[1] if found[0] <= reach else ""


def pieces_in(section: Section, box: Box, *, whole: bool) -> frozenset[str]:
    """Return the pieces that lie in a box as a whole, or also those that reach into it."""
    return frozenset(
        piece.name
        for piece in section.pieces
        if any(_is_held(run, box, whole=whole) for run in runs_of(piece.shape)[:1])
    )


def vertex_at(points: Points, at: Point, reach: float) -> int | None:
    """Return which of the points is nearest to a place, None if none is within reach."""
    found = min(((dist(point, at), i) for i, point in enumerate(points)), default=(reach + 1, 0))
    return found[1] if found[0] <= reach else None


def segment_at(run: Points, at: Point, reach: float) -> int | None:
    """Return which stretch of a run passes nearest to a place, None if none is within reach."""
    off = [(_off_segment(at, a, b), i) for i, (a, b) in enumerate(pairwise(run))]
    found = min(off, default=(reach + 1, 0))
    return found[1] if found[0] <= reach else None


def _off(piece: Piece, at: Point, reach: float) -> float:
    runs = [run for run in runs_of(piece.shape) if _about(run, at, reach)]
    return min((_off_run(run, at) for run in runs), default=float("inf"))


def _about(run: Points, at: Point, reach: float) -> bool:
    return bool(run) and box_around(run).holds(at, reach)


def _off_run(run: Points, at: Point) -> float:
    return min((_off_segment(at, a, b) for a, b in pairwise(run)), default=float("inf"))


def _off_segment(at: Point, a: Point, b: Point) -> float:
    dx, dy = b[0] - a[0], b[1] - a[1]
    square = dx * dx + dy * dy
    if square == 0:
        return dist(at, a)
    share = min(max(((at[0] - a[0]) * dx + (at[1] - a[1]) * dy) / square, 0.0), 1.0)
    return dist(at, (a[0] + share * dx, a[1] + share * dy))


def _is_in(piece: Piece, at: Point) -> bool:
    if not isinstance(piece.shape, Area):
        return False
    rings = (piece.shape.outer, *piece.shape.holes)
    return sum(_crossed(ring, at) for ring in rings) % 2 == 1


def _crossed(ring: Points, at: Point) -> int:
    """Count how often a line to the right from a place crosses a ring."""
    x, y = at
    count = 0
    for (ax, ay), (bx, by) in zip(ring, (*ring[1:], ring[0]), strict=True):
        if (ay > y) != (by > y) and x < (bx - ax) * (y - ay) / (by - ay) + ax:
            count += 1
    return count


def _is_held(run: Points, box: Box, *, whole: bool) -> bool:
    if whole:
        return all(box.holds(point) for point in run)
    around = box_around(run)
    apart = (
        around.right < box.left
        or around.left > box.right
        or around.top < box.bottom
        or around.bottom > box.top
    )
    if apart:
        return False
    return any(box.holds(point) for point in run) or _crosses(run, box)


def _crosses(run: Points, box: Box) -> bool:
    """Whether a run goes through a box without a point in it: it passes one of its diagonals."""
    a, b, c, d = box.ring
    return any(_meet(p, q, *side) for p, q in pairwise(run) for side in ((a, c), (b, d)))


def _meet(a: Point, b: Point, c: Point, d: Point) -> bool:
    def side(p: Point, q: Point, r: Point) -> float:
        return (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0])

    return side(a, b, c) * side(a, b, d) <= 0 and side(c, d, a) * side(c, d, b) <= 0
