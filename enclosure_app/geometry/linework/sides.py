"""On which side of a run a place lies, seen from the run's first point to its last."""

from collections.abc import Sequence
from itertools import pairwise
from math import dist, hypot

Point = tuple[float, float]

_SAME = 1e-9  # mm


def side_of(points: Sequence[Point], place: Point) -> float:
    """Return on which side of an open run of two different points or more a place lies.

    The nearest place of the run decides; where that is a corner, both its stretches do, and an end
    counts as if the run went on straight.

    Returns:
        The sine of the angle at which the place is seen there: 1 square to the left, -1 square to
        the right, and the nearer to 0 the less it lies beside the run and the more beyond its end.
    """
    stretches = [(a, b) for a, b in pairwise(points) if a != b]
    feet = [_foot(place, a, b) for a, b in stretches]
    best = min(range(len(feet)), key=lambda i: dist(place, feet[i]))
    near = [i for i in (best - 1, best, best + 1) if 0 <= i < len(feet)]
    normals = [_left(*stretches[i]) for i in near if dist(feet[i], feet[best]) < _SAME]
    nx, ny = sum(n[0] for n in normals), sum(n[1] for n in normals)
    x, y = place[0] - feet[best][0], place[1] - feet[best][1]
    return (nx * x + ny * y) / max(hypot(nx, ny) * hypot(x, y), _SAME)


def _foot(place: Point, a: Point, b: Point) -> Point:
    dx, dy = b[0] - a[0], b[1] - a[1]
    share = ((place[0] - a[0]) * dx + (place[1] - a[1]) * dy) / (dx * dx + dy * dy)
    share = min(max(share, 0.0), 1.0)
    return a[0] + share * dx, a[1] + share * dy


def _left(a: Point, b: Point) -> Point:
    size = hypot(b[0] - a[0], b[1] - a[1])
    return -(b[1] - a[1]) / size, (b[0] - a[0]) / size
