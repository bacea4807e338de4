"""The table of segments: a 3-4-5 line, a square with a hole, and a closed sheet."""

import numpy as np
import pytest

from enclosure_app.geometry.rims.rims import rims_of
from enclosure_app.geometry.rims.solids import area_solid, line_solid

HOLE = ((10, 10), (10, 30), (30, 30), (30, 10))
SQUARE = ((0, 0), (40, 0), (40, 40), (0, 40))


def test_a_bare_line_is_one_open_rim_with_its_segments_in_order() -> None:
    rims = rims_of([line_solid([(0, 0), (3, 4), (3, 14)])])
    assert rims.start.tolist() == [[0, 0], [3, 4]]
    assert rims.end.tolist() == [[3, 4], [3, 14]]
    assert rims.along.tolist() == [0, 5]
    assert rims.length.tolist() == [15]
    assert rims.ring.tolist() == [False]


def test_a_repeated_point_makes_no_segment() -> None:
    rims = rims_of([line_solid([(0, 0), (5, 0), (5, 0), (9, 0)])])
    assert rims.start.tolist() == [[0, 0], [5, 0]]
    assert rims.along.tolist() == [0, 5]


def test_a_closed_line_is_a_ring() -> None:
    rims = rims_of([line_solid([(0, 0), (30, 0), (0, 40)], closed=True)])
    assert rims.ring.tolist() == [True]
    assert rims.length.tolist() == [30 + 50 + 40]


def test_an_area_has_a_rim_for_its_outside_and_one_for_each_hole() -> None:
    rims = rims_of([line_solid([(90, 0), (99, 0)]), area_solid(SQUARE, [HOLE])])
    assert rims.owner.tolist() == [0, 1, 1]
    assert rims.length.tolist() == [9, 160, 80]
    assert rims.ring.tolist() == [False, True, True]
    assert rims.first.tolist() == [0, 1, 5, 9]
    assert rims.along.tolist() == [0, 0, 40, 80, 120, 0, 20, 40, 60]


def test_a_line_with_a_width_is_the_ring_of_its_band() -> None:
    rims = rims_of([line_solid([(0, 0), (100, 0)], 4)])
    assert rims.ring.tolist() == [True]
    assert rims.length.tolist() == [208]
    assert np.abs(rims.start[:, 1]).tolist() == [2, 2, 2, 2]


def test_places_along_rims_are_found_and_told_again() -> None:
    rims = rims_of([line_solid([(0, 0), (3, 4), (3, 14)]), area_solid(SQUARE)])
    segments, points = rims.locate(np.array([0, 0, 0, 1]), np.array([2.5, 5.0, 99.0, 50.0]))
    assert segments[:3].tolist() == [0, 1, 1]
    assert points[:3].tolist() == [[1.5, 2], [3, 4], [3, 14]]
    assert rims.position(segments, points).tolist() == [2.5, 5, 15, 50]


def test_a_rims_points_come_back_with_a_rings_first_point_repeated() -> None:
    rims = rims_of([line_solid([(0, 0), (3, 4), (3, 14)]), line_solid(SQUARE, closed=True)])
    assert rims.points_of(0).tolist() == [[0, 0], [3, 4], [3, 14]]
    assert rims.points_of(1).tolist() == [*map(list, SQUARE), [0, 0]]


def test_nothing_gives_an_empty_table() -> None:
    rims = rims_of([])
    assert rims.start.shape == (0, 2)
    assert rims.first.tolist() == [0]


def test_places_are_exact_far_from_the_origin() -> None:
    far = 5e6
    rims = rims_of([line_solid([(far, -far), (far + 3, -far + 4)])])
    assert rims.length.tolist() == pytest.approx([5])
    _, points = rims.locate(np.array([0]), np.array([2.5]))
    assert points.tolist() == [pytest.approx([far + 1.5, -far + 2])]
