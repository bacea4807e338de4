"""The widest way between two sides that crosses no obstacle.

A way runs from triangle to triangle. The narrowest passages between obstacles are edges of the
triangulation, so its width is that of the narrowest edge that it crosses, and the widest way is
found by opening edges from the widest down until the sides are joined.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from math import inf

import numpy as np
import numpy.typing as npt
import shapely
from shapely.geometry.base import BaseGeometry

from enclosure_app.geometry.linework.linework import GRID, Linework, evened, noded
from enclosure_app.geometry.openings.bridges import tied
from enclosure_app.geometry.openings.cavities import CrossingError
from enclosure_app.geometry.openings.climbing import Climb, Hills
from enclosure_app.geometry.openings.floods import Side, widest_joint
from enclosure_app.geometry.openings.gates import Gates, gates
from enclosure_app.geometry.openings.passages import feet, with_feet
from enclosure_app.geometry.openings.resealing import Rooms, rooms_of
from enclosure_app.geometry.openings.routes import Stop, route
from enclosure_app.geometry.openings.triangles import Mesh, triangulate

Point = tuple[float, float]
Floats = npt.NDArray[np.float64]
Ints = npt.NDArray[np.int64]

COARSE = 1e-4  # mm; the grid that untangles linework which crosses itself between its points
LEVEL = 1e-4  # of the room round a mark: a passage that much wider is taken to be as wide


@dataclass(frozen=True, slots=True)
class Way:
    """The widest way from an outside mark to an inside mark.

    `width` is mm, 0 where there is no way and so no `path`; `narrowest` holds the two ends of its
    narrowest passage, None if nothing on the way is narrower than the room round its ends.
    """

    width: float
    path: tuple[Point, ...] = ()
    narrowest: tuple[Point, Point] | None = None


Ends = tuple[list[Climb], list[Climb]]
Stops = tuple[list[Stop], list[Climb]]


class MarkError(ValueError):
    """The mark at `place` lies on an obstacle or beyond the frame."""

    def __init__(self, place: Point) -> None:
        super().__init__(f"The mark at {place} is not in the open.")
        self.place = place


@dataclass(frozen=True, slots=True)
class _Search:
    """Gates, climbs from the marks of each side, and the triangles that these end in."""

    gates: Gates
    climbs: Ends
    sides: tuple[Side, Side]

    @classmethod
    def of(cls, passable: Gates, climbs: Ends) -> "_Search":
        """Find the triangles in which the climbs end."""
        outside, inside = (_side(passable.mesh, side) for side in climbs)
        return cls(passable, climbs, (outside, inside))

    def width(self, touch: float) -> float:
        """Return the width of the widest way, 0 if it is closed."""
        return widest_joint(self.gates, *self.sides, wider_than=touch)

    def way(self, width: float) -> Way:
        """Return the way of a known width, drawn."""
        (starts, begins), (goals, finishes) = (
            self._stops(side, climbs, width)
            for side, climbs in zip(self.sides, self.climbs, strict=True)
        )
        found = route(self.gates, starts, goals, width)
        begin, finish = begins[found.start], finishes[found.goal]
        places = [(place.real, place.imag) for place in found.places]
        path = tuple(map(_point, [*begin.trail, *places, *finish.trail[::-1]]))
        room = 2 * min(begin.room, finish.room)
        widths = self.gates.width[found.crossed]
        if not found.crossed or widths.min() > room * (1 + LEVEL):
            return Way(room, path)
        a, b = self.gates.chord[found.crossed[int(np.argmin(widths))]]
        ends = _point(self.gates.mesh.points[a]), _point(self.gates.mesh.points[b])
        return Way(float(widths.min()), path, ends)

    def _stops(self, side: Side, climbs: list[Climb], width: float) -> Stops:
        """Return where the way may begin or end: marks that have room for it."""
        roomy = np.flatnonzero(side.width >= width).tolist()
        stops = [Stop(int(side.triangles[k]), complex(*climbs[k].trail[-1])) for k in roomy]
        return stops, [climbs[k] for k in roomy]


def way_and_rooms(
    frame: Sequence[Point],
    solids: Sequence[BaseGeometry],
    bridges: Sequence[tuple[Point, Point]],
    marks: tuple[Sequence[Point], Sequence[Point]],
    touch: float,
) -> tuple[Way, Rooms | None]:
    """Return the way from an outside to an inside mark whose narrowest passage is widest.

    Where there is none, the rooms are returned by which that can be told again after a change;
    None where a mark is too close to a wall for that, or the walls had to be untangled.

    A mark close to a wall or in a corner stands for the roomiest place uphill of it.

    Args:
        frame: a simple ring (mm) without a repeated first point; all beyond it is an obstacle.
        solids: lines of no thickness and areas, which cannot be crossed.
        bridges: chords between solids which cannot be crossed either, but which are nothing that
            distances are measured to.
        marks: the outside marks and the inside marks, each in the open.
        touch: passages this wide (mm) or narrower are closed.

    Raises:
        ValueError: a side has no mark.
        MarkError: a mark lies on an obstacle or beyond the frame.
    """
    if not (marks[0] and marks[1]):
        raise ValueError("A way needs a mark on each side.")
    rooms = [[_room(frame, solids, place) for place in side] for side in marks]
    origin = np.asarray(frame[0], dtype=float)
    places = [np.asarray(side, dtype=float) - origin for side in marks]
    chords = np.asarray(bridges, dtype=float).reshape(-1, 2, 2) - origin
    room = min(rooms[0] + rooms[1])
    kept = None
    try:
        search, way = _through(_triangulated(noded(frame, solids), chords), places, room, touch)
        if way.width == 0 and 2 * room > touch:
            sides = search.sides[0].triangles, search.sides[1].triangles
            kept = rooms_of(frame, search.gates, sides, (np.concatenate(places), touch))
    except CrossingError:
        coarse = _triangulated(noded(frame, solids, COARSE), chords)
        way = _through(coarse, places, room, touch)[1]
    return _moved(way, origin), kept


def _through(
    triangulated: tuple[Mesh, Ints], places: list[Floats], room: float, touch: float
) -> tuple[_Search, Way]:
    """Return the widest way between marks (k, 2) of the two sides, the tightest with `room` mm."""
    mesh, ties = triangulated
    outside, inside = ([Climb(place[None], inf) for place in side] for side in places)
    search, way = _widest(mesh, ties, (outside, inside), touch)
    if 2 * room <= max(way.width, touch):
        hills = Hills(mesh.linework)
        outside, inside = ([hills.climb(place) for place in side] for side in places)
        search, way = _widest(mesh, ties, (outside, inside), touch)
    return search, way


def _room(frame: Sequence[Point], solids: Sequence[BaseGeometry], place: Point) -> float:
    """Return the distance from a mark to the nearest obstacle.

    Raises:
        MarkError: it lies on an obstacle or beyond the frame.
    """
    ground, mark = shapely.Polygon(frame), shapely.Point(place)
    away = shapely.distance(np.asarray([*solids, ground.exterior], dtype=object), mark)
    room = float(away.min())
    if room <= GRID or not shapely.contains(ground, mark):
        raise MarkError(place)
    return room


def _triangulated(lines: Linework, bridges: Floats) -> tuple[Mesh, Ints]:
    """Return the mesh, and the bridges as rows of two of its points."""
    lines, ties = tied(evened(lines), bridges)
    return triangulate(lines), ties


def _widest(mesh: Mesh, ties: Ints, ends: Ends, touch: float) -> tuple[_Search, Way]:
    """Return the widest way between the `ends` of climbs, all in local coordinates.

    The first width found is too great where a corner faces the middle of a wall. Only there are
    feet closer than it, and with these in the mesh the second is exact.
    """
    search = _Search.of(gates(mesh, ties), ends)
    width = search.width(touch)
    if width > 0:
        edges, places = feet(mesh, width)
        if len(edges):
            search = _Search.of(gates(with_feet(mesh, edges, places), ties), ends)
            width = search.width(touch)
    return search, search.way(width) if width > 0 else Way(0.0)


def _side(mesh: Mesh, climbs: list[Climb]) -> Side:
    triangles = [mesh.triangle_at(climb.trail[-1]) for climb in climbs]
    width = [2 * climb.room * (1 + LEVEL) for climb in climbs]
    return Side(np.array(triangles), np.array(width))


def _moved(way: Way, origin: Floats) -> Way:
    """Return a way in the frame's own coordinates."""
    dx, dy = float(origin[0]), float(origin[1])
    path = tuple((x + dx, y + dy) for x, y in way.path)
    if way.narrowest is None:
        return Way(way.width, path)
    (ax, ay), (bx, by) = way.narrowest
    return Way(way.width, path, ((ax + dx, ay + dy), (bx + dx, by + dy)))


def _point(place: Floats | Point) -> Point:
    return float(place[0]), float(place[1])
