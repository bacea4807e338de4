"""Flattens arcs, ellipses, bulges and splines to points that stay within a sagitta of the curve.

Numbers only: coordinates and sagitta are drawing units, angles are radians. A chord over the
parameter step `h` of a curve leaves it by at most ``h² / 8`` times the largest second derivative
(the error term of linear interpolation), which for a circle bounds its sagitta ``r (1 - cos h/2)``.
"""

import math
from collections.abc import Iterable, Iterator, Sequence
from itertools import pairwise

from ezdxf.math import BSpline, Vec3

from enclosure_app.model.place import Point

_WIDEST_STEP = math.pi / 6
_MOST_STEPS = 100_000
_FULL_TURN = 2 * math.pi


class NumberError(ValueError):
    """A coordinate is not a number, or is so large that it cannot be meant."""


def stretch(u: Point, v: Point) -> float:
    """Return the largest factor by which the map of the unit vectors to `u` and `v` lengthens."""
    half = (u[0] ** 2 + u[1] ** 2 + v[0] ** 2 + v[1] ** 2) / 2
    turn = u[0] * v[1] - u[1] * v[0]
    return math.sqrt(half + math.sqrt(max(0.0, half * half - turn * turn)))


def ellipse_points(
    center: Point, axes: tuple[Point, Point], span: tuple[float, float], sagitta: float
) -> list[Point]:
    """Return points of ``center + cos(t) * axes[0] + sin(t) * axes[1]`` for t over `span`.

    The axes may be any conjugate half-diameters, so a circle seen askew needs no special case.

    Raises:
        NumberError: the curve is not finite.
    """
    (ux, uy), (vx, vy) = axes
    start, end = span
    count = _steps(stretch(*axes), end - start, sagitta)
    step = (end - start) / count
    cx, cy = center
    angles = [start + step * index for index in range(count + 1)]
    turns = zip(map(math.cos, angles), map(math.sin, angles), strict=True)
    return [(cx + c * ux + s * vx, cy + c * uy + s * vy) for c, s in turns]


def turn(start: float, end: float) -> tuple[float, float]:
    """Return an anticlockwise span in radians for angles in degrees; equal ones are a full turn.

    Raises:
        NumberError: an angle is not finite.
    """
    if not (math.isfinite(start) and math.isfinite(end)):
        raise NumberError("The angles of an arc are not numbers.")
    first = math.radians(start % 360.0)
    sweep = math.radians((end - start) % 360.0)
    return first, first + (sweep if sweep > 1e-12 else _FULL_TURN)


def is_full(span: tuple[float, float]) -> bool:
    """Return whether the span goes once round."""
    return abs(span[1] - span[0]) >= _FULL_TURN - 1e-9


def bulge_points(start: Point, end: Point, bulge: float, sagitta: float) -> list[Point]:
    """Return the points after `start` up to `end` of the arc with this bulge.

    The bulge is the tangent of a quarter of the arc's angle, positive anticlockwise.

    Raises:
        NumberError: the bulge is not finite.
    """
    dx, dy = end[0] - start[0], end[1] - start[1]
    chord = math.hypot(dx, dy)
    if not math.isfinite(bulge) or not math.isfinite(chord):
        raise NumberError("The bulge of an arc is not a number.")
    if chord == 0 or abs(bulge) * chord / 2 < sagitta * 1e-3:
        return [end]
    lift = (1 - bulge * bulge) / (4 * bulge)
    cx, cy = (start[0] + end[0]) / 2 - lift * dy, (start[1] + end[1]) / 2 + lift * dx
    u = (start[0] - cx, start[1] - cy)
    sweep = 4 * math.atan(bulge)
    points = ellipse_points((cx, cy), (u, (-u[1], u[0])), (0.0, sweep), sagitta)
    return [*points[1:-1], end]


def spline_points(spline: BSpline, sagitta: float) -> list[Vec3]:
    """Return points of a spline within `sagitta` of it.

    Each span between knots is cut into steps of the parameter by the bound given above. (The
    library's own flattening looks at a span's middle only, which misses where a curve turns back.)

    Raises:
        NumberError: a control point, knot or weight is not finite.
    """
    numbers = [*spline.knots(), *spline.weights()]
    for point in spline.control_points:
        numbers.extend(point.xyz)
    if not all(math.isfinite(number) for number in numbers):
        raise NumberError("A spline holds numbers that are not finite.")
    places: list[float] = []
    for start, end, bend in _spans(spline):
        count = max(1, math.ceil((end - start) * math.sqrt(bend / (8 * sagitta))))
        count = min(count, _MOST_STEPS)
        places.extend(start + (end - start) * index / count for index in range(count))
    return [Vec3(point) for point in spline.points([*places, spline.max_t])]


def _spans(spline: BSpline) -> Iterator[tuple[float, float, float]]:
    """Yield the spans between knots with a bound of the second derivative in each."""
    knots, degree = spline.knots(), spline.degree
    bends = _bends(spline, knots)
    for index in range(degree, len(knots) - degree - 1):
        start, end = knots[index], knots[index + 1]
        if end <= start:
            continue
        if bends is None:
            bend = _sampled_bend(spline, start, end)
        else:
            # The derivative is a spline too and stays in the hull of its control points.
            bend = max(bends[max(index - degree, 0) : index - 1], default=0.0)
        yield start, end, bend


def _bends(spline: BSpline, knots: Sequence[float]) -> list[float] | None:
    """Return the lengths of the second derivative's control points; None for a rational spline.

    From L. Piegl and W. Tiller, The NURBS Book, 2nd edition, equation 3.4 applied twice.
    """
    degree = spline.degree
    if spline.is_rational:
        return None
    control: list[Vec3] = list(spline.control_points)
    for order in (0, 1):
        height = degree - order
        control = [
            (after - before) * (height / span if span > 0 else 0.0)
            for index, (before, after) in enumerate(pairwise(control))
            for span in (knots[index + degree + 1] - knots[index + order + 1],)
        ]
    return [vector.magnitude for vector in control]


def _sampled_bend(spline: BSpline, start: float, end: float) -> float:
    """Return twice the largest of nine second derivatives: a rational one has no simple bound."""
    samples = [start + (end - start) * index / 8 for index in range(9)]
    rows = spline.derivatives(samples, n=2)
    return 2.0 * max(float(Vec3(row[2]).magnitude) for row in rows if len(row) > 2)


def without_repeats(points: Iterable[Point], *, closed: bool) -> tuple[Point, ...]:
    """Return the points without those that repeat the one before (round the end if `closed`)."""
    kept: list[Point] = []
    for point in points:
        if not kept or point != kept[-1]:
            kept.append(point)
    while closed and len(kept) > 1 and kept[0] == kept[-1]:
        kept.pop()
    return tuple(kept)


def join_ends(runs: Iterable[Sequence[Point]], slack: float) -> list[tuple[Point, ...]]:
    """Chain runs (in order, either way round) whose ends lie within `slack` into rings.

    A run that does not go on from the one before is joined by a straight line, except after a
    ring that is closed already: there a new ring begins.
    """
    rings: list[list[Point]] = []
    for run in runs:
        points = list(run)
        if not points:
            continue
        if not rings or (len(rings[-1]) > 2 and math.dist(rings[-1][0], rings[-1][-1]) <= slack):
            rings.append(points)
        else:
            rings[-1] = _chained(rings[-1], points, slack)
    return [without_repeats(ring, closed=True) for ring in rings]


def _chained(ring: list[Point], run: list[Point], slack: float) -> list[Point]:
    """Return both joined where their ends lie nearest; before the ring only if they meet there."""
    back = run[::-1]
    ahead, behind = ring[-1], ring[0]
    gap, back_gap = math.dist(ahead, run[0]), math.dist(ahead, back[0])
    if min(gap, back_gap) > slack:
        if math.dist(behind, run[-1]) <= slack:
            return run + ring
        if math.dist(behind, run[0]) <= slack:
            return back + ring
    return ring + (run if gap <= back_gap else back)


def _steps(radius: float, sweep: float, sagitta: float) -> int:
    if not (math.isfinite(radius) and math.isfinite(sweep)):
        raise NumberError("A curve holds numbers that are not finite.")
    widest = math.sqrt(8 * sagitta / radius) if radius > 0 else _WIDEST_STEP
    count = math.ceil(abs(sweep) / min(widest, _WIDEST_STEP))
    return min(max(count, 1), _MOST_STEPS)
