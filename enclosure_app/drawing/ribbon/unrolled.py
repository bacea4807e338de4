"""A control layer laid out straight: sheets, lifts, laps and folds, in mm along the walk."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from itertools import accumulate, pairwise
from math import atan2, degrees, dist, floor, inf, log10

import numpy as np
from numpy.typing import NDArray

from enclosure_app.drawing.polylines import distinct, dot, length, unit
from enclosure_app.language import say
from enclosure_app.model.drawing import Units
from enclosure_app.model.place import Point, Points
from enclosure_app.model.report import Joint, JointKind, LayerResult, Lift
from enclosure_app.model.section import Section

_FOLD = 25.0  # degrees from which a change of direction is a fold
_LEVEL, _UPRIGHT = 1.5, 75.0  # degrees
_TICKS = 9  # about so many
_POINT = 1e-12  # mm2: a bit without length has this square at least
_ON_FRAME = 5.0  # mm within which an end lies on the frame


@dataclass(frozen=True, slots=True)
class Part:
    """One sheet, or one lift where `piece` is "": from `start` to `end` in mm along the walk."""

    piece: str
    start: float
    end: float
    points: Points


Floats = NDArray[np.float64]


@dataclass(frozen=True)
class Unrolled:
    """A layer's walk laid out straight: its parts in order, and its whole length in mm."""

    parts: tuple[Part, ...]
    length: float

    @property
    def courses(self) -> tuple[Part, ...]:
        """The sheets."""
        return tuple(part for part in self.parts if part.piece)

    @property
    def holes(self) -> tuple[Part, ...]:
        """The lifts."""
        return tuple(part for part in self.parts if not part.piece)

    def along(self, place: Point) -> float:
        """Return where the place of the walk nearest to `place` stands, in mm along the walk."""
        return self.all_along((place,))[0]

    def all_along(
        self, places: Sequence[Point], low: float = -inf, high: float = inf
    ) -> list[float]:
        """Return the same of many places, looking only between two stations of the walk (mm)."""
        starts, ways, stations = self._legs
        first = max(int(np.searchsorted(stations, low, "right")) - 1, 0)
        some = slice(first, int(np.searchsorted(stations, high, "right")))
        starts, ways, stations = starts[some], ways[some], stations[some]
        if not len(stations) or not places:
            return [0.0] * len(places)
        squares = (ways * ways).sum(axis=1)
        apart = np.array(places)[:, None, :] - starts
        shares = np.clip((apart * ways).sum(axis=2) / np.maximum(squares, _POINT), 0.0, 1.0)
        off = ((apart - shares[..., None] * ways) ** 2).sum(axis=2)
        nearest = off.argmin(axis=1)
        on = shares[np.arange(len(places)), nearest]
        along: list[float] = (stations[nearest] + on * np.sqrt(squares[nearest])).tolist()
        return along

    @cached_property
    def _legs(self) -> tuple[Floats, Floats, Floats]:
        """Return every straight bit: where it starts, its way to its end, where it stands along."""
        runs = [part for part in self.parts if len(part.points) > 1]
        legs = [(a, b) for part in runs for a, b in pairwise(part.points)]
        ends = np.array(legs, dtype=np.float64).reshape(-1, 2, 2)
        stations = [
            part.start + done
            for part in runs
            for done in accumulate(map(dist, part.points, part.points[1:-1]), initial=0.0)
        ]
        return ends[:, 0], ends[:, 1] - ends[:, 0], np.array(stations)


def unrolled(layer: LayerResult) -> Unrolled:
    """Lay the walk of a layer out straight."""
    parts: list[Part] = []
    done = 0.0
    for step in layer.walk:
        piece = "" if isinstance(step, Lift) else step.piece
        points = (step.start, step.end) if isinstance(step, Lift) else step.points
        size = length(points)
        parts.append(Part(piece, done, done + size, points))
        done += size
    return Unrolled(tuple(parts), done)


@dataclass(frozen=True, slots=True)
class Lapped:
    """A lap on the ribbon, in mm along the walk; the outer sheet is the earlier one or the later."""

    start: float
    end: float
    earlier_outside: bool


def lapped(layer: LayerResult, laid: Unrolled) -> tuple[Lapped, ...]:
    """Return the laps at which the pen goes from one sheet to the next."""
    found, joints = [], joints_by_pair(layer)
    for before, after in pairwise(laid.courses):
        joint = joints.get(frozenset((before.piece, after.piece)))
        if joint and joint.kind is JointKind.LAP and before.end == after.start:
            start, end = _lap_span(laid, joint, before.end)
            found.append(Lapped(start, end, joint.over != after.piece))
    return tuple(found)


def joints_by_pair(layer: LayerResult) -> dict[frozenset[str], Joint]:
    """Return the first joint of each two pieces."""
    return {frozenset((joint.a, joint.b)): joint for joint in reversed(layer.joints)}


def joint_between(layer: LayerResult, a: str, b: str) -> Joint | None:
    """Return the joint of two pieces, None if they have none."""
    return next((j for j in layer.joints if {j.a, j.b} == {a, b}), None)


def _lap_span(laid: Unrolled, joint: Joint, switch: float) -> tuple[float, float]:
    """Return where a lap starts and ends along the walk, which changes sheets somewhere in it."""
    reach = 1.5 * joint.length + 1.0
    places = [p for run in (joint.run_a, joint.run_b) for p in run]
    stations = laid.all_along(places, switch - reach, switch + reach)
    near = [s for s in stations if abs(s - switch) <= reach]
    if not near or max(near) - min(near) < joint.length / 2:
        return switch - joint.length / 2, switch + joint.length / 2
    return min(near), max(near)


@dataclass(frozen=True, slots=True)
class Stretch:
    """A part of the walk between two folds: where it starts and ends, and how it lies."""

    start: float
    end: float
    lie: str


def stretches(laid: Unrolled, section: Section) -> tuple[Stretch, ...]:
    """Return the stretches between folds; bits shorter than a sixtieth of the walk count for none."""
    found: list[_Leg] = []
    bit: _Leg | None = None  # short, after a fold: the next stretch begins with it, or jumps it
    least = laid.length / 60
    for leg in _legs(laid):
        last = found[-1] if found else None
        if last and _turn(last.direction, leg.direction) < _FOLD:
            found[-1], bit = last.with_(leg), None
            continue
        on = bit is not None and _turn(bit.direction, leg.direction) < _FOLD
        grown = bit.with_(leg) if bit and on else leg
        curve = bit is not None and bit.end == leg.start  # bits that go on from each other
        if leg.size() > least or (curve and grown.size() > least):
            found.append(replace(grown, start=grown.start if found else 0.0))
            bit = None
        elif bit is None or (curve and on):
            bit = grown
    if not found:  # nothing but bits: the longest says how the whole lies
        found = [replace(leg, start=0.0) for leg in sorted(_legs(laid), key=_Leg.size)[-1:]]
    ends = [*(leg.start for leg in found[1:]), laid.length][: len(found)]
    return tuple(
        Stretch(leg.start, end, _lie(leg.direction, section))
        for leg, end in zip(found, ends, strict=True)
    )


@dataclass(frozen=True, slots=True)
class _Leg:
    """A straight bit of the walk."""

    start: float
    end: float
    direction: Point

    def size(self) -> float:
        return self.end - self.start

    def with_(self, later: "_Leg") -> "_Leg":
        """Return both as one, which lies as the longer of them does."""
        return _Leg(self.start, later.end, max(self, later, key=_Leg.size).direction)


def _legs(laid: Unrolled) -> Iterator[_Leg]:
    for course in laid.courses:
        at = course.start
        for a, b in pairwise(distinct(course.points)):
            size = length((a, b))
            yield _Leg(at, at + size, unit(a, b))
            at += size


def _turn(a: Point, b: Point) -> float:
    cross = a[0] * b[1] - a[1] * b[0]
    return abs(degrees(atan2(cross, dot(a, b))))


def _lie(direction: Point, section: Section) -> str:
    if section.gravity is None:
        return say("straight")
    rise = abs(dot(direction, section.gravity))
    run = abs(direction[0] * section.gravity[1] - direction[1] * section.gravity[0])
    angle = degrees(atan2(rise, run))
    if angle < _LEVEL:
        return say("level")
    return say("upright") if angle > _UPRIGHT else say("slope {angle:.0f}°", angle=angle)


def end_words(laid: Unrolled, section: Section) -> tuple[str, str]:
    """Return where a layer goes on at its two ends; one that meets itself goes all the way round."""
    first, last = laid.parts[0].points[0], laid.parts[-1].points[-1]
    if laid.length > 4 * _ON_FRAME and dist(first, last) <= _ON_FRAME:
        return say("goes all the way round"), say("and meets itself")
    return end_word(first, section), end_word(last, section)


def end_word(end: Point, section: Section) -> str:
    """Return where a layer goes on at one of its ends, as seen on the sheet."""
    corners = section.frame
    left, right = min(x for x, _ in corners), max(x for x, _ in corners)
    low, high = min(y for _, y in corners), max(y for _, y in corners)
    away = {
        say("goes on below"): end[1] - low,
        say("goes on above"): high - end[1],
        say("goes on to the left"): end[0] - left,
        say("goes on to the right"): right - end[0],
    }
    word = min(away, key=lambda name: abs(away[name]))
    return word if abs(away[word]) <= _ON_FRAME else say("ends here")


def tick_step(whole: float, units: Units) -> float:
    """Return the distance of ticks in mm: 1, 2 or 5 times a power of ten, or inches and feet."""
    wanted = whole / _TICKS
    if units.imperial:
        inches = (1, 2, 3, 6, 12, 24, 36, 60, 120, 240, 600, 1200, 2400, 6000)
        return next((n * 25.4 for n in inches if n * 25.4 >= wanted), 12000 * 25.4)
    power = 10.0 ** floor(log10(wanted))
    return next((n * power for n in (1, 2, 5) if n * power >= wanted), 10 * power)
