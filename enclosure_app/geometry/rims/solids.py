"""Turns points into the shapely shapes that distances are taken between."""

from collections.abc import Sequence

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry.base import BaseGeometry

Point = tuple[float, float]
Solid = BaseGeometry


def line_solid(
    points: Sequence[Point], width: float = 0.0, *, closed: bool = False
) -> BaseGeometry:
    """Return a polyline as drawn: bare, or as the band of its drawn width (mm).

    Raises:
        ValueError: fewer than two different points.
    """
    ring = [*points, points[0]] if closed else list(points)
    bare = shapely.LineString(ring)
    if bare.length == 0:
        raise ValueError("A line needs two different points.")
    if width <= 0:
        return bare
    return shapely.buffer(bare, width / 2, cap_style="flat", join_style="mitre", mitre_limit=3)


def area_solid(outer: Sequence[Point], holes: Sequence[Sequence[Point]] = ()) -> BaseGeometry:
    """Return a filled ring with its holes; rings that cross themselves are mended."""
    solid = shapely.Polygon(outer, [hole for hole in holes if len(hole) > 2])
    return solid if solid.is_valid else shapely.make_valid(solid)


def bare_lines(runs: Sequence[Sequence[Point]]) -> list[BaseGeometry]:
    """Return many polylines at once.

    Raises:
        ValueError: a run has fewer than two different points.
    """
    if not runs:
        return []
    points, index = _stacked(runs)
    lines = np.asarray(shapely.linestrings(points, indices=index), dtype=object)
    if any(shapely.length(lines) == 0):
        raise ValueError("A line needs two different points.")
    return list(lines)


def plain_areas(rings: Sequence[Sequence[Point]]) -> list[BaseGeometry]:
    """Return many filled rings without holes at once; rings that cross themselves are mended."""
    if not rings:
        return []
    points, index = _stacked(rings)
    solids = np.asarray(shapely.polygons(shapely.linearrings(points, indices=index)), dtype=object)
    for number in np.flatnonzero(~shapely.is_valid(solids)):
        solids[number] = shapely.make_valid(solids[number])
    return list(solids)


def _stacked(runs: Sequence[Sequence[Point]]) -> tuple[NDArray[np.float64], NDArray[np.intp]]:
    points = np.array([point for run in runs for point in run], dtype=np.float64)
    return points, np.repeat(np.arange(len(runs)), [len(run) for run in runs])


def extents_of(solids: Sequence[BaseGeometry]) -> NDArray[np.float64]:
    """Return the extents (n, 2, 2) of solids: their lower left and their upper right corners."""
    if not solids:
        return np.zeros((0, 2, 2))
    bounds = shapely.bounds(np.asarray(solids, dtype=object)).reshape(-1, 2, 2)
    return np.asarray(bounds, dtype=np.float64)
