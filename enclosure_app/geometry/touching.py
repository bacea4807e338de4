"""Which of many solids come near one another."""

from collections.abc import Sequence

import numpy as np
import shapely

from enclosure_app.geometry.solids import Solid

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


def _place(a: Solid, b: Solid) -> Point:
    line = shapely.shortest_line(a, b)
    middle = shapely.line_interpolate_point(line, 0.5, normalized=True)
    return (float(middle.x), float(middle.y))
