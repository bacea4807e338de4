"""Drawn lines as one net that can be walked from place to place.

Words: a *stretch* is one straight part of a drawn line; a *site* is a place on a stretch where one
may turn off (its ends, crossings, ends of other lines that touch it); a *spot* is where sites of
several stretches are one place; a *way* leads from spot to spot along stretches. A *bridge* leads
over a small gap that the draughtsman left at a loose end.
"""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import shapely
from numpy.typing import NDArray

from enclosure_app.geometry.in_turns import asked, listed, made, placed
from enclosure_app.geometry.rims.closest import crossings, foot
from enclosure_app.geometry.rims.rims import Floats, Ints

Point = tuple[float, float]

SAME = 1e-3  # mm: places this near are one spot
SNAP = 0.5  # mm: lines this near touch
GAP = 12.0  # mm: a loose end this near to another line may be carried on to it
TOLL = 3.0  # a bridge costs so many times its length, so that drawn lines are taken first
SLANT = 150.0  # mm: slanting stretches are compared with others in boxes no larger than this


@dataclass(frozen=True, slots=True, eq=False)
class LineworkGraph:
    """The net of drawn lines; build it once with `of` and keep it.

    `start`, `end` (n, 2) mm of each stretch and `tree` to find them; the sites of stretch i are
    `site_first[i]` to `site_first[i + 1]`, in order, at `site_at` mm from its start, on the spots
    `site_spot`. `spots` (m, 2) mm, and
    `places` the same as plain numbers. The ways on from spot i are `first[i]` to `first[i + 1]` of
    `target` (spot), `cost` (mm) and `link`; both directions of a link have one number, and links
    from `bridges` upwards are bridges. Spots that ways join have one number in `part`.
    """

    start: Floats
    end: Floats
    tree: shapely.STRtree
    site_first: Ints
    site_at: Floats
    site_spot: Ints
    spots: Floats
    places: list[Point]
    first: list[int]
    target: list[int]
    cost: list[float]
    link: list[int]
    part: list[int]
    bridges: int
    snap: float

    @classmethod
    def of(
        cls, lines: Sequence[Sequence[Point]], *, snap: float = SNAP, gap: float = GAP
    ) -> "LineworkGraph":
        """Return the net of polylines (mm), of which each has two points or more.

        Args:
            lines: The drawn lines; a closed one repeats its first point.
            snap: Lines within so many mm of each other touch.
            gap: Loose ends are carried on over so many mm; 0 for never.
        """
        start, end = _stretches(lines)
        tree = shapely.STRtree(made(shapely.linestrings, np.stack([start, end], axis=1)))
        met = _meetings(start, end, snap)
        over = _over_gaps(start, end, tree, met, (snap, gap)) if gap > snap else _NONE
        net = _net(start, end, met, over)
        first, target, cost, link = _fans(net)
        return cls(
            start=start,
            end=end,
            tree=tree,
            site_first=net.first,
            site_at=net.at,
            site_spot=net.spot,
            spots=net.spots,
            places=[(x, y) for x, y in listed(net.spots)],
            first=first,
            target=target,
            cost=cost,
            link=link,
            part=_parts(first, target),
            bridges=net.bridges,
            snap=snap,
        )

    def nearest(self, place: Point) -> tuple[int, float, float]:
        """Return the stretch nearest to a place, how far along it, and how far away, mm."""
        point = shapely.Point(place)
        row, away = self.tree.query_nearest(point, all_matches=False, return_distance=True)
        stretch = int(row[0])
        on = foot(np.array([place]), self.start[[stretch]], self.end[[stretch]])[0]
        return stretch, float(np.hypot(*(on - self.start[stretch]))), float(away[0])

    def place(self, stretch: int, at: float) -> Point:
        """Return the place `at` mm along a stretch."""
        along = self.end[stretch] - self.start[stretch]
        x, y = self.start[stretch] + along * (at / np.hypot(*along))
        return float(x), float(y)

    def neighbours(self, stretch: int, at: float) -> tuple[tuple[int, float], tuple[int, float]]:
        """Return the spots on both sides of a place on a stretch, each with its distance, mm."""
        low, high = self.site_first[stretch], self.site_first[stretch + 1]
        after = int(np.clip(np.searchsorted(self.site_at[low:high], at), 1, high - low - 1)) + low
        return self._next(after - 1, at), self._next(after, at)

    def _next(self, site: int, at: float) -> tuple[int, float]:
        return int(self.site_spot[site]), abs(float(self.site_at[site]) - at)


@dataclass(frozen=True, slots=True)
class _Net:
    first: Ints  # site of each stretch
    at: Floats
    spot: Ints  # of each site
    spots: Floats
    links: Ints  # (k, 2) spots
    cost: Floats
    bridges: int


@dataclass(frozen=True, slots=True)
class _Meetings:
    """Where stretch `a` at `at_a` mm meets stretch `b` at `at_b` mm."""

    a: Ints
    at_a: Floats
    b: Ints
    at_b: Floats


_NONE = _Meetings(*(np.zeros(0, dtype=kind) for kind in (np.intp, float, np.intp, float)))


def _stretches(lines: Sequence[Sequence[Point]]) -> tuple[Floats, Floats]:
    """Return start and end of every straight part that has a length."""
    if not lines:
        return np.zeros((0, 2)), np.zeros((0, 2))
    line = np.repeat(np.arange(len(lines)), [len(points) for points in lines])
    places = placed(lines)
    going_on = (line[1:] == line[:-1]) & (np.hypot(*np.diff(places, axis=0).T) > 2 * SAME)
    return places[:-1][going_on], places[1:][going_on]


def _meetings(start: Floats, end: Floats, snap: float) -> _Meetings:
    """Return where stretches cross, touch, and end on each other."""
    a, b = _near(start, end, snap)
    p, q, r, s = start[a], end[a], start[b], end[b]
    hit, where = crossings(p, q, r, s)
    found = [_at_places(start, a[hit], where[hit], b[hit], where[hit])]
    for corner, one, other in ((p, a, b), (q, a, b), (r, b, a), (s, b, a)):
        on = foot(corner, start[other], end[other])
        near = np.hypot(*(on - corner).T) <= snap
        found.append(_at_places(start, one[near], corner[near], other[near], on[near]))
    return _together(found)


def _at_places(start: Floats, a: Ints, on_a: Floats, b: Ints, on_b: Floats) -> _Meetings:
    return _Meetings(a, np.hypot(*(on_a - start[a]).T), b, np.hypot(*(on_b - start[b]).T))


def _together(several: Sequence[_Meetings]) -> _Meetings:
    return _Meetings(
        np.concatenate([each.a for each in several]),
        np.concatenate([each.at_a for each in several]),
        np.concatenate([each.b for each in several]),
        np.concatenate([each.at_b for each in several]),
    )


def _near(start: Floats, end: Floats, reach: float) -> tuple[Ints, Ints]:
    """Return the pairs of stretches (a < b) whose boxes come within `reach` of each other.

    A slanting stretch is boxed in parts: the box round all of it would hold its whole hatch.
    """
    if not len(start):
        return np.zeros(0, dtype=np.intp), np.zeros(0, dtype=np.intp)
    along = end - start
    parts = np.maximum(np.ceil(np.minimum(*np.abs(along).T) / SLANT), 1).astype(np.intp)
    owner = np.repeat(np.arange(len(start)), parts)
    number = np.arange(len(owner)) - np.repeat(np.cumsum(parts) - parts, parts)
    step = along[owner] / parts[owner, None]
    one = start[owner] + number[:, None] * step
    low, high = np.minimum(one, one + step), np.maximum(one, one + step)
    boxes = made(shapely.linestrings, np.stack([low, high], axis=1))
    wide = np.stack([low - reach, high + reach], axis=1)
    first, second = asked(shapely.STRtree(boxes), made(shapely.linestrings, wide))
    a, b = owner[first], owner[second]
    upper = a < b
    keys = a[upper] * len(start) + b[upper]
    if len(owner) > len(start):
        keys = np.sort(keys)
        keys = keys[np.diff(keys, prepend=-1) > 0]
    return keys // len(start), keys % len(start)


def _net(start: Floats, end: Floats, met: _Meetings, over: _Meetings) -> _Net:
    """Lay sites along the stretches, make one spot of those in one place, and link them."""
    count, pairs = len(start), len(met.a) + len(over.a)
    length = np.hypot(*(end - start).T)
    every = np.arange(count)
    stretch = np.concatenate([every, every, met.a, over.a, met.b, over.b])
    at = np.concatenate([np.zeros(count), length, met.at_a, over.at_a, met.at_b, over.at_b])
    spot, spots = _spots(start, end, stretch, at)
    order = np.lexsort([at, stretch])
    along, turn = np.diff(stretch[order]) == 0, np.diff(spot[order]) != 0
    order = order[np.concatenate([np.ones(min(len(order), 1), dtype=bool), turn | ~along])]
    before, after = order[:-1], order[1:]
    along = stretch[before] == stretch[after]
    one, other = 2 * count + np.arange(pairs), 2 * count + pairs + np.arange(pairs)
    drawn = np.concatenate(
        [
            np.column_stack([spot[before][along], spot[after][along]]),
            np.column_stack([spot[one], spot[other]])[: len(met.a)],
        ]
    )
    drawn = _different(drawn, len(spots))
    bridges = _different(np.column_stack([spot[one], spot[other]])[len(met.a) :], len(spots))
    links = np.concatenate([drawn, bridges])
    cost = np.hypot(*(spots[links[:, 0]] - spots[links[:, 1]]).T)
    cost[len(drawn) :] *= TOLL
    first = np.searchsorted(stretch[order], np.arange(count + 1))
    return _Net(first, at[order], spot[order], spots, links, cost, len(drawn))


def _spots(start: Floats, end: Floats, stretch: Ints, at: Floats) -> tuple[Ints, Floats]:
    """Return the spot of each site, and where the spots are."""
    along = end - start
    unit = along / np.hypot(*along.T)[:, None]
    places = start[stretch] + at[:, None] * unit[stretch]
    # the ends themselves unrounded, so that corners stay where they were drawn
    count = len(start)
    places[count : 2 * count] = end
    cells = np.round((places - start.min(axis=0, initial=0.0)) / SAME).astype(np.int64)
    keys = cells[:, 0] * (1 << 32) + cells[:, 1]
    order = np.argsort(keys, kind="stable")
    fresh = np.diff(keys[order], prepend=-1) > 0
    spot = np.empty(len(keys), dtype=np.intp)
    spot[order] = np.cumsum(fresh) - 1
    return spot, places[order[fresh]]


def _different(links: Ints, spots: int) -> Ints:
    """Return the links without repeats and without those from a spot to itself."""
    low, high = np.minimum(*links.T), np.maximum(*links.T)
    keys = np.sort((low * spots + high)[low < high])
    keys = keys[np.diff(keys, prepend=-1) > 0]
    return np.column_stack([keys // max(spots, 1), keys % max(spots, 1)])


def _over_gaps(
    start: Floats,
    end: Floats,
    tree: shapely.STRtree,
    met: _Meetings,
    reach: tuple[float, float],
) -> _Meetings:
    """Return the bridges from loose ends to the lines near them, further than they touch."""
    places = np.concatenate([start, end])
    owner = np.tile(np.arange(len(start)), 2)
    loose = np.flatnonzero(_loose(np.hypot(*(end - start).T), met, reach[0]))
    shapes = made(shapely.points, places[loose])
    which, other = asked(tree, shapes, predicate="dwithin", distance=reach[1])
    which = loose[which]
    on = foot(places[which], start[other], end[other])
    away = np.hypot(*(on - places[which]).T)
    far = (away > reach[0]) & (owner[which] != other)
    return _at_places(start, owner[which[far]], places[which[far]], other[far], on[far])


def _loose(length: Floats, met: _Meetings, snap: float) -> NDArray[np.bool_]:
    """Return which starts and ends (2 n) of stretches nothing touches."""
    count = len(length)
    loose = np.ones(2 * count, dtype=bool)
    for stretch, at in ((met.a, met.at_a), (met.b, met.at_b)):
        loose[stretch[at <= snap]] = False
        loose[count + stretch[at >= length[stretch] - snap]] = False
    return loose


def _parts(first: list[int], target: list[int]) -> list[int]:
    """Number what hangs together: one number for each spot."""
    part = [-1] * (len(first) - 1)
    for begun in range(len(part)):
        waiting = [begun] if part[begun] < 0 else []
        while waiting:
            spot = waiting.pop()
            if part[spot] < 0:
                part[spot] = begun
                waiting += target[first[spot] : first[spot + 1]]
    return part


def _fans(net: _Net) -> tuple[list[int], list[int], list[float], list[int]]:
    """Return for each spot where its links begin, then target, cost and number of each."""
    count = len(net.links)
    source = net.links.T.ravel()
    order = np.argsort(source, kind="stable")
    first = np.searchsorted(source[order], np.arange(len(net.spots) + 1))
    target = net.links[:, ::-1].T.ravel()[order]
    number = np.tile(np.arange(count), 2)[order]
    return listed(first), listed(target), listed(net.cost[number]), listed(number)
