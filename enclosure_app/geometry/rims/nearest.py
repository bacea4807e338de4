"""The segment nearest to each of many places: the same one, to the last bit, however it is found."""

import numpy as np
import shapely

from enclosure_app.geometry.rims.closest import foot
from enclosure_app.geometry.rims.rims import Floats, Ints

FIRST_REACH = 100.0  # mm
FEW = 400_000  # pairs that are measured outright, sooner than a tree is built
SLACK = 1e-9  # of a distance, and mm, within which a tree may be wrong about what is nearest


def nearest_segments(start: Floats, end: Floats, places: Floats) -> tuple[Ints, Floats, Floats]:
    """Return for each place (k, 2) the nearest segment, the foot on it (k, 2) and its distance.

    Of several segments that are equally near, it is the first.
    """
    if not len(places):
        return np.zeros(0, dtype=np.intp), places, np.zeros(0)
    if len(places) * len(start) <= FEW:
        return _nearest_around(start, end, places)
    return _nearest_of(start, end, places, _candidates(start, end, places))


def _nearest_around(start: Floats, end: Floats, places: Floats) -> tuple[Ints, Floats, Floats]:
    """Look around a few places, further and further."""
    low, high = np.minimum(start, end), np.maximum(start, end)
    reach = FIRST_REACH
    while True:
        near = (low <= places.max(axis=0) + reach) & (high >= places.min(axis=0) - reach)
        rows = np.flatnonzero(near.all(axis=1))
        if len(rows):
            pairs = np.indices((len(places), len(rows))).reshape(2, -1)
            found = _nearest_of(start, end, places, (pairs[0], rows[pairs[1]]))
            if found[2].max() <= reach or len(rows) == len(start):
                return found
        reach *= 8


def _nearest_of(
    start: Floats, end: Floats, places: Floats, pairs: tuple[Ints, Ints]
) -> tuple[Ints, Floats, Floats]:
    """Return the nearest of the (place, segment) `pairs` for each place."""
    place, segment = pairs
    near = foot(places[place], start[segment], end[segment])
    away = np.hypot(*(near - places[place]).T)
    order = np.lexsort((segment, away, place))
    _, first = np.unique(place[order], return_index=True)
    best = order[first]
    return segment[best], near[best], away[best]


def _candidates(start: Floats, end: Floats, places: Floats) -> tuple[Ints, Ints]:
    """Return (place, segment) for all segments that could be the nearest one."""
    tree = shapely.STRtree(np.asarray(shapely.linestrings(np.stack([start, end], axis=1))))
    dots = np.asarray(shapely.points(places), dtype=object)
    (place, _), near = tree.query_nearest(dots, all_matches=False, return_distance=True)
    reach = np.empty(len(places))
    reach[place] = near * (1 + SLACK) + SLACK
    found = tree.query(dots, predicate="dwithin", distance=reach)
    return found[0], found[1]
