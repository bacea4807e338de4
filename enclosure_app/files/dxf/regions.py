"""Regions with holes out of rings, and the outlines of polylines that change their width."""

import math
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import NamedTuple

from ezdxf.math import Vec2, is_point_in_polygon_2d

from enclosure_app.files.dxf.curves import bulge_points, without_repeats
from enclosure_app.model.place import Point, Points

WholeRegion = tuple[Points, tuple[Points, ...]]
_NESTED, _OUTERMOST = 0, 1
_SHARPEST_MITRE = 0.25
_FLATTEST = 1e-9


class Vertex(NamedTuple):
    """One vertex of a polyline with the widths and the bulge of the segment that starts there."""

    x: float
    y: float
    start_width: float = 0.0
    end_width: float = 0.0
    bulge: float = 0.0


@dataclass(frozen=True, slots=True)
class _Station:
    """A point of a wide run, with the half widths just before and just after it."""

    at: Point
    before: float
    after: float


def regions(rings: Iterable[Points], style: int = _NESTED) -> Iterator[WholeRegion]:
    """Yield outer rings with their holes, by which ring lies in which.

    Args:
        rings: closed rings, none repeating its first point.
        style: the hatch style: 0 fills every second ring, 1 only the outermost, 2 ignores holes.
    """
    ordered = sorted((ring for ring in rings if ring_size(ring) != 0), key=ring_size, reverse=True)
    parents, depths = _nesting(ordered)
    inside: dict[int, list[Points]] = {}
    for ring, parent in zip(ordered, parents, strict=True):
        inside.setdefault(parent, []).append(ring)
    for index, ring in enumerate(ordered):
        depth = depths[index]
        if depth % 2 or (style != _NESTED and depth):
            continue
        yield ring, () if style > _OUTERMOST else tuple(inside.get(index, ()))


def run_points(vertices: Sequence[Vertex], sagitta: float, *, closed: bool) -> list[Point]:
    """Return the middle line of a polyline with its bulges flattened."""
    if not vertices:
        return []
    points: list[Point] = [(vertices[0].x, vertices[0].y)]
    for vertex, after in _segments(vertices, closed=closed):
        if vertex.bulge:
            points.extend(bulge_points(points[-1], (after.x, after.y), vertex.bulge, sagitta))
        else:
            points.append((after.x, after.y))
    return points


def outline(vertices: Sequence[Vertex], sagitta: float, *, closed: bool) -> WholeRegion | None:
    """Return the region that a polyline of varying width covers; None if it has no length."""
    stations = _stations(vertices, sagitta, closed=closed)
    if len(stations) < 2:
        return None
    left, right = _sides(stations, closed=closed)
    if not closed:
        return without_repeats([*left, *reversed(right)], closed=True), ()
    rings = [without_repeats(side, closed=True) for side in (left, right)]
    outer, hole = sorted(rings, key=ring_size, reverse=True)
    return outer, ((hole,) if len(hole) > 2 else ())


def _segments(vertices: Sequence[Vertex], *, closed: bool) -> Iterator[tuple[Vertex, Vertex]]:
    yield from pairwise(vertices)
    if closed and len(vertices) > 1:
        yield vertices[-1], vertices[0]


def _stations(vertices: Sequence[Vertex], sagitta: float, *, closed: bool) -> list[_Station]:
    stations: list[_Station] = []
    for vertex, after in _segments(vertices, closed=closed):
        start, end = (vertex.x, vertex.y), (after.x, after.y)
        if start == end:
            continue
        run = bulge_points(start, end, vertex.bulge, sagitta)
        halves = _halves(vertex, len(run))
        before = stations.pop().before if stations else halves[0]
        stations.append(_Station(start, before, halves[0]))
        stations.extend(_Station(at, half, half) for at, half in zip(run, halves[1:], strict=True))
    if closed and len(stations) > 2:
        stations[0] = _Station(stations[0].at, stations.pop().before, stations[0].after)
    return stations


def _halves(vertex: Vertex, count: int) -> list[float]:
    first, last = vertex.start_width / 2, vertex.end_width / 2
    return [first + (last - first) * index / count for index in range(count + 1)]


def _sides(stations: Sequence[_Station], *, closed: bool) -> tuple[list[Point], list[Point]]:
    left: list[Point] = []
    right: list[Point] = []
    last = len(stations) - 1
    for index, station in enumerate(stations):
        back = stations[index - 1].at if index or closed else station.at
        ahead = (
            stations[index + 1 if index < last else 0].at if index < last or closed else station.at
        )
        nx, ny = _mitre(back, station.at, ahead)
        x, y = station.at
        for half in dict.fromkeys((station.before, station.after)):
            left.append((x + nx * half, y + ny * half))
            right.append((x - nx * half, y - ny * half))
    return left, right


def _mitre(back: Point, at: Point, ahead: Point) -> Point:
    """Return the sideways vector at a vertex: of unit length over each neighbouring segment."""
    one, two = _normal(back, at), _normal(at, ahead)
    one, two = one or two or (0.0, 0.0), two or one or (0.0, 0.0)
    x, y = (one[0] + two[0]) / 2, (one[1] + two[1]) / 2
    square = max(x * x + y * y, _SHARPEST_MITRE)
    return x / square, y / square


def _normal(start: Point, end: Point) -> Point | None:
    length = math.dist(start, end)
    return ((start[1] - end[1]) / length, (end[0] - start[0]) / length) if length else None


def ring_size(ring: Points) -> float:
    """Return the area of a ring; 0 if it is nothing but a line there and back."""
    if len(ring) < 3:
        return 0.0
    # Counted from the first point: far from the origin the products would swallow small areas.
    left, low = ring[0]
    near = [(x - left, y - low) for x, y in ring]
    area = abs(sum(x * v - u * y for (x, y), (u, v) in pairwise(near))) / 2
    longest = max(x * x + y * y for x, y in near)
    return 0.0 if area <= _FLATTEST * longest else area


def _nesting(ordered: Sequence[Points]) -> tuple[list[int], list[int]]:
    """Return for rings from large to small the smallest one around each (-1: none), and how deep."""
    polygons = [Vec2.list(ring) for ring in ordered]
    boxes = [_box(ring) for ring in ordered]
    parents: list[int] = []
    depths: list[int] = []
    for index in range(len(ordered)):
        around = (
            other
            for other in range(index - 1, -1, -1)
            if _box_holds(boxes[other], boxes[index])
            and _lies_in(polygons[index], polygons[other])
        )
        parent = next(around, -1)
        parents.append(parent)
        depths.append(depths[parent] + 1 if parent >= 0 else 0)
    return parents, depths


def _lies_in(inner: Sequence[Vec2], outer: list[Vec2]) -> bool:
    for point in inner:
        side = is_point_in_polygon_2d(point, outer)
        if side:
            return bool(side > 0)
    middles = (one.lerp(two) for one, two in pairwise(inner))
    return all(is_point_in_polygon_2d(point, outer) >= 0 for point in middles)


def _box(ring: Points) -> tuple[float, float, float, float]:
    xs, ys = [x for x, _ in ring], [y for _, y in ring]
    return min(xs), min(ys), max(xs), max(ys)


def _box_holds(
    outer: tuple[float, float, float, float], inner: tuple[float, float, float, float]
) -> bool:
    return (
        outer[0] <= inner[0]
        and outer[1] <= inner[1]
        and outer[2] >= inner[2]
        and outer[3] >= inner[3]
    )
