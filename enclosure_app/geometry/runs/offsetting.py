"""The run at a distance beside a run: a sheet along a board, a board along a wall."""

from collections.abc import Sequence
from math import dist, inf

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from enclosure_app.geometry.rims.rims import Floats
from enclosure_app.geometry.runs.polyline import Point, as_array, as_points
from enclosure_app.geometry.runs.tidying import SAME, Run, tidy

MITRE = 10.0
"""How far out, in offsets, the corner of an offset run may reach before it is cut square."""

_HAIR = 1e-3  # mm: an offset so small that there is room for it on both sides


def offset_run(points: Sequence[Point], distance: float, side: Point, *, closed: bool) -> Run:
    """Return the run `distance` mm beside a run, on the side where `side` lies.

    Corners are mitred. The result has its ends square beside those of the run, and a closed run
    gives a closed one. It is empty where the run is too tight for it on that side.
    """
    points = tidy(points)
    if closed and dist(points[0], points[-1]) <= SAME:
        points = points[:-1]
    hair = min(_HAIR, distance)
    left, right = (_beside(points, signed, closed=closed) for signed in (hair, -hair))
    to_left = _away(left, side, closed=closed) <= _away(right, side, closed=closed)
    return _beside(points, distance if to_left else -distance, closed=closed)


def run_beside(points: Sequence[Point], left: float) -> Run:
    """Return the run `left` mm to the left of an open run, seen along it; below 0 to the right.

    It is empty where the run is too tight for it on that side.
    """
    return _beside(tidy(points), left, closed=False)


def _beside(points: Sequence[Point], distance: float, *, closed: bool) -> Run:
    """Return the run beside a run, to the left for a distance above zero.

    The library leaves out bends of a hundredth of the distance, so it is asked only where stretches
    vanish or come too near to another part of the run.
    """
    corners = _mitred(as_array(points), distance, closed=closed)
    if corners is not None:
        run = as_points(corners)
        apart = shapely.distance(_curve(run, closed=closed), _curve(points, closed=closed))
        if apart > abs(distance) - SAME:
            return run
    return _grown(points, distance) if closed else _shifted(points, distance)


def _mitred(points: Floats, distance: float, *, closed: bool) -> Floats | None:
    """Return the corners of the run beside (m, 2), None where a stretch of it would turn round."""
    ring = np.vstack([points, points[:1]]) if closed else points
    steps = ring[1:] - ring[:-1]
    ahead = steps / np.hypot(*steps.T)[:, None]
    if not closed:
        ahead = np.vstack(
            [ahead[:1], ahead, ahead[-1:]]
        )  # an end is a corner that goes straight on
    before, after = (np.roll(ahead, 1, axis=0), ahead) if closed else (ahead[:-1], ahead[1:])
    opening = 1.0 + (before * after).sum(axis=1)  # 2 straight on, 0 right back
    if (opening < 2.0 / MITRE**2).any():
        return None
    normals = np.column_stack([-before[:, 1] - after[:, 1], before[:, 0] + after[:, 0]])
    corners: Floats = points + distance * normals / opening[:, None]
    new = np.vstack([corners, corners[:1]]) if closed else corners
    onward = ((new[1:] - new[:-1]) * steps).sum(axis=1) > 0
    return corners if onward.all() else None


def _shifted(points: Sequence[Point], distance: float) -> Run:
    line = shapely.LineString(points)
    return _only(
        shapely.offset_curve(line, distance, join_style="mitre", mitre_limit=MITRE), closed=False
    )


def _grown(points: Sequence[Point], distance: float) -> Run:
    ring = shapely.Polygon(points)
    outwards = -distance if ring.exterior.is_ccw else distance
    region = shapely.buffer(ring, outwards, join_style="mitre", mitre_limit=MITRE)
    return _only(region.boundary, closed=True)


def _only(found: BaseGeometry, *, closed: bool) -> Run:
    """Return the points of what is one line, without repeating the first point of a ring."""
    if found.is_empty or not isinstance(found, shapely.LineString):
        return ()
    points = tidy(as_points(shapely.get_coordinates(found)))
    return points[:-1] if closed else points


def _curve(points: Sequence[Point], *, closed: bool) -> BaseGeometry:
    return shapely.LineString([*points, points[0]] if closed else points)


def _away(run: Run, place: Point, *, closed: bool) -> float:
    if not run:
        return inf
    return float(shapely.distance(_curve(run, closed=closed), shapely.Point(place)))
