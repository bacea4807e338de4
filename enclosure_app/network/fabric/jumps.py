"""Jumps: the shortest chord of each turn between each two clusters of rims that links do not join.

Of two clusters only the shortest jump of each turn can be part of a shortest round. So segments are
taken in groups that lie together, and what is further apart than some way of the same clusters and
turn is left out before any chord is measured: a drawing has millions of chords, and hundreds of these.
"""

from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np

from enclosure_app.geometry.rims.closest import (
    Chords,
    chords_between,
    joined,
    level_chords,
    near_extents,
    near_pairs,
)
from enclosure_app.geometry.rims.parity import Flips, Way
from enclosure_app.geometry.rims.rims import Bools, Floats, Ints
from enclosure_app.network.fabric.clusters import Clusters
from enclosure_app.network.fabric.fabric import Fabric
from enclosure_app.network.fabric.links import TOUCHES, Links
from enclosure_app.progress import go_on

GROUP = 16  # segments that are looked at together at most
MARGIN = 1e-3  # mm: what is that near to an end of the way is not sure to pass it
AT_ONCE = 1_000_000  # pairs of segments that are looked at together at most
ALIKE = 7  # decimals of a mm to which lifts are compared

Pairs = tuple[Ints, Ints]


def jumps_of(fabric: Fabric, touch: float, reach: float, pairs: Pairs | None = None) -> Links:
    """Return every chord between rims longer than `touch` and no longer than `reach`.

    `pairs` are the segments between which they are looked for: by default all that are near.
    """
    ends = chords_between(fabric.rims, *(pairs or near_pairs(fabric.rims, reach)))
    middles = level_chords(ends)
    middles = middles.take(~_at_frame(fabric, middles))  # to the frame, a sheet's end is the place
    chords = joined(
        [each.take((each.length > touch) & (each.length <= reach)) for each in (middles, ends)]
    )
    run = np.full(len(chords.a), TOUCHES)
    return Links(chords.a, chords.b, chords.at_a, chords.at_b, chords.length, run)


@dataclass(frozen=True, slots=True, eq=False)
class Jumps:
    """Where to look for the jumps between the `clusters` that links have joined."""

    fabric: Fabric
    flips: Flips
    cluster: Ints
    parity: Bools
    near: "_Near"

    @classmethod
    def between(cls, fabric: Fabric, flips: Flips, clusters: Clusters) -> "Jumps":
        """Get ready to look for jumps between clusters of a fabric's rims."""
        cluster, parity = clusters.table()
        near = _Near.of(_items(flips, cluster, parity))
        return cls(fabric, flips, cluster, parity, near)

    def within(self, touch: float, reach: float) -> Links:
        """Return the shortest jump of each turn between each pair of clusters, shortest first.

        Only jumps longer than `touch` and no longer than `reach` mm are looked for.
        """
        jumps = jumps_of(self.fabric, touch, reach, self.near.pairs(reach))
        rim_a, rim_b = self.fabric.rims.rim[jumps.a], self.fabric.rims.rim[jumps.b]
        turn = jumps.turns(self.flips) ^ self.parity[rim_a] ^ self.parity[rim_b]
        a, b = self.cluster[rim_a], self.cluster[rim_b]
        useful = (a != b) | turn
        key = _keys(a, b, turn, len(self.cluster))[useful]
        jumps = jumps.take(useful)
        order = np.argsort(np.round(jumps.lift, ALIKE), kind="stable")
        _, first = np.unique(key[order], return_index=True)
        return jumps.take(order[np.sort(first)])


def _keys(a: Ints, b: Ints, turn: Bools, count: int) -> Ints:
    """Return one key for each pair of clusters (of `count`) and turn."""
    return np.asarray((np.minimum(a, b) * count + np.maximum(a, b)) * 2 + turn)


def _at_frame(fabric: Fabric, chords: Chords) -> Bools:
    owner = fabric.rims.owner[fabric.rims.rim]
    return np.asarray((owner[chords.a] == fabric.frame) | (owner[chords.b] == fabric.frame))


@dataclass(frozen=True, slots=True, eq=False)
class _Items:
    """Segments, or groups of them, each of one cluster and on one side.

    Places are (x, y, off the straight way between the marks, along it), mm. `low` and `high`
    (n, 4) are extents, `at` (k, n, 4) places that belong to the items. `side` is the parity of
    each in its cluster, where it is `sure` not to cross the way. `way` is the length of the way.
    """

    low: Floats
    high: Floats
    at: Floats
    cluster: Ints
    side: Bools
    sure: Bools
    way: float

    def within(self, reach: float) -> Pairs:
        """Return the pairs, each with itself as well, of which the extents come within `reach` mm."""
        return near_extents(self.low[:, :2], self.high[:, :2], reach + MARGIN)

    def gap(self, a: Ints, b: Ints) -> Floats:
        """Return a distance that the two of each pair are at least apart."""
        apart = np.maximum(self.low[a] - self.high[b], self.low[b] - self.high[a])
        np.maximum(apart, 0.0, out=apart)
        return np.asarray(
            np.maximum(np.hypot(apart[:, 0], apart[:, 1]), np.hypot(apart[:, 2], apart[:, 3]))
        )

    def distance(self, a: Ints, b: Ints) -> Floats:
        """Return a distance that the two of each pair are at most apart."""
        return np.asarray(
            np.min(
                [
                    np.hypot(one[a, 0] - other[b, 0], one[a, 1] - other[b, 1])
                    for one in self.at
                    for other in self.at
                ],
                axis=0,
            )
        )

    def passing(self, a: Ints, b: Ints) -> tuple[Bools, Bools]:
        """Return whether chords between the two of each pair cross the way, and whether that is sure."""
        return _passing((self.low[a], self.high[a]), (self.low[b], self.high[b]), self.way)


def _passing(
    first: tuple[Floats, Floats], second: tuple[Floats, Floats], way: float
) -> tuple[Bools, Bools]:
    """Return whether ways between two extents cross the way, and whether that holds for all of them."""
    (low_a, high_a), (low_b, high_b) = first, second
    off_a, off_b = low_a[:, 2], low_b[:, 2]
    top_a, top_b = high_a[:, 2], high_b[:, 2]
    same = (np.minimum(off_a, off_b) > MARGIN) | (np.maximum(top_a, top_b) < -MARGIN)
    apart = (off_a > MARGIN) & (top_b < -MARGIN) | (off_b > MARGIN) & (top_a < -MARGIN)
    least = np.minimum(low_a[:, 3], low_b[:, 3])
    most = np.maximum(high_a[:, 3], high_b[:, 3])
    near, far = np.minimum(np.abs(off_a), np.abs(top_a)), np.maximum(np.abs(off_a), np.abs(top_a))
    close, away = (
        np.minimum(np.abs(off_b), np.abs(top_b)),
        np.maximum(np.abs(off_b), np.abs(top_b)),
    )
    # where a chord crosses the line of the way, it has gone this share of its length
    with np.errstate(invalid="ignore"):
        shares = near / (near + away), far / (far + close)
    low = np.min([low_a[:, 3] + share * (low_b[:, 3] - low_a[:, 3]) for share in shares], axis=0)
    high = np.max(
        [high_a[:, 3] + share * (high_b[:, 3] - high_a[:, 3]) for share in shares], axis=0
    )
    past = (most < -MARGIN) | (least > way + MARGIN)
    past |= apart & ((high < -MARGIN) | (low > way + MARGIN))
    through = apart & (low > MARGIN) & (high < way - MARGIN)
    return through, same | past | through


def _items(flips: Flips, cluster: Ints, parity: Bools) -> _Items:
    """Return the segments of all rims."""
    rims = flips.rims
    start, end = (_placed(points, flips.way) for points in (rims.start, rims.end))
    length = float(np.hypot(*(flips.way.end - flips.way.start)))
    crosses, sure = _passing((start, start), (end, end), length)
    return _Items(
        low=np.minimum(start, end),
        high=np.maximum(start, end),
        at=np.stack([start, end]),
        cluster=cluster[rims.rim],
        side=flips.at_start ^ parity[rims.rim],
        sure=sure & ~crosses,
        way=length,
    )


def _placed(points: Floats, way: Way) -> Floats:
    """Return (x, y, off the way, along it) of points (k, 2)."""
    along = way.end - way.start
    along = along / (np.hypot(*along) or 1.0)
    moved = points - way.start
    off = along[0] * moved[:, 1] - along[1] * moved[:, 0]
    return np.column_stack([points, off, moved @ along])


@dataclass(frozen=True, slots=True, eq=False)
class _Near:
    """The segments, in an order in which those of a group stand together, and where each begins."""

    items: _Items
    members: Ints
    first: Ints
    groups: _Items

    @classmethod
    def of(cls, items: _Items) -> "_Near":
        members, first = _grouped(items)
        return cls(items, members, first, _groups(items, members, first))

    def pairs(self, reach: float) -> Pairs:
        """Return, in order, all pairs of segments that may have a shortest jump between them."""
        a, b = _useful(self.groups, self.groups.within(reach), reach)
        parts = [
            _useful(self.items, pairs, reach)
            for pairs in _members(self.members, self.first, (a, b))
        ]
        a, b = (np.concatenate([part[side] for part in parts]) for side in (0, 1))
        a, b = _useful(self.items, (a, b), reach)
        order = np.argsort(a * len(self.members) + b, kind="stable")
        return a[order], b[order]


def _grouped(items: _Items) -> tuple[Ints, Ints]:
    """Return the items in an order in which those of one group stand together, and where each begins."""
    x, y = ((items.low + items.high) / 2)[:, :2].T
    strips = np.sqrt(len(x) / GROUP) + 1.0
    strip = np.floor((x - x.min()) / (np.ptp(x) + MARGIN) * strips)
    kind = (items.cluster * 2 + items.side) * 2 + items.sure
    order = np.lexsort((y, strip, kind))
    new = np.append(True, kind[order][1:] != kind[order][:-1])
    count = np.arange(len(order)) - np.flatnonzero(new)[np.cumsum(new) - 1]
    return order, np.flatnonzero(count % GROUP == 0)


def _groups(items: _Items, members: Ints, first: Ints) -> _Items:
    lead = members[first]
    return _Items(
        low=np.minimum.reduceat(items.low[members], first),
        high=np.maximum.reduceat(items.high[members], first),
        at=items.at[:1, lead],
        cluster=items.cluster[lead],
        side=items.side[lead],
        sure=items.sure[lead],
        way=items.way,
    )


def _members(members: Ints, first: Ints, pairs: Pairs) -> Iterator[Pairs]:
    """Yield the pairs (a < b) of members of pairs of groups, some at a time."""
    size = np.diff(np.append(first, len(members)))
    each = size[pairs[0]] * size[pairs[1]]
    for part in np.array_split(np.arange(len(each)), 1 + int(each.sum()) // AT_ONCE):
        go_on()
        a, b = pairs[0][part], pairs[1][part]
        row = np.repeat(np.arange(len(part)), each[part])
        number = np.arange(len(row)) - np.repeat(np.cumsum(each[part]) - each[part], each[part])
        one = members[first[a][row] + number // size[b][row]]
        other = members[first[b][row] + number % size[b][row]]
        low, high = np.minimum(one, other), np.maximum(one, other)
        kept = (one != other) & ((a != b)[row] | (one < other))
        yield low[kept], high[kept]


def _useful(items: _Items, pairs: Pairs, reach: float) -> Pairs:
    """Return the pairs that may have the shortest jump of their clusters and turn between them."""
    a, b = pairs
    passing, sure = items.passing(a, b)
    sure &= items.sure[a] & items.sure[b]
    turn = passing ^ items.side[a] ^ items.side[b]
    same = items.cluster[a] == items.cluster[b]
    kept = np.flatnonzero(~(sure & same & ~turn))
    a, b, sure, turn, same = a[kept], b[kept], sure[kept], turn[kept], same[kept]
    key = _keys(items.cluster[a], items.cluster[b], turn, int(items.cluster.max(initial=0)) + 1)
    least = _Least.of(key[sure], items.distance(a[sure], b[sure]), reach)
    known = least.at(key)
    # either turn may be meant where it is not sure; back to the same cluster only a turn leads
    known = np.where(
        sure, known, np.maximum(np.where(same, 0.0, least.at(key & ~1)), least.at(key | 1))
    )
    close = items.gap(a, b) <= known + MARGIN
    return a[close], b[close]


@dataclass(frozen=True, slots=True, eq=False)
class _Least:
    """The shortest way known for each of some `keys`, in order; `most` for all others."""

    keys: Ints
    way: Floats
    most: float

    @classmethod
    def of(cls, keys: Ints, ways: Floats, most: float) -> "_Least":
        found, back = np.unique(keys, return_inverse=True)
        least = np.full(len(found), most)
        np.minimum.at(least, back, ways)
        return cls(found, least, most)

    def at(self, keys: Ints) -> Floats:
        if not len(self.keys):
            return np.full(len(keys), self.most)
        place = np.minimum(np.searchsorted(self.keys, keys), len(self.keys) - 1)
        return np.where(self.keys[place] == keys, self.way[place], self.most)
