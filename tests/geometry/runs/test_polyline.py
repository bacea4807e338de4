"""Lengths along one polyline: a 3-4-5 bend and a square."""

import numpy as np
import pytest

from enclosure_app.geometry.runs.polyline import (
    around,
    as_array,
    as_points,
    nearest_positions,
    point_at,
    positions,
    stretch,
    within,
)

BEND = as_array([(0, 0), (3, 4), (3, 14)])
SQUARE = as_array([(0, 0), (10, 0), (10, 10), (0, 10), (0, 0)])


def test_positions_count_from_the_first_point() -> None:
    assert positions(BEND).tolist() == [0, 5, 15]


def test_a_place_beyond_the_end_is_the_end() -> None:
    assert point_at(BEND, np.array([-1.0, 2.5, 7.0, 99.0])).tolist() == [
        [0, 0],
        [1.5, 2],
        [3, 6],
        [3, 14],
    ]


def test_a_stretch_keeps_the_corners_between() -> None:
    assert stretch(BEND, 2.5, 7).tolist() == [[1.5, 2], [3, 4], [3, 6]]
    assert stretch(BEND, 7, 2.5).tolist() == [[3, 6], [3, 4], [1.5, 2]]


def test_a_stretch_that_starts_on_a_corner_has_it_once() -> None:
    assert stretch(BEND, 5, 7).tolist() == [[3, 4], [3, 6]]


def test_the_other_way_round_goes_over_the_seam() -> None:
    assert around(SQUARE, 5, 35).tolist() == [[5, 0], [0, 0], [0, 0], [0, 5]]
    assert around(SQUARE, 35, 5).tolist() == [[0, 5], [0, 0], [0, 0], [5, 0]]


def test_both_ways_round_make_the_whole() -> None:
    there, back = stretch(SQUARE, 5, 27), around(SQUARE, 5, 27)
    assert positions(there)[-1] == pytest.approx(22)
    assert positions(back)[-1] == pytest.approx(18)
    assert there[0].tolist() == back[0].tolist()
    assert there[-1].tolist() == back[-1].tolist()


def test_the_nearest_position_is_told_for_places_beside_the_line() -> None:
    found = nearest_positions(BEND, as_array([(9, 10), (3, 99), (-5, -5)]))
    assert found.tolist() == [11, 15, 0]


def test_within_tells_whether_a_line_passes_a_chord() -> None:
    assert within(((0, 0), (10, 0)), [[(5, 4), (5, 9)]], 5)
    assert not within(((0, 0), (10, 0)), [[(5, 6), (5, 9)]], 5)
    assert within(((0, 0), (10, 0)), [[(50, 6), (50, 9)], [(5, 3)]], 5)


def test_points_and_arrays_turn_into_each_other() -> None:
    assert as_points(BEND) == ((0, 0), (3, 4), (3, 14))
    assert as_array([]).shape == (0, 2)
