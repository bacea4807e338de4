"""Where surfaces run side by side, cross, touch, and what a falling drop meets first.

Vectorised questions about `Faces`; y is up, lengths are mm.
"""

from dataclasses import dataclass
from functools import cached_property

import numpy as np
import shapely

from enclosure_app.geometry.rims.index import SegmentIndex, segments
from enclosure_app.geometry.surfaces.faces import Bools, Faces, Floats, Ints, Point

STEEP = 0.1  # a face keeps a drop while it leans over by no more than this (about 6 degrees)
PARALLEL = 0.3  # sine of the widest angle between two sheets that run side by side
_BLUNT = 0.1  # sine of the smallest angle at which a surface bars another
_SAME = 1e-6
_FIRST_LOOK = 64.0


@dataclass(frozen=True, slots=True, eq=False)
class Beside:
    """Edges `f` that run beside edges `e` (pairs), at `e`'s stations from `low` to `high`.

    `apart` is their distance in the middle, positive on the free side of `e`.
    """

    e: Ints
    f: Ints
    low: Floats
    high: Floats
    apart: Floats


@dataclass(frozen=True, slots=True, eq=False)
class Bars:
    """Edges `f` that stand in the way along runs (by number): stations on both, and the corner."""

    run: Ints
    f: Ints
    station: Floats
    corner: Floats


@dataclass(frozen=True, slots=True, eq=False)
class Drops:
    """Falls from `start` (m, 2) down to the heights `floor`; `side` is -1 or 1, where the drop hung.

    A fall passes edges of the owner `skip` (-1: none).
    """

    start: Floats
    side: Floats
    floor: Floats
    skip: Ints


@dataclass(frozen=True, eq=False)
class Surfaces:
    """Faces with an index over their edges."""

    faces: Faces

    @cached_property
    def index(self) -> SegmentIndex:
        """The edges by where they are."""
        return SegmentIndex.of(self.faces.a, self.faces.b)

    def again(self, faces: Faces, edges: Ints) -> "Surfaces":
        """Return the surfaces of the same `faces`, those in `edges` being elsewhere now."""
        surfaces = Surfaces(faces)
        surfaces.__dict__["index"] = self.index.again(edges, faces.a, faces.b)
        return surfaces

    def beside(self, edges: Ints, reach: float) -> Beside:
        """Return the edges of other owners that run beside `edges` within `reach`."""
        faces = self.faces
        band = reach + 2 * float(faces.half.max(initial=0.0))
        ends = faces.a[edges], faces.b[edges]
        (left, low), (right, high) = (np.minimum(*ends) - band).T, (np.maximum(*ends) + band).T
        near = self.index.query(shapely.box(left, low, right, high))  # `_overlaps` measures
        e, f = edges[near[0]], near[1]
        lean = np.abs(np.sum(faces.along[f] * faces.normal[e], axis=1))
        keep = (faces.owner[e] != faces.owner[f]) & (lean < PARALLEL)
        return _overlaps(faces, e[keep], f[keep], reach)

    def bars(self, runs: Ints, start: Floats, end: Floats, height: Floats) -> Bars:
        """Return the surfaces that bar the way of a drop along runs.

        A run is twice its edge's number, plus one where it goes against the edge. `height` is
        how far from the edge a surface still bars the way. `start` and `end` are (m, 2).
        """
        e = runs // 2
        faces = self.faces
        lifted = faces.normal[e] * height[:, None]
        hit = self.index.query(segments(start + lifted, end + lifted), predicate="intersects")
        at, f = hit
        heading = _heading(faces, runs[at])
        facing = np.sum(faces.normal[f] * heading, axis=1)
        keep = (faces.owner[e[at]] != faces.owner[f]) & (facing < -_BLUNT)
        at, f, heading = at[keep], f[keep], heading[keep]
        corner = _corners(faces, runs[at], f)
        station = np.sum((corner - _run_start(faces, runs[at])) * heading, axis=1)
        return Bars(runs[at], f, np.clip(station, 0.0, faces.length[e[at]]), corner)

    def crossed(self, start: Floats, end: Floats) -> Bools:
        """Return whether any surface crosses each straight way from `start` to `end`, (m, 2)."""
        hit = self.index.query(segments(start, end), predicate="intersects")
        crossed = np.zeros(len(start), dtype=bool)
        crossed[hit[0]] = True
        return crossed

    def first_met(self, start: Floats, end: Floats) -> tuple[Ints, Floats]:
        """Return the first edge on each straight way (m, 2), -1 where none, and where, as a share.

        The share of a way that meets nothing is infinite.
        """
        way, edge = self.index.query(segments(start, end), predicate="intersects")
        share = _shares(self.faces, start[way], end[way], edge)
        first, least = np.full(len(start), -1, dtype=np.intp), np.full(len(start), np.inf)
        order = np.lexsort((-edge, -share, way))  # the last one written stands
        first[way[order]], least[way[order]] = edge[order], share[order]
        return first, least

    def touching(self, points: Floats, reach: Floats) -> tuple[Ints, Ints]:
        """Return pairs (place in `points`, edge) no further apart than `reach` (m,)."""
        return self.index.within(np.asarray(shapely.points(points)), reach)

    def walls_below(self, points: Floats, floor: Floats, reach: float) -> tuple[Ints, Ints]:
        """Return pairs (place in `points`, edge) beside or below each point.

        Edges lie down to `floor` (m,) and no further than `reach` to either side.
        """
        x, y = points.T
        boxes = shapely.box(x - reach, floor, x + reach, y)
        return self.index.query(boxes)

    def fall(self, drops: Drops, reach: float) -> tuple[Ints, Floats]:
        """Return the edge each drop lands on or clings to (-1: none), and where.

        A drop clings to a steep face that it comes past no further away than `reach`.
        """
        count = len(drops.start)
        found = np.full(count, -1, dtype=np.intp)
        places = drops.start.copy()
        left = np.arange(count)
        upper, window = 0.0, _FIRST_LOOK
        while len(left):
            pair, edge, place = self._seen(drops, left, (upper, upper + window), reach)
            found[pair], places[pair] = edge, place
            deep = drops.start[left, 1] - drops.floor[left] > upper + window
            left = left[(found[left] < 0) & deep]
            upper, window = upper + window, window * 4
        return found, places

    def _seen(
        self, drops: Drops, which: Ints, window: tuple[float, float], reach: float
    ) -> tuple[Ints, Ints, Floats]:
        """Return what the falls `which` meet first between two depths: fall, edge, place."""
        x, y = drops.start[which].T
        boxes = shapely.box(x - reach, y - window[1], x + reach, y - window[0] + _SAME)
        near, edge = self.index.query(boxes)
        fall = which[near]
        keep = self.faces.owner[edge] != drops.skip[fall]
        fall, edge = fall[keep], edge[keep]
        score, place = _landing(self.faces, drops, fall, edge, reach)
        keep = np.isfinite(score) & (place[:, 1] >= drops.floor[fall] - _SAME)
        fall, edge, score, place = fall[keep], edge[keep], score[keep], place[keep]
        order = np.lexsort((edge, -score, fall))
        fall, edge, place = fall[order], edge[order], place[order]
        first = np.ones(len(fall), dtype=bool)
        first[1:] = fall[1:] != fall[:-1]
        return fall[first], edge[first], place[first]


def floor_below(frame: tuple[Point, ...], points: Floats) -> Floats:
    """Return the height at which a fall from each point leaves the frame.

    A point outside the frame leaves at once: its own height.
    """
    ring = np.asarray(frame, dtype=float)
    x1, y1 = ring.T
    x2, y2 = np.roll(ring, -1, axis=0).T
    x, y = points[:, :1], points[:, 1:]
    spans = (x1 <= x) != (x2 <= x)
    with np.errstate(divide="ignore", invalid="ignore"):
        height = y1 + (x - x1) / (x2 - x1) * (y2 - y1)
    below = spans & (height <= y)
    inside = below.sum(axis=1) % 2 == 1
    floor = np.where(below, height, -np.inf).max(axis=1, initial=-np.inf)
    return np.where(inside, floor, points[:, 1])


def near_ring(ring: tuple[Point, ...], points: Floats, reach: float) -> Bools:
    """Return which points (n, 2) lie no further than `reach` from the line of a ring."""
    line = shapely.LinearRing(ring)
    shapely.prepare(line)
    near: Bools = np.asarray(shapely.dwithin(line, shapely.points(points), reach), dtype=bool)
    return near


def out_of_ring(ring: tuple[Point, ...], points: Floats) -> Bools:
    """Return which points (n, 2) lie outside a ring."""
    area = shapely.Polygon(ring)
    shapely.prepare(area)
    return ~np.asarray(shapely.intersects_xy(area, points), dtype=bool)


def _heading(faces: Faces, runs: Ints) -> Floats:
    way: Floats = faces.along[runs // 2] * np.where(runs % 2, -1.0, 1.0)[:, None]
    return way


def _run_start(faces: Faces, runs: Ints) -> Floats:
    return np.where((runs % 2 == 1)[:, None], faces.b[runs // 2], faces.a[runs // 2])


def _overlaps(faces: Faces, e: Ints, f: Ints, reach: float) -> Beside:
    along, normal, origin = faces.along[e], faces.normal[e], faces.a[e]
    to_a, to_b = faces.a[f] - origin, faces.b[f] - origin
    ta, tb = np.sum(to_a * along, axis=1), np.sum(to_b * along, axis=1)
    sa, sb = np.sum(to_a * normal, axis=1), np.sum(to_b * normal, axis=1)
    low = np.maximum(np.minimum(ta, tb), 0.0)
    high = np.minimum(np.maximum(ta, tb), faces.length[e])
    span = np.where(np.abs(tb - ta) < _SAME, 1.0, tb - ta)
    apart = sa + (sb - sa) * ((low + high) / 2 - ta) / span
    gap = np.maximum(np.abs(apart) - faces.half[e] - faces.half[f], 0.0)
    keep = (high - low > np.maximum(gap, _SAME)) & (gap <= reach)
    return Beside(e[keep], f[keep], low[keep], high[keep], apart[keep])


def _corners(faces: Faces, runs: Ints, f: Ints) -> Floats:
    """Return where the lines of two edges cross, moved onto the edge `f`."""
    e = runs // 2
    u, v = faces.along[e], faces.along[f]
    gap = faces.a[f] - faces.a[e]
    cross = u[:, 0] * v[:, 1] - u[:, 1] * v[:, 0]
    station = (gap[:, 0] * u[:, 1] - gap[:, 1] * u[:, 0]) / cross
    on_f = np.clip(station, 0.0, faces.length[f])
    corner: Floats = faces.a[f] + v * on_f[:, None]
    return corner


def _shares(faces: Faces, start: Floats, end: Floats, edge: Ints) -> Floats:
    """Return at which share of each way from `start` to `end` it comes to the line of an edge."""
    normal = faces.normal[edge]
    onto = np.sum((faces.a[edge] - start) * normal, axis=1)
    whole = np.sum((end - start) * normal, axis=1)
    along = np.abs(whole) <= _SAME
    return np.where(along, 0.0, np.clip(onto / np.where(along, 1.0, whole), 0.0, 1.0))


def _landing(
    faces: Faces, drops: Drops, fall: Ints, edge: Ints, reach: float
) -> tuple[Floats, Floats]:
    """Return for each pair how early the drop meets the edge (-inf: never) and where.

    A face to the side counts as late as it is far: the drop comes to it at 45 degrees.
    """
    start = drops.start[fall]
    on_top, height = _hit(faces, start, edge)
    beside, cling, away = _cling(faces, start, drops.side[fall], edge)
    beside &= (away <= reach) & ~on_top
    score = np.where(on_top, height, np.where(beside, cling[:, 1] - away, -np.inf))
    place = np.where(on_top[:, None], np.stack([start[:, 0], height], axis=1), cling)
    return score, place


def _hit(faces: Faces, start: Floats, edge: Ints) -> tuple[Bools, Floats]:
    a, b = faces.a[edge], faces.b[edge]
    x, y = start.T
    width = b[:, 0] - a[:, 0]
    upward = width < -_SAME  # the free side of an edge that runs to the left is its upper one
    share = np.where(upward, (x - a[:, 0]) / np.where(upward, width, 1.0), -1.0)
    height = a[:, 1] + share * (b[:, 1] - a[:, 1])
    return upward & (share >= 0) & (share <= 1) & (height <= y + _SAME), np.minimum(height, y)


def _cling(faces: Faces, start: Floats, side: Floats, edge: Ints) -> tuple[Bools, Floats, Floats]:
    a, b, normal = faces.a[edge], faces.b[edge], faces.normal[edge]
    top = np.minimum(np.maximum(a[:, 1], b[:, 1]), start[:, 1])
    rise = b[:, 1] - a[:, 1]
    steep = (np.abs(normal[:, 1]) <= STEEP) & (np.minimum(a[:, 1], b[:, 1]) < top - _SAME)
    share = np.where(steep, (top - a[:, 1]) / np.where(rise == 0, 1.0, rise), 0.0)
    place = np.stack([a[:, 0] + share * (b[:, 0] - a[:, 0]), top], axis=1)
    from_face = start[:, 0] - place[:, 0]
    seen = np.where(np.abs(from_face) < _SAME, side, from_face) * normal[:, 0] > 0
    return steep & seen, place, np.abs(from_face)
