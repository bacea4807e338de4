"""How far a drop that falls from an edge stays clear of the wall beneath."""

from collections.abc import Callable
from math import inf

import numpy as np

from enclosure_app.geometry.faces import Bools, Floats
from enclosure_app.network.edges import Off
from enclosure_app.network.runs import Ground

IsOutside = Callable[[Floats], Bools]
_LOOK = 100.0  # how far to the side and down a wall is looked for, mm
_WALL = 0.5  # a face whose normal leans by no more than this is a wall, no roof
_CLEAR = 0.25


def clearances(ground: Ground, drips: list[Off], is_outside: IsOutside) -> list[float]:
    """Return for each drip the level distance (mm) to the nearest outer wall face beneath."""
    if not drips:
        return []
    edges = np.array([off.edge for off in drips])
    floor = np.array([_floor(ground, off) for off in drips])
    which, face = ground.layer.surfaces.walls_below(edges, floor, _LOOK)
    faces = ground.layer.surfaces.faces
    low = np.minimum(faces.a[face, 1], faces.b[face, 1])
    high = np.maximum(faces.a[face, 1], faces.b[face, 1])
    top, bottom = np.minimum(high, edges[which, 1]), np.maximum(low, floor[which])
    places = np.stack([_across(ground, face, y) for y in (top, bottom, (top + bottom) / 2)])
    probe = np.stack([places[2], (top + bottom) / 2], axis=1) + faces.normal[face] * _CLEAR
    away = np.abs(places[:2] - edges[which, 0]).min(axis=0)
    faced = (edges[which, 0] - places[2]) * faces.normal[face, 0] >= -1e-6
    keep = (np.abs(faces.normal[face, 1]) < _WALL) & (top - bottom > 1e-6) & faced
    keep &= is_outside(probe) if len(probe) else keep
    clear = np.full(len(drips), inf)
    np.minimum.at(clear, which[keep], away[keep])
    return [float(value) if value <= _LOOK else inf for value in clear]


def _floor(ground: Ground, off: Off) -> float:
    """Return down to where a wall beneath an edge matters: to the ledge that the drop lands on."""
    deep = off.edge[1] - _LOOK
    if not off.spots:
        return deep
    landed = ground.at(off.spots[0].run, off.spots[0].station)
    return max(deep, landed[1]) if abs(landed[0] - off.edge[0]) < 1e-6 else deep


def _across(
    ground: Ground, face: "np.ndarray[tuple[int], np.dtype[np.intp]]", y: Floats
) -> Floats:
    """Return where each (steep) face stands at height `y`."""
    faces = ground.layer.surfaces.faces
    a, b = faces.a[face], faces.b[face]
    rise = np.where(b[:, 1] == a[:, 1], 1.0, b[:, 1] - a[:, 1])
    x: Floats = a[:, 0] + (y - a[:, 1]) / rise * (b[:, 0] - a[:, 0])
    return x
