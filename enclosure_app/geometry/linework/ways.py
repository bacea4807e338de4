"""The shortest ways along drawn lines from one place to another."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from heapq import heappop, heappush
from itertools import islice
from math import dist, hypot, inf

import numpy as np
import shapely

from enclosure_app.geometry.linework.graph import LineworkGraph, Point
from enclosure_app.geometry.outlines.chaining import tidy

Points = tuple[Point, ...]

AGAIN = 2.0  # a link costs so many times more in the next search for another way
SHARED = 0.8  # a way with more than this share of another one is the same way
DETOUR = 10.0  # a way longer than so many times the shortest is none that anybody wants
BACK = 400.0  # mm: what it costs to turn back sharply, which no sheet does
SHARP = -0.8  # cosine of the turn from which on it is sharp
TRIES = 4  # searches for each further way


@dataclass(frozen=True, slots=True)
class Way:
    """One way along drawn lines: a clean polyline, its length, and the gaps it was carried over."""

    points: Points
    length: float
    gaps: tuple[tuple[Point, Point], ...] = ()


@dataclass(frozen=True, slots=True)
class _Found:
    """The spots of a way, and its links with their costs; those at its ends are below 0."""

    spots: tuple[int, ...]
    links: Mapping[int, float]

    @property
    def cost(self) -> float:
        return sum(self.links.values())


@dataclass(frozen=True, slots=True)
class _Errand:
    """From a place on a stretch to another: the spots next to both, with their distances.

    `direct` is the length of the straight run between places with no spot between them.
    """

    start: Point
    end: Point
    leave: Mapping[int, float]
    arrive: Mapping[int, float]
    direct: float | None


def ways(graph: LineworkGraph, a: Point, b: Point, count: int = 1) -> tuple[Way, ...]:
    """Return up to `count` ways along the lines nearest to `a` and `b`, the shortest first.

    Later ones differ from those before them on a good part of their length. Empty where no drawn
    lines join the two.
    """
    made = list(islice(ways_in_turn(graph, a, b, count), count))
    return (*made[:1], *sorted(made[1:], key=lambda way: way.length))


def ways_in_turn(graph: LineworkGraph, a: Point, b: Point, most: int) -> Iterator[Way]:
    """Yield up to `most` ways as they are found: each is sought only when it is asked for."""
    if joined(graph, a, b):
        errand = _errand(graph, a, b)
        for found in _differing(graph, errand, most):
            yield _way(graph, errand, found)


def joined(graph: LineworkGraph, a: Point, b: Point) -> bool:
    """Whether drawn lines join the lines nearest to two places."""
    if not len(graph.start):
        return False
    here, there = (graph.part[graph.neighbours(*graph.nearest(p)[:2])[0][0]] for p in (a, b))
    return here == there


def reached(graph: LineworkGraph, place: Point) -> list[int]:
    """Return every spot that drawn lines join to the line nearest to `place`."""
    stretch, at, _ = graph.nearest(place)
    part = graph.part[graph.neighbours(stretch, at)[0][0]]
    return [spot for spot, other in enumerate(graph.part) if other == part]


def parting(graph: LineworkGraph, a: Point, b: Point) -> tuple[Point, Point]:
    """Return the two nearest places of what is joined to `a` and what is joined to `b`."""
    here, there = (graph.spots[reached(graph, place)] for place in (a, b))
    tree = shapely.STRtree(np.asarray(shapely.points(there)))
    rows, away = tree.query_nearest(
        np.asarray(shapely.points(here)), all_matches=False, return_distance=True
    )
    best = int(np.argmin(away))
    (ax, ay), (bx, by) = here[rows[0][best]], there[rows[1][best]]
    return (float(ax), float(ay)), (float(bx), float(by))


def _errand(graph: LineworkGraph, a: Point, b: Point) -> _Errand:
    (one, at_one, _), (other, at_other, _) = graph.nearest(a), graph.nearest(b)
    leave, arrive = dict(graph.neighbours(one, at_one)), dict(graph.neighbours(other, at_other))
    start, end = graph.place(one, at_one), graph.place(other, at_other)
    if leave.keys() != arrive.keys():
        return _Errand(start, end, leave, arrive, None)
    # both on one straight run: any other way begins away from the end and comes from beyond it
    back = max(leave, key=lambda spot: arrive[spot] - leave[spot])
    away = {back: leave[back]}
    return _Errand(start, end, away, _without(arrive, back), dist(start, end))


def _without(spots: Mapping[int, float], one: int) -> dict[int, float]:
    return {spot: away for spot, away in spots.items() if spot != one}


def _differing(graph: LineworkGraph, errand: _Errand, count: int) -> Iterator[_Found]:
    """Yield ways that are not mostly the same: links that were walked cost more each time."""
    kept: list[_Found] = []
    if errand.direct is not None:
        kept.append(_Found((), {-1: errand.direct}))
        yield kept[0]
    factor = _halved(graph, errand)
    for _ in range(1 + TRIES * (count - 1)):
        if len(kept) >= count:
            return
        found = _search(graph, errand, factor)
        if found is None or (kept and found.cost > DETOUR * kept[0].cost):
            return
        for link in found.links:
            factor[link] = factor.get(link, 1.0) * AGAIN
        if all(_shared(found, other) <= SHARED for other in kept):
            kept.append(found)
            yield found


def _halved(graph: LineworkGraph, errand: _Errand) -> dict[int, float]:
    """Bar the links on which the errand begins and ends: they are walked from the place itself."""
    barred = {}
    every = {**errand.leave, **errand.arrive}
    for ends in (every,) if errand.direct is not None else (errand.leave, errand.arrive):
        for k in (k for one in ends for k in range(graph.first[one], graph.first[one + 1])):
            if graph.target[k] in ends:
                barred[graph.link[k]] = inf
    return barred


def _shared(one: _Found, other: _Found) -> float:
    """Return the share of the cheaper way that it has in common with the other."""
    both = sum(cost for link, cost in one.links.items() if link in other.links)
    return both / max(min(one.cost, other.cost), 1e-9)


def _places(graph: LineworkGraph, errand: _Errand, found: _Found) -> Points:
    spots = [(float(x), float(y)) for x, y in graph.spots[list(found.spots)]]
    return (errand.start, *spots, errand.end)


def _search(graph: LineworkGraph, errand: _Errand, factor: Mapping[int, float]) -> _Found | None:
    """Return the cheapest way; the straight distance to the end is never more than what is left."""
    first, target, cost, number, spots = (
        graph.first, graph.target, graph.cost, graph.link, graph.places
    )  # fmt: skip
    to = errand.end
    spent = {s: away * factor.get(_leaving(s), 1.0) for s, away in errand.leave.items()}
    came: dict[int, tuple[int, int, float]] = {}
    waiting = sorted((gone + dist(spots[spot], to), spot) for spot, gone in spent.items())
    best, last, done = inf, -1, set[int]()
    while waiting and waiting[0][0] < best:
        spot = heappop(waiting)[1]
        if spot in done:
            continue
        done.add(spot)
        gone = spent[spot]
        if spot in errand.arrive:
            whole = gone + errand.arrive[spot] * factor.get(_arriving(spot), 1.0)
            best, last = min((best, last), (whole, spot))
        behind = spots[came[spot][0]] if spot in came else errand.start
        for k in range(first[spot], first[spot + 1]):
            on, link = target[k], number[k]
            reach = gone + cost[k] * factor.get(link, 1.0)
            if reach < spent.get(on, inf):
                reach += BACK * _turns_back(behind, spots[spot], spots[on], graph.snap)
            if reach < spent.get(on, inf):
                spent[on], came[on] = reach, (spot, link, cost[k])
                heappush(waiting, (reach + dist(spots[on], to), on))
    return _retraced(errand, came, last) if last >= 0 else None


def _turns_back(a: Point, b: Point, c: Point, snap: float) -> bool:
    """Tell whether the way from a over b to c turns back; the little steps of a snap do not count."""
    ux, uy, vx, vy = b[0] - a[0], b[1] - a[1], c[0] - b[0], c[1] - b[1]
    sizes = hypot(ux, uy), hypot(vx, vy)
    return min(sizes) > snap and ux * vx + uy * vy < SHARP * sizes[0] * sizes[1]


def _leaving(spot: int) -> int:
    return -2 - 2 * spot


def _arriving(spot: int) -> int:
    return -3 - 2 * spot


def _retraced(errand: _Errand, came: Mapping[int, tuple[int, int, float]], last: int) -> _Found:
    spots, links = [last], [(_arriving(last), errand.arrive[last])]
    while spots[-1] in came:
        before, link, cost = came[spots[-1]]
        spots.append(before)
        links.append((link, cost))
    links.append((_leaving(spots[-1]), errand.leave[spots[-1]]))
    return _Found(tuple(spots[::-1]), dict(links[::-1]))


def _way(graph: LineworkGraph, errand: _Errand, found: _Found) -> Way:
    places = _places(graph, errand, found)
    over = [i for i, link in enumerate(found.links) if link >= graph.bridges]
    points = cleaned(places, graph.snap)
    return Way(
        points,
        sum(map(dist, points[:-1], points[1:])),
        tuple((places[i], places[i + 1]) for i in over),
    )


def cleaned(points: Sequence[Point], snap: float) -> Points:
    """Return a run without the small steps of lines that only nearly meet, and without idle points.

    A step shorter than `snap` mm becomes the corner of the two runs that it joins.
    """
    kept = list(tidy(points))
    if len(kept) < 2:
        return (points[0], points[-1])
    i = 1
    while i < len(kept) - 2:
        if dist(kept[i], kept[i + 1]) <= snap:
            kept[i : i + 2] = [_corner(kept[i - 1 : i + 3], snap)]
        else:
            i += 1
    straight = shapely.simplify(shapely.LineString(kept), snap / 4, preserve_topology=False)
    return tuple((float(x), float(y)) for x, y in straight.coords)


def _corner(four: Sequence[Point], snap: float) -> Point:
    """Return where the runs before and after a small step meet, or the middle of the step."""
    (ax, ay), (bx, by), (cx, cy), (dx, dy) = four
    ux, uy, vx, vy = bx - ax, by - ay, dx - cx, dy - cy
    middle = ((bx + cx) / 2, (by + cy) / 2)
    det = ux * vy - uy * vx
    if abs(det) <= 1e-9:
        return middle
    t = ((cx - ax) * vy - (cy - ay) * vx) / det
    meeting = (ax + t * ux, ay + t * uy)
    return meeting if dist(meeting, middle) <= 2 * snap else middle
