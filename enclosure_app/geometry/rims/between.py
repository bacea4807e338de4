"""Whether a solid stands between two points."""

from collections.abc import Sequence

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry.base import BaseGeometry

from enclosure_app.geometry.rims.rims import Floats

Geometries = NDArray[np.object_]
THIN = 1.0  # mm inside a solid that count as drafting slop


def not_parted(chords: Floats, solids: Sequence[BaseGeometry]) -> NDArray[np.bool_]:
    """Return which chords (k, 2, 2) run through no filled solid for more than `THIN` mm.

    A chord whose both ends lie inside a solid (sheets cast into concrete) is not parted by it.
    """
    clear = np.ones(len(chords), dtype=bool)
    if not solids:
        return clear
    filled = np.asarray(solids, dtype=object)
    lines = np.asarray(shapely.linestrings(chords), dtype=object)
    chord, solid = shapely.STRtree(filled).query(lines, predicate="intersects")
    inside = shapely.length(shapely.intersection(lines[chord], filled[solid]))
    parted = (inside > THIN) & ~_buried(lines[chord], filled[solid])
    clear[chord[parted]] = False
    return clear


def _buried(lines: Geometries, solids: Geometries) -> NDArray[np.bool_]:
    """Return which lines have both ends deep inside their solid."""
    edges = shapely.boundary(solids)
    deep = np.ones(len(lines), dtype=bool)
    for which in (0, -1):
        ends = shapely.get_point(lines, which)
        deep &= shapely.contains_properly(solids, ends) & (
            shapely.distance(ends, edges) > THIN / 2
        )
    return deep
