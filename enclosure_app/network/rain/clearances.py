"""How far a drop that falls from an edge stays clear of the wall beneath."""

from math import inf

import numpy as np

from enclosure_app.geometry.surfaces.faces import Floats, Ints
from enclosure_app.geometry.surfaces.falling import Surfaces

_LOOK = 100.0  # how far to the side and down a wall is looked for, mm
_WALL = 0.5  # a face whose normal leans by no more than this is a wall, no roof
_TOUCH = 1e-6


def clearances(surfaces: Surfaces, edges: Floats, ledges: Floats) -> list[float]:
    """Return for each edge (m, 2) the level distance, mm, to the nearest wall face beneath it.

    Infinite where there is none. `ledges` (m,) are the heights at which the drops land: what is
    below them is hidden.
    """
    if not len(edges) or not len(surfaces.faces.a):
        return [inf] * len(edges)
    floor = np.maximum(ledges, edges[:, 1] - _LOOK)
    which, face = surfaces.walls_below(edges, floor, _LOOK)
    faces = surfaces.faces
    low = np.minimum(faces.a[face, 1], faces.b[face, 1])
    high = np.maximum(faces.a[face, 1], faces.b[face, 1])
    top, bottom = np.minimum(high, edges[which, 1]), np.maximum(low, floor[which])
    across = np.stack([_across(surfaces, face, y) for y in (top, bottom)])
    away = np.abs(across - edges[which, 0]).min(axis=0)
    faced = (edges[which, 0] - across.mean(axis=0)) * faces.normal[face, 0] >= -_TOUCH
    keep = (np.abs(faces.normal[face, 1]) < _WALL) & (top - bottom > _TOUCH) & faced
    clear = np.full(len(edges), inf)
    np.minimum.at(clear, which[keep], away[keep])
    return [float(value) if value <= _LOOK else inf for value in clear]


def _across(surfaces: Surfaces, face: Ints, y: Floats) -> Floats:
    """Return where each (steep) face stands at height `y`."""
    a, b = surfaces.faces.a[face], surfaces.faces.b[face]
    rise = np.where(b[:, 1] == a[:, 1], 1.0, b[:, 1] - a[:, 1])
    x: Floats = a[:, 0] + (y - a[:, 1]) / rise * (b[:, 0] - a[:, 0])
    return x
