"""The segment nearest to each of many places: the same one, to the last bit, however it is found."""

import numpy as np
import shapely

from enclosure_app.geometry.closest import foot
from enclosure_app.geometry.rims import Floats, Ints

FEW = 400_000  # pairs that are measured outright, sooner than a tree is built
SLACK = 1e-9  # of a distance, and mm, within which a tree may be wrong about what is nearest


def nearest_segments(start: Floats, end: Floats, places: Floats) -> tuple[Ints, Floats, Floats]:
    """Return for each place (k, 2) the nearest segment, the foot on it (k, 2) and its distance.

    Of several segments that are equally near, it is the first.
    """
    if len(places) * len(start) <= FEW:
        place, segment = np.indices((len(places), len(start))).reshape(2, -1)
    else:
        place, segment = _candidates(start, end, places)
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
