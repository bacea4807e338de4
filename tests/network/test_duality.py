"""The opening against referees that share nothing with it but distances."""

from dataclasses import replace
from math import cos, pi, sin

import numpy as np
import pytest
import shapely
from hypothesis import assume, given
from hypothesis import strategies as st
from shapely.geometry.base import BaseGeometry

from enclosure_app.model.place import Area, Line, Point, Points
from enclosure_app.network.opening import Opening, find_opening
from tests.network.random_layers import HEIGHT, WIDTH, RandomLayer, clearance, layers, profile

TOUCH = 2.0
PIXEL = 5.0
Bridges = list[tuple[Point, Point]]


def opening_of(layer: RandomLayer, bridges: Bridges | None = None) -> Opening:
    marks = [layer.outside], [layer.inside]
    return find_opening(layer.frame, layer.shapes, bridges or [], *marks, TOUCH)


def same_face(layer: RandomLayer, barrier: BaseGeometry) -> bool:
    """Tell whether both marks lie in one face of what `barrier` leaves of the frame."""
    free = shapely.difference(shapely.Polygon(layer.frame), barrier)
    marks = shapely.points([layer.outside, layer.inside])
    return any(shapely.contains(part, marks).all() for part in shapely.get_parts(free))


def disc_passes(layer: RandomLayer, diameter: float) -> bool:
    """Grow everything by the disc's radius and look whether the marks lie in one region."""
    obstacles = shapely.union_all([*layer.solids, shapely.LinearRing(layer.frame)])
    return same_face(layer, shapely.buffer(obstacles, diameter / 2, quad_segs=64))


def jumps_leave_a_way(layer: RandomLayer, bridges: Bridges, reach: float) -> bool:
    """Draw every jump up to `reach` from a corner to any wall, and look whether a way is left."""
    rims = [shapely.boundary(s) if s.area else s for s in layer.solids]
    wall = shapely.union_all([*rims, shapely.LinearRing(layer.frame)])
    runs = [shapely.get_coordinates(line) for line in shapely.get_parts(wall)]
    walls = shapely.linestrings(np.concatenate([np.stack([r[:-1], r[1:]], axis=1) for r in runs]))
    corners = shapely.points(np.unique(np.concatenate(runs), axis=0))
    jumps = shapely.shortest_line(np.repeat(corners, len(walls)), np.tile(walls, len(corners)))
    lengths = shapely.length(jumps)
    drawn = [*jumps[(lengths > 0) & (lengths <= reach)], *map(shapely.LineString, bridges), wall]
    return same_face(layer, shapely.buffer(shapely.union_all(drawn), 1e-5, quad_segs=1))


def chords(layer: RandomLayer, pairs: list[tuple[int, int]]) -> Bridges:
    """Return the shortest chords between pairs of pieces that lie apart."""
    solids, found = layer.solids, []
    for i, j in pairs:
        a, b = solids[i % len(solids)], solids[j % len(solids)]
        start, end = (tuple(p) for p in shapely.get_coordinates(shapely.shortest_line(a, b)))
        if start != end:
            found.append((start, end))
    return found


def widest_disc_on_raster(layer: RandomLayer, pixel: float) -> float:
    """Return the diameter of the widest disc that gets from mark to mark over square cells."""
    origin = np.min(layer.frame, axis=0)
    columns, rows = int(WIDTH / pixel) + 1, int(HEIGHT / pixel) + 1
    x, y = np.meshgrid(np.arange(columns) * pixel, np.arange(rows) * pixel)
    cells = np.column_stack([x.ravel(), y.ravel()]) + origin
    room = clearance(layer.frame, layer.solids, cells)
    start, goal = (
        int(np.argmin(np.hypot(*(cells - mark).T))) for mark in (layer.outside, layer.inside)
    )
    parent = np.full(len(cells), -1).tolist()

    def root(cell: int) -> int:
        while parent[cell] != cell:
            parent[cell] = cell = parent[parent[cell]]
        return cell

    for cell in np.argsort(-room).tolist():
        parent[cell] = cell
        row, column = divmod(cell, columns)
        for r, c in ((row, column - 1), (row, column + 1), (row - 1, column), (row + 1, column)):
            if 0 <= r < rows and 0 <= c < columns and parent[r * columns + c] >= 0:
                parent[root(r * columns + c)] = root(cell)
        if parent[start] >= 0 and parent[goal] >= 0 and root(start) == root(goal):
            return 2 * float(room[cell])
    return 0.0


@profile(80)
@given(layers())
def test_a_disc_a_little_narrower_than_the_opening_passes_and_a_wider_one_does_not(
    layer: RandomLayer,
) -> None:
    width = opening_of(layer).width
    assume(2 * layer.room > max(width, TOUCH) * 1.01)
    if width:
        assert width > TOUCH
        assert disc_passes(layer, width * 0.999)
        assert not disc_passes(layer, width * 1.001)
    else:
        assert not disc_passes(layer, TOUCH * 1.001)


@profile(60)
@given(layers(), st.lists(st.tuples(st.integers(0, 20), st.integers(0, 20)), max_size=6))
def test_jumps_shorter_than_the_opening_leave_a_way_past_bridges_and_longer_ones_do_not(
    layer: RandomLayer, pairs: list[tuple[int, int]]
) -> None:
    bridges = chords(layer, pairs)
    width = opening_of(layer, bridges).width
    assume(2 * layer.room > max(width, TOUCH) * 1.01)
    for bridge in bridges:
        for mark in (layer.outside, layer.inside):
            assume(shapely.distance(shapely.LineString(bridge), shapely.Point(mark)) > 0.1)
    if width:
        assert jumps_leave_a_way(layer, bridges, width * 0.9999)
        assert not jumps_leave_a_way(layer, bridges, width * 1.0001)
    else:
        assert not jumps_leave_a_way(layer, bridges, TOUCH * 1.0001)


@profile(25)
@given(layers())
def test_the_opening_agrees_with_a_raster(layer: RandomLayer) -> None:
    width = opening_of(layer).width
    assume(2 * layer.room > max(width, TOUCH) * 1.01)
    raster = widest_disc_on_raster(layer, PIXEL)
    if width:
        assert width == pytest.approx(raster, abs=1.5 * PIXEL)
    else:
        assert raster < TOUCH + 1.5 * PIXEL


@profile(40)
@given(layers())
def test_the_path_runs_from_mark_to_mark_and_crosses_nothing(layer: RandomLayer) -> None:
    opening = opening_of(layer)
    assume(0 < opening.width < 2 * layer.room)
    assert opening.path[0] == pytest.approx(layer.outside)
    assert opening.path[-1] == pytest.approx(layer.inside)
    path = shapely.LineString(opening.path)
    assert shapely.distance(path, shapely.union_all(layer.solids)) > 0
    assert shapely.contains(shapely.Polygon(layer.frame), path)
    assert opening.narrowest is not None
    chord = shapely.LineString(opening.narrowest)
    assert chord.length == pytest.approx(opening.width, abs=1e-5)
    assert shapely.crosses(path, chord)


def turned(layer: RandomLayer, angle: float) -> RandomLayer:
    """Turn everything about the frame's first point."""
    x0, y0 = layer.frame[0]

    def turn(points: Points) -> Points:
        return tuple(
            (
                x0 + (x - x0) * cos(angle) - (y - y0) * sin(angle),
                y0 + (x - x0) * sin(angle) + (y - y0) * cos(angle),
            )
            for x, y in points
        )

    shapes = tuple(
        Area(turn(shape.outer), tuple(map(turn, shape.holes)))
        if isinstance(shape, Area)
        else replace(shape, points=turn(shape.points))
        for shape in layer.shapes
    )
    (outside,), (inside,) = turn((layer.outside,)), turn((layer.inside,))
    return RandomLayer(turn(layer.frame), shapes, outside, inside, layer.room)


@profile(40)
@given(layers(), st.integers(1, 359))
def test_turning_the_drawing_changes_nothing(layer: RandomLayer, degrees: int) -> None:
    """But for what is as wide as the touch to a thousandth: a rounding closes that, or opens it."""
    width = opening_of(layer).width
    assume(2 * layer.room > max(width, TOUCH) * 1.01)
    assume(width == 0 or width > TOUCH + 0.001)
    after = opening_of(turned(layer, degrees * pi / 180)).width
    assume(after == 0 or after > TOUCH + 0.001)
    assert after == pytest.approx(width, abs=1e-4)


def test_a_layer_with_points_a_rounding_apart_is_closed() -> None:
    """Sheets drawn on top of each other, whose bands cross at almost the same places."""
    low = (((0, 120), (75, 134)), ((75, 134), (150, 120), (225, 121)), ((225, 127), (300, 120)))
    level = (
        ((300, 120), (375, 120)),
        ((375, 120), (450, 120)),
        ((450, 120), (525, 120), (600, 120)),
    )
    again = (((0, 120), (75, 121)), ((75, 121), (150, 120), (225, 121)))
    over = (((225, 127), (300, 120), (375, 120)), ((375, 120), (450, 120), (525, 120), (600, 120)))
    runs = (*low, *level, *again, *over)
    sheets = tuple(Line(tuple((float(x), float(y)) for x, y in run), 4.0) for run in runs)
    frame = ((0.0, 0.0), (600.0, 0.0), (600.0, 400.0), (0.0, 400.0))
    layer = RandomLayer(frame, sheets, (329.0, 260.0), (76.0, 56.0), 56.0)
    assert opening_of(layer).width == pytest.approx(0.0, abs=1e-4)
