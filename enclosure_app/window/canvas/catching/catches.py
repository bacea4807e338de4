"""Every place near the pointer that can be caught, and what kind of place it is."""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from enum import IntEnum, StrEnum
from itertools import combinations
from math import dist, hypot

from enclosure_app.model.place import Point
from enclosure_app.window.canvas.catching.aids import Ray
from enclosure_app.window.canvas.catching.grid import nearest_crossing

_OFF = 8  # segments that a sheet may be drawn off at one place


class Origin(IntEnum):
    """What a segment belongs to."""

    FRAME = 0
    LINE = 1
    AREA = 2
    STROKE = 3


class Kind(StrEnum):
    """What was caught."""

    END = "end"
    OFF_END = "beside the end"
    OFF_CROSSING = "beside, where lines cross"
    CROSSING = "crossing"
    MIDDLE = "middle"
    SQUARE = "square to the line"
    MEETS = "meets the line"
    OFF_MEETS = "meets beside the line"
    OFF_LINE = "beside the line"
    LINE = "on the line"
    GRID = "grid"

    @property
    def rank(self) -> int:
        """How telling it is: a lower one is caught before a higher one, of equals the nearest."""
        return _RANKS[self]

    @property
    def off(self) -> bool:
        """Whether it is a place off a line, at the distance that sheets are drawn off boards."""
        return self in (Kind.OFF_END, Kind.OFF_CROSSING, Kind.OFF_MEETS, Kind.OFF_LINE)


_RANKS = {
    Kind.END: 0, Kind.OFF_END: 0, Kind.OFF_CROSSING: 0, Kind.CROSSING: 1, Kind.MIDDLE: 2,
    Kind.SQUARE: 3, Kind.OFF_MEETS: 4, Kind.MEETS: 5, Kind.OFF_LINE: 6, Kind.LINE: 7,
    Kind.GRID: 8,
}  # fmt: skip


@dataclass(frozen=True, slots=True)
class Catch:
    """A place that was caught, and what it is."""

    at: Point
    kind: Kind


@dataclass(frozen=True, slots=True)
class Ask:
    """Where the pointer is and how far it reaches (mm).

    `anchor` is where a line that is drawn comes from, `ray` what it is kept to; `beside` is how far
    off boards sheets are drawn and `grid` the spacing of the grid, mm, 0 for neither.
    """

    at: Point
    reach: float
    anchor: Point | None = None
    beside: float = 0.0
    ray: Ray | None = None
    grid: float = 0.0


@dataclass(frozen=True, slots=True)
class Near:
    """One segment near the pointer; of an area, what is outside lies at its right."""

    a: Point
    b: Point
    origin: Origin = Origin.LINE


def catches_near(near: Sequence[Near], ask: Ask) -> Iterator[Catch]:
    """Yield what can be caught of some segments."""
    beside = [*_beside(near[:_OFF], ask)] if ask.beside else []
    if ask.ray is not None:
        yield from _met((each.segment for each in beside), ask.ray, Kind.OFF_MEETS)
        yield from _met(near, ask.ray, Kind.MEETS)
        return
    for each in near:
        yield from _of_one(each, ask)
    yield from _crossings(near, Kind.CROSSING)
    for moved in beside:
        yield from _of_beside(moved, near, ask)
    yield from _crossings([each.longer(ask.beside) for each in beside], Kind.OFF_CROSSING)
    if ask.grid > 0:
        yield Catch(nearest_crossing(ask.at, ask.grid), Kind.GRID)


def _crossings(segments: Sequence[Near], kind: Kind) -> Iterator[Catch]:
    for one, other in combinations(segments, 2):
        crossing = meeting(one, other)
        if crossing is not None:
            yield Catch(crossing, kind)


@dataclass(frozen=True, slots=True)
class _Beside:
    """A segment beside another one, which it came from."""

    segment: Near
    source: Near

    def longer(self, by: float) -> Near:
        """Return it longer by so much at both ends, so that those at a corner meet."""
        (ax, ay), (bx, by_) = self.segment.a, self.segment.b
        size = hypot(bx - ax, by_ - ay)
        ux, uy = (bx - ax) / size * by * 1.001, (by_ - ay) / size * by * 1.001
        return Near((ax - ux, ay - uy), (bx + ux, by_ + uy), self.segment.origin)


def _beside(near: Sequence[Near], ask: Ask) -> Iterator[_Beside]:
    """Yield segments moved off to the side of the pointer; none of the frame, none into a board."""
    for each in near:
        (ax, ay), (bx, by) = each.a, each.b
        length = hypot(bx - ax, by - ay)
        side = (bx - ax) * (ask.at[1] - ay) - (by - ay) * (ask.at[0] - ax)
        inwards = each.origin is Origin.AREA and side > 0
        if each.origin is not Origin.FRAME and length > 0 and side != 0 and not inwards:
            out = ask.beside / length * (1 if side > 0 else -1)
            dx, dy = -(by - ay) * out, (bx - ax) * out
            yield _Beside(Near((ax + dx, ay + dy), (bx + dx, by + dy), each.origin), each)


def _of_one(each: Near, ask: Ask) -> Iterator[Catch]:
    yield Catch(each.a, Kind.END)
    yield Catch(each.b, Kind.END)
    if not (ask.beside and each.origin is Origin.AREA):  # sheets go beside boards, not into them
        yield Catch(((each.a[0] + each.b[0]) / 2, (each.a[1] + each.b[1]) / 2), Kind.MIDDLE)
    foot = foot_on(ask.at, each.a, each.b)
    if foot is not None:
        yield Catch(foot, Kind.LINE)
    square = foot_on(ask.anchor, each.a, each.b) if ask.anchor else None
    if square is not None:
        yield Catch(square, Kind.SQUARE)


def _of_beside(moved: _Beside, near: Sequence[Near], ask: Ask) -> Iterator[Catch]:
    """Yield places beside a line; beside the corners of boards, which are drawn as areas or lines."""
    segment = moved.segment
    foot = foot_on(ask.at, segment.a, segment.b)
    if foot is not None:
        yield Catch(foot, Kind.OFF_LINE)
    if segment.origin in (Origin.AREA, Origin.STROKE):
        yield Catch(segment.a, Kind.OFF_END)
        yield Catch(segment.b, Kind.OFF_END)
    for other in near:
        crossing = meeting(segment, other) if other is not moved.source else None
        if crossing is not None:
            yield Catch(crossing, Kind.OFF_CROSSING)


def _met(segments: Iterable[Near], ray: Ray, kind: Kind) -> Iterator[Catch]:
    """Yield where a ray meets segments."""
    (x, y), (dx, dy) = ray.start, ray.ahead
    for each in segments:
        far = max(dist(ray.start, each.a), dist(ray.start, each.b)) + 1.0
        crossing = meeting(Near((x, y), (x + dx * far, y + dy * far)), each)
        if crossing is not None:
            yield Catch(crossing, kind)


def foot_on(at: Point, a: Point, b: Point) -> Point | None:
    """Return the place of a segment nearest to a point, None where that is beyond its ends."""
    dx, dy = b[0] - a[0], b[1] - a[1]
    square = dx * dx + dy * dy
    if square == 0:
        return None
    share = ((at[0] - a[0]) * dx + (at[1] - a[1]) * dy) / square
    return (a[0] + share * dx, a[1] + share * dy) if 0 <= share <= 1 else None


def distance_to(at: Point, a: Point, b: Point) -> float:
    """Return how far a place is from a segment, mm."""
    foot = foot_on(at, a, b)
    return dist(at, foot) if foot else min(dist(at, a), dist(at, b))


def meeting(one: Near, other: Near) -> Point | None:
    """Return where two segments cross or touch, None where they do not or run side by side."""
    (ax, ay), (bx, by) = one.a, one.b
    (cx, cy), (dx, dy) = other.a, other.b
    turn = (bx - ax) * (dy - cy) - (by - ay) * (dx - cx)
    if turn == 0:
        return None
    s = ((cx - ax) * (dy - cy) - (cy - ay) * (dx - cx)) / turn
    t = ((cx - ax) * (by - ay) - (cy - ay) * (bx - ax)) / turn
    inside = 0 <= s <= 1 and 0 <= t <= 1
    return (ax + s * (bx - ax), ay + s * (by - ay)) if inside else None
