"""Finds the roomiest place uphill of a place: where a mark set close to a wall has room around it.

Each step stays within the empty circle round the last place, so no wall is crossed, and no passage
that is narrower than that circle.
"""

from dataclasses import dataclass
from math import pi

import numpy as np
import numpy.typing as npt
import shapely

from enclosure_app.geometry.linework.linework import GRID, Linework

Floats = npt.NDArray[np.float64]

STEPS = 500


@dataclass(frozen=True, slots=True)
class Climb:
    """The places (k, 2) of a climb, from where it began, and the `room` (mm) round the last."""

    trail: Floats
    room: float


class Hills:
    """Walls as valleys, and the room around each place as its height."""

    def __init__(self, lines: Linework) -> None:
        self._walls = np.asarray(shapely.linestrings(lines.points[lines.walls]), dtype=object)
        self._tree = shapely.STRtree(self._walls)

    def room(self, place: Floats) -> float:
        """Return the distance from `place` to the nearest wall."""
        _, away = self._tree.query_nearest(
            shapely.Point(place), all_matches=False, return_distance=True
        )
        return float(away[0])

    def climb(self, place: Floats) -> Climb:
        """Go uphill from `place` until the walls stand all around."""
        trail, room, slack = [place], self.room(place), 0.1
        while slack > 1e-6 and len(trail) < STEPS:
            ahead = self._uphill(trail[-1], room * (1 + slack))
            step = room / 2
            higher = 0.0
            while ahead is not None and higher <= room and step > slack * room / 100:
                higher = self.room(trail[-1] + step * ahead)
                step /= 2
            if ahead is not None and higher > room:
                trail.append(trail[-1] + 2 * step * ahead)
                room = higher
            else:
                slack /= 4
        return Climb(self._direct(np.array(trail)), room)

    def _direct(self, trail: Floats) -> Floats:
        """Leave out all but the ends of a trail if no wall stands between these."""
        straight = shapely.LineString(trail[[0, -1]])
        blocked = len(self._tree.query(straight, predicate="dwithin", distance=GRID)) > 0
        return trail if blocked else trail[[0, -1]]

    def _uphill(self, place: Floats, reach: float) -> Floats | None:
        """Return the way midway between the walls within reach, None if they are all around."""
        here = shapely.Point(place)
        near = self._walls[self._tree.query(here, predicate="dwithin", distance=reach)]
        lines = shapely.get_coordinates(shapely.shortest_line(here, near)).reshape(-1, 2, 2)
        angles = np.sort(np.arctan2(*(lines[:, 1] - lines[:, 0])[:, ::-1].T))
        between = np.diff(np.append(angles, angles[0] + 2 * pi))
        widest = int(np.argmax(between))
        if between[widest] <= pi:
            return None
        way = angles[widest] + between[widest] / 2
        return np.array([np.cos(way), np.sin(way)])
