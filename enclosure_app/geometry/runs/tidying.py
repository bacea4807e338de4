"""When two places are one, and a run without points on top of each other."""

from collections.abc import Sequence
from math import dist

from enclosure_app.geometry.runs.polyline import Point

Run = tuple[Point, ...]

SAME = 1e-6
"""Places closer than this (mm) are one place."""


def tidy(points: Sequence[Point]) -> Run:
    """Return points without those that lie on the one before."""
    kept = [points[0]]
    for point in points[1:]:
        if dist(kept[-1], point) > SAME:
            kept.append(point)
    return tuple(kept)
