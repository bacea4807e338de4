"""Whether two runs lie on each other, however many points each is drawn with, and whichever way."""

from collections.abc import Sequence
from math import dist

import numpy as np
from numpy.typing import NDArray

from enclosure_app.geometry.rims.nearest import nearest_segments

Point = tuple[float, float]
Points = Sequence[Point]


def lies_on(points: Points, other: Points, reach: float) -> bool:
    """Return whether every point of one polyline is within `reach` mm of another."""
    start, end = _segments(other)
    places = np.asarray(points, dtype=np.float64).reshape(-1, 2)
    _, near, _ = nearest_segments(start, end, places)
    return bool((np.hypot(*(near - places).T) <= reach).all())


def same_run(points: Points, other: Points, reach: float, *, closed: bool = False) -> bool:
    """Return whether two polylines, or with `closed` two rings, are one within `reach` mm.

    Points that only lie along the way, where a ring begins, and the direction do not matter.
    """
    if _point_by_point(points, other, reach):
        return True
    one, two = (_ring(points), _ring(other)) if closed else (points, other)
    if abs(length(one) - length(two)) > 2.0 * reach + 1e-3 * length(one):
        return False
    if not closed and not _same_ends(one, two, reach):
        return False
    return lies_on(one, two, reach) and lies_on(two, one, reach)


def length(points: Points) -> float:
    """Return how long a polyline is, mm."""
    return float(sum(map(dist, points[:-1], points[1:])))


def middle(points: Points) -> Point:
    """Return the middle of the box round points; points along the way do not change it."""
    xs, ys = zip(*points, strict=True)
    return ((min(xs) + max(xs)) / 2.0, (min(ys) + max(ys)) / 2.0)


def _point_by_point(one: Points, two: Points, reach: float) -> bool:
    """Whether two are drawn with the same points: what is so as a rule is soon seen."""
    return len(one) == len(two) and all(map(lambda a, b: dist(a, b) <= reach, one, two))


def _ring(points: Points) -> Points:
    return (*points, points[0])


def _same_ends(one: Points, two: Points, reach: float) -> bool:
    forth = max(dist(one[0], two[0]), dist(one[-1], two[-1]))
    back = max(dist(one[0], two[-1]), dist(one[-1], two[0]))
    return min(forth, back) <= 1.5 * reach


def _segments(points: Points) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    run = np.asarray(points, dtype=np.float64).reshape(-1, 2)
    if len(run) == 1:
        return run, run
    return run[:-1], run[1:]
