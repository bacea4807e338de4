"""Finds the run of a sheet that was drawn as a thin closed outline.

Words: the *caps* are the two short ends of the outline, the *sides* what lies between them, a
*rung* joins two places of the sides that face each other. The centreline goes through the middles
of the rungs.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import combinations, pairwise
from math import atan2, degrees, dist, hypot, sqrt

import numpy as np
import shapely
from numpy.typing import NDArray

from enclosure_app.geometry.outlines.chaining import length, signed_area, tidy

Point = tuple[float, float]
Points = tuple[Point, ...]
Floats = NDArray[np.float64]

EVEN = 0.2  # the distance between the sides stays within this share of the thickness
MOSTLY = 0.9  # so much of a side keeps that distance; a rounded fold does not
SLENDER = 4.0  # a strip is longer than this many thicknesses
COVER = 0.85  # so much of outline and strip has to be common to both
TRIES = 6


@dataclass(frozen=True, slots=True)
class Strip:
    """The centreline of a thin outline and its thickness, mm."""

    points: Points
    width: float


@dataclass(frozen=True, slots=True)
class _Cap:
    first: int
    last: int
    turn: float


def strip(ring: Sequence[Point]) -> Strip | None:
    """Return the run of a thin outline of even thickness, None where `ring` is something else.

    `ring` (mm) does not repeat its first point. Straight, bent and curved runs are recognised,
    with square, slanted, pointed or round ends.
    """
    if len(ring) < 4:
        return None
    x0, y0 = ring[0]
    local = tidy([(x - x0, y - y0) for x, y in ring], closed=True)
    if len(local) < 4:
        return None
    if signed_area(local) < 0:
        local = local[::-1]
    found = _of_four(local) if len(local) == 4 else _of_many(local)
    if found is None:
        return None
    return Strip(tuple((x + x0, y + y0) for x, y in found.points), found.width)


def mean_thickness(ring: Sequence[Point]) -> tuple[float, float]:
    """Return length and thickness of the straight strip with the same area and girth."""
    half = length([*ring, ring[0]]) / 2
    area = abs(signed_area(ring))
    root = sqrt(max(half * half - 4 * area, 0.0))
    return (half + root) / 2, (half - root) / 2


def _of_four(ring: Points) -> Strip | None:
    """Recognise the commonest strip, a straight one, without any search."""
    sides = [dist(ring[i], ring[(i + 1) % 4]) for i in range(4)]
    a, b, c, d = ring if sides[0] + sides[2] > sides[1] + sides[3] else (*ring[1:], ring[0])
    start, end = _middle(a, d), _middle(b, c)
    run = dist(start, end)
    width = abs(signed_area(ring)) / run if run else 0.0
    if width <= 0 or run <= SLENDER * width:
        return None
    spans = (_off(a, c, d), _off(b, c, d), _off(c, a, b), _off(d, a, b))
    if any(abs(span - width) > EVEN * width for span in spans):
        return None
    return Strip((start, end), width)


def _of_many(ring: Points) -> Strip | None:
    run, thick = mean_thickness(ring)
    if thick <= 0 or run <= SLENDER * thick:
        return None
    tried = sorted(
        (_unlikely(ring, one, other, thick), one.first, other.first, one, other)
        for one, other in combinations(_caps(ring, thick), 2)
        if _apart(one, other, len(ring))
    )
    for *_, one, other in tried[:TRIES]:
        found = _between_caps(ring, one, other)
        if found is not None:
            return found
    return None


def _caps(ring: Points, thick: float) -> list[_Cap]:
    """Return the short stretches within which the outline turns back."""
    count = len(ring)
    turns = [_turn(ring[i - 1], ring[i], ring[(i + 1) % count]) for i in range(count)]
    caps = []
    for first in range(count):
        total, gone, best = turns[first], 0.0, _Cap(first, first, turns[first])
        for last in range(first + 1, first + count - 2):
            gone += dist(ring[(last - 1) % count], ring[last % count])
            if gone > 2.2 * thick:
                break
            total += turns[last % count]
            if abs(total - 180) < abs(best.turn - 180):
                best = _Cap(first, last, total)
        if abs(best.turn - 180) <= 45:
            caps.append(best)
    return caps


def _turn(a: Point, b: Point, c: Point) -> float:
    ux, uy, vx, vy = b[0] - a[0], b[1] - a[1], c[0] - b[0], c[1] - b[1]
    return degrees(atan2(ux * vy - uy * vx, ux * vx + uy * vy))


def _apart(one: _Cap, other: _Cap, count: int) -> bool:
    return one.last < other.first and other.last - count < one.first


def _stretch(ring: Points, first: int, last: int) -> Points:
    count = len(ring)
    return tuple(ring[i % count] for i in range(first, last + 1))


def _unlikely(ring: Points, one: _Cap, other: _Cap, thick: float) -> float:
    """Return how unlike two ends of one sheet the caps are: unlike sides, no full turn back."""
    there = length(_stretch(ring, one.last, other.first))
    back = length(_stretch(ring, other.last, one.first + len(ring)))
    return abs(there - back) + (abs(one.turn - 180) + abs(other.turn - 180)) / 45 * thick


def _between_caps(ring: Points, one: _Cap, other: _Cap) -> Strip | None:
    there = _stretch(ring, one.last, other.first)
    back = _stretch(ring, other.last, one.first + len(ring))[::-1]
    thick = mean_thickness(ring)[1]
    middles = _middles(np.array(there), np.array(back), thick)
    points = tidy(
        [
            _halfway(_stretch(ring, one.first, one.last)),
            *middles,
            _halfway(_stretch(ring, other.first, other.last)),
        ]
    )
    run = length(points)
    width = signed_area(ring) / run if run else 0.0
    if width <= 0 or run <= SLENDER * width:
        return None
    if not (_even(there, back, width) and _even(back, there, width)):
        return None
    return Strip(points, width) if _covers(ring, points, width) else None


def _middles(there: Floats, back: Floats, thick: float) -> list[Point]:
    """Return the middles of the rungs from every corner of one side to the other side, in order."""
    at_there, run_there = _stations(there), _nearest(back, there)
    at_back, run_back = _stations(back), _nearest(there, back)
    rungs = [
        (float(s), float(t), p, q, d)
        for s, t, p, q, d in (
            *zip(at_there, run_back[0], there, run_back[1], run_back[2], strict=True),
            *zip(run_there[0], at_back, run_there[1], back, run_there[2], strict=True),
        )
    ]
    middles: list[Point] = []
    s_done = t_done = 0.0
    slop = thick / 100
    for s, t, p, q, d in sorted(rungs, key=lambda rung: rung[0] + rung[1]):
        if d <= 3 * thick and s >= s_done - slop and t >= t_done - slop:
            s_done, t_done = max(s, s_done), max(t, t_done)
            middles.append((float(p[0] + q[0]) / 2, float(p[1] + q[1]) / 2))
    return middles


def _stations(run: Floats) -> Floats:
    """Return how far along the polyline each of its points lies."""
    steps = np.hypot(*(run[1:] - run[:-1]).T)
    return np.concatenate(([0.0], np.cumsum(steps)))


def _nearest(points: Floats, run: Floats) -> tuple[Floats, Floats, Floats]:
    """Return station, place and distance of what lies nearest on `run` to each of `points`."""
    if len(run) == 1:
        away = np.hypot(*(points - run[0]).T)
        return np.zeros(len(points)), np.repeat(run, len(points), axis=0), away
    start, step = run[:-1], run[1:] - run[:-1]
    square = np.maximum((step**2).sum(axis=1), 1e-18)
    along = ((points[:, None, :] - start) * step).sum(axis=2) / square
    along = np.clip(along, 0.0, 1.0)
    place = start + along[..., None] * step
    away = np.hypot(points[:, None, 0] - place[..., 0], points[:, None, 1] - place[..., 1])
    best = away.argmin(axis=1)
    row = np.arange(len(points))
    station = _stations(run)[best] + along[row, best] * np.sqrt(square[best])
    return station, place[row, best], away[row, best]


def _even(side: Points, other: Points, width: float) -> bool:
    """Whether `side` keeps its distance to `other`, away from corners and caps."""
    run = np.array(side)
    at = _stations(run)
    whole = at[-1]
    if whole <= 2 * width:
        return True
    wanted = np.linspace(width, whole - width, max(16, min(200, int(whole / width) * 2)))
    taper = 4 * width if whole > 12 * width else 1.5 * width
    corners = [
        at[i]
        for i in range(1, len(side) - 1)
        if abs(_turn(side[i - 1], side[i], side[i + 1])) > 20
    ]
    clear = np.minimum(wanted, whole - wanted) > taper
    for corner in corners:
        clear &= np.abs(wanted - corner) > 1.5 * width
    wanted = wanted[clear]
    if not len(wanted):
        return True
    samples = np.column_stack([np.interp(wanted, at, run[:, k]) for k in (0, 1)])
    away = _nearest(samples, np.array(other))[2]
    return bool((np.abs(away - width) <= EVEN * width).mean() >= MOSTLY)


def _covers(ring: Points, points: Points, width: float) -> bool:
    outline = shapely.make_valid(shapely.Polygon(ring))
    band = shapely.buffer(
        shapely.LineString(points), width / 2, cap_style="flat", join_style="mitre"
    )
    common = shapely.intersection(outline, band).area
    return bool(common >= COVER * shapely.union(outline, band).area)


def _halfway(points: Points) -> Point:
    if len(points) == 1:
        return points[0]
    left = length(points) / 2
    for a, b in pairwise(points):
        step = dist(a, b)
        if step >= left:
            share = left / step if step else 0.0
            return a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])
        left -= step
    return points[-1]


def _middle(a: Point, b: Point) -> Point:
    return (a[0] + b[0]) / 2, (a[1] + b[1]) / 2


def _off(p: Point, a: Point, b: Point) -> float:
    ux, uy = b[0] - a[0], b[1] - a[1]
    return abs(ux * (p[1] - a[1]) - uy * (p[0] - a[0])) / (hypot(ux, uy) or 1.0)


def same_ring(one: Points, other: Points, slack: float = 1.0) -> bool:
    """Whether two rings run along each other all the way round, no further apart than `slack`."""
    x0, y0 = one[0]
    a, b = (shapely.LinearRing([(x - x0, y - y0) for x, y in ring]) for ring in (one, other))
    return bool(shapely.hausdorff_distance(a, b) <= slack)
