"""Joins loose paths end to end, whatever the order and direction they were drawn in.

Words: a *path* is a polyline with two ends; ends that lie within reach of each other *meet*; where
two ends meet the paths are joined; where three or more meet, only an end that has one clearly
straightest way on is joined with it. A *chain* is what comes out.
"""

from collections import defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from math import acos, degrees, dist, floor, hypot

import numpy as np

Point = tuple[float, float]
Points = tuple[Point, ...]

SAME = 1e-3  # mm: ends this close were drawn as one point
STRAIGHT = 30.0  # degrees: a way on that turns more is a branch
CLEARLY = 5.0  # degrees: by so much a way on has to be straighter than the next


@dataclass(frozen=True, slots=True)
class Chain:
    """Paths joined end to end; `members` are their indices in walking order.

    A closed chain does not repeat its first point. An open chain starts at its lower left end; a
    closed one at its leftmost lowest point, and runs anticlockwise.
    """

    points: Points
    closed: bool
    members: tuple[int, ...]


def chain(paths: Sequence[Points], reach: float = 1.0) -> tuple[Chain, ...]:
    """Join `paths` (mm) whose ends meet within `reach`, in the order of their first members.

    Ends drawn as one point are joined before ends that are merely near, so that a line cut in
    many short parts is one chain again. A path drawn twice counts once. Paths of no length are
    left out.
    """
    single = [Chain(tidy(path), closed=False, members=(i,)) for i, path in enumerate(paths)]
    bare = _without_repeats([each for each in single if len(each.points) > 1])
    joined = _joined(_joined(bare, SAME), reach)
    return tuple(sorted((_canonical(each) for each in joined), key=lambda c: min(c.members)))


def tidy(points: Sequence[Point], *, closed: bool = False) -> Points:
    """Return `points` without repeats and without points in the middle of a straight run."""
    kept: list[Point] = []
    for point in points:
        if kept and dist(kept[-1], point) <= SAME / 10:
            continue
        while len(kept) > 1 and _on_the_way(kept[-2], kept[-1], point):
            kept.pop()
        kept.append(point)
    return _tidy_seam(kept) if closed else tuple(kept)


def length(points: Sequence[Point]) -> float:
    """Return the length of a polyline, mm."""
    return sum(map(dist, points[:-1], points[1:]))


def signed_area(ring: Sequence[Point]) -> float:
    """Return the area of a ring, positive where it runs anticlockwise; exact far from the origin."""
    x0, y0 = ring[0]
    total = 0.0
    ax, ay = ring[-1][0] - x0, ring[-1][1] - y0
    for x, y in ring:
        bx, by = x - x0, y - y0
        total += ax * by - bx * ay
        ax, ay = bx, by
    return total / 2


def canonical_ring(ring: Points) -> Points:
    """Return `ring` anticlockwise from its leftmost lowest point."""
    turned = ring if signed_area(ring) >= 0 else ring[::-1]
    start = turned.index(min(turned))
    return turned[start:] + turned[:start]


def _tidy_seam(kept: list[Point]) -> Points:
    while len(kept) > 2 and dist(kept[0], kept[-1]) <= SAME / 10:
        kept.pop()
    while len(kept) > 3 and _on_the_way(kept[-2], kept[-1], kept[0]):
        kept.pop()
    while len(kept) > 3 and _on_the_way(kept[-1], kept[0], kept[1]):
        kept.pop(0)
    return tuple(kept)


def _on_the_way(a: Point, b: Point, c: Point) -> bool:
    ux, uy, vx, vy = b[0] - a[0], b[1] - a[1], c[0] - a[0], c[1] - a[1]
    span = hypot(vx, vy)
    if abs(ux * vy - uy * vx) > SAME * span:
        return False
    return 0 < ux * vx + uy * vy < span * span


def _without_repeats(chains: list[Chain]) -> list[Chain]:
    """Fold paths that run along each other from end to end into one that has all members."""
    corners = [each.points[side] for each in chains for side in (0, -1)]
    node = {end: i for i, ends in enumerate(_meetings(corners, SAME)) for end in ends}
    kept: dict[tuple[int, int, int], list[Chain]] = defaultdict(list)
    for i, each in enumerate(chains):
        a, b = sorted((node.get(2 * i, -2 * i - 1), node.get(2 * i + 1, -2 * i - 2)))
        same = kept[a, b, len(each.points)]
        twin = next((k for k, other in enumerate(same) if _alike(other.points, each.points)), None)
        if twin is None:
            same.append(each)
        else:
            other = same[twin]
            same[twin] = Chain(other.points, other.closed, other.members + each.members)
    return [each for same in kept.values() for each in same]


def _alike(a: Points, b: Points) -> bool:
    return any(
        all(dist(p, q) <= 2 * SAME for p, q in zip(a, way, strict=True)) for way in (b, b[::-1])
    )


def _joined(chains: list[Chain], reach: float) -> list[Chain]:
    """Join chains whose ends meet; end ``2 i`` is the first of chain i, ``2 i + 1`` its last."""
    corners = [each.points[side] for each in chains for side in (0, -1)]
    partner: dict[int, int] = {}
    for ends in _meetings(corners, reach):
        for a, b in _couples(chains, ends, reach):
            partner[a], partner[b] = b, a
    return [_merge(chains, walk, ring=ring) for walk, ring in _walks(len(chains), partner)]


def _meetings(corners: Sequence[Point], reach: float) -> list[list[int]]:
    """Return the groups of two or more points that hang together by steps within `reach`."""
    cells: dict[tuple[int, int], list[int]] = defaultdict(list)
    group = list(range(len(corners)))
    crowded = _crowded(corners, reach)
    for i in crowded:
        x, y = corners[i]
        column, row = floor(x / reach), floor(y / reach)
        for near in (
            k
            for dx in (-1, 0, 1)
            for dy in (-1, 0, 1)
            for k in cells.get((column + dx, row + dy), ())
        ):
            if dist(corners[near], (x, y)) <= reach:
                group[_root(group, i)] = _root(group, near)
        cells[column, row].append(i)
    gathered: dict[int, list[int]] = defaultdict(list)
    for i in crowded:
        gathered[_root(group, i)].append(i)
    return [ends for ends in gathered.values() if len(ends) > 1]


def _crowded(corners: Sequence[Point], reach: float) -> list[int]:
    """Return the points that may have a neighbour: they share a cell in one of four grids."""
    if not corners:
        return []
    places = np.array(corners)
    places -= places.min(axis=0)
    shared = np.zeros(len(corners), dtype=bool)
    for shift in ((0, 0), (0, 1), (1, 0), (1, 1)):
        column, row = np.floor((places / reach + shift) / 2).astype(np.int64).T
        cell = column * 2_654_435_761 + row  # two cells with one number only cost time
        _, which, count = np.unique(cell, return_inverse=True, return_counts=True)
        shared |= count[which] > 1
    return [int(i) for i in np.flatnonzero(shared)]


def _root(group: list[int], i: int) -> int:
    while group[i] != i:
        group[i] = group[group[i]]
        i = group[i]
    return i


def _couples(chains: list[Chain], ends: list[int], reach: float) -> Iterator[tuple[int, int]]:
    if len(ends) == 2:
        a, b = ends
        if a ^ 1 != b or _encloses(chains[a // 2].points, reach):
            yield a, b
        return
    way = {end: _leaving(chains[end // 2].points, end & 1, reach) for end in ends}
    best = {end: _straightest(end, way) for end in ends}
    for end, other in best.items():
        if other is not None and end < other and best[other] == end:
            yield end, other


def _encloses(points: Points, reach: float) -> bool:
    return len(points) > 3 and abs(signed_area(points)) > reach * reach


def _leaving(points: Points, side: int, reach: float) -> Point:
    """Return the unit direction in which a path leaves its end, beyond the slop of drafting."""
    run = points[::-1] if side else points
    start = run[0]
    far = next((p for p in run[1:] if dist(start, p) > reach), run[-1])
    span = dist(start, far) or 1.0
    return (far[0] - start[0]) / span, (far[1] - start[1]) / span


def _straightest(end: int, way: dict[int, Point]) -> int | None:
    ux, uy = way[end]
    turns = sorted(
        (degrees(acos(max(-1.0, min(1.0, -ux * vx - uy * vy)))), other)
        for other, (vx, vy) in way.items()
        if other not in (end, end ^ 1)
    )
    if not turns or turns[0][0] > STRAIGHT:
        return None
    if len(turns) > 1 and turns[1][0] - turns[0][0] < CLEARLY:
        return None
    return turns[0][1]


def _walks(count: int, partner: dict[int, int]) -> Iterator[tuple[list[int], bool]]:
    """Yield each walk as the ends it enters by, and whether it comes back to where it began."""
    seen: set[int] = set()
    free = [end for end in range(2 * count) if end not in partner]
    for start in [*free, *range(2 * count)]:
        walk: list[int] = []
        end: int | None = start
        while end is not None and end // 2 not in seen:
            seen.add(end // 2)
            walk.append(end)
            end = partner.get(end ^ 1)
        if walk:
            yield walk, end is not None


def _merge(chains: list[Chain], walk: list[int], *, ring: bool) -> Chain:
    if len(walk) == 1 and not ring:
        return chains[walk[0] // 2]
    points: list[Point] = []
    members: list[int] = []
    for end in walk:
        run, own = chains[end // 2].points, chains[end // 2].members
        if end & 1:
            run, own = run[::-1], own[::-1]
        if points:
            points[-1] = _between(points[-1], run[0])
            points.extend(run[1:])
        else:
            points.extend(run)
        members.extend(own)
    closing = ring and _encloses(tuple(points), SAME)
    if closing:
        points[0] = _between(points[0], points.pop())
    return Chain(tidy(points, closed=closing), closing, tuple(members))


def _between(a: Point, b: Point) -> Point:
    return (a[0] + b[0]) / 2, (a[1] + b[1]) / 2


def _canonical(each: Chain) -> Chain:
    if each.closed:
        return Chain(canonical_ring(each.points), closed=True, members=each.members)
    if each.points[-1] < each.points[0]:
        return Chain(each.points[::-1], closed=False, members=each.members[::-1])
    return each
