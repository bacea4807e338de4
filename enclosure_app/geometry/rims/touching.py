"""Which of many solids come near one another."""

from collections.abc import Sequence

import numpy as np
import shapely
from numpy.typing import NDArray

from enclosure_app.geometry.rims.solids import Solid

Point = tuple[float, float]


def touching_pairs(
    few: Sequence[Solid], many: Sequence[Solid], reach: float
) -> list[tuple[int, int, Point]]:
    """Return (index in few, index in many, a place between the two) for pairs within `reach` mm."""
    if not few or not many:
        return []
    tree = shapely.STRtree(np.asarray(many, dtype=object))
    first, second = tree.query(np.asarray(few, dtype=object), predicate="dwithin", distance=reach)
    pairs = sorted(zip(first.tolist(), second.tolist(), strict=True))
    return [(a, b, _place(few[a], many[b])) for a, b in pairs]


def near_lines(
    points: Sequence[Point], lines: Sequence[Sequence[Point]], reach: float
) -> NDArray[np.bool_]:
    """Return which points lie within `reach` mm of any of the polylines."""
    near = np.zeros(len(points), dtype=bool)
    if points and lines:
        index = np.repeat(np.arange(len(lines)), [len(line) for line in lines])
        places = np.array([point for line in lines for point in line])
        tree = shapely.STRtree(np.asarray(shapely.linestrings(places, indices=index)))
        found, _ = tree.query(
            np.asarray(shapely.points(points)), predicate="dwithin", distance=reach
        )
        near[found] = True
    return near


def _place(a: Solid, b: Solid) -> Point:
    line = shapely.shortest_line(a, b)
    middle = shapely.line_interpolate_point(line, 0.5, normalized=True)
    return (float(middle.x), float(middle.y))
