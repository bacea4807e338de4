"""The run beside a run is everywhere at its distance, and on the side that was asked for."""

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.geometry.runs.offsetting import offset_run

FOLD = ((0.0, 0.0), (100.0, 0.0), (100.0, 50.0))
CHANNEL = ((0.0, 40.0), (0.0, 0.0), (10.0, 0.0), (10.0, 40.0))


def test_a_slight_bend_is_followed_exactly() -> None:
    """A bend of 0.02 mm, less than a hundredth of the distance, stays a bend."""
    bent = ((0.0, 0.0), (50.0, 0.02), (100.0, 0.0))
    beside = offset_run(bent, 3.0, (50.0, 9.0), closed=False)
    assert len(beside) == 3
    assert beside[1] == pytest.approx((50.0, 3.02), abs=1e-6)


def test_in_a_channel_there_is_room_for_so_much_and_no_more() -> None:
    inside = offset_run(CHANNEL, 4.0, (5.0, 20.0), closed=False)
    assert inside == ((4.0, 40.0), (4.0, 4.0), (6.0, 4.0), (6.0, 40.0))
    assert offset_run(CHANNEL, 6.0, (5.0, 20.0), closed=False) == ()
    assert offset_run(CHANNEL, 6.0, (-5.0, 20.0), closed=False) == (
        (-6.0, 40.0),
        (-6.0, -6.0),
        (16.0, -6.0),
        (16.0, 40.0),
    )


def test_a_stretch_too_short_for_the_distance_is_left_out() -> None:
    """A step of 2 mm in a run has no room on its inner side at 5 mm."""
    step = ((0.0, 0.0), (50.0, 0.0), (50.0, 2.0), (48.0, 2.0), (48.0, 60.0))
    beside = shapely.LineString(offset_run(step, 5.0, (10.0, 30.0), closed=False))
    assert beside.distance(shapely.LineString(step)) == pytest.approx(5.0, abs=1e-6)


def test_points_on_top_of_each_other_are_one() -> None:
    doubled = (FOLD[0], FOLD[1], FOLD[1], FOLD[2])
    wanted = ((0.0, 3.0), (97.0, 3.0), (97.0, 50.0))
    assert offset_run(doubled, 3.0, (50.0, 9.0), closed=False) == wanted


@given(st.floats(0.1, 20.0), st.booleans())
def test_a_ring_is_gone_round_at_the_distance_either_way_round(
    distance: float, turned: bool
) -> None:
    ring = ((0.0, 0.0), (100.0, 0.0), (130.0, 80.0), (50.0, 120.0))
    outline = shapely.LinearRing(ring)
    for side, within in (((50.0, 50.0), True), ((-50.0, 50.0), False)):
        points = offset_run(ring[::-1] if turned else ring, distance, side, closed=True)
        beside = shapely.LinearRing(points)
        assert beside.distance(outline) == pytest.approx(distance, abs=1e-6)
        assert shapely.Polygon(ring).contains(beside) == within
        assert len(points) == 4


def test_a_ring_that_repeats_its_first_point_is_the_same_ring() -> None:
    ring = ((0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (0.0, 10.0))
    wanted = offset_run(ring, 2.0, (5.0, 5.0), closed=True)
    assert wanted == ((2.0, 2.0), (8.0, 2.0), (8.0, 8.0), (2.0, 8.0))
    assert offset_run((*ring, ring[0]), 2.0, (5.0, 5.0), closed=True) == wanted


def test_a_ring_too_tight_for_the_distance_has_none_inside() -> None:
    ring = ((0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (0.0, 10.0))
    assert offset_run(ring, 5.5, (5.0, 5.0), closed=True) == ()
