"""Ties bridges to the walls that they end on."""

import numpy as np
import numpy.typing as npt
import shapely

from enclosure_app.geometry.linework.linework import Linework, split

Floats = npt.NDArray[np.float64]
Ints = npt.NDArray[np.int64]


def tied(lines: Linework, bridges: Floats) -> tuple[Linework, Ints]:
    """Return `lines` with a point wherever a bridge ends, and the bridges as rows of two points.

    `bridges` is (b, 2, 2) mm. An end that is not quite on a wall is moved to the nearest.
    """
    ends = bridges.reshape(-1, 2)
    if not len(ends):
        return lines, np.empty((0, 2), dtype=np.int64)
    walls = np.asarray(shapely.linestrings(lines.points[lines.walls]), dtype=object)
    places = np.asarray(shapely.points(ends), dtype=object)
    rows = shapely.STRtree(walls).query_nearest(places, all_matches=False)[1]
    start, end = lines.points[lines.walls[rows, 0]], lines.points[lines.walls[rows, 1]]
    along = end - start
    part = ((ends - start) * along).sum(axis=1) / (along**2).sum(axis=1)
    feet = start + np.clip(part, 0, 1)[:, None] * along
    lines, at = split(lines, rows, feet)
    return lines, at.reshape(-1, 2)
