"""Short ways through gates."""

from itertools import pairwise

import numpy as np
import pytest
import shapely

from enclosure_app.geometry.linework.linework import noded
from enclosure_app.geometry.openings.gates import Gates, gates
from enclosure_app.geometry.openings.routes import Stop, route
from enclosure_app.geometry.openings.triangles import triangulate

FRAME = [(0.0, 0.0), (400.0, 0.0), (400.0, 300.0), (0.0, 300.0)]


def open_ground(*runs: list[tuple[float, float]]) -> Gates:
    lines = noded(FRAME, [shapely.LineString(run) for run in runs])
    return gates(triangulate(lines), np.empty((0, 2), dtype=np.int64))


def stop(ground: Gates, place: complex) -> Stop:
    return Stop(ground.mesh.triangle_at(np.array([place.real, place.imag])), place)


WALL = [(0.0, 150.0), (190.0, 150.0)]
OTHER = [(230.0, 150.0), (400.0, 150.0)]


def test_a_way_in_plain_sight_is_straight() -> None:
    ground = open_ground(WALL, OTHER)
    found = route(ground, [stop(ground, 210 + 250j)], [stop(ground, 210 + 50j)], 40)
    path = [210 + 250j, *found.places, 210 + 50j]
    length = sum(abs(b - a) for a, b in pairwise(path))
    assert length == pytest.approx(200, abs=0.1)


def test_a_way_past_ends_keeps_half_its_width_from_them() -> None:
    ground = open_ground(WALL)
    found = route(ground, [stop(ground, 100 + 250j)], [stop(ground, 100 + 50j)], 60)
    at_end = [abs(place - (190 + 150j)) for place in found.places]
    assert min(at_end) == pytest.approx(30, abs=0.1)


def test_the_nearer_of_two_goals_is_taken() -> None:
    ground = open_ground([(0.0, 150.0), (400.0, 150.0)], [(150.0, 300.0), (150.0, 180.0)])
    start = stop(ground, 200 + 250j)
    far, near = stop(ground, 10 + 200j), stop(ground, 390 + 200j)
    found = route(ground, [start], [far, near], 20)
    assert (found.start, found.goal) == (0, 1)


def test_no_way_that_wide_is_an_error() -> None:
    ground = open_ground(WALL, OTHER)
    with pytest.raises(ValueError, match="Nothing that wide"):
        route(ground, [stop(ground, 210 + 250j)], [stop(ground, 210 + 50j)], 40.1)
