"""Corners that face the middle of a wall."""

import numpy as np
import pytest
import shapely

from enclosure_app.geometry.linework.linework import noded
from enclosure_app.geometry.openings.passages import feet
from enclosure_app.geometry.openings.triangles import triangulate

FRAME = [(0.0, 0.0), (1000.0, 0.0), (1000.0, 600.0), (0.0, 600.0)]


def found(reach: float, *runs: list[tuple[float, float]]) -> list[tuple[float, ...]]:
    mesh = triangulate(noded(FRAME, [shapely.LineString(run) for run in runs]))
    edges, places = feet(mesh, reach)
    assert mesh.wall[edges].all()
    return sorted({tuple(np.round(place, 6)) for place in places.tolist()})


WALL = [(100.0, 200.0), (900.0, 200.0)]
POST = [(430.0, 230.0), (430.0, 500.0)]


def test_the_end_of_a_post_has_its_foot_on_the_wall_below_it() -> None:
    assert found(50, WALL, POST) == [(430, 200)]


def test_a_foot_further_than_the_reach_is_not_looked_for() -> None:
    assert found(29.9, WALL, POST) == []


def test_a_wall_between_hides_the_foot() -> None:
    between = [(300.0, 215.0), (560.0, 215.0)]
    assert found(29, WALL, POST, between) == [(300, 200), (430, 215), (560, 200)]


def test_a_foot_beyond_other_triangles_is_found() -> None:
    """Two ends stand closer to each other than to the wall, so an edge runs between them."""
    other = [(436.0, 229.0), (800.0, 500.0)]
    assert (430, 200) in found(50, WALL, POST, other)


def test_the_foot_on_a_slope_lies_square_to_it() -> None:
    slope = [(100.0, 100.0), (900.0, 180.0)]
    (place,) = found(100, slope, [(500.0, 190.0), (500.0, 480.0)])
    along = np.array([10.0, 1.0]) / np.hypot(10, 1)
    to = np.array(place) - (500.0, 190.0)
    assert to @ along == pytest.approx(0, abs=1e-5)
