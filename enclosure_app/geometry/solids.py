"""Turns points into the shapely shapes that distances are taken between."""

from collections.abc import Sequence

import shapely
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
