"""On which side of a closed curve points lie, and how far from it."""

from dataclasses import dataclass

import numpy as np
import shapely
from numpy.typing import NDArray

from enclosure_app.geometry.rims import Bools, Floats


@dataclass(frozen=True, slots=True)
class ClosedCurve:
    """A closed polyline that may cross itself; `points` (m, 2) without the repeated first point."""

    points: Floats

    def encloses(self, points: Floats) -> Bools:
        """Return for each point (k, 2) whether a ray from it crosses the curve an odd number of times."""
        points = np.asarray(points, dtype=np.float64)
        low, high = self.points.min(axis=0), self.points.max(axis=0)
        if high[0] - low[0] > high[1] - low[1]:
            # rays along the short side of the curve's extent meet few of its segments
            return _odd(points[:, ::-1], self.points[:, ::-1], float(high[1]))
        return _odd(points, self.points, float(high[0]))

    def distance(self, points: Floats) -> Floats:
        """Return the distance of each point (k, 2) from the curve, mm."""
        tree = shapely.STRtree(_segments(self.points))
        (place, _), distance = tree.query_nearest(
            shapely.points(points), return_distance=True, all_matches=False
        )
        found = np.empty(len(points))
        found[place] = distance
        return found


def _segments(curve: Floats) -> NDArray[np.object_]:
    ends = np.stack([curve, np.roll(curve, -1, axis=0)], axis=1)
    return np.asarray(shapely.linestrings(ends), dtype=object)


def _odd(points: Floats, curve: Floats, far: float) -> Bools:
    """Count crossings of rays in the direction of x; a segment owns its lower end only."""
    start, end = curve, np.roll(curve, -1, axis=0)
    tree = shapely.STRtree(_segments(curve))
    reach = np.maximum(far, points[:, 0]) + 1.0
    rays = np.stack([points, np.column_stack([reach, points[:, 1]])], axis=1)
    ray, segment = tree.query(shapely.linestrings(rays))
    x, y = points[ray].T
    (ax, ay), (bx, by) = start[segment].T, end[segment].T
    spans = (ay <= y) != (by <= y)
    share = np.divide(y - ay, by - ay, out=np.zeros_like(y), where=spans)
    hit = spans & (ax + share * (bx - ax) > x)
    return np.asarray(np.bincount(ray[hit], minlength=len(points)) % 2 == 1)
