"""Random layers: wiggling runs cut into pieces, loops, islands, areas, crossings, near touches."""

import os
from dataclasses import dataclass
from math import cos, pi, sin

import numpy as np
import shapely
from hypothesis import HealthCheck, settings
from hypothesis import strategies as st
from shapely.geometry.base import BaseGeometry

from enclosure_app.geometry.rims.solids import area_solid, line_solid
from enclosure_app.model.place import Area, Line, Point, Points, Shape

WIDTH, HEIGHT = 600.0, 400.0
MANY = int(os.environ.get("ENCLOSURE_MANY", "0"))


def profile(examples: int) -> settings:
    """Return the settings of a property test: always the same examples, or ENCLOSURE_MANY new ones."""
    return settings(
        max_examples=MANY or examples,
        derandomize=not MANY,
        deadline=None,
        database=None,
        suppress_health_check=list(HealthCheck),
    )


@dataclass(frozen=True)
class RandomLayer:
    """A layer in its frame with one mark on each side; `room` mm is free around both marks."""

    frame: Points
    shapes: tuple[Shape, ...]
    outside: Point
    inside: Point
    room: float

    @property
    def solids(self) -> list[BaseGeometry]:
        """The pieces as shapely shapes."""
        return [solid(shape) for shape in self.shapes]


def solid(shape: Shape) -> BaseGeometry:
    """Return a piece as the shapely shape it fills."""
    if isinstance(shape, Area):
        return area_solid(shape.outer, shape.holes)
    return line_solid(shape.points, shape.width, closed=shape.closed)


def clearance(frame: Points, solids: list[BaseGeometry], places: np.ndarray) -> np.ndarray:
    """Return how much room there is around each of `places` (n, 2): 0 in solids and outside."""
    points = shapely.points(places)
    ground = shapely.Polygon(frame)
    room = shapely.distance(shapely.boundary(ground), points)
    if solids:
        room = np.minimum(room, shapely.distance(shapely.union_all(solids), points))
    room[~shapely.contains(ground, points)] = 0
    return room


_frames = st.sampled_from(
    [
        ((0, 0), (WIDTH, 0), (WIDTH, HEIGHT), (0, HEIGHT)),
        ((0, 0), (WIDTH, 0), (WIDTH, HEIGHT), (0, HEIGHT)),
        ((0, 0), (WIDTH, 0), (WIDTH, 250), (420, 250), (420, HEIGHT), (0, HEIGHT)),
        ((40, 0), (WIDTH, 30), (WIDTH - 60, HEIGHT), (300, HEIGHT - 70), (0, HEIGHT)),
    ]
)
_x = st.integers(-30, int(WIDTH) + 30)
_y = st.integers(0, int(HEIGHT))
_points = st.tuples(_x, _y)
_gaps = st.sampled_from([0, 0, 0, 0, 1, 3, 8, 20, 45, 80])


@st.composite
def _run(draw: st.DrawFn) -> list[Shape]:
    """A wiggling run from side to side, cut into pieces with gaps and laps between."""
    number = draw(st.integers(3, 9))
    level = draw(st.integers(120, 280))
    heights = draw(st.lists(st.integers(-70, 70), min_size=number + 1, max_size=number + 1))
    x = np.linspace(draw(st.sampled_from([-20, 0, 15])), WIDTH, number + 1)
    corners = [(float(a), float(level + b)) for a, b in zip(x, heights, strict=True)]
    pieces: list[Shape] = []
    width = float(draw(st.sampled_from([0, 0, 0, 4])))
    start, k = corners[0], 0
    while k < number:
        step = draw(st.integers(1, 3))
        end = corners[min(k + step, number)]
        inner = corners[k + 1 : min(k + step, number)]
        gap, shift = draw(_gaps), draw(st.sampled_from([0, 0, 1, 6, -9]))
        previous = inner[-1] if inner else start
        length = float(np.hypot(end[0] - previous[0], end[1] - previous[1]))
        share = max(0.1, 1 - gap / max(length, 1))
        cut = tuple(p + share * (q - p) for p, q in zip(previous, end, strict=True))
        pieces.append(Line((start, *inner, (cut[0], cut[1])), width))
        start, k = (end[0], end[1] + shift), k + step
    return pieces


@st.composite
def _loop(draw: st.DrawFn) -> list[Shape]:
    """A ring: a closed line, an open one, or an area with a hole."""
    cx, cy = draw(_points)
    size, number = draw(st.integers(15, 90)), draw(st.integers(3, 9))
    ring = tuple(
        (cx + size * cos(2 * pi * k / number), cy + size * sin(2 * pi * k / number))
        for k in range(number)
    )
    kind = draw(st.sampled_from(["closed", "open", "area", "hollow"]))
    if kind == "closed":
        return [Line(ring, closed=True)]
    if kind == "open":
        return [Line(ring)]
    hole = tuple((cx + (x - cx) * 0.7, cy + (y - cy) * 0.7) for x, y in ring)
    return [Area(ring, (hole,) if kind == "hollow" else ())]


@st.composite
def _stray(draw: st.DrawFn) -> list[Shape]:
    """A line anywhere, which may cross itself and everything else."""
    points = draw(st.lists(_points, min_size=2, max_size=5, unique=True))
    return [Line(tuple((float(x), float(y)) for x, y in points))]


@st.composite
def _block(draw: st.DrawFn) -> list[Shape]:
    """A rectangle: a board, a pipe, a post."""
    x, y = draw(_points)
    w, h = draw(st.integers(3, 150)), draw(st.integers(3, 60))
    return [Area(((x, y), (x + w, y), (x + w, y + h), (x, y + h)))]


@st.composite
def layers(draw: st.DrawFn) -> RandomLayer:
    """A random layer with roomy marks above and below."""
    frame = draw(_frames)
    far = draw(st.sampled_from([0.0, 0.0, 0.0, 1e6]))
    shapes = draw(_run())
    for extra in draw(st.lists(st.one_of(_run(), _loop(), _stray(), _block()), max_size=4)):
        shapes = shapes + extra
    solids = [solid(shape) for shape in shapes]
    x, y = np.meshgrid(np.arange(7, WIDTH, 23.0), np.arange(5, HEIGHT, 17.0))
    places = np.column_stack([x.ravel(), y.ravel()])
    room = clearance(frame, solids, places)
    marks = []
    for side in (places[:, 1] > HEIGHT * 0.6, places[:, 1] < HEIGHT * 0.4):
        best = int(np.argmax(np.where(side, room, -1)))
        marks.append((float(places[best, 0]) + far, float(places[best, 1]) - far))
    least = float(min(clearance(frame, solids, np.array(marks) - (far, -far))))
    moved = tuple(_moved(shape, far) for shape in shapes)
    return RandomLayer(_shift(frame, far), moved, marks[0], marks[1], least)


def _shift(points: Points, far: float) -> Points:
    return tuple((float(x) + far, float(y) - far) for x, y in points)


def _moved(shape: Shape, far: float) -> Shape:
    if isinstance(shape, Area):
        return Area(_shift(shape.outer, far), tuple(_shift(hole, far) for hole in shape.holes))
    return Line(_shift(shape.points, far), shape.width, shape.closed)
