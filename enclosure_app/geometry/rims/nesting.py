"""Solids that hold others, and the rings of one solid: what meets without any rims meeting."""

from collections.abc import Iterator, Sequence

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from enclosure_app.geometry.rims.closest import Chords, foot
from enclosure_app.geometry.rims.rims import Floats, Ints, Rims

Tie = tuple[int, int, Floats, Floats]  # segment, segment, point on each


def chords_within(solids: Sequence[BaseGeometry], rims: Rims) -> Chords:
    """Return chords that run inside a solid: to what lies in it, and between its own rings."""
    ties = [*_held(solids, rims), *_own_rings(rims)]
    if not ties:
        none, nowhere = np.zeros(0, dtype=np.intp), np.zeros((0, 2))
        return Chords(none, none, nowhere, nowhere, np.zeros(0))
    a, b = np.array([tie[0] for tie in ties]), np.array([tie[1] for tie in ties])
    at_a, at_b = np.array([tie[2] for tie in ties]), np.array([tie[3] for tie in ties])
    return Chords(a, b, at_a, at_b, np.zeros(len(ties)))


def _held(solids: Sequence[BaseGeometry], rims: Rims) -> Iterator[Tie]:
    filled = np.asarray(solids, dtype=object)
    areas = np.flatnonzero(shapely.get_dimensions(filled) == 2)
    if not len(areas):
        return
    item, area = shapely.STRtree(filled[areas]).query(filled, predicate="within")
    for inner, outer in zip(item.tolist(), areas[area].tolist(), strict=True):
        if inner != outer:
            yield _tie(rims, int(_segments(rims, inner)[0]), _segments(rims, outer))


def _own_rings(rims: Rims) -> Iterator[Tie]:
    """Tie the rings of one solid to each other, nearest first, so that no tie leaves the solid."""
    counts = np.bincount(rims.owner) if len(rims.owner) else np.zeros(0, dtype=np.intp)
    for owner in np.flatnonzero(counts > 1).tolist():
        first, *rest = np.flatnonzero(rims.owner == owner).tolist()
        joined = np.arange(rims.first[first], rims.first[first + 1])
        while rest:
            ties = [(_ring_tie(rims, ring, joined), ring) for ring in rest]
            tie, ring = min(ties, key=lambda each: float(np.hypot(*(each[0][2] - each[0][3]))))
            yield tie
            rest.remove(ring)
            joined = np.concatenate([joined, np.arange(rims.first[ring], rims.first[ring + 1])])


def _ring_tie(rims: Rims, ring: int, others: Ints) -> Tie:
    own = range(int(rims.first[ring]), int(rims.first[ring + 1]))
    ways = [_tie(rims, segment, others) for segment in own]
    return min(ways, key=lambda way: float(np.hypot(*(way[2] - way[3]))))


def _tie(rims: Rims, segment: int, others: Ints) -> Tie:
    point = rims.start[segment]
    feet = foot(np.broadcast_to(point, (len(others), 2)), rims.start[others], rims.end[others])
    best = int(np.argmin(np.hypot(*(feet - point).T)))
    return segment, int(others[best]), point, feet[best]


def _segments(rims: Rims, owner: int) -> Ints:
    low, high = np.searchsorted(rims.owner, [owner, owner + 1])
    return np.arange(rims.first[low], rims.first[high])
