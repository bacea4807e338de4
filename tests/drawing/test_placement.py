"""Boxes, and the way from the section to the sheet and back."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.drawing.placement import Box, Placement, box_around

coordinate = st.floats(-1e5, 1e5)


def test_one_to_ten_makes_ten_of_one() -> None:
    placed = Placement(10.0, (1000.0, 500.0), (100.0, 60.0))
    assert placed.point((1000.0, 500.0)) == (100.0, 60.0)
    assert placed.point((1100.0, 450.0)) == (110.0, 55.0)
    assert placed.length(250.0) == 25.0


@given(st.tuples(coordinate, coordinate), st.sampled_from([1.0, 10.0, 48.0]))
def test_the_way_back_leads_to_the_same_place(place: tuple[float, float], scale: float) -> None:
    placed = Placement(scale, (123.0, -45.0), (100.0, 60.0))
    assert placed.back(placed.point(place)) == pytest.approx(place, abs=1e-6)


def test_a_box_knows_its_measures() -> None:
    box = box_around([(3.0, 9.0), (1.0, 4.0), (5.0, 7.0)])
    assert box == Box(1.0, 4.0, 5.0, 9.0)
    assert (box.width, box.height, box.centre) == (4.0, 5.0, (3.0, 6.5))
    assert box.inset(1.0) == Box(2.0, 5.0, 4.0, 8.0)
    assert box.inset(0.0, 1.0) == Box(1.0, 5.0, 5.0, 8.0)
    assert box.ring == ((1.0, 4.0), (5.0, 4.0), (5.0, 9.0), (1.0, 9.0))


@given(st.tuples(coordinate, coordinate))
def test_what_is_clamped_lies_in_the_box(place: tuple[float, float]) -> None:
    box = Box(-10, -20, 30, 40)
    assert box.holds(box.clamp(place))
    assert box.clamp(place) == place or not box.holds(place, 0.0)
