"""Where rims meet: links at no lift. Jumps over the lifts that are left are links with a length.

A link or jump is a chord between two rims. Its *turn* says whether going along it, reckoned from
the first points of both rims, changes the side of the straight way between the marks.
"""

from dataclasses import dataclass

import numpy as np

from enclosure_app.geometry.rims.closest import (
    Chords,
    chords_between,
    foot,
    joined,
    near_pairs,
    near_pairs_of,
)
from enclosure_app.geometry.rims.nesting import chords_within
from enclosure_app.geometry.rims.parity import Flips
from enclosure_app.geometry.rims.rims import Bools, Floats, Ints, Rims
from enclosure_app.geometry.runs.polyline import as_points
from enclosure_app.model.place import Point
from enclosure_app.network.fabric.fabric import Fabric

TOUCHES = -1


@dataclass(frozen=True, slots=True)
class Links:
    """Chords between rims: segments, points (k, 2) on them, lift (k,) mm, run number or `TOUCHES`."""

    a: Ints
    b: Ints
    at_a: Floats
    at_b: Floats
    lift: Floats
    run: Ints

    def __len__(self) -> int:
        """Return how many links there are."""
        return len(self.a)

    def take(self, which: Ints | Bools) -> "Links":
        """Return only the links picked by a mask or an index."""
        return Links(*(getattr(self, name)[which] for name in self.__slots__))

    def turns(self, flips: Flips) -> Bools:
        """Return for each link whether it changes sides, reckoned along both rims."""
        crossed = flips.way.crossed(self.at_a, self.at_b)
        return np.asarray(crossed ^ flips.at(self.a, self.at_a) ^ flips.at(self.b, self.at_b))

    def bridges(self) -> list[tuple[Point, Point]]:
        """Return the chord across the middle of each lap, from face to face."""
        laps = self.take(self.run != TOUCHES)
        return list(zip(as_points(laps.at_a), as_points(laps.at_b), strict=True))


@dataclass(frozen=True, slots=True)
class Meets:
    """Where rims meet without lapping: `touching` chords with `which` of its pair each is, `nested`."""

    touching: Chords
    which: Ints
    nested: Chords


def meets_of(fabric: Fabric, touch: float) -> Meets:
    """Return where rims touch, and where one solid lies inside another."""
    touching, which = _touching(fabric.rims, near_pairs(fabric.rims, touch), touch)
    return Meets(touching, which, chords_within(fabric.solids[:-1], fabric.rims))


def meets_again(last: Meets, fabric: Fabric, touch: float, moved: Bools) -> Meets:
    """Return `meets_of` the fabric, where only the `moved` (n,) of its segments are not as before."""
    old = last.touching
    kept = np.flatnonzero(~(moved[old.a] | moved[old.b]))
    pairs = near_pairs_of(fabric.rims, np.flatnonzero(moved), touch)
    fresh, which = _touching(fabric.rims, pairs, touch)
    both = joined([old.take(kept), fresh])
    which = np.concatenate([last.which[kept], which])
    order = np.lexsort((both.b, both.a, which))
    nested = chords_within(fabric.solids[:-1], fabric.rims)
    return Meets(both.take(order), which[order], nested)


def _touching(rims: Rims, pairs: tuple[Ints, Ints], touch: float) -> tuple[Chords, Ints]:
    chords = chords_between(rims, *pairs)
    # where a rim only goes on from one segment to the next, it meets nothing
    going_on = (chords.length == 0) & (chords.b == chords.a + 1)
    going_on &= rims.rim[chords.a] == rims.rim[chords.b]
    close = np.flatnonzero((chords.length <= touch) & ~going_on)
    return chords.take(close), close // max(len(pairs[0]), 1)


def links_of(fabric: Fabric, touch: float, meets: Meets | None = None) -> Links:
    """Return every place where pieces meet: touching, lapping, or one lying inside another."""
    meets = meets or meets_of(fabric, touch)
    laps, runs = _lap_chords(fabric)
    every = joined([meets.touching, meets.nested, laps])
    apart = np.full(len(meets.touching.a) + len(meets.nested.a), TOUCHES)
    return Links(
        every.a, every.b, every.at_a, every.at_b, np.zeros(len(every.a)),
        np.concatenate([apart, runs]),
    )  # fmt: skip


def _lap_chords(fabric: Fabric) -> tuple[Chords, Ints]:
    table, runs = fabric.table, fabric.runs
    rim = table[:, [0, 3]].astype(np.intp)
    a, at_a = _on_rims(fabric, rim[:, 0], table[:, 6])
    b, at_b = _on_rims(fabric, rim[:, 1], table[:, 7])
    numbers = np.arange(len(runs))
    return Chords(a, b, at_a, at_b, np.zeros(len(runs))), numbers


def _on_rims(fabric: Fabric, axis: Ints, at: Floats) -> tuple[Ints, Floats]:
    """Return segment and point on the solids' rims nearest to places on axes."""
    segments, points = fabric.axes.locate(axis, at)
    segments = segments.copy()
    owners = fabric.axes.owner[axis]
    shift = _first_segments(fabric.rims, owners) - _first_segments(fabric.axes, owners)
    segments += shift
    for number in np.flatnonzero(fabric.half[axis] > 0):
        segments[number], points[number] = _nearest(fabric.rims, owners[number], points[number])
    return segments, points


def _first_segments(rims: Rims, owners: Ints) -> Ints:
    return np.asarray(rims.first[np.searchsorted(rims.owner, owners)])


def _nearest(rims: Rims, owner: int, point: Floats) -> tuple[int, Floats]:
    low, high = np.searchsorted(rims.owner, [owner, owner + 1])
    own = np.arange(rims.first[low], rims.first[high])
    feet = foot(np.broadcast_to(point, (len(own), 2)), rims.start[own], rims.end[own])
    best = int(np.argmin(np.hypot(*(feet - point).T)))
    return int(own[best]), feet[best]
