"""The widest way between two sides that crosses no obstacle.

A way runs from triangle to triangle. The narrowest passages between obstacles are edges of the
triangulation, so its width is that of the shortest edge that it crosses, and the widest way is
found by opening edges from the longest down until the sides are joined.
"""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt
import shapely
from shapely.geometry.base import BaseGeometry

from enclosure_app.geometry.cavities import CrossingError
from enclosure_app.geometry.floods import gates, regions, shortest, widest_joint
from enclosure_app.geometry.linework import GRID, Linework, noded
from enclosure_app.geometry.passages import feet
from enclosure_app.geometry.triangles import Mesh, triangulate

Point = tuple[float, float]
Floats = npt.NDArray[np.float64]
Ints = npt.NDArray[np.int64]

COARSE = 1e-4  # mm; the grid that untangles linework which crosses itself between its points


@dataclass(frozen=True, slots=True)
class Way:
    """The widest way from an outside mark to an inside mark.

    `width` is mm, 0 where there is no way and so no `path`; `narrowest` holds the two ends of its
    narrowest passage.
    """

    width: float
    path: tuple[Point, ...] = ()
    narrowest: tuple[Point, Point] | None = None


class MarkError(ValueError):
    """The mark at `place` lies on an obstacle or beyond the frame."""

    def __init__(self, place: Point) -> None:
        super().__init__(f"The mark at {place} is not in the open.")
        self.place = place


@dataclass(frozen=True, slots=True)
class _Task:
    """A mesh and the triangles that the marks lie in, with the marks in local coordinates."""

    mesh: Mesh
    outside: Floats
    inside: Floats
    starts: Ints
    goals: Ints

    def bottleneck(self, touch: float) -> float:
        """Return the width of the widest way."""
        return widest_joint(self.mesh, self.starts, self.goals, touch)


def widest_way(
    frame: Sequence[Point],
    solids: Sequence[BaseGeometry],
    bridges: Sequence[tuple[Point, Point]],
    marks: tuple[Sequence[Point], Sequence[Point]],
    touch: float,
) -> Way:
    """Return the way from an outside to an inside mark whose narrowest passage is widest.

    Args:
        frame: a simple ring (mm) without a repeated first point; all beyond it is an obstacle.
        solids: lines of no thickness and areas, which cannot be crossed.
        bridges: chords between solids which cannot be crossed either, but which are nothing that
            distances are measured to.
        marks: the outside marks and the inside marks, each in the open.
        touch: passages this wide (mm) or narrower are closed.

    Raises:
        ValueError: a side has no mark.
        MarkError: a mark lies on an obstacle or beyond the frame.
    """
    if not (marks[0] and marks[1]):
        raise ValueError("A way needs a mark on each side.")
    _check_open(frame, solids, [*marks[0], *marks[1]])
    origin = np.asarray(frame[0], dtype=float)
    local = [np.asarray(side, dtype=float) - origin for side in marks]
    mesh = _mesh_of(frame, solids, bridges)
    task = _task(mesh, local[0], local[1])
    width = task.bottleneck(touch)
    if width > 0:
        label = regions(mesh, gates(mesh, touch))
        reached = np.flatnonzero(np.isin(label, label[task.starts]))
        edges, places = feet(mesh, reached, width)
        if len(edges):
            task = _task(triangulate(_with_feet(mesh, edges, places)), local[0], local[1])
            width = task.bottleneck(touch)
    return _way(task, width, origin) if width > 0 else Way(0.0)


def _check_open(
    frame: Sequence[Point], solids: Sequence[BaseGeometry], marks: Sequence[Point]
) -> None:
    ground, obstacles = shapely.Polygon(frame), np.asarray(solids, dtype=object)
    for place in marks:
        mark = shapely.Point(place)
        if not shapely.contains_properly(ground, mark):
            raise MarkError(place)
        if shapely.dwithin(obstacles, mark, GRID).any():
            raise MarkError(place)


def _mesh_of(
    frame: Sequence[Point],
    solids: Sequence[BaseGeometry],
    bridges: Sequence[tuple[Point, Point]],
) -> Mesh:
    try:
        return triangulate(noded(frame, solids, bridges))
    except CrossingError:
        return triangulate(noded(frame, solids, bridges, COARSE))


def _task(mesh: Mesh, outside: Floats, inside: Floats) -> _Task:
    starts, goals = (
        np.array([mesh.triangle_at(mark) for mark in side]) for side in (outside, inside)
    )
    return _Task(mesh, outside, inside, starts, goals)


def _with_feet(mesh: Mesh, edges: Ints, places: Floats) -> Linework:
    """Return the linework of `mesh` with its walls split at the feet on them."""
    low = np.minimum(mesh.starts[edges], mesh.ends[edges])
    high = np.maximum(mesh.starts[edges], mesh.ends[edges])
    away = np.hypot(*(places - mesh.points[low]).T)
    order = np.lexsort([away, high, low])
    low, high, away, places = low[order], high[order], away[order], places[order]
    fresh = np.ones(len(low), dtype=bool)
    fresh[1:] = (low[1:] != low[:-1]) | (high[1:] != high[:-1]) | (np.diff(away) > GRID)
    low, high, places = low[fresh], high[fresh], places[fresh]
    number = len(mesh.points) - 4  # the last four are the triangulation's own
    foot = number + np.arange(len(low))
    new_edge = np.ones(len(low) + 1, dtype=bool)
    new_edge[1:-1] = (low[1:] != low[:-1]) | (high[1:] != high[:-1])
    before = np.where(new_edge[:-1], low, foot - 1)
    after = np.column_stack([foot, high])[new_edge[1:]]
    whole = mesh.wall & (mesh.starts < mesh.ends)
    split = np.isin(mesh.starts * number + mesh.ends, low * number + high)
    unsplit = np.flatnonzero(whole & ~split)
    walls = [np.column_stack([mesh.starts[unsplit], mesh.ends[unsplit]])]
    walls += [np.column_stack([before, foot]), after]
    across = np.flatnonzero(mesh.bridge & (mesh.starts < mesh.ends))
    bridges = np.column_stack([mesh.starts[across], mesh.ends[across]])
    points = np.concatenate([mesh.points[:number], places])
    return Linework(points, np.concatenate(walls), bridges)


def _way(task: _Task, width: float, origin: Floats) -> Way:
    mesh = task.mesh
    crossed = shortest(mesh, task.starts, task.goals, width)
    ends = mesh.points[np.column_stack([mesh.starts[crossed], mesh.ends[crossed]])]
    start = task.outside[np.flatnonzero(task.starts == _first(task.starts, crossed))[0]]
    last = int(mesh.twin[crossed[-1]]) // 3 if crossed else int(task.starts[0])
    goal = task.inside[np.flatnonzero(task.goals == last)[0]]
    path = np.vstack([start, ends.mean(axis=1), goal]) + origin
    narrowest = None
    if crossed:
        chord = ends[np.argmin(mesh.length[crossed])] + origin
        narrowest = (_point(chord[0]), _point(chord[1]))
    return Way(width, tuple(_point(place) for place in path), narrowest)


def _first(starts: Ints, crossed: list[int]) -> int:
    return crossed[0] // 3 if crossed else int(starts[0])


def _point(place: Floats) -> Point:
    return float(place[0]), float(place[1])
