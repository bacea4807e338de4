"""Plane arithmetic on polylines, for composing marks; points are pairs of mm."""

from bisect import bisect_right
from dataclasses import dataclass
from itertools import accumulate, pairwise, repeat
from math import dist, hypot

from enclosure_app.model.place import Point, Points

_MITRE = 2.0  # a corner's offset never reaches further than this many times its distance
_SAME = 1e-9


def moved(point: Point, direction: Point, by: float) -> Point:
    """Return `point` moved along the unit vector `direction`."""
    return point[0] + direction[0] * by, point[1] + direction[1] * by


def unit(start: Point, end: Point) -> Point:
    """Return the unit vector from `start` to `end`; along x where they are the same."""
    dx, dy = end[0] - start[0], end[1] - start[1]
    size = hypot(dx, dy)
    return (dx / size, dy / size) if size > _SAME else (1.0, 0.0)


def left_of(direction: Point) -> Point:
    """Return the direction turned anticlockwise by a quarter."""
    return -direction[1], direction[0]


def dot(a: Point, b: Point) -> float:
    """Return the scalar product."""
    return a[0] * b[0] + a[1] * b[1]


def middle(a: Point, b: Point) -> Point:
    """Return the point half-way."""
    return (a[0] + b[0]) / 2, (a[1] + b[1]) / 2


def mean(points: Points) -> Point:
    """Return the mean of one or more points."""
    return sum(x for x, _ in points) / len(points), sum(y for _, y in points) / len(points)


def distinct(points: Points) -> Points:
    """Return the points without repeats in a row."""
    kept: list[Point] = []
    for point in points:
        if not kept or dist(kept[-1], point) > _SAME:
            kept.append(point)
    return tuple(kept)


def length(points: Points) -> float:
    """Return the length along the polyline."""
    return sum(dist(a, b) for a, b in pairwise(points))


def walk_to(points: Points, distance: float) -> tuple[Point, Point]:
    """Return the place after `distance` along the polyline and the direction there.

    Beyond an end the polyline goes on straight.
    """
    points = distinct(points)
    if len(points) < 2:
        return points[0], (1.0, 0.0)
    stations = list(accumulate((dist(a, b) for a, b in pairwise(points)), initial=0.0))
    i = min(max(bisect_right(stations, distance) - 1, 0), len(points) - 2)
    direction = unit(points[i], points[i + 1])
    return moved(points[i], direction, distance - stations[i]), direction


def stretch(points: Points, start: float, end: float) -> Points:
    """Return the part of the polyline from `start` to `end`, both measured along it."""
    stations = list(accumulate((dist(a, b) for a, b in pairwise(points)), initial=0.0))
    within = [p for p, s in zip(points, stations, strict=True) if start < s < end]
    return distinct((walk_to(points, start)[0], *within, walk_to(points, end)[0]))


def offset(points: Points, by: float) -> Points:
    """Return the polyline moved to its left by `by` mm, with mitred corners."""
    points = distinct(points)
    if len(points) < 2 or not by:
        return points
    normals = [left_of(unit(a, b)) for a, b in pairwise(points)]
    result = [moved(points[0], normals[0], by)]
    for point, before, after in zip(points[1:-1], normals, normals[1:], strict=False):
        along = (before[0] + after[0], before[1] + after[1])
        size = max(dot(along, along) / 2, 1 / _MITRE)
        result.append(moved(point, along, by / size))
    return (*result, moved(points[-1], normals[-1], by))


@dataclass(frozen=True, slots=True)
class Foot:
    """The place on a polyline nearest to a point: how far along, how far off, on its left or not."""

    at: Point
    along: float
    off: float
    direction: Point
    left: bool


def foot(points: Points, place: Point) -> Foot:
    """Return the place on the polyline (two points or more) that is nearest to `place`.

    Raises:
        ValueError: it has fewer than two points.
    """
    if len(points) < 2:
        raise ValueError("A polyline needs two points.")
    away = list(map(dist, points, repeat(place)))
    sizes = list(map(dist, points, points[1:]))
    bound = min(away) + _SAME
    best: tuple[float, int, float] | None = None
    for i, (far, size) in enumerate(zip(away, sizes, strict=False)):
        if far - size > bound:
            continue  # nothing of it can be nearest
        a, direction = points[i], unit(points[i], points[i + 1])
        s = min(max(dot((place[0] - a[0], place[1] - a[1]), direction), 0.0), size)
        off = dist(moved(a, direction, s), place)
        if best is None or off < best[0] - _SAME:
            best = off, i, s
    assert best is not None  # noqa: S101  the segments at the nearest point are asked
    off, i, s = best
    a, direction = points[i], unit(points[i], points[i + 1])
    left = dot((place[0] - a[0], place[1] - a[1]), left_of(direction)) > 0
    return Foot(moved(a, direction, s), sum(sizes[:i]) + s, off, direction, left)


def simplified(points: Points, slack: float) -> Points:
    """Return the polyline without points that lie within `slack` of it (Douglas and Peucker)."""
    if len(points) < 3:
        return points
    chord = (points[0], points[-1])
    offs = [foot(chord, p).off for p in points[1:-1]]
    worst = max(range(len(offs)), key=offs.__getitem__)
    if offs[worst] <= slack:
        return chord
    at = worst + 1
    return (*simplified(points[: at + 1], slack)[:-1], *simplified(points[at:], slack))
