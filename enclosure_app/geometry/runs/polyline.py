"""Lengths along one polyline: the point at a position, the stretch between two, the slope."""

from collections.abc import Sequence

import numpy as np
import shapely

from enclosure_app.geometry.rims.nearest import nearest_segments
from enclosure_app.geometry.rims.rims import Floats

Point = tuple[float, float]


def as_array(points: Sequence[Point]) -> Floats:
    """Return points as an array (m, 2)."""
    return np.asarray(points, dtype=np.float64).reshape(-1, 2)


def positions(points: Floats) -> Floats:
    """Return how far along the polyline (m, 2) each of its points lies, mm."""
    steps = np.hypot(*(points[1:] - points[:-1]).T)
    return np.concatenate([[0.0], np.cumsum(steps)])


def point_at(points: Floats, at: Floats | float) -> Floats:
    """Return the points (k, 2) at positions (k,) mm along the polyline, held to its ends."""
    along = positions(points)
    wanted = np.atleast_1d(at)
    return np.column_stack([np.interp(wanted, along, points[:, axis]) for axis in (0, 1)])


def stretch(points: Floats, start: float, end: float) -> Floats:
    """Return the polyline from position `start` to `end` mm; backwards if `end` comes first."""
    if end < start:
        return stretch(points, end, start)[::-1]
    along = positions(points)
    inner = (along > start + 1e-9) & (along < end - 1e-9)
    ends = point_at(points, np.array([start, end]))
    return np.vstack([ends[:1], points[inner], ends[1:]])


def around(points: Floats, start: float, end: float) -> Floats:
    """Return the other way round a closed polyline (first point repeated): over its seam."""
    total = float(positions(points)[-1])
    if end < start:
        return around(points, end, start)[::-1]
    back = stretch(points, start, 0.0)
    return np.vstack([back, stretch(points, total, end)])


def nearest_positions(points: Floats, places: Floats) -> Floats:
    """Return how far along the polyline (m, 2) the nearest points to places (k, 2) lie, mm."""
    segment, near, _ = nearest_segments(points[:-1], points[1:], places)
    return np.asarray(positions(points)[segment] + np.hypot(*(near - points[segment]).T))


def within(chord: tuple[Point, Point], lines: Sequence[Sequence[Point]], reach: float) -> bool:
    """Return whether any of the polylines comes within `reach` mm of a straight chord."""
    several = shapely.MultiLineString(
        [line if len(line) > 1 else [*line, *line] for line in lines]
    )
    return bool(shapely.dwithin(shapely.LineString(chord), several, reach))


def as_points(points: Floats) -> tuple[Point, ...]:
    """Return an array (m, 2) as plain points."""
    return tuple((float(x), float(y)) for x, y in points)
