"""The gates of a mesh: the edges that a way may cross, how wide they are, and which are bridged."""

from dataclasses import dataclass

import numpy as np
import numpy.typing as npt
import shapely

from enclosure_app.geometry.linework.linework import GRID, Linework, segments_of
from enclosure_app.geometry.openings.crossed import crossed
from enclosure_app.geometry.openings.triangles import (
    FAR,
    Mesh,
    among,
    edge_keys,
    meshed,
    triangulate,
)

Floats = npt.NDArray[np.float64]
Ints = npt.NDArray[np.int64]
Flags = npt.NDArray[np.bool_]


@dataclass(frozen=True, slots=True)
class Gates:
    """A mesh and, for each of its half-edges, whether it is `open` and how wide (mm) the passage.

    `chord` (h, 2) holds the ends of the passage: the edge's own, except where a bridge cuts a
    passage into several edges. These all are as wide as the whole.
    """

    mesh: Mesh
    open: Flags
    chord: Ints
    width: Floats

    def wider_than(self, width: float) -> Ints:
        """Return the gates wider than `width` mm, one half-edge each."""
        first = self.mesh.twin > np.arange(len(self.mesh.twin))
        wide: Ints = np.flatnonzero(first & self.open & (self.width > width))
        return wide


def gates(mesh: Mesh, bridges: Ints) -> Gates:
    """Return the gates of `mesh` that the `bridges` (rows of two points) leave open."""
    chord = np.column_stack([mesh.starts, mesh.ends])
    plain = Gates(mesh, ~mesh.wall, chord, _lengths(mesh.points, chord))
    if not len(bridges):
        return plain
    sides = edge_keys(mesh.starts, mesh.ends, len(mesh.points))
    keys = edge_keys(bridges[:, 0], bridges[:, 1], len(mesh.points))
    plain.open[among(sides, np.sort(keys))] = False
    missing = bridges[~among(keys, np.sort(sides)) & (bridges[:, 0] != bridges[:, 1])]
    return _cut(plain, missing) if len(missing) else plain


def _lengths(points: Floats, chords: Ints) -> Floats:
    lengths: Floats = np.hypot(*(points[chords[:, 1]] - points[chords[:, 0]]).T)
    return lengths


def _cut(whole: Gates, bridges: Ints) -> Gates:
    """Return the gates with the triangles cut that `bridges` run through."""
    mesh = whole.mesh
    patch = crossed(mesh, bridges)
    edges = (3 * patch[:, None] + np.arange(3)).ravel()
    chords = np.concatenate([whole.chord[edges], bridges])
    lines = np.asarray(shapely.linestrings(mesh.points[chords]), dtype=object)
    points, triangles = _patched(mesh, patch, lines)
    kept = np.ones(len(mesh.triangles), dtype=bool)
    kept[patch] = False
    no_walls = np.empty((0, 2), dtype=np.int64)
    finer = meshed(points, np.concatenate([mesh.triangles[kept], triangles]), no_walls)
    old = np.flatnonzero(np.repeat(kept, 3))
    fresh = np.arange(len(old), len(finer.starts))
    source = _sources(finer, fresh, lines)
    joined = Gates(
        finer,
        np.ones(len(finer.starts), dtype=bool),
        np.column_stack([finer.starts, finer.ends]),
        np.full(len(finer.starts), np.inf),
    )
    _inherit(joined, np.arange(len(old)), whole, old)
    on_edge = (source >= 0) & (source < len(edges))
    _inherit(joined, fresh[on_edge], whole, edges[source[on_edge]])
    joined.open[fresh[source >= len(edges)]] = False
    return joined


def _inherit(to: Gates, rows: Ints, whole: Gates, source: Ints) -> None:
    """Let the half-edges in `rows` be what those of `source` were."""
    to.mesh.wall[rows] = whole.mesh.wall[source]
    to.open[rows] = whole.open[source]
    to.chord[rows] = whole.chord[source]
    to.width[rows] = whole.width[source]


def _patched(mesh: Mesh, patch: Ints, lines: npt.NDArray[np.object_]) -> tuple[Floats, Ints]:
    """Return the mesh's points with those where `lines` cross, and the triangles of the patch."""
    corners = mesh.points[mesh.triangles[patch]]
    ground = shapely.union_all(shapely.polygons(corners))
    small = triangulate(Linework(*segments_of(shapely.union_all(lines))))
    middles = small.points[small.triangles].mean(axis=1)
    inside = shapely.contains_xy(ground, middles[:, 0], middles[:, 1])
    known = np.unique(mesh.triangles[patch])
    number = _numbers(small.points[:-FAR], mesh.points[known], known, len(mesh.points))
    points = np.concatenate([mesh.points, small.points[:-FAR][number >= len(mesh.points)]])
    return points, number[small.triangles[inside]]


def _numbers(points: Floats, known_points: Floats, known: Ints, next_number: int) -> Ints:
    """Number `points`: those known keep their number, the others get new ones."""
    places = dict(zip(map(tuple, known_points.tolist()), known.tolist(), strict=True))
    numbers = []
    for place in map(tuple, points.tolist()):
        if place not in places:
            places[place] = next_number
            next_number += 1
        numbers.append(places[place])
    return np.array(numbers, dtype=np.int64)


def _sources(mesh: Mesh, fresh: Ints, lines: npt.NDArray[np.object_]) -> Ints:
    """Return which of `lines` each half-edge runs along, the last one if several, -1 if none."""
    middles = (mesh.points[mesh.starts[fresh]] + mesh.points[mesh.ends[fresh]]) / 2
    places = np.asarray(shapely.points(middles), dtype=object)
    rows, found = shapely.STRtree(lines).query(places, predicate="dwithin", distance=GRID)
    source = np.full(len(fresh), -1, dtype=np.int64)
    np.maximum.at(source, rows, found)
    return source
