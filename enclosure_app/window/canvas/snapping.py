"""What the pointer catches: ends, middles, crossings, square to a line, a line itself, beside a board.

Segments are kept in arrays; those near the pointer are found in one go, so that a drawing of a
hundred thousand lines is no slower to draw on than an empty sheet.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from enum import StrEnum
from itertools import combinations, pairwise
from math import dist, hypot

import numpy as np
from numpy.typing import NDArray

from enclosure_app.model.edits.looking_up import runs_of
from enclosure_app.model.place import Point, Points
from enclosure_app.model.section import Section

BESIDE = 3.0  # mm: how far a sheet is drawn off the board that it lies on
_MOST = 24  # segments near the pointer whose crossings are sought


class Kind(StrEnum):
    """What was caught; the earlier ones are caught before the later ones."""

    END = "end"
    CROSSING = "crossing"
    MIDDLE = "middle"
    SQUARE = "square to the line"
    BESIDE = "3 mm beside the line"
    LINE = "on the line"


@dataclass(frozen=True, slots=True)
class Catch:
    """A place that was caught, and what it is."""

    at: Point
    kind: Kind


@dataclass(frozen=True, slots=True)
class Ask:
    """Where the pointer is, how far it reaches (mm), and where a line that is drawn comes from."""

    at: Point
    reach: float
    anchor: Point | None = None
    beside: bool = False


class Snapper:
    """Everything in one section that the pointer can catch."""

    def __init__(self, section: Section, without: str = "") -> None:
        self.without = without
        self._segments = _segments(section, without)
        s = self._segments
        self._low = np.minimum(s[:, :2], s[:, 2:])
        self._high = np.maximum(s[:, :2], s[:, 2:])

    def catch(self, ask: Ask) -> Catch | None:
        """Return what lies within reach, the most telling first and of those the nearest."""
        near = self._near(ask.at, ask.reach + (BESIDE if ask.beside else 0.0))
        found = [
            (tuple(Kind).index(catch.kind), dist(catch.at, ask.at), catch)
            for catch in _catches(near, ask)
            if dist(catch.at, ask.at) <= ask.reach
        ]
        return min(found, key=lambda each: each[:2])[2] if found else None

    def _near(self, at: Point, reach: float) -> list[tuple[Point, Point]]:
        x, y = at
        inside = (
            (self._low[:, 0] <= x + reach)
            & (self._high[:, 0] >= x - reach)
            & (self._low[:, 1] <= y + reach)
            & (self._high[:, 1] >= y - reach)
        )
        rows = self._segments[np.flatnonzero(inside)]
        off = [(_off(at, (ax, ay), (bx, by)), i) for i, (ax, ay, bx, by) in enumerate(rows)]
        close = sorted(pair for pair in off if pair[0] <= reach)[:_MOST]
        return [
            ((float(rows[i][0]), float(rows[i][1])), (float(rows[i][2]), float(rows[i][3])))
            for _, i in close
        ]


def _segments(section: Section, without: str) -> NDArray[np.float64]:
    pieces = (piece for piece in section.pieces if piece.name != without)
    runs: list[Points] = [run for piece in pieces for run in runs_of(piece.shape)]
    runs += [stroke.points for stroke in section.strokes]
    if len(section.frame) > 2:
        runs.append((*section.frame, section.frame[0]))
    rows = [(*a, *b) for run in runs for a, b in pairwise(run)]
    return np.array(rows, dtype=np.float64).reshape(-1, 4)


def _catches(near: Sequence[tuple[Point, Point]], ask: Ask) -> Iterator[Catch]:
    for a, b in near:
        yield Catch(a, Kind.END)
        yield Catch(b, Kind.END)
        yield Catch(((a[0] + b[0]) / 2, (a[1] + b[1]) / 2), Kind.MIDDLE)
        foot = _foot(ask.at, a, b)
        if foot is not None:
            yield Catch(foot, Kind.LINE)
            if ask.beside:
                yield from _beside(ask.at, foot, (a, b))
        square = _foot(ask.anchor, a, b) if ask.anchor else None
        if square is not None:
            yield Catch(square, Kind.SQUARE)
    for one, other in combinations(near, 2):
        crossing = _crossing(one, other)
        if crossing is not None:
            yield Catch(crossing, Kind.CROSSING)


def _beside(at: Point, foot: Point, segment: tuple[Point, Point]) -> Iterator[Catch]:
    """Yield the place `BESIDE` mm off a line, on the side of the pointer."""
    (ax, ay), (bx, by) = segment
    length = hypot(bx - ax, by - ay)
    side = (bx - ax) * (at[1] - ay) - (by - ay) * (at[0] - ax)
    if length > 0 and side != 0:
        by_ = BESIDE / length * (1 if side > 0 else -1)
        yield Catch((foot[0] - (by - ay) * by_, foot[1] + (bx - ax) * by_), Kind.BESIDE)


def _foot(at: Point | None, a: Point, b: Point) -> Point | None:
    """Return the place of a segment nearest to a point, None where that is beyond its ends."""
    dx, dy = b[0] - a[0], b[1] - a[1]
    square = dx * dx + dy * dy
    if at is None or square == 0:
        return None
    share = ((at[0] - a[0]) * dx + (at[1] - a[1]) * dy) / square
    return (a[0] + share * dx, a[1] + share * dy) if 0 <= share <= 1 else None


def _off(at: Point, a: Point, b: Point) -> float:
    foot = _foot(at, a, b)
    return dist(at, foot) if foot else min(dist(at, a), dist(at, b))


def _crossing(one: tuple[Point, Point], other: tuple[Point, Point]) -> Point | None:
    (ax, ay), (bx, by) = one
    (cx, cy), (dx, dy) = other
    turn = (bx - ax) * (dy - cy) - (by - ay) * (dx - cx)
    if turn == 0:
        return None
    s = ((cx - ax) * (dy - cy) - (cy - ay) * (dx - cx)) / turn
    t = ((cx - ax) * (by - ay) - (cy - ay) * (bx - ax)) / turn
    inside = 0 <= s <= 1 and 0 <= t <= 1
    return (ax + s * (bx - ax), ay + s * (by - ay)) if inside else None
