"""Small plane geometry for drawing details: millimetres, y up, no library."""

import itertools
from math import cos, hypot, radians, sin

Point = tuple[float, float]
Points = list[Point]

INCH = 25.4


def box(left: float, bottom: float, right: float, top: float) -> Points:
    """Return the corners of an upright rectangle, anticlockwise."""
    return [(left, bottom), (right, bottom), (right, top), (left, top)]


def offset(points: Points, by: float) -> Points:
    """Return a run moved to its left by `by` (to its right where negative), mitred at bends."""
    normals = [_left(a, b) for a, b in itertools.pairwise(points)]
    before = [normals[0], *normals]
    after = [*normals, normals[-1]]
    return [_moved(p, n, m, by) for p, n, m in zip(points, before, after, strict=True)]


def band(points: Points, near: float, far: float) -> Points:
    """Return the closed outline between two offsets of one run."""
    return [*offset(points, near), *reversed(offset(points, far))]


def on_line(start: Point, rise: float, x: float) -> Point:
    """Return the place at `x` on the line through `start` that rises `rise` in one."""
    return (x, start[1] + rise * (x - start[0]))


def turned(points: Points, degrees: float) -> Points:
    """Return points turned anticlockwise about the origin."""
    c, s = cos(radians(degrees)), sin(radians(degrees))
    return [(x * c - y * s, x * s + y * c) for x, y in points]


def mirrored(points: Points, axis: float) -> Points:
    """Return points mirrored in the vertical line at x = `axis`."""
    return [(2 * axis - x, y) for x, y in points]


def _left(a: Point, b: Point) -> Point:
    length = hypot(b[0] - a[0], b[1] - a[1])
    return (-(b[1] - a[1]) / length, (b[0] - a[0]) / length)


def _moved(p: Point, n: Point, m: Point, by: float) -> Point:
    """Move a bend along the mitre of its two normals."""
    reach = by / (1 + n[0] * m[0] + n[1] * m[1])
    return (p[0] + reach * (n[0] + m[0]), p[1] + reach * (n[1] + m[1]))
