"""Plane arithmetic on polylines."""

from math import dist

import pytest
from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.drawing.polylines import (
    distinct,
    foot,
    left_of,
    length,
    offset,
    simplified,
    stretch,
    unit,
    walk_to,
)

ELBOW = ((0.0, 0.0), (10.0, 0.0), (10.0, 20.0))


def test_an_offset_to_the_left_keeps_its_distance_round_a_corner() -> None:
    assert offset(ELBOW, 2.0) == ((0.0, 2.0), (8.0, 2.0), (8.0, 20.0))
    assert offset(ELBOW, -2.0) == ((0.0, -2.0), (12.0, -2.0), (12.0, 20.0))


def test_an_offset_at_a_hairpin_does_not_run_away() -> None:
    spike = offset(((0.0, 0.0), (10.0, 0.0), (0.0, 0.1)), 1.0)
    assert all(dist(p, (10.0, 0.0)) < 11 for p in spike)


def test_a_stretch_goes_round_the_corner() -> None:
    assert stretch(ELBOW, 5.0, 15.0) == ((5.0, 0.0), (10.0, 0.0), (10.0, 5.0))


def test_walking_beyond_an_end_goes_on_straight() -> None:
    assert walk_to(ELBOW, -5.0) == ((-5.0, 0.0), (1.0, 0.0))
    assert walk_to(ELBOW, 35.0) == ((10.0, 25.0), (0.0, 1.0))


def test_a_foot_tells_how_far_along_how_far_off_and_on_which_side() -> None:
    found = foot(ELBOW, (7.0, 4.0))
    assert (found.at, found.along, found.off, found.left) == ((10.0, 4.0), 14.0, 3.0, True)
    assert foot(ELBOW, (13.0, 4.0)).left is False


def test_a_foot_needs_a_line() -> None:
    with pytest.raises(ValueError, match="two points"):
        foot(((0.0, 0.0),), (1.0, 1.0))


def test_small_wobbles_are_simplified_away_and_corners_stay() -> None:
    wobbly = ((0.0, 0.0), (5.0, 0.3), (10.0, 0.0), (10.0, 9.0), (10.2, 10.0), (10.0, 20.0))
    assert simplified(wobbly, 1.0) == ELBOW


def test_repeats_and_points_without_direction_are_borne() -> None:
    assert distinct(((1.0, 1.0), (1.0, 1.0), (2.0, 1.0))) == ((1.0, 1.0), (2.0, 1.0))
    assert unit((3.0, 3.0), (3.0, 3.0)) == (1.0, 0.0)
    assert walk_to(((3.0, 3.0),), 9.0) == ((3.0, 3.0), (1.0, 0.0))
    assert left_of((1.0, 0.0)) == (0.0, 1.0)


@given(
    st.lists(st.tuples(st.floats(-50, 50), st.floats(-50, 50)), min_size=2, max_size=6),
    st.floats(0, 1),
)
def test_the_foot_of_a_place_on_the_line_is_that_place(
    points: list[tuple[float, float]], share: float
) -> None:
    line = distinct(tuple(points))
    if len(line) < 2:
        return
    at, _ = walk_to(line, share * length(line))
    assert foot(line, at).off == pytest.approx(0, abs=1e-6)
