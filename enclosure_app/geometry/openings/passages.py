"""Finds where a corner stands opposite the middle of a wall: passages that no edge measures.

The narrowest passages lie between two points or between a point and its foot on a wall, with
nothing inside the circle over them. A constrained Delaunay triangulation has the former as edges.
It gets the latter as edges too once the feet are points of it.
"""

from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from enclosure_app.geometry.linework.linework import split
from enclosure_app.geometry.openings.triangles import Mesh, triangulate
from enclosure_app.geometry.rims.closest import cross
from enclosure_app.progress import go_on

Floats = npt.NDArray[np.float64]
Ints = npt.NDArray[np.int64]
Flags = npt.NDArray[np.bool_]

END = 1e-6  # mm; a foot this near to a wall's end is that end


@dataclass(slots=True)
class _Search:
    """Corners looking out through half-edges.

    Row i is the point `eye` looking through `edge` (seen from its own triangle, so that the edge
    runs from right to left), between the directions `right` and `left`, no further than `bound`.
    """

    eye: Ints
    edge: Ints
    right: Floats
    left: Floats
    bound: Floats

    def __getitem__(self, rows: Flags) -> "_Search":
        return _Search(
            self.eye[rows], self.edge[rows], self.right[rows], self.left[rows], self.bound[rows]
        )


def feet(mesh: Mesh, reach: float) -> tuple[Ints, Floats]:
    """Return the feet of corners on walls in sight, nearer than `reach` mm.

    Returns:
        The half-edges (n) on which the feet lie, and the feet (n, 2).
    """
    search = _first(mesh, reach)
    edges, places = [np.empty(0, dtype=np.int64)], [np.empty((0, 2))]
    while len(search.eye):
        go_on()
        at_wall = mesh.wall[search.edge]
        found, foot = _feet_on(mesh, search[at_wall])
        edges.append(found)
        places.append(foot)
        search = _beyond(mesh, search[~at_wall & (mesh.twin[search.edge] >= 0)])
    return np.concatenate(edges), np.concatenate(places)


def with_feet(mesh: Mesh, edges: Ints, places: Floats) -> Mesh:
    """Return the mesh with points at `places` on its walls `edges`."""
    walls = mesh.walls
    keys = mesh.starts[walls] * len(mesh.points) + mesh.ends[walls]
    low, high = np.sort(np.column_stack([mesh.starts[edges], mesh.ends[edges]]), axis=1).T
    order = np.argsort(keys)
    rows = order[np.searchsorted(keys, low * len(mesh.points) + high, sorter=order)]
    return triangulate(split(mesh.linework, rows, places)[0])


def _first(mesh: Mesh, reach: float) -> _Search:
    """Let each corner look through the opposite edge, as far as its triangle's circle goes."""
    eye = mesh.starts
    edge = (3 * np.arange(len(mesh.triangles))[:, None] + np.array([1, 2, 0])).ravel()
    right = mesh.points[mesh.starts[edge]] - mesh.points[eye]
    left = mesh.points[mesh.ends[edge]] - mesh.points[eye]
    # Nothing may lie in the circle over a passage, so its far end lies in the triangle's circle.
    with np.errstate(divide="ignore"):
        across = _norm(left - right) * _norm(right) * _norm(left) / np.abs(cross(right, left))
    search = _Search(eye, edge, right, left, np.minimum(across, reach))
    return search[_in_reach(mesh, search)]


def _beyond(mesh: Mesh, search: _Search) -> _Search:
    """Let each row look on through the two far edges of the triangle beyond its edge."""
    twin = mesh.twin[search.edge]
    triangle, side = twin // 3, twin % 3
    to_right = 3 * triangle + (side + 1) % 3
    to_left = 3 * triangle + (side + 2) % 3
    corner = mesh.points[mesh.starts[to_left]] - mesh.points[search.eye]
    is_left = cross(search.left, corner) >= 0
    is_right = cross(search.right, corner) <= 0
    narrowed_left = np.where(is_left[:, None], search.left, corner)
    narrowed_right = np.where(is_right[:, None], search.right, corner)
    both = _Search(
        np.concatenate([search.eye, search.eye]),
        np.concatenate([to_right, to_left]),
        np.concatenate([search.right, narrowed_right]),
        np.concatenate([narrowed_left, search.left]),
        np.concatenate([search.bound, search.bound]),
    )
    seen = np.concatenate([~is_right, ~is_left])
    both = both[seen]
    return both[_in_reach(mesh, both)]


def _in_reach(mesh: Mesh, search: _Search) -> Flags:
    """Tell which rows have some of their edge nearer than their bound."""
    start = mesh.points[mesh.starts[search.edge]] - mesh.points[search.eye]
    along = mesh.points[mesh.ends[search.edge]] - mesh.points[search.eye] - start
    part = np.clip(_share(start, along), 0, 1)
    near: Flags = _norm(start + part[:, None] * along) < search.bound
    return near


def _feet_on(mesh: Mesh, search: _Search) -> tuple[Ints, Floats]:
    start = mesh.points[mesh.starts[search.edge]] - mesh.points[search.eye]
    along = mesh.points[mesh.ends[search.edge]] - mesh.points[search.eye] - start
    part = _share(start, along)
    foot = start + part[:, None] * along
    margin = END / _norm(along)
    within = (part > margin) & (part < 1 - margin) & (_norm(foot) < search.bound)
    within &= (cross(search.right, foot) >= 0) & (cross(foot, search.left) >= 0)
    return search.edge[within], (foot + mesh.points[search.eye])[within]


def _share(start: Floats, along: Floats) -> Floats:
    """Return where along each segment its point nearest to the origin lies, 0 to 1 within it."""
    share: Floats = -(start * along).sum(axis=1) / np.maximum((along * along).sum(axis=1), 1e-300)
    return share


def _norm(a: Floats) -> Floats:
    norm: Floats = np.hypot(a[:, 0], a[:, 1])
    return norm
