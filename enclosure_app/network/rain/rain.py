"""Rain routes: the way of a drop from where it lands on the water layer to where it leaves.

A drop lands on the outer face of the layer where it does not face down, and where the sky wets it or
the cladding in front of it leaks. It runs downhill on that face. Its position is a piece, a side
of it and a place; each straight run leads to one next run, so the routes are worked out once for
each run and shared by all drops that pass it.
"""

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from math import dist, inf
from types import MappingProxyType

import numpy as np

from enclosure_app.geometry.surfaces.faces import Bools, Floats, Point
from enclosure_app.model.limits import Tolerances
from enclosure_app.model.place import Points, Shape
from enclosure_app.model.report import RainRoute, RouteEnd
from enclosure_app.network.rain.clearances import clearances
from enclosure_app.network.rain.courses import Telling, Told, tell
from enclosure_app.network.rain.edges import Off, Spot
from enclosure_app.network.rain.landing import Part, landed, outer_parts
from enclosure_app.network.rain.ponds import Pond
from enclosure_app.network.rain.runs import LEVEL, Ground, IsOutside
from enclosure_app.network.rain.sky import Sky
from enclosure_app.network.rain.sources import Flow, Landings, flow_of, heads, landings_of
from enclosure_app.network.rain.surfaces import LayerSurfaces, surfaces_of
from enclosure_app.network.rain.tracks import (
    Track,
    last_outside,
    last_probes,
    track_again,
    track_of,
)
from enclosure_app.network.rain.water import Course, Node, Water
from enclosure_app.network.rain.water_again import Falls, falls_of

__all__ = ["Drip", "Entry", "Pond", "Rain", "find_routes", "together"]

_SHORE = 5.0  # mm by which the shores of one pond may differ, seen from its two sides
_DOWN = -0.5  # an edge whose last stretch falls more steeply than 30 degrees turns down


@dataclass(frozen=True, slots=True)
class Entry:
    """Where a drop passes to the inside: off `piece`, on to `into` ("" where it falls)."""

    place: Point
    piece: str
    into: str
    route: RainRoute


@dataclass(frozen=True, slots=True)
class Drip:
    """A lower edge that a drop falls from.

    `direction` is the unit vector of the last stretch, `clear` the level distance (mm) to the
    outer face beneath (infinite where there is none).
    """

    point: Point
    piece: str
    direction: Point
    clear: float
    turns_down: bool


@dataclass(frozen=True, slots=True)
class Rain:
    """What rain does on the water layer; `work` is what it was found by, for each open air."""

    routes: tuple[RainRoute, ...] = ()
    ponds: tuple[Pond, ...] = ()
    drips: tuple[Drip, ...] = ()
    entries: tuple[Entry, ...] = ()
    work: tuple["Work", ...] = field(default=(), repr=False, compare=False)


def find_routes(  # noqa: PLR0913  the last six are what the layer alone does not tell
    shapes: Mapping[str, Shape],
    is_outside: IsOutside,
    frame: Points,
    tolerances: Tolerances,
    drains: frozenset[str] = frozenset(),
    *,
    over: Mapping[tuple[str, str], str] = MappingProxyType({}),
    glued: frozenset[str] = frozenset(),
    walls: Mapping[str, Shape] = MappingProxyType({}),
    cladding: frozenset[str] | None = None,
    openings: frozenset[str] = frozenset(),
    rained_on: IsOutside | None = None,
) -> Rain:
    """Follow every drop that lands on the water layer.

    Args:
        shapes: the layer's pieces by name, mm, y up.
        is_outside: tells for points (n, 2) whether they lie on the layer's outer side.
        frame: the ring inside which the section is judged.
        tolerances: `touch`, `lap_reach` and `driving_angle` are used.
        drains: the pieces that take water away.
        over: the outer sheet of each pair (in sorted order) whose order is known; it decides
            where the two are drawn closer than `touch`.
        glued: tapes, beads, coatings and collars, which water runs over and not behind.
        walls: other solid pieces of the section, which a falling drop is to stay clear of.
        cladding: the pieces that leak, so that rain gets to what lies along them right behind;
            elsewhere it lands where the sky is seen within `tolerances.driving_angle`. None:
            it lands on all of the outer face.
        openings: windows and doors, which leak on to what is right below them.
        rained_on: tells for points (n, 2) whether drops that land there are followed. None:
            all on the outer side are.
    """
    ground = Ground(
        surfaces_of(shapes, frame), frame, tolerances, is_outside, over, glued, rained_on
    )
    water = Water(ground, drains)
    others = surfaces_of(walls)
    if not len(ground.start):
        return Rain()
    sky = None
    if cladding is not None:
        angle, slop = tolerances.driving_angle, tolerances.touch
        sky = Sky(ground.layer, others, cladding, openings, frame, angle, slop)
    parts = outer_parts(ground, np.flatnonzero(ground.wets))
    found = landed(ground, sky, [part for each in parts.values() for part in each])
    flow = flow_of(water, found)
    landings = landings_of(water, flow, found)
    told = tell(water, heads(water, flow, landings))
    falls = falls_of(ground, water.offs)
    return rain_of(Work(water, others, sky, falls, parts, flow, landings, told))


@dataclass(frozen=True, slots=True, eq=False)
class Work:
    """What the rain was found by, for the next time.

    `parts` are the outer parts of each run, `tracks` those of the ways told, of which `outside`
    (n,) says which end there.
    """

    water: Water
    others: LayerSurfaces
    sky: Sky | None
    falls: Falls
    parts: Mapping[int, tuple[Part, ...]]
    flow: Flow
    landings: Landings
    told: Told
    tracks: tuple[Track, ...] = ()
    outside: Bools = field(default_factory=lambda: np.zeros(0, dtype=bool))


def rain_of(work: Work, last: Work | None = None, unsure: Floats | None = None) -> Rain:
    """Return what the rain does by the ways told.

    `last` is what was told before; no place outside the boxes `unsure` has changed sides since.
    """
    courses = [telling.whole for telling in work.told.tellings]
    is_outside = work.water.ground.is_outside
    known = _known(last)
    tracks = tuple(_track(telling, known) for telling in work.told.tellings)
    outside = _outside(courses, is_outside, known, unsure)
    routes: list[RainRoute] = []
    for course, track, out in zip(courses, tracks, outside.tolist(), strict=True):
        joined = None if course.joins is None else routes[course.joins].end
        end = joined or _end(course, outside=out)
        routes.append(RainRoute(track.points, track.pieces, end))
    entries = (
        _entry(course, is_outside, route)
        for course, route in zip(courses, routes, strict=True)
        if route.end is RouteEnd.INSIDE and course.joins is None
    )
    return Rain(
        tuple(routes),
        _ponds(courses, routes),
        _drips(work),
        tuple(entries),
        (replace(work, tracks=tracks, outside=outside),),
    )


def together(rains: Sequence[Rain]) -> Rain:
    """Return what rain does in several airs, each pond and each drip once."""
    if len(rains) == 1:
        return rains[0]
    every = [drip for rain in rains for drip in rain.drips]
    return Rain(
        tuple(dict.fromkeys(route for rain in rains for route in rain.routes)),
        _each_once(pond for rain in rains for pond in rain.ponds),
        tuple({(drip.point, drip.piece): drip for drip in reversed(every)}.values())[::-1],
        tuple(entry for rain in rains for entry in rain.entries),
        tuple(work for rain in rains for work in rain.work),
    )


Known = dict[Spot, tuple[Telling, Track, bool]]


def _known(last: Work | None) -> Known:
    """Return by where they began the ways told before, their tracks, and whether they end outside."""
    if last is None:
        return {}
    rows = zip(last.told.tellings, last.tracks, last.outside.tolist(), strict=True)
    return {row[0].spot: row for row in rows}


def _track(telling: Telling, known: Known) -> Track:
    old = known.get(telling.spot)
    if old is not None and old[0].whole is telling.whole:
        return old[1]
    if old is not None and not (old[0].before or telling.before):
        return track_again(telling.course, old[0].course, old[1])
    return track_of(telling.whole)


def _outside(
    courses: list[Course], is_outside: IsOutside, known: Known, unsure: Floats | None
) -> Bools:
    """Return which courses end outside."""
    probes = last_probes(courses)
    outside, asked = np.zeros(len(courses), dtype=bool), np.ones(len(courses), dtype=bool)
    if unsure is not None:
        told = {id(telling.whole): out for telling, _, out in known.values()}
        for number, course in enumerate(courses):
            out = told.get(id(course))
            if out is not None:
                outside[number], asked[number] = out, False
        for low, high in unsure:
            asked |= ((probes >= low) & (probes <= high)).all(axis=1)
    which = np.flatnonzero(asked)
    if len(which):
        outside[which] = is_outside(probes[which])
    return outside


def _end(course: Course, *, outside: bool) -> RouteEnd:
    if course.end is not RouteEnd.OUTSIDE and not outside:
        return RouteEnd.INSIDE
    return RouteEnd.OUTSIDE if course.end is None else course.end


def _entry(course: Course, is_outside: IsOutside, route: RainRoute) -> Entry:
    last, count = last_outside(course, is_outside), len(course.places)
    piece = course.places[last].piece
    gone = next((i for i in range(last + 1, count) if course.places[i].piece != piece), count - 1)
    left = course.places[gone - 1].point if gone > last else course.places[last].point
    return Entry(left, piece, course.places[gone].piece, route)


def _ponds(courses: list[Course], routes: list[RainRoute]) -> tuple[Pond, ...]:
    """Return the water that stands outside, each pond once."""
    return _each_once(
        course.pond
        for course, route in zip(courses, routes, strict=True)
        if course.pond is not None and route.end is RouteEnd.STANDS
    )


def _each_once(ponds: Iterable[Pond]) -> tuple[Pond, ...]:
    found: dict[frozenset[str], list[Pond]] = defaultdict(list)
    for pond in ponds:
        known = found[frozenset(pond.pieces)]
        if not any(_same(pond, other) for other in known):
            known.append(pond)
    return tuple(pond for known in found.values() for pond in known)


def _same(pond: Pond, other: Pond) -> bool:
    """Whether drops from two sides came to the same water."""
    shores = zip(pond.extent, other.extent, strict=True)
    return all(dist(one, two) <= _SHORE for one, two in shores)


def _drips(work: Work) -> tuple[Drip, ...]:
    water, walls = work.water, work.others.surfaces
    ground = water.ground
    hung: dict[Point, tuple[int, Off]] = {}
    for node in _dripping(work):
        off = water.step(node).off
        if off is not None:
            hung.setdefault(off.edge, (node[0], off))
    edges = np.array(list(hung)).reshape(-1, 2)
    ledges = np.array([_ledge(ground, off) for _, off in hung.values()])
    near = [clearances(surfaces, edges, ledges) for surfaces in (ground.layer.surfaces, walls)]
    drips = []
    for (edge, (run, _)), clear in zip(hung.items(), map(min, *near), strict=True):
        across, rise = ground.heading[run].tolist()
        piece = ground.name(run // 2)
        drips.append(Drip(edge, piece, (across, rise), clear, rise < _DOWN))
    return tuple(drips)


def _dripping(work: Work) -> list[Node]:
    """Return the nodes told from which drops drip, in the order in which they were told."""
    steps, first = work.water.steps, work.told.first
    found = [
        node for node, step in steps.items()
        if step.off is not None and step.off.drips and node in first
    ]  # fmt: skip
    place: dict[Node, tuple[int, int]] = {}
    for number in sorted({first[node] for node in found}):
        nodes = work.told.tellings[number].course.nodes
        wanted = {node for node in found if first[node] == number}
        place |= {node: (number, n) for n, node in enumerate(nodes) if node in wanted}
    return sorted(found, key=place.__getitem__)


def _ledge(ground: Ground, off: Off) -> float:
    """Return the height of the ledge that a drop lands on, -inf where it lands on none."""
    if not off.spots:
        return -inf
    x, y = ground.at(off.spots[0].run, off.spots[0].station)
    return y if abs(x - off.edge[0]) < LEVEL else -inf
