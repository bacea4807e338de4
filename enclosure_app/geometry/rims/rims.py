"""The boundary of many solids as one table of straight segments.

A *rim* is one connected boundary polyline: a bare line is its own single rim; a filled solid has a
ring for its outside and one for each hole. Everything that asks for distances between solids asks
this table, so thousands of pieces cost a few array operations.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry.base import BaseGeometry

Point = tuple[float, float]
SLIVER = 1e-9  # mm: corners this near to the end of a stretch are its end
FEW = 50  # stretches that are looked up one by one
SHORT = 64  # segments: longer rims are measured one by one
Floats = NDArray[np.float64]
Ints = NDArray[np.intp]
Bools = NDArray[np.bool_]


@dataclass(frozen=True, slots=True)
class Rims:
    """Segments of all rims, in order along each rim.

    `start`, `end` (n, 2) mm; `rim` (n,) the rim of each segment; `along` (n,) mm from the rim's
    first point to the segment's start; `first` (r + 1,) offsets of each rim's segments; `owner`
    (r,) the solid of each rim; `length` (r,) mm; `ring` (r,) whether the rim is closed; `lines`
    (n,) the segments as shapely lines. What stands of one rim depends on that rim alone, to the
    last bit.
    """

    start: Floats
    end: Floats
    rim: Ints
    along: Floats
    first: Ints
    owner: Ints
    length: Floats
    ring: NDArray[np.bool_]
    lines: NDArray[np.object_]

    def position(self, segments: Ints, points: Floats) -> Floats:
        """Return how far along its rim each point (k, 2) on its segment (k,) lies, mm."""
        moved = points - self.start[segments]
        return np.asarray(self.along[segments] + np.hypot(moved[:, 0], moved[:, 1]))

    def locate(self, rim: Ints, at: Floats) -> tuple[Ints, Floats]:
        """Return the segment (k,) and the point (k, 2) at position `at` (k,) mm along each rim."""
        segments = np.clip(
            self._after(rim, at, past=True) - 1, self.first[rim], self.first[rim + 1] - 1
        )
        step = self.end[segments] - self.start[segments]
        length = np.hypot(step[:, 0], step[:, 1])
        share = np.clip((at - self.along[segments]) / length, 0.0, 1.0)
        return segments, self.start[segments] + share[:, None] * step

    def stretches(self, rim: Ints, start: Floats, end: Floats) -> list[tuple[Point, ...]]:
        """Return the polyline of each rim (k,) from position `start` to `end` (k,) mm along it.

        Where `end` comes before `start` the polyline runs backwards.
        """
        low, high = np.minimum(start, end), np.maximum(start, end)
        first = self._after(rim, low + SLIVER, past=True)
        last = self._after(rim, high - SLIVER, past=False)
        heads = self.locate(rim, low)[1].tolist()
        tails = self.locate(rim, high)[1].tolist()
        corners = self._corners(first, last)
        rows = zip(heads, corners, tails, (end < start).tolist(), strict=True)
        return [
            ((*head,), *between, (*tail,))[:: -1 if back else 1]
            for head, between, tail, back in rows
        ]

    def _corners(self, first: Ints, last: Ints) -> Iterator[list[Point]]:
        """Yield the starts of the segments from each of `first` up to each of `last` (k,)."""
        rows = zip(first.tolist(), last.tolist(), strict=True)
        if len(first) > FEW:
            every = list(map(tuple, self.start.tolist()))
            return (every[start:end] for start, end in rows)
        return (list(map(tuple, self.start[start:end].tolist())) for start, end in rows)

    def _after(self, rim: Ints, at: Floats, *, past: bool) -> Ints:
        """Return the first segment of each rim (k,) that starts at or after `at`; only after if `past`."""
        low, high = self.first[rim], self.first[rim + 1]
        if not len(rim):
            return low
        for _ in range(int((high - low).max()).bit_length()):
            middle = (low + high) // 2
            start = self.along[np.minimum(middle, len(self.along) - 1)]
            before = (low < high) & ((start <= at) if past else (start < at))
            high = np.where(before, high, middle)
            low = np.where(before, middle + 1, low)
        return np.asarray(low)

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
    first = np.searchsorted(rim, np.arange(count + 1))
    along, length = _measured(np.hypot(*(end - start).T), first)
    return Rims(
        start=start,
        end=end,
        rim=rim,
        along=along,
        first=first,
        owner=owner,
        length=length,
        lines=np.asarray(shapely.linestrings(np.stack([start, end], axis=1)), dtype=object),
        ring=shapely.is_closed(boundaries) if count else np.zeros(0, dtype=bool),
    )


def patched(rims: Rims, moved: Mapping[int, BaseGeometry]) -> Rims | None:
    """Return the table with other solids in the place of the owners in `moved`.

    None where one of them has other numbers of rims and segments than before.
    """
    owners = sorted(moved)
    fresh = rims_of([moved[owner] for owner in owners])
    rim = np.flatnonzero(np.isin(rims.owner, owners))
    segment = np.flatnonzero(np.isin(rims.rim, rim))
    counts = np.diff(rims.first)[rim]
    same = np.array_equal(np.asarray(owners)[fresh.owner], rims.owner[rim])
    if not same or not np.array_equal(counts, np.diff(fresh.first)):
        return None
    rows = dict.fromkeys(("start", "end", "along", "lines"), segment)
    rows |= dict.fromkeys(("length", "ring"), rim)
    table = {name: getattr(rims, name).copy() for name in rows}
    for name, which in rows.items():
        table[name][which] = getattr(fresh, name)
    return replace(rims, **table)


def _measured(lengths: Floats, first: Ints) -> tuple[Floats, Floats]:
    """Return how far along its rim each segment starts (n,), and the length of each rim (r,)."""
    reached = np.zeros(len(lengths) + 1)  # at the end of each segment, the rims before not counted
    count = np.diff(first)
    for place in range(min(int(count.max(initial=0)), SHORT)):
        rows = first[:-1][(count > place) & (count <= SHORT)] + place
        before = reached[rows] if place else 0.0
        reached[rows + 1] = before + lengths[rows]
    for rim in np.flatnonzero(count > SHORT).tolist():
        own = slice(int(first[rim]), int(first[rim + 1]))
        reached[own.start + 1 : own.stop + 1] = np.cumsum(lengths[own])
    along = reached[:-1].copy()
    along[first[:-1][count > 0]] = 0.0
    return along, np.where(count > 0, reached[first[1:]], 0.0)


def _boundaries(solids: Sequence[BaseGeometry]) -> tuple[NDArray[np.object_], Ints]:
    parts, owner = shapely.get_parts(np.asarray(solids, dtype=object), return_index=True)
    filled = shapely.get_type_id(parts) == 3
    rings, ring_owner = shapely.get_rings(parts[filled], return_index=True)
    lines = shapely.get_type_id(parts) == 1
    boundaries = np.concatenate([parts[lines], rings])
    owners = np.concatenate([owner[lines], owner[filled][ring_owner]]).astype(np.intp)
    order = np.argsort(owners, kind="stable")
    return boundaries[order], owners[order]
