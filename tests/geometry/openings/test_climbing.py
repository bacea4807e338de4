"""The roomiest place uphill of a mark."""

import numpy as np
import pytest
import shapely

from enclosure_app.geometry.linework.linework import noded
from enclosure_app.geometry.openings.climbing import Climb, Hills

FRAME = [(0.0, 0.0), (400.0, 0.0), (400.0, 300.0), (0.0, 300.0)]


def climb(place: tuple[float, float], *runs: list[tuple[float, float]]) -> Climb:
    hills = Hills(noded(FRAME, [shapely.LineString(run) for run in runs]))
    return hills.climb(np.array(place))


def test_from_a_corner_to_the_middle_of_the_frame() -> None:
    found = climb((2.0, 1.0))
    assert found.room == pytest.approx(150, rel=1e-5)
    assert found.trail[0].tolist() == [2, 1]
    assert found.trail[-1][1] == pytest.approx(150, rel=1e-4)


def test_in_a_triangle_to_the_centre_of_the_circle_within() -> None:
    """A triangle with sides 30, 40 and 50 holds a circle of radius 10 (Euclid IV.4)."""
    triangle = [(100.0, 100.0), (140.0, 100.0), (100.0, 130.0), (100.0, 100.0)]
    found = climb((101.0, 101.5), triangle)
    assert found.room == pytest.approx(10, rel=1e-5)
    assert found.trail[-1].tolist() == pytest.approx([110, 110], abs=0.01)


def test_no_passage_is_passed_that_is_narrower_than_the_room() -> None:
    bay = [(100.0, 100.0), (160.0, 100.0), (160.0, 160.0), (140.0, 160.0)]
    rest = [(120.0, 160.0), (100.0, 160.0), (100.0, 100.0)]
    found = climb((130.0, 125.0), bay, rest)
    assert found.trail[-1][1] < 160
    assert 30 <= found.room < 32


def test_a_trail_that_goes_straight_past_no_wall_has_two_places() -> None:
    assert len(climb((2.0, 1.0)).trail) == 2


def test_a_trail_round_a_corner_keeps_clear_of_it() -> None:
    hook = [(0.0, 40.0), (60.0, 40.0), (60.0, 30.0)]
    found = climb((10.0, 36.0), hook)
    path = shapely.LineString(found.trail)
    assert shapely.distance(path, shapely.LineString(hook)) > 0
