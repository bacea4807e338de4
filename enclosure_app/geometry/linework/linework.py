"""Breaks outlines into straight walls that meet only at their ends."""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
import numpy.typing as npt
import shapely
from shapely.geometry.base import BaseGeometry

Point = tuple[float, float]
Floats = npt.NDArray[np.float64]
Ints = npt.NDArray[np.int64]
Flags = npt.NDArray[np.bool_]

_NOTHING = 1e-9  # mm: a crossing computed on the frame's own side may lie 1e-32 beside it
GRID = 1e-6  # mm; points nearer than this are one point
MANY = 1000  # walls
LONG = 10  # times the mean length of a wall


@dataclass(frozen=True, slots=True)
class Linework:
    """Noded walls: `points` is (n, 2) mm, `walls` is (m, 2) rows of their indices."""

    points: Floats
    walls: Ints


def noded(frame: Sequence[Point], solids: Sequence[BaseGeometry], grid: float = 0.0) -> Linework:
    """Return the outlines inside `frame`, in local coordinates (the frame's first point is 0, 0).

    With `grid` (mm) above 0 every point is moved to a grid while noding: slow, and certain.
    """
    origin = np.asarray(frame[0], dtype=float)
    rim = shapely.LinearRing(np.round(np.asarray(frame, dtype=float) - origin, 6))
    lines = _local_lines(solids, origin)
    points, walls = segments_of(shapely.union_all([*lines, rim], grid_size=grid or None))
    return Linework(points, walls[_inside(points[walls].mean(axis=1), rim)])


def segments_of(union: BaseGeometry) -> tuple[Floats, Ints]:
    """Return the different points of noded lines (n, 2) and their segments, rows of two indices."""
    coordinates, line = shapely.get_coordinates(shapely.get_parts(union), return_index=True)
    coordinates[np.abs(coordinates) < _NOTHING] = 0.0
    unique, index = np.unique(coordinates[:, 0] + 1j * coordinates[:, 1], return_inverse=True)
    index = index.astype(np.int64).ravel()
    going_on = line[1:] == line[:-1]
    ends = np.column_stack([index[:-1][going_on], index[1:][going_on]])
    ends.sort(axis=1)
    number = len(unique)
    keys = np.unique((ends[:, 0] * number + ends[:, 1])[ends[:, 0] != ends[:, 1]])
    points = np.column_stack([unique.real, unique.imag])
    return points, np.column_stack([keys // number, keys % number])


def split(lines: Linework, rows: Ints, places: Floats) -> tuple[Linework, Ints]:
    """Return `lines` with the walls in `rows` (k) split at `places` (k, 2) on them.

    Returns:
        The new linework, in which the points have kept their numbers, and the number of the point
        at each place.
    """
    low, high = lines.walls[rows].T
    away = np.hypot(*(places - lines.points[low]).T)
    rest = np.hypot(*(places - lines.points[high]).T)
    at = np.where(away <= GRID, low, np.where(rest <= GRID, high, -1))
    inner = np.flatnonzero(at < 0)
    inner = inner[np.lexsort([away[inner], rows[inner]])]
    row, along = rows[inner], away[inner]
    fresh = np.ones(len(inner), dtype=bool)
    fresh[1:] = (np.diff(row) != 0) | (np.diff(along) > GRID)
    at[inner] = len(lines.points) + np.cumsum(fresh) - 1
    added = inner[fresh]
    points = np.concatenate([lines.points, places[added]])
    pieces = _pieces(lines.walls[rows[added]], at[added])
    whole = np.delete(lines.walls, rows[added], axis=0)
    return Linework(points, np.concatenate([whole, pieces])), at


def evened(lines: Linework) -> Linework:
    """Return `lines` with points on walls that are very long among very many.

    Such a wall passes hundreds of others, and putting it whole into a triangulation takes long.
    At most a tenth more walls come of it.
    """
    if len(lines.walls) < MANY:
        return lines
    along = lines.points[lines.walls[:, 1]] - lines.points[lines.walls[:, 0]]
    length = np.hypot(*along.T)
    parts = np.maximum(np.ceil(length / (LONG * length.mean())), 1).astype(np.int64)
    rows = np.repeat(np.arange(len(parts)), parts - 1)
    number = np.arange(len(rows)) - np.repeat(np.cumsum(parts - 1) - (parts - 1), parts - 1) + 1
    share = number / parts[rows]
    places = lines.points[lines.walls[rows, 0]] + share[:, None] * along[rows]
    return split(lines, rows, places)[0]


def _pieces(walls: Ints, cuts: Ints) -> Ints:
    """Return what walls become when cut; the cuts of one wall follow each other along it."""
    change = np.ones(len(cuts) + 1, dtype=bool)
    change[1:-1] = (np.diff(walls, axis=0) != 0).any(axis=1)
    before = np.where(change[:-1], walls[:, 0], np.roll(cuts, 1))
    last = np.column_stack([cuts, walls[:, 1]])[change[1:]]
    return np.concatenate([np.column_stack([before, cuts]), last])


def _local_lines(solids: Sequence[BaseGeometry], origin: Floats) -> list[Any]:
    """Return every outline near the origin; what the rounding shrinks to nothing is gone."""
    if not solids:
        return []
    # Twice, because a mended outline may be a collection of collections.
    parts = shapely.get_parts(shapely.get_parts(np.asarray(solids, dtype=object)))
    areas = shapely.get_type_id(parts) == shapely.GeometryType.POLYGON
    parts[areas] = shapely.boundary(parts[areas])
    moved = shapely.set_coordinates(parts, np.round(shapely.get_coordinates(parts) - origin, 6))
    return list(moved[shapely.length(moved) > 0])


def _inside(places: Floats, rim: shapely.LinearRing) -> Flags:
    """Tell which places lie inside the frame or on it; a little beyond does no harm."""
    around = shapely.buffer(shapely.Polygon(rim), 0.5)
    shapely.prepare(around)
    inside: Flags = shapely.contains_xy(around, places[:, 0], places[:, 1])
    return inside
