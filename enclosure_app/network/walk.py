"""The trace as a person follows it: runs along pieces and lifts between them, from cut end to cut end.

The walk starts at the lower of its two cut ends (the left one where they are level); a round that
never meets the frame starts at its lowest lift.
"""

from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np

from enclosure_app.geometry.closed_curve import ClosedCurve
from enclosure_app.geometry.parity import Way, flips_along
from enclosure_app.geometry.polyline import around, as_points, nearest_positions, stretch
from enclosure_app.geometry.rims import Bools, Floats, Ints
from enclosure_app.model.place import Point, Points
from enclosure_app.model.report import Lift, Run
from enclosure_app.network.fabric import Fabric
from enclosure_app.network.trace import Trace


@dataclass(frozen=True, slots=True)
class Walk:
    """The steps of a trace in walking order, the links taken, and the closed curve of the round."""

    steps: tuple[Run | Lift, ...]
    links: tuple[int, ...]
    curve: ClosedCurve


@dataclass(frozen=True, slots=True)
class _Leg:
    """One rim of the round: owner, and the points from where the pen arrives to where it leaves."""

    owner: int
    points: Points

    def reversed(self) -> "_Leg":
        """Return the same leg walked the other way."""
        return _Leg(self.owner, self.points[::-1])


@dataclass(frozen=True, slots=True)
class _Chord:
    """One link or jump of the round: its number, lift, the two owners and the two points."""

    number: int
    lift: float
    owners: tuple[int, int]
    start: Point
    end: Point

    def reversed(self) -> "_Chord":
        """Return the same chord walked the other way."""
        return _Chord(self.number, self.lift, self.owners[::-1], self.end, self.start)


def follow(fabric: Fabric, trace: Trace) -> Walk:
    """Return the walk along `trace`."""
    legs, chords = _round(fabric, trace)
    curve = ClosedCurve(np.array([point for leg in legs for point in leg.points]))
    items = _in_walking_order(fabric, legs, chords)
    steps = [step for item in items for step in _steps(fabric, item)]
    return Walk(tuple(steps), tuple(chord.number for chord in chords), curve)


def _steps(fabric: Fabric, item: _Leg | _Chord) -> Iterator[Run | Lift]:
    if isinstance(item, _Leg):
        if item.owner < len(fabric.pieces):
            yield Run(fabric.names[item.owner], item.points)
    elif item.lift > 0:
        a, b = (fabric.names[owner] for owner in item.owners)
        yield Lift(a, b, item.start, item.end)


def _in_walking_order(
    fabric: Fabric, legs: list[_Leg], chords: list[_Chord]
) -> list[_Leg | _Chord]:
    """Turn the round so that it starts behind the frame, at the lower cut end."""
    if not chords:
        return [*legs]
    frame = next((n for n, leg in enumerate(legs) if leg.owner == fabric.frame), None)
    start = _lowest_lift(chords) if frame is None else frame
    items: list[_Leg | _Chord] = [chords[start]]
    for step in range(1, len(legs) + 1):
        place = (start + step) % len(legs)
        items += [legs[place], chords[place]]
    if frame is None:
        return items[:-1]
    items = items[:-2]
    return [item.reversed() for item in reversed(items)] if _goes_down(items) else items


def _lowest_lift(chords: list[_Chord]) -> int:
    lifted = [n for n, chord in enumerate(chords) if chord.lift > 0]
    return min(lifted, key=lambda n: (chords[n].start[1], chords[n].start[0]), default=0)


def _goes_down(items: list[_Leg | _Chord]) -> bool:
    ends = [item.points for item in items if isinstance(item, _Leg)]
    (x, y), (other_x, other_y) = ends[0][0], ends[-1][-1]
    return (y, x) > (other_y, other_x)


def _round(fabric: Fabric, trace: Trace) -> tuple[list[_Leg], list[_Chord]]:
    """Return legs and chords in turn: leg 0, chord 0 (from leg 0 to leg 1), leg 1, ..."""
    rims, links, steps = fabric.rims, trace.round.links, trace.round.steps
    if not steps:
        whole = as_points(rims.points_of(trace.round.rim))
        return [_Leg(int(rims.owner[trace.round.rim]), whole)], []
    number, swapped = (np.array(each) for each in zip(*steps, strict=True))
    start = _Ends(
        np.where(swapped, links.b[number], links.a[number]),
        np.where(swapped[:, None], links.at_b[number], links.at_a[number]),
    )
    end = _Ends(
        np.where(swapped, links.a[number], links.b[number]),
        np.where(swapped[:, None], links.at_a[number], links.at_b[number]),
    )
    arrive = _Ends(np.roll(end.segment, 1), np.roll(end.at, 1, axis=0))
    return _legs(fabric, trace, arrive, start), _chords(fabric, trace, start, end)


@dataclass(frozen=True, slots=True)
class _Ends:
    """Places on rims: segments (k,) and points (k, 2)."""

    segment: Ints
    at: Floats


def _chords(fabric: Fabric, trace: Trace, start: _Ends, end: _Ends) -> list[_Chord]:
    rims = fabric.rims
    owners = zip(
        rims.owner[rims.rim[start.segment]].tolist(),
        rims.owner[rims.rim[end.segment]].tolist(),
        strict=True,
    )
    ends = zip(as_points(start.at), as_points(end.at), strict=True)
    lifts = trace.round.links.lift
    return [
        _Chord(number, float(lifts[number]), pair, *points)
        for (number, _), pair, points in zip(trace.round.steps, owners, ends, strict=True)
    ]


def _legs(fabric: Fabric, trace: Trace, arrive: _Ends, leave: _Ends) -> list[_Leg]:
    rims = fabric.rims
    rim = rims.rim[arrive.segment]
    start = rims.position(arrive.segment, arrive.at)
    end = rims.position(leave.segment, leave.at)
    lines = rims.stretches(rim, start, end)
    flips = flips_along(rims, Way(np.asarray(trace.outside), np.asarray(trace.inside)))
    longer = rims.ring[rim] & ~flips.whole[rim] & (2 * np.abs(end - start) > rims.length[rim])
    for place in np.flatnonzero(longer).tolist():
        points = rims.points_of(int(rim[place]))
        lines[place] = as_points(around(points, float(start[place]), float(end[place])))
    owners = rims.owner[rim].tolist()
    for place in np.flatnonzero(_has_width(fabric, rims.owner[rim])).tolist():
        ends = np.array([arrive.at[place], leave.at[place]])
        lines[place] = _along_axis(fabric, owners[place], ends)
    return [_Leg(owner, line) for owner, line in zip(owners, lines, strict=True)]


def _has_width(fabric: Fabric, owners: Ints) -> Bools:
    wide = np.zeros(len(fabric.names), dtype=bool)
    wide[fabric.axes.owner[fabric.half > 0]] = True
    return np.asarray(wide[owners])


def _along_axis(fabric: Fabric, owner: int, ends: Floats) -> Points:
    """Follow the middle of a sheet that was drawn with a width, between two places on its faces."""
    axis = fabric.axes.points_of(int(np.searchsorted(fabric.axes.owner, owner)))
    start, end = nearest_positions(axis, ends).tolist()
    return as_points(np.vstack([ends[:1], stretch(axis, start, end), ends[1:]]))


def along_walk(steps: tuple[Run | Lift, ...], points: Floats) -> Floats:
    """Return how far along the walk (k,) the nearest places to points (k, 2) lie, mm."""
    parts = [step.points if isinstance(step, Run) else (step.start, step.end) for step in steps]
    return nearest_positions(np.array([point for part in parts for point in part]), points)
