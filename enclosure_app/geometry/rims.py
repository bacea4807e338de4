"""The boundary of many solids as one table of straight segments.

A *rim* is one connected boundary polyline: a bare line is its own single rim; a filled solid has a
ring for its outside and one for each hole. Everything that asks for distances between solids asks
this table, so thousands of pieces cost a few array operations.
"""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry.base import BaseGeometry

Point = tuple[float, float]
SLIVER = 1e-9  # mm: corners this near to the end of a stretch are its end
Floats = NDArray[np.float64]
Ints = NDArray[np.intp]
Bools = NDArray[np.bool_]


@dataclass(frozen=True, slots=True)
class Rims:
    """Segments of all rims, in order along each rim.

    `start`, `end` (n, 2) mm; `rim` (n,) the rim of each segment; `along` (n,) mm from the rim's
    first point to the segment's start; `first` (r + 1,) offsets of each rim's segments; `owner`
    (r,) the solid of each rim; `length` (r,) mm; `ring` (r,) whether the rim is closed; `offset`
    (r,) mm of all rims before each; `lines` (n,) the segments as shapely lines.
    """

    start: Floats
    end: Floats
    rim: Ints
    along: Floats
    first: Ints
    owner: Ints
    length: Floats
    ring: NDArray[np.bool_]
    offset: Floats
    lines: NDArray[np.object_]

    def position(self, segments: Ints, points: Floats) -> Floats:
        """Return how far along its rim each point (k, 2) on its segment (k,) lies, mm."""
        moved = points - self.start[segments]
        return np.asarray(self.along[segments] + np.hypot(moved[:, 0], moved[:, 1]))

    def locate(self, rim: Ints, at: Floats) -> tuple[Ints, Floats]:
        """Return the segment (k,) and the point (k, 2) at position `at` (k,) mm along each rim."""
        # rims laid end to end, so that one search serves all of them
        found = (
            np.searchsorted(self.along + self.offset[self.rim], self.offset[rim] + at, "right") - 1
        )
        segments = np.clip(found, self.first[rim], self.first[rim + 1] - 1)
        step = self.end[segments] - self.start[segments]
        length = np.hypot(step[:, 0], step[:, 1])
        share = np.clip((at - self.along[segments]) / length, 0.0, 1.0)
        return segments, self.start[segments] + share[:, None] * step

    def stretches(self, rim: Ints, start: Floats, end: Floats) -> list[tuple[Point, ...]]:
        """Return the polyline of each rim (k,) from position `start` to `end` (k,) mm along it.

        Where `end` comes before `start` the polyline runs backwards.
        """
        low, high = np.minimum(start, end), np.maximum(start, end)
        running = self.along + self.offset[self.rim]
        first = np.searchsorted(running, self.offset[rim] + low + SLIVER, "right")
        last = np.searchsorted(running, self.offset[rim] + high - SLIVER, "left")
        heads = self.locate(rim, low)[1].tolist()
        tails = self.locate(rim, high)[1].tolist()
        corners = list(map(tuple, self.start.tolist()))
        rows = zip(
            heads, first.tolist(), last.tolist(), tails, (end < start).tolist(), strict=True
        )
        forward = (
            ((*head,), *corners[start:end], (*tail,))[:: -1 if back else 1]
            for head, start, end, tail, back in rows
        )
        return list(forward)

    def points_of(self, rim: int) -> Floats:
        """Return the points (m, 2) of one rim, the first repeated at the end of a ring."""
        own = slice(int(self.first[rim]), int(self.first[rim + 1]))
        return np.vstack([self.start[own], self.end[own][-1:]])


def rims_of(solids: Sequence[BaseGeometry]) -> Rims:
    """Return the table of segments of `solids`; segments without length are left out."""
    boundaries, owner = _boundaries(solids)
    points, rim = shapely.get_coordinates(boundaries, return_index=True)
    inner = np.flatnonzero((rim[1:] == rim[:-1]) & (points[1:] != points[:-1]).any(axis=1))
    start, end, rim = points[inner], points[inner + 1], rim[inner]
    count = len(boundaries)
    lengths = np.hypot(*(end - start).T)
    first = np.searchsorted(rim, np.arange(count + 1))
    before = np.concatenate([[0.0], np.cumsum(lengths)])
    return Rims(
        start=start,
        end=end,
        rim=rim,
        along=before[:-1] - before[first[rim]] if len(rim) else before[:0],
        first=first,
        owner=owner,
        length=before[first[1:]] - before[first[:-1]],
        offset=before[first[:-1]],
        lines=np.asarray(shapely.linestrings(np.stack([start, end], axis=1)), dtype=object),
        ring=shapely.is_closed(boundaries) if count else np.zeros(0, dtype=bool),
    )


def _boundaries(solids: Sequence[BaseGeometry]) -> tuple[NDArray[np.object_], Ints]:
    parts, owner = shapely.get_parts(np.asarray(solids, dtype=object), return_index=True)
    filled = shapely.get_type_id(parts) == 3
    rings, ring_owner = shapely.get_rings(parts[filled], return_index=True)
    lines = shapely.get_type_id(parts) == 1
    boundaries = np.concatenate([parts[lines], rings])
    owners = np.concatenate([owner[lines], owner[filled][ring_owner]]).astype(np.intp)
    order = np.argsort(owners, kind="stable")
    return boundaries[order], owners[order]
