"""Crossings of the straight way between two marks: what separates the marks has odd parity."""

from itertools import pairwise

import numpy as np
import pytest
import shapely
from hypothesis import assume, given
from hypothesis import strategies as st

from enclosure_app.geometry.rims.parity import Way, flips_along
from enclosure_app.geometry.rims.rims import rims_of
from enclosure_app.geometry.rims.solids import line_solid

ACROSS = Way(np.array([0.0, 0.0]), np.array([10.0, 0.0]))
Coordinates = st.integers(-20, 30)


def crosses(a: tuple[float, float], b: tuple[float, float]) -> bool:
    return bool(ACROSS.crossed(np.array([a], dtype=float), np.array([b], dtype=float))[0])


def test_a_move_over_the_way_crosses_it_in_both_directions() -> None:
    assert crosses((5, 5), (5, -5))
    assert crosses((5, -5), (5, 5))


def test_a_move_beyond_the_marks_does_not_cross() -> None:
    assert not crosses((12, 5), (12, -5))
    assert not crosses((-1, 5), (-1, -5))


def test_a_corner_on_the_way_is_crossed_once_by_a_rim_that_goes_through() -> None:
    assert crosses((5, 5), (5, 0)) != crosses((5, 0), (5, -5))


@pytest.mark.parametrize("height", [5, -5])
def test_a_corner_on_the_way_is_not_crossed_by_a_rim_that_turns_back(height: float) -> None:
    assert crosses((4, height), (5, 0)) == crosses((5, 0), (6, height))


def test_a_rim_that_runs_along_the_way_crosses_if_it_leaves_on_the_other_side() -> None:
    through = [(2, 5), (3, 0), (7, 0), (8, -5)]
    back = [(2, 5), (3, 0), (7, 0), (8, 5)]
    odd, even = (sum(crosses(a, b) for a, b in pairwise(run)) for run in (through, back))
    assert odd % 2 == 1
    assert even % 2 == 0


def test_parity_is_counted_along_a_rim() -> None:
    zigzag = line_solid([(2, 5), (2, -5), (4, -5), (4, 5), (6, 5), (6, -5)])
    flips = flips_along(rims_of([zigzag]), ACROSS)
    assert flips.at_start.tolist() == [False, True, True, False, False]
    at = flips.at(np.array([0, 0, 4]), np.array([[2.0, 1.0], [2.0, -1.0], [6.0, -4.0]]))
    assert at.tolist() == [False, True, True]
    assert flips.whole.tolist() == [False]


def test_a_ring_round_one_mark_separates_and_one_round_both_does_not() -> None:
    one = line_solid([(-5, -5), (5, -5), (5, 5), (-5, 5)], closed=True)
    both = line_solid([(-5, -6), (15, -6), (15, 6), (-5, 6)], closed=True)
    neither = line_solid([(3, -5), (6, -5), (6, 5), (3, 5)], closed=True)
    assert flips_along(rims_of([one, both, neither]), ACROSS).whole.tolist() == [
        True,
        False,
        False,
    ]


@given(st.lists(st.tuples(Coordinates, Coordinates), min_size=3, max_size=9))
def test_a_simple_ring_separates_exactly_if_it_holds_one_of_the_marks(
    points: list[tuple[int, int]],
) -> None:
    ring = shapely.Polygon(points)
    marks = shapely.points([[0, 0], [10, 0]])
    assume(ring.is_valid and ring.area > 0)
    assume((shapely.distance(ring.exterior, marks) > 0).all())
    held = shapely.contains(ring, marks)
    whole = flips_along(rims_of([ring]), ACROSS).whole
    assert whole.tolist() == [bool(held[0] != held[1])]
