"""The trace as a person follows it: runs along pieces and lifts between them, from cut end to cut end.

The walk starts at the lower of its two cut ends (the left one where they are level); a round that
never meets the frame starts at its lowest lift.
"""

from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np

from enclosure_app.geometry.closed_curve import ClosedCurve
from enclosure_app.geometry.parity import Flips, Way, flips_along
from enclosure_app.geometry.polyline import around, as_points, nearest_positions, stretch
from enclosure_app.geometry.rims import Floats, Rims
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
    points: Floats

    def reversed(self) -> "_Leg":
        """Return the same leg walked the other way."""
        return _Leg(self.owner, self.points[::-1])


@dataclass(frozen=True, slots=True)
class _Chord:
    """One link or jump of the round: its number, lift, the two owners and the two points."""

    number: int
    lift: float
    owners: tuple[int, int]
    start: Floats
    end: Floats

    def reversed(self) -> "_Chord":
        """Return the same chord walked the other way."""
        return _Chord(self.number, self.lift, self.owners[::-1], self.end, self.start)


def follow(fabric: Fabric, trace: Trace) -> Walk:
    """Return the walk along `trace`."""
    legs, chords = _round(fabric, trace)
    curve = ClosedCurve(np.vstack([leg.points for leg in legs]))
    items = _in_walking_order(fabric, legs, chords)
    steps = [step for item in items for step in _steps(fabric, item)]
    return Walk(tuple(steps), tuple(chord.number for chord in chords), curve)


def _steps(fabric: Fabric, item: _Leg | _Chord) -> Iterator[Run | Lift]:
    if isinstance(item, _Leg):
        if item.owner < len(fabric.pieces):
            yield Run(fabric.names[item.owner], as_points(item.points))
    elif item.lift > 0:
        start, end = as_points(np.array([item.start, item.end]))
        yield Lift(fabric.names[item.owners[0]], fabric.names[item.owners[1]], start, end)


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
    (x, y), (other_x, other_y) = ends[0][0].tolist(), ends[-1][-1].tolist()
    return (y, x) > (other_y, other_x)


def _round(fabric: Fabric, trace: Trace) -> tuple[list[_Leg], list[_Chord]]:
    """Return legs and chords in turn: leg 0, chord 0 (from leg 0 to leg 1), leg 1, ..."""
    rims, links = fabric.rims, trace.round.links
    flips = flips_along(rims, Way(np.asarray(trace.outside), np.asarray(trace.inside)))
    if not trace.round.steps:
        whole = rims.points_of(trace.round.rim)
        return [_Leg(int(rims.owner[trace.round.rim]), whole)], []
    chords, ends = [], []
    for number, swapped in trace.round.steps:
        a, b = (
            (int(links.a[number]), links.at_a[number]),
            (int(links.b[number]), links.at_b[number]),
        )
        start, end = (b, a) if swapped else (a, b)
        owners = (_owner(rims, start[0]), _owner(rims, end[0]))
        chords.append(_Chord(number, float(links.lift[number]), owners, start[1], end[1]))
        ends.append((start, end))
    legs = [_leg(fabric, flips, ends[place - 1][1], ends[place][0]) for place in range(len(ends))]
    return legs, chords


def _leg(
    fabric: Fabric, flips: Flips, arrive: tuple[int, Floats], leave: tuple[int, Floats]
) -> _Leg:
    rims = fabric.rims
    rim = int(rims.rim[arrive[0]])
    owner = int(rims.owner[rim])
    points = rims.points_of(rim)
    at = rims.position(np.array([arrive[0], leave[0]]), np.array([arrive[1], leave[1]]))
    start, end = float(at[0]), float(at[1])
    if rims.ring[rim] and not flips.whole[rim] and 2 * abs(end - start) > rims.length[rim]:
        return _Leg(owner, around(points, start, end))
    axis = _axis(fabric, owner)
    if axis is None:
        return _Leg(owner, stretch(points, start, end))
    on_axis = nearest_positions(axis, np.array([arrive[1], leave[1]]))
    inner = stretch(axis, float(on_axis[0]), float(on_axis[1]))
    return _Leg(owner, np.vstack([arrive[1], inner, leave[1]]))


def _axis(fabric: Fabric, owner: int) -> Floats | None:
    """Return the bare run of a sheet that was drawn with a width; the pen follows its middle."""
    if owner >= len(fabric.pieces):
        return None
    rim = int(np.searchsorted(fabric.axes.owner, owner))
    return fabric.axes.points_of(rim) if fabric.half[rim] > 0 else None


def _owner(rims: Rims, segment: int) -> int:
    return int(rims.owner[rims.rim[segment]])


def along_walk(steps: tuple[Run | Lift, ...], points: Floats) -> Floats:
    """Return how far along the walk (k,) the nearest places to points (k, 2) lie, mm."""
    parts = [step.points if isinstance(step, Run) else (step.start, step.end) for step in steps]
    return nearest_positions(np.array([point for part in parts for point in part]), points)
