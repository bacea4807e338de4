"""On which side of a closed curve points lie, and how far from it."""

from dataclasses import dataclass
from functools import cached_property

import numpy as np
import shapely
from numpy.typing import NDArray

from enclosure_app.geometry.rims.nearest import FEW, nearest_segments
from enclosure_app.geometry.rims.rims import Bools, Floats

_NONE = np.zeros((0, 2, 2))
_PLACES = (0.0, 0.5, 0.25, 0.75)  # of a curve, where the other one is compared from


@dataclass(frozen=True)
class ClosedCurve:
    """A closed polyline that may cross itself; `points` (m, 2) without the repeated first point."""

    points: Floats

    @cached_property
    def lies(self) -> bool:
        """Whether it is wider than high."""
        x, y = self.points.T
        return bool(x.max() - x.min() > y.max() - y.min())

    def encloses(self, points: Floats) -> Bools:
        """Return for each point (k, 2) whether a ray from it crosses the curve an odd number of times."""
        points = np.asarray(points, dtype=np.float64)
        # rays along the short side of the curve's extent meet few of its segments
        turned = slice(None, None, -1 if self.lies else 1)
        return _odd(points[:, turned], self.points[:, turned])

    def distance(self, points: Floats) -> Floats:
        """Return the distance of each point (k, 2) from the curve, mm."""
        return nearest_segments(self.points, np.roll(self.points, -1, axis=0), points)[2]


@dataclass(frozen=True, slots=True)
class Difference:
    """The segments (k, 2, 2) of a curve that are `gone` and those that are `new` in another one."""

    last: ClosedCurve
    curve: ClosedCurve
    gone: Floats
    new: Floats

    def encloses(self, points: Floats, before: Bools) -> Bools:
        """Return which points the curve encloses, where the last one enclosed those of `before`."""
        turned = slice(None, None, -1 if self.curve.lies else 1)
        changed = np.concatenate([self.gone, self.new])[..., turned]
        if not len(changed):
            return before
        level = points[:, turned][:, 1]
        low, high = changed[..., 1].min(), changed[..., 1].max()
        near = np.flatnonzero((level >= low) & (level <= high))
        if not len(near):
            return before
        x, y = points[near][:, turned].T[:, :, None]
        hits = _hits((x, y), changed[:, 0], changed[:, 1])
        held = before.copy()
        held[near] ^= hits.sum(axis=1) % 2 == 1
        return held

    def distance(self, points: Floats, before: Floats) -> Floats:
        """Return the distance of points (k, 2) from the curve, `before` being those from the last."""
        away = before.copy()
        changed = np.concatenate([self.gone, self.new]).reshape(-1, 2)
        if not len(changed):
            return away
        (left, low), (right, high) = changed.min(axis=0), changed.max(axis=0)
        x, y = points.T
        across, up = np.maximum(left - x, x - right), np.maximum(low - y, y - high)
        near = np.flatnonzero((across <= before) & (up <= before))
        if not len(near):
            return away
        lost = _least(self.gone, points[near]) <= before[near]
        away[near] = np.minimum(before[near], _least(self.new, points[near]))
        away[near[lost]] = self.curve.distance(points[near[lost]])
        return away


def difference(last: ClosedCurve, curve: ClosedCurve) -> Difference | None:
    """Return how two curves differ; None where they have no place in common that was looked for."""
    turned = _from_one_place(last.points, curve.points) if last.lies == curve.lies else None
    if turned is None:
        return None
    a, b = turned
    least = min(len(a), len(b))
    head = _alike(a[:least], b[:least])
    if head == len(a) == len(b):
        return Difference(last, curve, _NONE, _NONE)
    tail = min(_alike(a[::-1][:least], b[::-1][:least]), least - head)
    return Difference(
        last, curve, _segments(a)[head - 1 : len(a) - tail], _segments(b)[head - 1 : len(b) - tail]
    )


def _from_one_place(a: Floats, b: Floats) -> tuple[Floats, Floats] | None:
    """Return both curves from a place that they have in common, their first one if they can."""
    for share in _PLACES:
        start = int(len(a) * share)
        x, y = a[start]
        same = np.flatnonzero((b[:, 0] == x) & (b[:, 1] == y))
        if len(same):
            return _begun(a, start), _begun(b, int(same[0]))
    return None


def _begun(curve: Floats, start: int) -> Floats:
    return np.roll(curve, -start, axis=0) if start else curve


def _alike(a: Floats, b: Floats) -> int:
    """Return how many rows are the same before the first that is not."""
    same = (a[:, 0] == b[:, 0]) & (a[:, 1] == b[:, 1])
    return len(a) if same.all() else int(np.argmin(same))


def _least(segments: Floats, points: Floats) -> Floats:
    if not len(segments):
        return np.full(len(points), np.inf)
    return nearest_segments(segments[:, 0], segments[:, 1], points)[2]


def _segments(curve: Floats) -> Floats:
    return np.stack([curve, np.roll(curve, -1, axis=0)], axis=1)


def _odd(points: Floats, curve: Floats) -> Bools:
    """Count crossings of rays in the direction of x; a segment owns its lower end only."""
    if not len(points):
        return np.zeros(0, dtype=bool)
    level, here, there = points[:, 1], curve[:, 1], np.roll(curve[:, 1], -1)
    met = np.maximum(here, there) >= level.min()
    ends = _segments(curve)[met & (np.minimum(here, there) <= level.max())]
    if len(points) * len(ends) <= FEW:
        hits = _hits((points[:, :1], points[:, 1:]), ends[:, 0], ends[:, 1])
        return np.asarray(hits.sum(axis=1) % 2 == 1)
    tree = shapely.STRtree(np.asarray(shapely.linestrings(ends), dtype=object))
    reach = np.maximum(float(curve[:, 0].max()), points[:, 0]) + 1.0
    rays = np.stack([points, np.column_stack([reach, points[:, 1]])], axis=1)
    ray, segment = tree.query(shapely.linestrings(rays))
    x, y = points[ray].T
    hit = _hits((x, y), ends[segment, 0], ends[segment, 1])
    return np.asarray(np.bincount(ray[hit], minlength=len(points)) % 2 == 1)


def _hits(point: tuple[Floats, Floats], start: Floats, end: Floats) -> NDArray[np.bool_]:
    """Return whether rays from points meet segments, in the shape that the two make together."""
    (x, y), (ax, ay), (bx, by) = point, start.T, end.T
    spans = (ay <= y) != (by <= y)
    share = np.divide(y - ay, by - ay, out=np.zeros_like(y - ay), where=spans)
    return np.asarray(spans & (ax + share * (bx - ax) > x))
