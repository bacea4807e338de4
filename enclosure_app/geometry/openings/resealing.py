"""Whether what was closed is closed still, after something has changed in a few places.

The rooms of the drawing before are known: what can be reached from where without passing anything
as narrow as `touch`. Around each place that has changed stands a *core*, a box with a margin wider
than that. A way from room to room must run through a core, since outside of these everything is as
it was. So the triangles that a new way could cross within a core are joined with each other, and on
the core's outline with the rooms that they lie in. If that joins nothing with the inside that was
reached from the outside, no such way exists. It may be said of a closed drawing that it might be
open, since rooms are taken whole, but never of an open one that it is closed.
"""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt
from shapely.geometry.base import BaseGeometry

from enclosure_app.geometry.linework.linework import GRID, noded
from enclosure_app.geometry.openings.bridges import tied
from enclosure_app.geometry.openings.cavities import CrossingError
from enclosure_app.geometry.openings.floods import groups
from enclosure_app.geometry.openings.gates import Gates, gates
from enclosure_app.geometry.openings.passages import feet, with_feet
from enclosure_app.geometry.openings.triangles import Mesh, triangulate

Point = tuple[float, float]
Floats = npt.NDArray[np.float64]
Ints = npt.NDArray[np.int64]
Flags = npt.NDArray[np.bool_]

SLIVER = 1e-6  # mm of a core's outline: nothing passes through less
WITHIN = 1e-9  # a share of a side: where two meshes may differ by rounding


@dataclass(frozen=True, slots=True, eq=False)
class Rooms:
    """A mesh, near the frame's first point, with the extents (t, 2, 2) and the room (t,) of its triangles.

    Triangles of one room are joined by gates wider than `touch`. `outside` and `inside` are the
    rooms of the marks at `marks` (k, 2).
    """

    frame: tuple[Point, ...]
    mesh: Mesh
    extents: Floats
    room: Ints
    outside: frozenset[int]
    inside: frozenset[int]
    marks: Floats
    touch: float


@dataclass(frozen=True, slots=True, eq=False)
class Core:
    """A box (2, 2) in which something changed: the solids near it and the bridges between these."""

    box: Floats
    solids: Sequence[BaseGeometry]
    bridges: Sequence[tuple[Point, Point]]


def rooms_of(
    frame: Sequence[Point],
    passable: Gates,
    sides: tuple[Ints, Ints],
    given: tuple[Floats, float],
) -> Rooms:
    """Return the rooms of a drawing.

    `sides` are the triangles that hold its outside and its inside marks; all marks (k, 2) and
    `touch` are `given`.
    """
    marks, touch = given
    mesh = passable.mesh
    wide = passable.wider_than(touch)
    room = groups(len(mesh.triangles), wide // 3, mesh.twin[wide] // 3)
    outside, inside = (frozenset(room[triangles].tolist()) for triangles in sides)
    return Rooms(tuple(frame), mesh, _extents(mesh), room, outside, inside, marks, touch)


def _extents(mesh: Mesh) -> Floats:
    corners = mesh.points[mesh.triangles]
    extents: Floats = np.stack([corners.min(axis=1), corners.max(axis=1)], axis=1)
    return extents


def still_closed(rooms: Rooms, cores: Sequence[Core]) -> bool:
    """Whether nothing has been joined with the inside that is reached from the outside.

    False means that it is not known.
    """
    origin = np.asarray(rooms.frame[0], dtype=float)
    joins = []
    for core in cores:
        box = core.box - origin
        if ((rooms.marks >= box[0]) & (rooms.marks <= box[1])).all(axis=1).any():
            return False
        found = _joins(rooms, core, box)
        if found is None:
            return False
        joins.append(found)
    return _apart(rooms, np.concatenate(joins)) if joins else True


def _apart(rooms: Rooms, joins: Ints) -> bool:
    nodes, ends = np.unique(joins, return_inverse=True)
    ends = ends.reshape(-1, 2)
    label = groups(len(nodes), ends[:, 0], ends[:, 1])
    outside = label[np.isin(nodes, list(rooms.outside))]
    inside = label[np.isin(nodes, list(rooms.inside))]
    return bool(rooms.outside.isdisjoint(rooms.inside) and not np.isin(outside, inside).any())


def _joins(rooms: Rooms, core: Core, box: Floats) -> Ints | None:
    """Return the pairs of rooms (j, 2) that may be joined through a core; None where it is not known."""
    try:
        passable = _gates(rooms.frame, core, rooms.touch)
    except CrossingError:
        return None
    mesh = passable.mesh
    label = groups(len(mesh.triangles), *_crossings(passable, box, rooms.touch))
    pairs = []
    near = _in_reach(_extents(mesh), box), _in_reach(rooms.extents, box)
    for start, end in _sides(box):
        ours = _along(mesh, near[0], start, end)
        theirs = _along(rooms.mesh, near[1], start, end)
        met = _met(ours, theirs, float(np.hypot(*(end - start))))
        if met is None:
            return None
        here, there = met
        # within a core, triangles are numbered from behind, so that they are no rooms
        pairs.append(np.column_stack([-1 - label[here], rooms.room[there]]))
    every: Ints = np.concatenate(pairs)
    return _rooms_joined(every)


def _rooms_joined(pairs: Ints) -> Ints:
    """Return pairs of rooms that have one group of triangles in common."""
    order = np.lexsort((pairs[:, 1], pairs[:, 0]))
    rows = pairs[order]
    same = rows[1:, 0] == rows[:-1, 0]
    joined: Ints = np.column_stack([rows[:-1, 1], rows[1:, 1]])[same]
    return joined


def _gates(frame: Sequence[Point], core: Core, touch: float) -> Gates:
    chords = np.asarray(core.bridges, dtype=float).reshape(-1, 2, 2)
    lines, ties = tied(noded(frame, core.solids), chords - np.asarray(frame[0], dtype=float))
    mesh = triangulate(lines)
    edges, places = feet(mesh, touch + GRID)
    return gates(with_feet(mesh, edges, places) if len(edges) else mesh, ties)


def _crossings(passable: Gates, box: Floats, touch: float) -> tuple[Ints, Ints]:
    """Return the triangles on both sides of each gate that a way may cross within the box."""
    mesh = passable.mesh
    wide = passable.wider_than(touch)
    start, end = mesh.points[mesh.starts[wide]], mesh.points[mesh.ends[wide]]
    low, high = _shares(start, end, box)
    met = wide[low <= high]
    return met // 3, mesh.twin[met] // 3


def _shares(start: Floats, end: Floats, box: Floats) -> tuple[Floats, Floats]:
    """Return from which share to which each segment runs within a box; the first is larger if not at all."""
    along = end - start
    flat = along == 0
    safe = np.where(flat, 1.0, along)
    ends = np.sort([(box[0] - start) / safe, (box[1] - start) / safe], axis=0)
    held = (start >= box[0]) & (start <= box[1])
    low = np.where(flat, np.where(held, 0.0, 2.0), ends[0]).max(axis=1)
    high = np.where(flat, 1.0, ends[1]).min(axis=1)
    return np.maximum(low, 0.0), np.minimum(high, 1.0)


def _sides(box: Floats) -> list[tuple[Floats, Floats]]:
    (left, low), (right, high) = box.tolist()
    corners = np.array([(left, low), (right, low), (right, high), (left, high)])
    return list(zip(corners, np.roll(corners, -1, axis=0), strict=True))


@dataclass(frozen=True, slots=True, eq=False)
class _Stretches:
    """The triangles that a straight line runs through, in order, with the shares from and to (k,)."""

    triangle: Ints
    low: Floats
    high: Floats


def _in_reach(extents: Floats, box: Floats) -> Ints:
    """Return which extents (t, 2, 2) meet a box."""
    near = np.ones(len(extents), dtype=bool)
    for axis in (0, 1):
        near &= extents[:, 0, axis] <= box[1, axis]
        near &= extents[:, 1, axis] >= box[0, axis]
    return np.flatnonzero(near)


def _along(mesh: Mesh, which: Ints, start: Floats, end: Floats) -> _Stretches:
    """Return the triangles among `which` that the line from `start` to `end` runs through."""
    a = mesh.points[mesh.triangles[which]]
    along = np.roll(a, -1, axis=1) - a
    # how far to the left of each side of the triangle the line is, at its start and from there on
    at = along[..., 0] * (start - a)[..., 1] - along[..., 1] * (start - a)[..., 0]
    rate = along[..., 0] * (end - start)[1] - along[..., 1] * (end - start)[0]
    with np.errstate(divide="ignore", invalid="ignore"):
        zero = -at / rate
    begin = np.where(rate > 0, zero, np.where((rate == 0) & (at < 0), 2.0, -1.0)).max(axis=1)
    stop = np.where(rate < 0, zero, 2.0).min(axis=1)
    begin, stop = np.maximum(begin, 0.0), np.minimum(stop, 1.0)
    met = np.flatnonzero(stop > begin)
    order = met[np.argsort(begin[met], kind="stable")]
    return _Stretches(which[order], begin[order], stop[order])


def _met(ours: _Stretches, theirs: _Stretches, length: float) -> tuple[Ints, Ints] | None:
    """Return the triangles of both meshes that lie on each other along a line; None where that is unclear."""
    cuts = np.unique(np.concatenate([[0.0, 1.0], ours.low, ours.high, theirs.low, theirs.high]))
    wide = np.flatnonzero(np.diff(cuts) * length > SLIVER)
    middle = (cuts[wide] + cuts[wide + 1]) / 2
    found = []
    for stretches in (ours, theirs):
        at = np.searchsorted(stretches.low, middle, side="right") - 1
        if len(middle) and (at.min() < 0 or (stretches.high[at] + WITHIN < middle).any()):
            return None
        found.append(stretches.triangle[at])
    return found[0], found[1]
