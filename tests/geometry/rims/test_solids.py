"""Points to shapes."""

import pytest
import shapely

from enclosure_app.geometry.rims.solids import area_solid, line_solid


def test_a_bare_line_keeps_its_points() -> None:
    solid = line_solid([(0, 0), (3, 4), (3, 10)])
    assert shapely.get_coordinates(solid).tolist() == [[0, 0], [3, 4], [3, 10]]


def test_a_closed_line_ends_where_it_began() -> None:
    assert line_solid([(0, 0), (3, 0), (0, 4)], closed=True).length == 12


def test_a_line_with_a_width_is_a_band_with_square_ends() -> None:
    band = line_solid([(0, 0), (100, 0)], 4)
    assert band.bounds == (0, -2, 100, 2)
    assert band.area == 400


def test_a_band_keeps_its_corner_sharp() -> None:
    band = line_solid([(0, 0), (100, 0), (100, 100)], 4)
    assert band.bounds == (0, -2, 102, 100)
    assert band.area == pytest.approx(800)


def test_a_line_without_length_is_refused() -> None:
    with pytest.raises(ValueError, match="two different points"):
        line_solid([(1, 1), (1, 1)])


def test_holes_are_cut_out() -> None:
    square = ((0, 0), (10, 0), (10, 10), (0, 10))
    hole = ((2, 2), (8, 2), (8, 8), (2, 8))
    assert area_solid(square, [hole]).area == 100 - 36


def test_a_ring_that_crosses_itself_is_mended() -> None:
    bow_tie = area_solid(((0, 0), (10, 10), (10, 0), (0, 10)))
    assert bow_tie.is_valid
    assert bow_tie.area == pytest.approx(50)


def test_a_hole_of_two_points_is_left_out() -> None:
    assert area_solid(((0, 0), (10, 0), (0, 10)), [((1, 1), (2, 2))]).area == 50
