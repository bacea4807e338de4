"""Moves, cuts and lengthens runs of points, as a person does while sketching."""

from collections.abc import Sequence
from math import cos, hypot, radians, sin

import numpy as np
import shapely

from enclosure_app.geometry.runs.offsetting import offset_run
from enclosure_app.geometry.runs.polyline import (
    Point,
    around,
    as_array,
    as_points,
    nearest_positions,
    positions,
    stretch,
)
from enclosure_app.geometry.runs.tidying import SAME, Run, tidy

__all__ = [
    "SAME",
    "Run",
    "crossings",
    "first_hit",
    "length_of",
    "mirrored",
    "moved",
    "offset_run",
    "part_of",
    "part_over_seam",
    "position_of",
    "sound_ring",
    "tidy",
    "turned",
]


def moved(points: Sequence[Point], by: Point) -> Run:
    """Return points moved by a vector."""
    return tuple((x + by[0], y + by[1]) for x, y in points)


def turned(points: Sequence[Point], about: Point, degrees: float) -> Run:
    """Return points turned anticlockwise about a point; quarter turns are exact."""
    cosine, sine = _quarter(degrees) or (cos(radians(degrees)), sin(radians(degrees)))
    ax, ay = about
    return tuple(
        (ax + cosine * (x - ax) - sine * (y - ay), ay + sine * (x - ax) + cosine * (y - ay))
        for x, y in points
    )


def _quarter(degrees: float) -> tuple[float, float] | None:
    turns, rest = divmod(degrees, 90.0)
    if rest:
        return None
    return ((1.0, 0.0), (0.0, 1.0), (-1.0, 0.0), (0.0, -1.0))[int(turns) % 4]


def mirrored(points: Sequence[Point], a: Point, b: Point) -> Run:
    """Return points mirrored in the line through `a` and `b`, which must be apart."""
    dx, dy = b[0] - a[0], b[1] - a[1]
    length = hypot(dx, dy)
    nx, ny = -dy / length, dx / length
    away = [2 * ((x - a[0]) * nx + (y - a[1]) * ny) for x, y in points]
    return tuple((x - d * nx, y - d * ny) for (x, y), d in zip(points, away, strict=True))


def length_of(points: Sequence[Point]) -> float:
    """Return the length of a run, mm."""
    return float(positions(as_array(points))[-1])


def position_of(points: Sequence[Point], place: Point) -> float:
    """Return how far along a run the nearest point to `place` lies, mm."""
    return float(nearest_positions(as_array(points), as_array([place]))[0])


def part_of(points: Sequence[Point], start: float, end: float) -> Run:
    """Return a run from `start` to `end` mm along it."""
    return tidy(as_points(stretch(as_array(points), start, end)))


def part_over_seam(points: Sequence[Point], start: float, end: float) -> Run:
    """Return a closed run (first point repeated) from `end` over its seam on to `start`."""
    return tidy(as_points(around(as_array(points), start, end)[::-1]))


def crossings(points: Sequence[Point], others: Sequence[Sequence[Point]]) -> list[float]:
    """Return how far along a run others cross or touch it, mm, in order.

    Where one lies on the run for a stretch, both ends of the stretch count.
    """
    there = _lines(others)
    if there is None:
        return []
    run = as_array(points)
    along = positions(run)
    segments = np.asarray(shapely.linestrings(np.stack([run[:-1], run[1:]], axis=1)))
    meets, owner = shapely.get_coordinates(
        shapely.intersection(segments, there), return_index=True
    )
    at = along[owner] + np.hypot(*(meets - run[owner]).T)
    ends = shapely.get_coordinates(there)
    near = shapely.dwithin(shapely.linestrings(run), shapely.points(ends), SAME)
    touching = nearest_positions(run, ends[near]) if near.any() else np.empty(0)
    return _merged(sorted([*at.tolist(), *touching.tolist()]))


def _merged(values: Sequence[float]) -> list[float]:
    """Return sorted values without those that are the same as the one before."""
    return [v for i, v in enumerate(values) if i == 0 or v - values[i - 1] > SAME]


def _lines(runs: Sequence[Sequence[Point]]) -> shapely.MultiLineString | None:
    sound = [run for run in runs if len(run) > 1]
    return shapely.MultiLineString(sound) if sound else None


def first_hit(start: Point, towards: Point, others: Sequence[Sequence[Point]]) -> Point | None:
    """Return where a ray first meets one of the runs, None where it meets none.

    Args:
        start: Where the ray begins; what touches it there is not met.
        towards: The way that it goes; its length does not matter.
        others: The runs.
    """
    there = _lines(others)
    if there is None:
        return None
    reach = 1.0 + float(np.abs(shapely.get_coordinates(there) - start).max()) * 2
    size = hypot(*towards)
    end = (start[0] + towards[0] / size * reach, start[1] + towards[1] / size * reach)
    ray = shapely.LineString([start, end])
    grazed = shapely.get_coordinates(there)
    grazed = grazed[np.asarray(shapely.dwithin(ray, shapely.points(grazed), SAME))]
    hits = np.vstack([shapely.get_coordinates(shapely.intersection(ray, there)), grazed])
    far = np.hypot(*(hits - start).T)
    hits, far = hits[far > SAME], far[far > SAME]
    return as_points(hits[[np.argmin(far)]])[0] if len(far) else None


def sound_ring(points: Sequence[Point]) -> bool:
    """Return whether points are the corners of a region: three or more, not crossing itself."""
    return len(points) >= 3 and shapely.Polygon(points).is_valid
