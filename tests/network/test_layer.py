"""One control layer, traced and proved."""

import numpy as np
import pytest

from enclosure_app.model.product import Control
from enclosure_app.model.report import Lift
from enclosure_app.network.layer import same_layer, trace_layer
from tests.network.sections import PLAIN, air, area, ring, section, sheet, water

WHOLE = sheet("a", (0, -500), (0, 500))


def test_a_layer_without_a_piece_is_absent() -> None:
    layer = trace_layer(section(WHOLE), Control.HEAT, PLAIN)
    assert (layer.trace, layer.walk, layer.opening, layer.why) == (None, None, None, "")


@pytest.mark.parametrize("side", ["inside", "outside"])
def test_without_a_mark_on_a_side_nothing_is_judged_and_why_is_said(side: str) -> None:
    layer = air(section(WHOLE, **{side: ()}))
    assert layer.trace is None
    assert layer.why == f"There is no {side} mark in the frame: place one."


def test_a_mark_on_a_piece_is_named_with_its_side_and_place() -> None:
    slab = area("slab", (-300, -500), (-200, -500), (-200, 500), (-300, 500), of="concrete")
    layer = air(section(WHOLE, slab))
    assert layer.why.startswith("The outside mark at -250, 0 lies on a piece or beyond the frame")


def test_marks_with_nothing_between_them_are_told_in_a_sentence() -> None:
    low = sheet("a", (-500, -300), (0, -200), (500, -300))
    layer = air(section(low, outside=[(0, 100)], inside=[(0, 0)]))
    assert (layer.trace, layer.walk) == (None, None)
    assert "between the inside and the outside mark" in layer.why


def test_a_sound_layer_has_no_lift_and_no_opening() -> None:
    layer = air(section(WHOLE))
    assert layer.trace is not None
    assert layer.opening is not None
    assert (layer.trace.bottleneck, layer.opening.width, layer.lifts) == (0, 0, ())


def test_a_gap_is_as_wide_from_both_sides() -> None:
    layer = air(section(sheet("a", (0, -500), (0, -10)), sheet("b", (0, 20), (0, 500))))
    assert layer.trace is not None
    assert layer.opening is not None
    assert layer.trace.bottleneck == 30
    assert layer.opening.width == pytest.approx(30)
    assert layer.opening.narrowest is not None
    assert sorted(layer.opening.narrowest) == [
        pytest.approx((0, -10), abs=1e-5),
        pytest.approx((0, 20), abs=1e-5),
    ]


def test_laps_drawn_apart_are_closed_for_the_opening_too() -> None:
    layer = air(section(sheet("a", (0, -500), (0, 100)), sheet("b", (-14, 40), (-14, 500))))
    assert layer.opening is not None
    assert layer.opening.width == 0


def test_with_several_marks_every_gap_between_any_two_is_told_and_the_widest_pair_leads() -> None:
    """Two rooms, each walled off from the outside with a gap of its own."""
    left = [sheet("a", (-100, -500), (-100, -10)), sheet("b", (-100, 20), (-100, 500))]
    right = [sheet("c", (100, -500), (100, -25)), sheet("d", (100, 25), (100, 500))]
    layer = air(section(*left, *right, outside=[(0, 200)], inside=[(-300, 0), (300, 0)]))
    assert layer.trace is not None
    assert layer.trace.inside == (300, 0)
    assert layer.trace.bottleneck == 50
    assert set(layer.lifts) == {
        Lift("a", "b", (-100, -10), (-100, 20)),
        Lift("c", "d", (100, -25), (100, 25)),
    }
    assert layer.opening is not None
    assert layer.opening.width == pytest.approx(50)


def test_several_marks_in_one_room_tell_one_gap_once() -> None:
    pieces = [sheet("a", (0, -500), (0, -10)), sheet("b", (0, 20), (0, 500))]
    layer = air(section(*pieces, inside=[(250, 0), (250, 300)]))
    assert layer.lifts == (Lift("a", "b", (0, -10), (0, 20)),)


def test_places_are_told_outside_or_inside() -> None:
    layer = air(section(sheet("a", (0, -500), (0, -10)), sheet("b", (0, 20), (0, 500))))
    places = np.array([[-1.0, 0.0], [1.0, 0.0], [-400.0, -499.0], [400.0, 499.0]])
    assert layer.is_outside(places).tolist() == [True, False, True, False]


def test_inside_a_closed_round_is_inside() -> None:
    room = ring("a", (100, -200), (400, -200), (400, 200), (100, 200))
    layer = air(section(room))
    assert layer.is_outside(np.array([[110.0, 0.0], [90.0, 0.0]])).tolist() == [False, True]


def test_a_layer_without_a_trace_has_no_sides() -> None:
    with pytest.raises(ValueError, match="no sides"):
        air(section()).is_outside(np.array([[0.0, 0.0]]))


def test_places_are_told_along_the_walk_from_its_lower_end() -> None:
    layer = air(section(WHOLE))
    assert layer.along(np.array([[9.0, -500.0], [-9.0, 100.0]])).tolist() == [0, 600]
    assert air(section()).along(np.array([[9.0, -500.0]])).tolist() == [0]


def test_a_lap_knows_whether_its_joint_is_sealed() -> None:
    low = sheet("a", (0, -500), (0, 100))
    for product, sealed in (("adhered", True), ("loose", False)):
        layer = water(section(low, sheet("b", (-10, 40), (-10, 500), of=product)))
        (lap,) = layer.laps
        assert layer.sealed(lap) is sealed


def test_laps_are_looked_up_by_the_sheet_that_is_covered() -> None:
    layer = water(section(sheet("a", (0, -500), (0, 100)), sheet("b", (-10, 40), (-10, 500))))
    assert [lap.outer.name for lap in layer.laps_over("a")] == ["b"]
    assert layer.laps_over("b") == ()


def test_what_was_found_serves_another_control_of_the_same_pieces() -> None:
    layer = air(section(WHOLE))
    twin = same_layer(layer, Control.WATER)
    assert (twin.control, twin.fabric.control) == (Control.WATER, Control.WATER)
    assert twin.walk is layer.walk
    assert twin.walk is not None
    own = water(section(WHOLE)).walk
    assert own is not None
    assert twin.walk.steps == own.steps


def test_a_layer_that_does_not_come_between_the_marks_says_so() -> None:
    """Both marks above a low sheet: nothing is judged, and the person is told what to do."""
    low = sheet("a", (-500, -300), (0, -200), (500, -300))
    layer = water(section(low, inside=((0.0, 0.0),), outside=((0.0, 100.0),)))
    assert layer.walk is None
    assert "comes between the inside and the outside mark" in layer.why
