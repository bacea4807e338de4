"""Nearest points between many pairs of straight segments, and which pairs may be near at all."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import shapely
from numpy.typing import NDArray

from enclosure_app.geometry.rims.rims import Floats, Ints, Rims

SAME_LENGTH = 1e-7  # mm: chords this near in length are equally long
SLACK = 1e-6  # mm: rounding of an extent never decides what is near
PARALLEL = 1e-12  # sine of the angle at which rounding makes two directions differ


@dataclass(frozen=True, slots=True)
class Chords:
    """The shortest straight ways between pairs of segments.

    `a`, `b` (k,) segment numbers; `at_a`, `at_b` (k, 2) mm; `length` (k,) mm, 0 at a crossing.
    """

    a: Ints
    b: Ints
    at_a: Floats
    at_b: Floats
    length: Floats

    def take(self, which: Ints | NDArray[np.bool_]) -> "Chords":
        """Return only the chords picked by a mask or an index."""
        return Chords(
            self.a[which],
            self.b[which],
            self.at_a[which],
            self.at_b[which],
            self.length[which],
        )


def joined(several: Sequence[Chords]) -> Chords:
    """Return the chords of all tables in one."""
    return Chords(
        *(np.concatenate([getattr(each, name) for each in several]) for name in Chords.__slots__)
    )


def near_pairs(rims: Rims, reach: float) -> tuple[Ints, Ints]:
    """Return the pairs of segments (a < b), in order, whose extents come within `reach` mm.

    The pairs are candidates: extents are compared, since the caller measures the chords anyway.
    """
    low = np.minimum(rims.start, rims.end) - (reach + SLACK)
    high = np.maximum(rims.start, rims.end) + (reach + SLACK)
    widened = np.asarray(shapely.linestrings(np.stack([low, high], axis=1)), dtype=object)
    a, b = shapely.STRtree(rims.lines).query(widened)
    upper = a < b
    return _in_order(a[upper], b[upper], len(rims.rim))


def near_extents(low: Floats, high: Floats, reach: float) -> tuple[Ints, Ints]:
    """Return the pairs (a <= b) of extents, from `low` to `high` (n, 2), that come within `reach` mm."""
    (left, lower), (right, upper) = low.T, high.T
    tree = shapely.STRtree(shapely.box(left, lower, right, upper))
    widened = shapely.box(left - reach, lower - reach, right + reach, upper + reach)
    a, b = tree.query(widened)
    return a[a <= b], b[a <= b]


def near_pairs_of(rims: Rims, segments: Ints, reach: float) -> tuple[Ints, Ints]:
    """Return those of `near_pairs` in which at least one of a few `segments` takes part."""
    low, high = np.minimum(rims.start, rims.end), np.maximum(rims.start, rims.end)
    near = np.ones((len(segments), len(low)), dtype=bool)
    for axis in (0, 1):
        near &= low[segments, axis, None] - (reach + SLACK) <= high[:, axis]
        near &= high[segments, axis, None] + (reach + SLACK) >= low[:, axis]
    row, other = np.nonzero(near)
    own = segments[row]
    a, b = np.minimum(own, other)[own != other], np.maximum(own, other)[own != other]
    keys = np.unique(a * len(rims.rim) + b)
    return keys // len(rims.rim), keys % len(rims.rim)


def _in_order(a: Ints, b: Ints, number: int) -> tuple[Ints, Ints]:
    order = np.argsort(a * number + b, kind="stable")
    return a[order], b[order]


def chords_between(rims: Rims, a: Ints, b: Ints) -> Chords:
    """Return every shortest vertex-to-segment chord of the segment pairs, four for each pair.

    A crossing pair gives chords of length 0 at the crossing instead. All four are given because
    two chords of one pair may pass on different sides of a mark.
    """
    p, q, r, s = rims.start[a], rims.end[a], rims.start[b], rims.end[b]
    on_b_of_p, on_b_of_q = foot(p, r, s), foot(q, r, s)
    on_a_of_r, on_a_of_s = foot(r, p, q), foot(s, p, q)
    at_a = np.concatenate([p, q, on_a_of_r, on_a_of_s])
    at_b = np.concatenate([on_b_of_p, on_b_of_q, r, s])
    crossing, where = crossings(p, q, r, s)
    four = np.tile(crossing, 4)
    at_a[four] = at_b[four] = np.tile(where, (4, 1))[four]
    return Chords(np.tile(a, 4), np.tile(b, 4), at_a, at_b, np.hypot(*(at_a - at_b).T))


def level_chords(chords: Chords) -> Chords:
    """Return the chord half way along each pair of segments that face each other in parallel.

    `chords` are all four of each pair, as from `chords_between`. Between parallel faces any place
    is as near as another; the middle does not depend on which was drawn first.
    """
    length, at_a = chords.length.reshape(4, -1), chords.at_a.reshape(4, -1, 2)
    shortest = length.min(axis=0, initial=np.inf)
    least = length <= shortest + SAME_LENGTH
    first = np.take_along_axis(at_a, least.argmax(axis=0)[None, :, None], axis=0)
    spread = np.where(least, np.abs(at_a - first).max(axis=2), 0.0).max(axis=0, initial=0.0)
    level = np.flatnonzero((shortest > 0) & (spread > SAME_LENGTH))
    weights = least[:, level, None] / least[:, level].sum(axis=0)[:, None]
    middle_a = (at_a[:, level] * weights).sum(axis=0)
    middle_b = (chords.at_b.reshape(4, -1, 2)[:, level] * weights).sum(axis=0)
    a, b = chords.a[level], chords.b[level]
    return Chords(a, b, middle_a, middle_b, np.hypot(*(middle_a - middle_b).T))


def cross(u: Floats, v: Floats) -> Floats:
    """Return the cross product (k,) of vectors (k, 2): positive where v turns left of u."""
    return np.asarray(u[:, 0] * v[:, 1] - u[:, 1] * v[:, 0])


def foot(points: Floats, start: Floats, end: Floats) -> Floats:
    """Return the nearest point (k, 2) of each segment to each point (k, 2)."""
    along = end - start
    squared = (along * along).sum(axis=1)
    t = ((points - start) * along).sum(axis=1) / np.where(squared > 0, squared, 1.0)
    t = np.clip(t, 0.0, 1.0)[:, None]
    # the ends themselves must come back unrounded, so that shared corners stay shared
    return np.where(t >= 1.0, end, start + t * along)


def crossings(p: Floats, q: Floats, r: Floats, s: Floats) -> tuple[NDArray[np.bool_], Floats]:
    """Return which segment pairs p-q, r-s cross, and where (k, 2)."""
    u, v, w = q - p, s - r, r - p
    det = u[:, 0] * v[:, 1] - u[:, 1] * v[:, 0]
    size = np.abs(u).max(axis=1) * np.abs(v).max(axis=1)
    apart = np.abs(det) > PARALLEL * size
    safe = np.where(apart, det, 1.0)
    t = (w[:, 0] * v[:, 1] - w[:, 1] * v[:, 0]) / safe
    k = (w[:, 0] * u[:, 1] - w[:, 1] * u[:, 0]) / safe
    hit = apart & (t >= 0) & (t <= 1) & (k >= 0) & (k <= 1)
    return hit, p + np.clip(t, 0, 1)[:, None] * u
