"""Cuts runs off at the edges of an upright box, and finds how finely a curve is to be divided."""

from collections.abc import Sequence
from math import ceil, hypot, sqrt

import shapely

Point = tuple[float, float]
Run = tuple[Point, ...]
Box = tuple[float, float, float, float]
"""Left, bottom, right, top."""

_MOST = 256  # stretches of one curve


def boxed(run: Run, box: Box) -> tuple[Run, ...]:
    """Return the stretches of a run that lie in a box."""
    left, bottom, right, top = box
    if all(left <= x <= right and bottom <= y <= top for x, y in run):
        return (run,)
    if left >= right or bottom >= top or len(run) < 2:
        return ()
    inside = shapely.clip_by_rect(shapely.LineString(run), *box)
    merged = shapely.line_merge(inside) if inside.geom_type == "MultiLineString" else inside
    parts = (part for part in shapely.get_parts(merged) if part.geom_type == "LineString")
    return tuple(tuple((float(x), float(y)) for x, y in part.coords) for part in parts)


def common_box(a: Box, b: Box) -> Box:
    """Return what two boxes have in common; the left of none is right of its right."""
    return (max(a[0], b[0]), max(a[1], b[1]), min(a[2], b[2]), min(a[3], b[3]))


def box_of(points: Sequence[Point]) -> Box:
    """Return the box around points."""
    xs, ys = zip(*points, strict=True)
    return (min(xs), min(ys), max(xs), max(ys))


def bezier(a: Point, b: Point, c: Point, d: Point, sagitta: float) -> Run:
    """Return points along a cubic curve after its start `a`, never further off it than `sagitta`.

    The number of stretches follows from the second differences of the control points (a chord
    over 1/n of a cubic is off by no more than 6/8 of the larger one, over n squared).
    """
    bend = max(_second(a, b, c), _second(b, c, d))
    count = min(max(ceil(sqrt(0.75 * bend / sagitta)), 1), _MOST)
    return (*(_on(a, b, c, d, step / count) for step in range(1, count)), d)


def _second(a: Point, b: Point, c: Point) -> float:
    return hypot(a[0] - 2 * b[0] + c[0], a[1] - 2 * b[1] + c[1])


def _on(a: Point, b: Point, c: Point, d: Point, t: float) -> Point:
    u = 1.0 - t
    p, q, r, s = u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t
    return (
        p * a[0] + q * b[0] + r * c[0] + s * d[0],
        p * a[1] + q * b[1] + r * c[1] + s * d[1],
    )
