"""Finds what the mouse means: the piece or line nearest to it, and all that lies in a box."""

from dataclasses import dataclass
from itertools import pairwise
from math import dist

import numpy as np
from numpy.typing import NDArray

from enclosure_app.drawing.placement import Box, box_around
from enclosure_app.model.edits.looking_up import runs_of
from enclosure_app.model.place import Area, Point, Points
from enclosure_app.model.section import Piece, Section
from enclosure_app.window.canvas.catching.segments import Segments, segments_of, stroke_segments
from enclosure_app.window.canvas.made_ready import made_of


def piece_at(section: Section, at: Point, reach: float) -> str:
    """Return the name of the piece at a place: the nearest line within reach, else the area there."""
    gathered = _gathered(section.pieces)
    near = _nearest(gathered, at, reach)
    if near is not None:
        return near.name
    return next((p.name for p in reversed(gathered.around(at)) if _is_in(p, at)), "")


def lines_pass(section: Section, at: Point, reach: float) -> bool:
    """Whether a line of the office's is meant rather than the area that it lies on."""
    return _nearest(_gathered(section.pieces), at, reach) is None and bool(
        line_at(section, at, reach)
    )


def line_piece_at(section: Section, at: Point, reach: float) -> Piece | None:
    """Return the line piece nearest to a place, None if none is within reach."""
    return _nearest(_gathered(section.pieces), at, reach, lines_only=True)


def line_at(section: Section, at: Point, reach: float) -> str:
    """Return the handle of the office's line nearest to a place, "" if none is within reach."""
    segments = made_of(section.strokes, stroke_segments)
    near = [
        (_off_segment(at, *segments.ends(int(number))), section.strokes[segments.owner[number]])
        for number in segments.near(at, reach)
    ]
    named = [(off, stroke.handle) for off, stroke in near if stroke.handle and off <= reach]
    return min(named, default=(0.0, ""))[1]


def lines_along(section: Section, start: Point, through: Point) -> tuple[Points, ...]:
    """Return the stretches of the office's lines that meet the line through two places."""
    segments = made_of(section.strokes, stroke_segments)
    return tuple(segments.ends(int(number)) for number in segments.along(start, through))


def pieces_in(section: Section, box: Box, *, whole: bool) -> frozenset[str]:
    """Return the pieces that lie in a box as a whole, or also those that reach into it."""
    return frozenset(
        piece.name
        for piece in section.pieces
        if any(_is_held(run, box, whole=whole) for run in runs_of(piece.shape)[:1])
    )


def lines_in(section: Section, box: Box, *, whole: bool) -> frozenset[str]:
    """Return the handles of the office's lines in a box as a whole, or that reach into it."""
    segments = made_of(section.strokes, stroke_segments)
    near = segments.around((box.left, box.bottom), (box.right, box.top))
    owners = np.unique(segments.owner[near]).tolist()
    strokes = [section.strokes[owner] for owner in owners]
    return frozenset(
        stroke.handle
        for stroke in strokes
        if stroke.handle and _is_held(stroke.points, box, whole=whole)
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


@dataclass(frozen=True, slots=True)
class _Gathered:
    """The segments of pieces, `piece` (n) saying of which; `boxes` (m, 4) lie round the pieces."""

    pieces: tuple[Piece, ...]
    segments: Segments
    piece: NDArray[np.int64]
    boxes: NDArray[np.float64]

    def around(self, at: Point) -> list[Piece]:
        """Return the pieces in whose boxes a place lies, in drawing order."""
        left, bottom, right, top = self.boxes.T
        inside = (left <= at[0]) & (at[0] <= right) & (bottom <= at[1]) & (at[1] <= top)
        return [self.pieces[number] for number in np.flatnonzero(inside)]


_last: list[_Gathered] = []


def _gathered(pieces: tuple[Piece, ...]) -> _Gathered:
    """Return what is gathered of pieces; while they stay the same, that of the last time."""
    if not (_last and _last[0].pieces is pieces):
        _last[:] = [_gather(pieces)]
    return _last[0]


def _gather(pieces: tuple[Piece, ...]) -> _Gathered:
    runs = [(number, run) for number, p in enumerate(pieces) for run in runs_of(p.shape)]
    segments = segments_of(run for _, run in runs)
    of_run = np.array([number for number, _ in runs], dtype=np.int64)
    piece = of_run[segments.owner] if runs else segments.owner
    boxes = np.full((len(pieces), 4), [np.inf, np.inf, -np.inf, -np.inf])
    np.minimum.at(boxes[:, :2], piece, segments.low)
    np.maximum.at(boxes[:, 2:], piece, segments.high)
    return _Gathered(pieces, segments, piece, boxes)


def _nearest(
    gathered: _Gathered, at: Point, reach: float, *, lines_only: bool = False
) -> Piece | None:
    """Return the piece with the nearest edge within reach; of equals the one drawn last."""
    found = [
        (_off_segment(at, *gathered.segments.ends(int(number))), -int(gathered.piece[number]))
        for number in gathered.segments.near(at, reach)
    ]
    near = [
        (off, gathered.pieces[-number])
        for off, number in sorted(found)
        if off <= reach and not (lines_only and isinstance(gathered.pieces[-number].shape, Area))
    ]
    return near[0][1] if near else None


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
