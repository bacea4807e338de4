"""Breaks outlines into straight segments that meet only at their ends."""

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

GRID = 1e-6  # mm; points nearer than this are one point


@dataclass(frozen=True, slots=True)
class Linework:
    """Noded segments: `points` is (n, 2) mm, `walls` and `bridges` are (m, 2) rows of indices.

    Walls are outlines of obstacles and of the frame. A bridge may not be crossed, but it is no
    obstacle that a distance is measured to.
    """

    points: Floats
    walls: Ints
    bridges: Ints


def noded(
    frame: Sequence[Point],
    solids: Sequence[BaseGeometry],
    bridges: Sequence[tuple[Point, Point]],
    grid: float = 0.0,
) -> Linework:
    """Return the linework inside `frame`, in local coordinates (the frame's first point is 0, 0).

    With `grid` (mm) above 0 every point is moved to a grid while noding: slow, and certain.
    """
    origin = np.asarray(frame[0])
    rim = shapely.LinearRing(_near(frame, origin))
    lines = _local_lines(solids, origin)
    chords = [shapely.LineString(_near(chord, origin)) for chord in bridges]
    chords = [chord for chord in chords if chord.length > GRID]
    union = shapely.union_all([*lines, rim, *chords], grid_size=grid or None)
    points, segments = _segments(union)
    segments = segments[_inside(points, segments, rim)]
    bridged = _on_bridges(points, segments, chords, [*lines, rim])
    return Linework(points, segments[~bridged], segments[bridged])


def _near(points: Sequence[Point], origin: Floats) -> Floats:
    return np.round(np.asarray(points, dtype=float) - origin, 6)


def _local_lines(solids: Sequence[BaseGeometry], origin: Floats) -> list[Any]:
    """Return every outline once, near the origin; what the rounding shrinks to nothing is gone."""
    if not solids:
        return []
    parts = shapely.get_parts(np.asarray(solids, dtype=object))
    areas = shapely.get_type_id(parts) == shapely.GeometryType.POLYGON
    parts[areas] = shapely.boundary(parts[areas])
    coordinates = np.round(shapely.get_coordinates(parts) - origin, 6)
    moved = shapely.set_coordinates(parts, coordinates)
    return list(moved[shapely.length(moved) > 0])


def _segments(union: BaseGeometry) -> tuple[Floats, Ints]:
    """Return the different points of a noded union and its segments as rows of two indices."""
    coordinates, line = shapely.get_coordinates(shapely.get_parts(union), return_index=True)
    flat = coordinates[:, 0] + 1j * coordinates[:, 1]
    unique, index = np.unique(flat, return_inverse=True)
    index = index.astype(np.int64).ravel()
    going_on = line[1:] == line[:-1]
    ends = np.column_stack([index[:-1][going_on], index[1:][going_on]])
    ends.sort(axis=1)
    ends = ends[ends[:, 0] != ends[:, 1]]
    number = len(unique)
    keys = np.unique(ends[:, 0] * number + ends[:, 1])
    points = np.column_stack([unique.real, unique.imag])
    return points, np.column_stack([keys // number, keys % number])


def _middles(points: Floats, segments: Ints) -> Floats:
    middles: Floats = points[segments].mean(axis=1)
    return middles


def _inside(points: Floats, segments: Ints, rim: shapely.LinearRing) -> npt.NDArray[np.bool_]:
    """Tell which segments lie inside the frame or on it; a little beyond does no harm."""
    around = shapely.buffer(shapely.Polygon(rim), 0.5)
    shapely.prepare(around)
    middles = _middles(points, segments)
    inside: npt.NDArray[np.bool_] = shapely.contains_xy(around, middles[:, 0], middles[:, 1])
    return inside


def _on_bridges(
    points: Floats, segments: Ints, chords: Sequence[BaseGeometry], walls: Sequence[BaseGeometry]
) -> npt.NDArray[np.bool_]:
    """Tell which segments are parts of a bridge and of no wall."""
    found = np.zeros(len(segments), dtype=bool)
    if not chords:
        return found
    middles = np.asarray(shapely.points(_middles(points, segments)), dtype=object)
    rows, _ = shapely.STRtree(chords).query(middles, predicate="dwithin", distance=GRID)
    rows = np.unique(rows)
    on_walls, _ = shapely.STRtree(walls).query(middles[rows], predicate="dwithin", distance=GRID)
    found[np.delete(rows, np.unique(on_walls))] = True
    return found
