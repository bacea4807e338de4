"""Rain routes: the way of a drop from where it lands on the water layer to where it leaves.

A drop lands on the outer face of the layer where it does not face down, and where the sky wets it or
the cladding in front of it leaks. It runs downhill on that face. Its position is a piece, a side
of it and a place; each straight run leads to one next run, so the routes are worked out once for
each run and shared by all drops that pass it.
"""

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, replace
from itertools import groupby
from math import dist, inf
from types import MappingProxyType

import numpy as np

from enclosure_app.geometry.faces import Point
from enclosure_app.geometry.falling import Surfaces
from enclosure_app.model.limits import Tolerances
from enclosure_app.model.place import Points, Shape
from enclosure_app.model.report import RainRoute, RouteEnd
from enclosure_app.network.clearances import clearances
from enclosure_app.network.edges import Off, Spot
from enclosure_app.network.landing import landings
from enclosure_app.network.ponds import Pond
from enclosure_app.network.runs import LEVEL, Ground, IsOutside
from enclosure_app.network.sky import Sky
from enclosure_app.network.surfaces import surfaces_of
from enclosure_app.network.water import Course, Node, Place, Water

__all__ = ["Drip", "Entry", "Pond", "Rain", "find_routes"]

_SHARED = 60  # runs that a route still tells after it has joined one told before,
_MANY = 2000  # and only while no more runs than these have been told
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
    """What rain does on the water layer."""

    routes: tuple[RainRoute, ...] = ()
    ponds: tuple[Pond, ...] = ()
    drips: tuple[Drip, ...] = ()
    entries: tuple[Entry, ...] = ()


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
    """
    ground = Ground(surfaces_of(shapes, frame), frame, tolerances, is_outside, over, glued)
    water = Water(ground, drains)
    others = surfaces_of(walls)
    if not len(ground.start):
        return Rain()
    sky = None
    if cladding is not None:
        angle = tolerances.driving_angle
        sky = Sky(ground.layer, others, cladding, openings, frame, angle)
    courses = list(_courses(water, landings(ground, sky)))
    sides = _sides(courses, is_outside)
    routes: list[RainRoute] = []
    for course, side in zip(courses, sides, strict=True):
        joined = None if course.joins is None else routes[course.joins].end
        routes.append(_route(course, side, joined))
    entries = (
        _entry(course, side, route)
        for course, side, route in zip(courses, sides, routes, strict=True)
    )
    return Rain(
        tuple(routes),
        _ponds(courses, routes),
        _drips(water, courses, others.surfaces),
        tuple(entry for entry in entries if entry is not None),
    )


def _courses(water: Water, landed: list[Spot]) -> Iterator[Course]:
    """Yield the way of each drop that is no part of another's, highest landing first."""
    told: dict[Node, int] = {}
    number = 0
    todo: list[tuple[Spot, tuple[Place, ...]]] = [(spot, ()) for spot in _heads(water, landed)]
    while todo:
        spot, before = todo.pop()
        if before and water.node(spot) in told:
            continue
        course = water.follow(spot, told, _SHARED if len(told) < _MANY else 0)
        for node in course.nodes:
            told.setdefault(node, number)
        number += 1
        todo.extend((fork, before + course.places[:count]) for fork, count in course.forks)
        yield replace(course, places=before + course.places) if before else course


def _heads(water: Water, landed: list[Spot]) -> list[Spot]:
    """Return where routes start, lowest first: landings that no drop from above comes past."""
    entered = _entered(water, landed)
    slack = water.ground.tolerances.lap_reach
    heads = [s for s in landed if entered.get(water.node(s), inf) > s.station + slack]
    reached = _reached(water, heads)
    heads += [spot for spot in landed if water.node(spot) not in reached]
    places = {spot: water.ground.at(spot.run, spot.station) for spot in heads}
    return sorted(places, key=lambda spot: (places[spot][1], places[spot][0], spot.run))


def _reached(water: Water, spots: Iterable[Spot]) -> set[Node]:
    """Return every stretch that drops from `spots` run on."""
    todo = [water.node(spot) for spot in spots]
    seen = set(todo)
    while todo:
        new = {water.node(spot) for spot in water.step(todo.pop()).spots} - seen
        seen |= new
        todo.extend(new)
    return seen


def _entered(water: Water, landed: list[Spot]) -> dict[Node, float]:
    """Return how far up each stretch drops come on to it from others."""
    entered: dict[Node, float] = {}
    for node in _reached(water, landed):
        for spot in water.step(node).spots:
            to = water.node(spot)
            entered[to] = min(entered.get(to, inf), spot.station)
    return entered


def _sides(courses: list[Course], is_outside: IsOutside) -> list[list[bool]]:
    """Return for each course which of its places lie outside."""
    probes = [place.probe for course in courses for place in course.places]
    if not probes:
        return []
    outside = iter(is_outside(np.array(probes)).tolist())
    return [[next(outside) for _ in course.places] for course in courses]


def _route(course: Course, outside: list[bool], joined: RouteEnd | None) -> RainRoute:
    points = (key for key, _ in groupby(place.point for place in course.places))
    pieces = (key for key, _ in groupby(place.piece for place in course.places if place.piece))
    end = RouteEnd.OUTSIDE if course.end is None else course.end
    if course.end is not RouteEnd.OUTSIDE and not outside[-1]:
        end = RouteEnd.INSIDE
    return RainRoute(tuple(points), tuple(pieces), joined or end)


def _entry(course: Course, outside: list[bool], route: RainRoute) -> Entry | None:
    if route.end is not RouteEnd.INSIDE or course.joins is not None:
        return None
    last = max((i for i, out in enumerate(outside) if out), default=0)
    piece = course.places[last].piece
    gone = next(
        (i for i in range(last + 1, len(outside)) if course.places[i].piece != piece),
        len(outside) - 1,
    )
    left = course.places[gone - 1].point if gone > last else course.places[last].point
    return Entry(left, piece, course.places[gone].piece, route)


def _ponds(courses: list[Course], routes: list[RainRoute]) -> tuple[Pond, ...]:
    """Return the water that stands outside, each pond once."""
    found: dict[frozenset[str], list[Pond]] = defaultdict(list)
    for course, route in zip(courses, routes, strict=True):
        pond = course.pond
        if pond is not None and route.end is RouteEnd.STANDS:
            known = found[frozenset(pond.pieces)]
            if not any(_same(pond, other) for other in known):
                known.append(pond)
    return tuple(pond for known in found.values() for pond in known)


def _same(pond: Pond, other: Pond) -> bool:
    """Whether drops from two sides came to the same water."""
    shores = zip(pond.extent, other.extent, strict=True)
    return all(dist(one, two) <= _SHORE for one, two in shores)


def _drips(water: Water, courses: list[Course], walls: Surfaces) -> tuple[Drip, ...]:
    ground = water.ground
    hung = {
        off.edge: (run, off)
        for course in courses
        for run, passed in course.nodes
        if (off := water.step((run, passed)).off) is not None and off.drips
    }
    edges = np.array(list(hung)).reshape(-1, 2)
    ledges = np.array([_ledge(ground, off) for _, off in hung.values()])
    near = [clearances(surfaces, edges, ledges) for surfaces in (ground.layer.surfaces, walls)]
    drips = []
    for (edge, (run, _)), clear in zip(hung.items(), map(min, *near), strict=True):
        across, rise = ground.heading[run].tolist()
        piece = ground.name(run // 2)
        drips.append(Drip(edge, piece, (across, rise), clear, rise < _DOWN))
    return tuple(drips)


def _ledge(ground: Ground, off: Off) -> float:
    """Return the height of the ledge that a drop lands on, -inf where it lands on none."""
    if not off.spots:
        return -inf
    x, y = ground.at(off.spots[0].run, off.spots[0].station)
    return y if abs(x - off.edge[0]) < LEVEL else -inf
