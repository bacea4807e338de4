"""A constrained Delaunay triangulation of linework, kept as half-edges in arrays.

Half-edge ``3 * t + k`` runs along triangle t from its corner k to its corner k + 1, anticlockwise.
"""

from dataclasses import dataclass

import numpy as np
import numpy.typing as npt
import shapely

from enclosure_app.geometry.cavities import Cavities
from enclosure_app.geometry.linework import Linework

Floats = npt.NDArray[np.float64]
Ints = npt.NDArray[np.int64]
Flags = npt.NDArray[np.bool_]


@dataclass(frozen=True, slots=True)
class Mesh:
    """Triangles over `points` (n, 2).

    `triangles` is (t, 3) and anticlockwise. For each of the 3 t half-edges, `twin` is the one on
    the other side (-1 at the rim), `wall` and `bridge` tell what it is, `length` is mm.
    """

    points: Floats
    triangles: Ints
    twin: Ints
    wall: Flags
    bridge: Flags
    length: Floats

    @property
    def starts(self) -> Ints:
        """The point that each half-edge starts from."""
        return self.triangles.ravel()

    @property
    def ends(self) -> Ints:
        """The point that each half-edge leads to."""
        ends: Ints = np.roll(self.triangles, -1, axis=1).ravel()
        return ends

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
        CrossingError: segments cross where there is no point.
    """
    points = np.vstack([lines.points, _far_corners(lines.points)])
    triangles = _delaunay(points)
    walls, bridges = _keys(lines.walls, len(points)), _keys(lines.bridges, len(points))
    wanted = np.concatenate([lines.walls, lines.bridges])
    keys = np.concatenate([walls, bridges])
    missing = wanted[~np.isin(keys, _sides(triangles, len(points)))]
    if len(missing):
        cavities = Cavities(points, triangles)
        present = wanted[np.isin(keys, _sides(triangles, len(points)))]
        cavities.kept.update(map(tuple, present.tolist()))
        for edge in map(tuple, missing.tolist()):
            became = _keys(np.array(cavities.insert([edge])), len(points))
            if edge[0] * len(points) + edge[1] in walls:
                walls = np.concatenate([walls, became])
            else:
                bridges = np.concatenate([bridges, became])
        triangles = cavities.triangles()
    return _mesh(points, triangles, walls, bridges)


def _far_corners(points: Floats) -> Floats:
    """Return four points so far out that no point of the linework lies on the rim."""
    low, high = points.min(axis=0), points.max(axis=0)
    middle, reach = (low + high) / 2, 3 * float((high - low).max())
    far: Floats = middle + reach * np.array([(-1.0, -1.1), (1.2, -1.0), (1.0, 1.3), (-1.1, 1.0)])
    return far


def _delaunay(points: Floats) -> Ints:
    """Return the Delaunay triangles of `points` as rows of three indices, anticlockwise."""
    found = shapely.delaunay_triangles(shapely.MultiPoint(points))
    flat = points[:, 0] + 1j * points[:, 1]
    order = np.argsort(flat)
    corners = shapely.get_coordinates(found).reshape(-1, 4, 2)[:, :3]
    corner = corners[..., 0] + 1j * corners[..., 1]
    triangles = order[np.searchsorted(flat, corner, sorter=order)]
    turn = ((corner[:, 1] - corner[:, 0]).conjugate() * (corner[:, 2] - corner[:, 0])).imag
    # All are wound alike, which also tells the winding of those too flat to tell it themselves.
    return triangles[:, ::-1].copy() if turn.sum() < 0 else triangles


def _keys(edges: Ints, number: int) -> Ints:
    """Return one number for each undirected edge."""
    low, high = edges.min(axis=1, initial=number), edges.max(axis=1, initial=-1)
    keys: Ints = low * number + high
    return keys


def _sides(triangles: Ints, number: int) -> Ints:
    sides = np.column_stack([triangles.ravel(), np.roll(triangles, -1, axis=1).ravel()])
    return _keys(sides, number)


def _mesh(points: Floats, triangles: Ints, walls: Ints, bridges: Ints) -> Mesh:
    sides = _sides(triangles, len(points))
    starts, ends = triangles.ravel(), np.roll(triangles, -1, axis=1).ravel()
    length = np.hypot(*(points[ends] - points[starts]).T)
    wall = np.isin(sides, walls)
    bridge = np.isin(sides, bridges) & ~wall
    return Mesh(points, triangles, _twins(sides), wall, bridge, length)


def _twins(sides: Ints) -> Ints:
    """Pair the half-edges that run along the same side."""
    order = np.argsort(sides, kind="stable")
    same = np.flatnonzero(sides[order][1:] == sides[order][:-1])
    twin = np.full(len(sides), -1, dtype=np.int64)
    twin[order[same]] = order[same + 1]
    twin[order[same + 1]] = order[same]
    return twin
