"""A constrained Delaunay triangulation of linework, kept as half-edges in arrays.

Half-edge ``3 * t + k`` runs along triangle t from its corner k to its corner k + 1, anticlockwise.
"""

from dataclasses import dataclass

import numpy as np
import numpy.typing as npt
import shapely

from enclosure_app.geometry.linework.linework import Linework
from enclosure_app.geometry.openings.cavities import Cavities
from enclosure_app.geometry.openings.flips import turned, wrong

Floats = npt.NDArray[np.float64]
Ints = npt.NDArray[np.int64]
Flags = npt.NDArray[np.bool_]

FAR = 4  # points beyond the linework that a triangulation adds at the end of its points


@dataclass(frozen=True, slots=True)
class Mesh:
    """Triangles over `points` (n, 2), mm; `triangles` is (t, 3) and anticlockwise.

    The other arrays tell of the 3 t half-edges: `starts` and `ends` are its points, `twin` the
    half-edge on its other side (-1 if none), `wall` whether it is part of an obstacle's outline.
    """

    points: Floats
    triangles: Ints
    starts: Ints
    ends: Ints
    twin: Ints
    wall: Flags

    @property
    def walls(self) -> Ints:
        """The walls, one half-edge each: the one with the smaller start."""
        found: Ints = np.flatnonzero(self.wall & (self.starts < self.ends))
        return found

    @property
    def linework(self) -> Linework:
        """The points and walls of which this is the triangulation."""
        walls = self.walls
        return Linework(
            self.points[:-FAR], np.column_stack([self.starts[walls], self.ends[walls]])
        )

    def triangle_at(self, place: Floats) -> int:
        """Return the triangle that holds `place`."""
        corners = self.points[self.triangles]
        along = np.roll(corners, -1, axis=1) - corners
        to = place - corners
        left = along[..., 0] * to[..., 1] - along[..., 1] * to[..., 0]
        return int(np.argmax(left.min(axis=1)))


def triangulate(lines: Linework) -> Mesh:
    """Return the constrained Delaunay triangulation of `lines`.

    Raises:
        CrossingError: walls cross where there is no point.
    """
    points = np.vstack([lines.points, _far_corners(lines.points)])
    mesh = meshed(points, _delaunay(points), lines.walls)
    found = mesh.linework.walls
    if len(found) < len(lines.walls):
        number = len(points)
        missing = ~among(_keys(lines.walls, number), np.sort(_keys(found, number)))
        cavities = Cavities(points, mesh.triangles, found)
        became = cavities.insert(lines.walls[missing])
        mesh = meshed(points, cavities.triangles(), np.concatenate([found, became]))
    return _mended(mesh)


def meshed(points: Floats, triangles: Ints, walls: Ints) -> Mesh:
    """Return the mesh of `triangles` of which those edges are walls that are among `walls` (w, 2)."""
    starts, ends = triangles.ravel(), np.roll(triangles, -1, axis=1).ravel()
    sides = edge_keys(starts, ends, len(points))
    order = np.argsort(sides, kind="stable")
    in_order = sides[order]
    twin = np.full(len(sides), -1, dtype=np.int64)
    same = np.flatnonzero(in_order[1:] == in_order[:-1])
    twin[order[same]] = order[same + 1]
    twin[order[same + 1]] = order[same]
    wanted = _keys(walls, len(points))
    at = np.minimum(np.searchsorted(in_order, wanted), len(in_order) - 1)
    one = order[at[in_order[at] == wanted]]
    wall = np.zeros(len(sides), dtype=bool)
    wall[one] = True
    wall[twin[one][twin[one] >= 0]] = True
    return Mesh(points, triangles, starts, ends, twin, wall)


def _mended(mesh: Mesh) -> Mesh:
    """Return the mesh with every edge Delaunay that is no wall."""
    open_edges = np.flatnonzero((mesh.twin > np.arange(len(mesh.twin))) & ~mesh.wall)
    a, b = mesh.points[mesh.starts[open_edges]], mesh.points[mesh.ends[open_edges]]
    c, d = (mesh.points[_apexes(mesh, half)] for half in (open_edges, mesh.twin[open_edges]))
    bad = open_edges[wrong(a, b, c, d)]
    if not len(bad):
        return mesh
    edges = np.column_stack([mesh.starts[bad], mesh.ends[bad]])
    walls = mesh.linework.walls
    return meshed(mesh.points, turned(mesh.points, mesh.triangles, edges, walls), walls)


def _apexes(mesh: Mesh, half_edges: Ints) -> Ints:
    """Return the third corners of the triangles that half-edges belong to."""
    apexes: Ints = mesh.triangles[half_edges // 3, (half_edges + 2) % 3]
    return apexes


def among(keys: Ints, ordered: Ints) -> Flags:
    """Tell which of `keys` stand in `ordered`."""
    if not len(ordered):
        return np.zeros(len(keys), dtype=bool)
    found: Flags = ordered[np.minimum(np.searchsorted(ordered, keys), len(ordered) - 1)] == keys
    return found


def _keys(edges: Ints, number: int) -> Ints:
    return edge_keys(edges[:, 0], edges[:, 1], number)


def edge_keys(starts: Ints, ends: Ints, number: int) -> Ints:
    """Return one key for each edge, whichever way it runs, among `number` points."""
    keys: Ints = np.minimum(starts, ends) * number + np.maximum(starts, ends)
    return keys


def _far_corners(points: Floats) -> Floats:
    """Return points so far out that no point of the linework lies on the rim."""
    low, high = points.min(axis=0), points.max(axis=0)
    middle, reach = (low + high) / 2, 3 * float((high - low).max())
    far: Floats = middle + reach * np.array([(-1.0, -1.1), (1.2, -1.0), (1.0, 1.3), (-1.1, 1.0)])
    return far


def _delaunay(points: Floats) -> Ints:
    """Return the Delaunay triangles of `points` as rows of three indices, anticlockwise."""
    # The library takes points in order of x; a tall wall laid down is many times quicker.
    lying = slice(None, None, -1) if np.ptp(points[:, 1]) > np.ptp(points[:, 0]) else slice(None)
    found = shapely.delaunay_triangles(shapely.MultiPoint(points[:, lying]))
    flat = points[:, 0] + 1j * points[:, 1]
    order = np.argsort(flat)
    corners = shapely.get_coordinates(found).reshape(-1, 4, 2)[:, :3, lying]
    corner = corners[..., 0] + 1j * corners[..., 1]
    triangles = order[np.searchsorted(flat, corner, sorter=order)]
    turn = ((corner[:, 1] - corner[:, 0]).conjugate() * (corner[:, 2] - corner[:, 0])).imag
    # All are wound alike, which also tells the winding of those too flat to tell it themselves.
    return triangles[:, ::-1].copy() if turn.sum() < 0 else triangles
