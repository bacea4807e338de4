"""Cuts runs and areas along a frame."""

from collections.abc import Sequence
from itertools import pairwise

import numpy as np
import shapely
from numpy.typing import NDArray

from enclosure_app.geometry.outlines.chaining import canonical_ring, tidy
from enclosure_app.geometry.rims.solids import Solid, area_solid

Point = tuple[float, float]
Points = tuple[Point, ...]
Ring = Sequence[Point]
Boxes = NDArray[np.float64]

SLOP = 1e-3  # mm: what runs along the frame counts as inside
LEAST = 0.5  # mm: shorter scraps are dropped


def within(points: Sequence[Point], ring: Ring) -> NDArray[np.bool_]:
    """Return for each point whether it lies in the ring or on it."""
    if not points:
        return np.zeros(0, dtype=bool)
    frame = shapely.Polygon(ring)
    shapely.prepare(frame)
    return np.asarray(shapely.intersects_xy(frame, np.array(points)), dtype=bool)


def reaching(solids: Sequence[Solid], ring: Ring, reach: float) -> NDArray[np.bool_]:
    """Return for each solid whether it comes within `reach` mm of what the ring encloses."""
    frame = area_solid(ring)
    shapely.prepare(frame)
    return np.asarray(shapely.dwithin(frame, np.asarray(solids, dtype=object), reach), dtype=bool)


def reaching_points(points: Sequence[Point], ring: Ring, reach: float) -> NDArray[np.bool_]:
    """Return for each point whether it lies within `reach` mm of what the ring encloses."""
    return reaching([shapely.Point(point) for point in points], ring, reach)


def inside_of(boxes: Boxes, ring: Ring) -> NDArray[np.bool_]:
    """Return which extents (n, 4) surely lie in a ring: none where it is more than an upright box."""
    left, low, right, high = boxes_of([ring])[0]
    box = area_solid(ring).area >= (right - left) * (high - low) * (1 - 1e-12)
    inside = (boxes[:, :2] >= (left, low)).all(axis=1) & (boxes[:, 2:] <= (right, high)).all(
        axis=1
    )
    return np.asarray(inside & box)


def boxes_of(runs: Sequence[Ring]) -> Boxes:
    """Return the extents (n, 4) of runs: left, low, right, high."""
    if not runs:
        return np.zeros((0, 4))
    points = np.concatenate([np.asarray(run, dtype=np.float64) for run in runs])
    first = np.concatenate([[0], np.cumsum([len(run) for run in runs])[:-1]])
    low, high = np.minimum.reduceat(points, first), np.maximum.reduceat(points, first)
    return np.hstack([low, high])


def overlapping(boxes: Boxes, ring: Ring) -> NDArray[np.bool_]:
    """Return which extents (n, 4) meet the extent of a ring."""
    left, low, right, high = boxes_of([ring])[0]
    return np.asarray(
        (boxes[:, 2] >= left - SLOP)
        & (boxes[:, 0] <= right + SLOP)
        & (boxes[:, 3] >= low - SLOP)
        & (boxes[:, 1] <= high + SLOP)
    )


def standing(runs: Sequence[Ring], ring: Ring) -> tuple[NDArray[np.bool_], NDArray[np.bool_]]:
    """Return for each run (two points or more) whether it lies wholly, and partly, in the ring."""
    if not runs:
        return np.zeros(0, dtype=bool), np.zeros(0, dtype=bool)
    frame = shapely.buffer(shapely.Polygon(ring), SLOP, join_style="mitre")
    shapely.prepare(frame)
    index = np.repeat(np.arange(len(runs)), [len(run) for run in runs])
    lines = shapely.linestrings(np.concatenate([np.asarray(run) for run in runs]), indices=index)
    return (
        np.asarray(shapely.covers(frame, lines), dtype=bool),
        np.asarray(shapely.intersects(frame, lines), dtype=bool),
    )


def clip_run(points: Points, ring: Ring, *, closed: bool = False) -> tuple[Points, ...]:
    """Return the stretches of a run inside the ring, in order, each ending on the frame or itself.

    A closed run that crosses the ring gives open stretches.
    """
    run = _opened(points, ring) if closed else points
    frame = shapely.buffer(shapely.Polygon(ring), SLOP, join_style="mitre")
    shapely.prepare(frame)
    stretches: list[list[Point]] = []
    on = False
    for a, b in pairwise(run):
        for p, q in pairwise(_cut(a, b, np.array(ring))):
            middle = (p[0] + q[0]) / 2, (p[1] + q[1]) / 2
            inside = bool(shapely.intersects_xy(frame, *middle))
            if inside and on:
                stretches[-1].append(q)
            elif inside:
                stretches.append([p, q])
            on = inside
    tidied = (tidy(stretch) for stretch in stretches)
    return tuple(s for s in tidied if len(s) > 1 and shapely.LineString(s).length > LEAST)


def clip_area(
    outer: Points, holes: Sequence[Points], ring: Ring
) -> tuple[tuple[Points, tuple[Points, ...]], ...]:
    """Return the parts of an area inside the ring as outer rings with their holes."""
    common = shapely.intersection(area_solid(outer, holes), shapely.Polygon(ring))
    parts = [part for part in shapely.get_parts(common) if isinstance(part, shapely.Polygon)]
    return tuple(
        (_ring(part.exterior), tuple(_ring(hole) for hole in part.interiors))
        for part in sorted(parts, key=lambda part: part.bounds)
        if part.area > LEAST * LEAST
    )


def without_strip(ring: Ring, strip: Ring) -> Points:
    """Return the largest part of the ring outside a convex strip."""
    left = shapely.difference(shapely.Polygon(ring), shapely.Polygon(strip))
    parts = [part for part in shapely.get_parts(left) if isinstance(part, shapely.Polygon)]
    return _ring(max(parts, key=lambda part: part.area).exterior) if parts else tuple(ring)


def sampled(runs: Sequence[Ring], step: float) -> NDArray[np.float64]:
    """Return points (n, 2) on all runs, no further apart along them than `step`."""
    if not runs:
        return np.zeros((0, 2))
    index = np.repeat(np.arange(len(runs)), [len(run) for run in runs])
    lines = shapely.linestrings(np.concatenate([np.asarray(run) for run in runs]), indices=index)
    return np.asarray(shapely.get_coordinates(shapely.segmentize(lines, step)))


def _ring(ring: shapely.LinearRing) -> Points:
    points = tidy([(float(x), float(y)) for x, y in ring.coords[:-1]], closed=True)
    return canonical_ring(points)


def _opened(points: Points, ring: Ring) -> Points:
    """Open a closed run at a point outside the ring, where there is one."""
    outside = np.flatnonzero(~within(points, ring))
    start = int(outside[0]) if len(outside) else 0
    return (*points[start:], *points[:start], points[start])


def _cut(a: Point, b: Point, ring: NDArray[np.float64]) -> list[Point]:
    """Return a, the places where the segment to b meets the ring's edges, and b."""
    start, step = ring, np.roll(ring, -1, axis=0) - ring
    ux, uy = b[0] - a[0], b[1] - a[1]
    det = ux * step[:, 1] - uy * step[:, 0]
    wx, wy = start[:, 0] - a[0], start[:, 1] - a[1]
    # along an edge and through its corner, rounding must not miss both edges that meet there
    slack = SLOP / np.hypot(step[:, 0], step[:, 1])
    with np.errstate(divide="ignore", invalid="ignore", over="ignore"):
        t = (wx * step[:, 1] - wy * step[:, 0]) / det
        s = (wx * uy - wy * ux) / det
    met = np.sort(t[(t > 0) & (t < 1) & (s >= -slack) & (s <= 1 + slack)])
    return [a, *((a[0] + float(k) * ux, a[1] + float(k) * uy) for k in met), b]
