"""The opening against referees that share nothing with it but distances."""

import numpy as np
import pytest
import shapely
from hypothesis import assume, given
from random_layers import HEIGHT, WIDTH, RandomLayer, clearance, layers, profile

from enclosure_app.network.opening import Opening, find_opening

TOUCH = 2.0
PIXEL = 5.0


def opening_of(layer: RandomLayer) -> Opening:
    return find_opening(layer.frame, layer.shapes, [], [layer.outside], [layer.inside], TOUCH)


def disc_passes(layer: RandomLayer, diameter: float) -> bool:
    """Grow everything by the disc's radius and look whether the marks lie in one region."""
    obstacles = shapely.union_all([*layer.solids, shapely.LinearRing(layer.frame)])
    ground = shapely.Polygon(layer.frame)
    free = shapely.difference(ground, shapely.buffer(obstacles, diameter / 2, quad_segs=64))
    parts = shapely.get_parts(free)
    marks = shapely.points([layer.outside, layer.inside])
    return any(shapely.contains(part, marks).all() for part in parts)


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


@profile(120)
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


@profile(30)
@given(layers())
def test_the_opening_agrees_with_a_raster(layer: RandomLayer) -> None:
    width = opening_of(layer).width
    assume(2 * layer.room > max(width, TOUCH) * 1.01)
    raster = widest_disc_on_raster(layer, PIXEL)
    if width:
        assert width == pytest.approx(raster, abs=1.5 * PIXEL)
    else:
        assert raster < TOUCH + 1.5 * PIXEL


@profile(60)
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
