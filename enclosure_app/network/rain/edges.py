"""What a drop does at a lower edge.

It goes on along a piece that meets it there, goes in behind a sheet that hides the edge, clings
to a face close by, or falls.
"""

from collections import defaultdict
from dataclasses import dataclass
from math import atan2, dist, pi

import numpy as np

from enclosure_app.geometry.surfaces.faces import Ints, Point
from enclosure_app.geometry.surfaces.falling import PARALLEL, Drops, floor_below
from enclosure_app.network.rain.runs import FEET, LEVEL, Flank, Foot, Ground

_BLUNT = 0.1  # rad; directions closer than this are one sheet on another, not a corner


@dataclass(frozen=True, slots=True)
class Spot:
    """A drop on a run, at a station."""

    run: int
    station: float


@dataclass(frozen=True, slots=True)
class Off:
    """How a drop leaves an edge.

    `spots` is where it goes on: one, two where it lands on a level face and spreads, none where
    it stands or leaves. `drips` says that it lets go of an edge that lies on no other sheet,
    `leaves` is the last place in the frame, `rises` the run that dams it up.
    """

    edge: Point
    spots: tuple[Spot, ...] = ()
    drips: bool = False
    leaves: Point | None = None
    rises: Spot | None = None


@dataclass(frozen=True, slots=True)
class _Fall:
    run: int
    edge: Point
    side: float
    skip: int


def offs(ground: Ground, runs: Ints) -> dict[int, Off]:
    """Return how a drop leaves the lower edge at the end of each of `runs`."""
    found: dict[int, Off] = {}
    falls: list[_Fall] = []
    met = _meetings(ground, runs)
    for run in runs.tolist():
        told: Off | int | None = _round_a_jog(ground, run)
        told = _lapped(ground, run) if told is None else told
        told = met.get(run) if told is None else told
        if isinstance(told, Off):
            found[run] = told
        else:
            falls.append(_hanging(ground, run, told))
    for fall, off in zip(falls, fallen(ground, falls), strict=True):
        found[fall.run] = off
    return found


def _round_a_jog(ground: Ground, run: int) -> Off | None:
    """Return how a drop clings on where the face only steps back, as a sheet over a lap does."""
    jog = int(ground.follower[run])
    beyond = int(ground.follower[jog])
    short = ground.length(jog // 2) <= ground.tolerances.lap_reach
    falls = float(ground.heading[jog, 1]) < -LEVEL and _along(ground, jog, run) > 0
    if short and falls and ground.wets[beyond]:
        return Off(ground.at(run, ground.length(run // 2)), (Spot(beyond, 0.0),))
    return None


def _hanging(ground: Ground, run: int, skip: int | None) -> _Fall:
    """Return the fall from the end of `run`, past the piece `skip`."""
    edge = ground.at(run, ground.length(run // 2))
    return _Fall(run, edge, side_of(ground, run), -1 if skip is None else skip)


def side_of(ground: Ground, run: int) -> float:
    """Return on which side of a run's end a drop hangs: -1 left, 1 right."""
    across = float(ground.heading[run, 0])
    if abs(across) > LEVEL:
        return 1.0 if across > 0 else -1.0
    return 1.0 if ground.layer.surfaces.faces.normal[run // 2, 0] > 0 else -1.0


def _lapped(ground: Ground, run: int) -> Off | int | None:
    """Return how a drop goes on where the edge lies on, or behind, another sheet.

    A number is the piece behind which it falls; None says that there is no lap to speak of.
    """
    flank = _nearest_flank(ground, run)
    if flank is None:
        return None
    edge = ground.at(run, ground.length(run // 2))
    down = _downhill(ground, flank.edge, run)
    if down is not None:
        return Off(edge, (Spot(down, ground.station(down, edge)),))
    return ground.owner(flank.edge) if flank.hides else None


def _nearest_flank(ground: Ground, run: int) -> Flank | None:
    touch, e = ground.tolerances.touch, run // 2
    normal = ground.layer.surfaces.faces.normal
    near = [
        flank
        for flank in ground.flanks.get(e, ())
        if (flank.hides or abs(flank.apart) <= touch)
        and _reaches_end(ground, run, flank)
        and _goes_on(ground, run, flank.edge)
        and (float(normal[flank.edge] @ normal[e]) < 0) == flank.hides
    ]
    return min(near, key=lambda flank: abs(flank.apart), default=None)


def _reaches_end(ground: Ground, run: int, flank: Flank) -> bool:
    touch = ground.tolerances.touch
    if run % 2:
        return flank.low <= touch
    return flank.high >= ground.length(run // 2) - touch


def _goes_on(ground: Ground, run: int, edge: int) -> bool:
    """Whether an edge that runs beside `run` reaches further down than its end."""
    end = ground.at(run, ground.length(run // 2))
    way = max((2 * edge, 2 * edge + 1), key=lambda way: _along(ground, way, run))
    return ground.length(edge) - ground.station(way, end) > ground.tolerances.touch


def _along(ground: Ground, way: int, run: int) -> float:
    return float(ground.heading[way] @ ground.heading[run])


def _downhill(ground: Ground, edge: int, run: int) -> int | None:
    """Return the way down on `edge`; where it is level, the one that goes on as `run` does."""
    ways = [way for way in (2 * edge, 2 * edge + 1) if ground.wets[way]]
    return max(ways, key=lambda way: _along(ground, way, run), default=None)


def _meetings(ground: Ground, runs: Ints) -> dict[int, Off]:
    """Return how a drop goes on where another piece touches the end of a run."""
    surfaces = ground.layer.surfaces
    reach = ground.tolerances.touch + surfaces.faces.half[runs // 2]
    near: dict[int, list[int]] = defaultdict(list)
    for place, edge in zip(
        *(i.tolist() for i in surfaces.touching(ground.end[runs], reach)), strict=True
    ):
        near[int(runs[place])].append(edge)
    met = {}
    for run, edges in near.items():
        onto = next_face(ground, run, edges)
        if onto is None:
            continue
        edge = ground.at(run, ground.length(run // 2))
        if ground.wets[onto.run]:
            met[run] = Off(edge, (onto,))
        elif ground.heading[onto.run, 1] > LEVEL:
            met[run] = Off(edge, rises=onto)
    return met


def next_face(ground: Ground, run: int, edges: list[int]) -> Spot | None:
    """Return the run on another piece that comes first round the end of `run`.

    The free side is swept from the way back to the way on; the first surface that starts
    within it is where the drop goes on. None where the run's own piece comes first.
    """
    end, owner = ground.at(run, ground.length(run // 2)), ground.owner(run // 2)
    best = _sweep(ground, run, int(ground.follower[run])) - _BLUNT
    first = None
    for edge in edges:
        way = 2 * edge + run % 2
        spot = Spot(way, ground.station(way, end))
        left = ground.length(edge) - spot.station
        angle = _sweep(ground, run, way)
        if (
            ground.owner(edge) != owner
            and left > ground.tolerances.touch
            and _BLUNT < angle < best
        ):
            best, first = angle, spot
    return first


def _sweep(ground: Ground, run: int, way: int) -> float:
    """Return the angle from the way back along `run`, through its free side, to `way`."""
    (ux, uy), (wx, wy) = ground.heading[run].tolist(), ground.heading[way].tolist()
    turn = atan2(-ux * wy + uy * wx, -ux * wx - uy * wy)
    angle = (turn if run % 2 == 0 else -turn) % (2 * pi)
    return angle if angle > 1e-9 else 2 * pi


def fallen(ground: Ground, falls: list[_Fall]) -> list[Off]:
    """Return what comes of each fall."""
    if not falls:
        return []
    edges = np.array([fall.edge for fall in falls])
    side = np.array([fall.side for fall in falls])
    # A drop hangs a little to its own side of the edge, so that a sheet which goes on right
    # below, drawn to the millimetre or not, has it on the same side.
    start = edges + np.stack([side * ground.tolerances.touch / 2, np.zeros(len(side))], axis=1)
    floor = floor_below(ground.frame, start)
    drops = Drops(start, side, floor, np.array([fall.skip for fall in falls], dtype=np.intp))
    hit, place = ground.layer.surfaces.fall(drops, ground.tolerances.lap_reach)
    return [
        _off(ground, fall, int(hit[i]), tuple(place[i].tolist()), float(floor[i]))
        for i, fall in enumerate(falls)
    ]


def fall_from(ground: Ground, run: int, edge: Point, side: float) -> Off:
    """Return what comes of one fall from `edge`, off the run `run`."""
    return fallen(ground, [_Fall(run, edge, side, -1)])[0]


def _off(ground: Ground, fall: _Fall, hit: int, place: Point, floor: float) -> Off:
    if fall.edge[1] - floor <= ground.tolerances.touch:
        return Off(fall.edge, leaves=fall.edge)
    drips = not _rests(ground, fall.run)
    if hit < 0:
        return Off(fall.edge, (), drips=drips, leaves=(fall.edge[0], floor))
    far = dist(fall.edge, place) > ground.tolerances.touch
    return Off(fall.edge, _landed(ground, fall, hit, place), drips=drips and far)


def _landed(ground: Ground, fall: _Fall, edge: int, place: Point) -> tuple[Spot, ...]:
    ways = [way for way in (2 * edge, 2 * edge + 1) if ground.wets[way]]
    if len(ways) == 2:  # level: the drop spreads, first the way it was going
        ways.sort(key=lambda way: -fall.side * float(ground.heading[way, 0]))
    below = _right_below(ground, fall, edge, place)
    return tuple(Spot(way, ground.station(way, below)) for way in ways)


def _right_below(ground: Ground, fall: _Fall, edge: int, place: Point) -> Point:
    """Return where the drop lands, right below the edge; beside it where it clings."""
    across, rise = ground.heading[2 * edge].tolist()
    if abs(across) < PARALLEL:
        return place
    return fall.edge[0], place[1] + rise / across * (fall.edge[0] - place[0])


def _rests(ground: Ground, run: int) -> bool:
    """Whether the end of a run lies along another sheet, so that it is a lap and no drip."""
    return any(_reaches_end(ground, run, flank) for flank in ground.flanks.get(run // 2, ()))


def lower_edges(ground: Ground) -> Ints:
    """Return the runs that end at a lower edge."""
    return np.flatnonzero((ground.feet == FEET.index(Foot.EDGE)) & ground.wets)
