"""A lap in words, and the lap that is pointed at."""

from dataclasses import replace

import pytest

from enclosure_app.model.drawing import Units
from enclosure_app.model.report import Joint, JointKind
from enclosure_app.window.words.laps import lap_at, lap_words, product_words
from tests.drawing import eave

RESULT = eave.result()


def test_a_lap_says_how_long_it_is_and_which_sheet_is_over() -> None:
    over = replace(eave.W3R, sealed=False)
    outer = product_words(RESULT, over.over)
    inner = product_words(RESULT, over.b if over.over == over.a else over.a)
    assert (
        lap_words(RESULT, over, Units.MM) == f"Lap of {over.length:.0f} mm: {outer} over {inner}"
    )


def test_a_lap_that_is_sealed_says_so_and_one_without_an_order_claims_none() -> None:
    assert lap_words(RESULT, replace(eave.W12, sealed=True), Units.MM).endswith(", sealed")
    told = lap_words(RESULT, replace(eave.W12, over="", sealed=False), Units.MM)
    assert " over " not in told
    assert told == "Lap of 120 mm: Wall sheet and Wall sheet"


@pytest.mark.parametrize(("off", "found"), [(0.0, True), (9.0, True), (11.0, False)])
def test_the_lap_within_reach_is_pointed_at(off: float, found: bool) -> None:
    at = (163.0 + off, 940.0)  # the outer sheet of the lap of w1 and w2 stands at x = 163
    lap = lap_at(RESULT, at, 10.0)
    assert (lap is not None) is found
    if lap:
        assert {lap.a, lap.b} == {"w1", "w2"}


def test_joints_that_are_no_laps_are_not_told_as_such() -> None:
    tee = Joint("w3", "lid", JointKind.TEE, (162, 2040), False)
    layer = replace(eave.AIR, joints=(tee,))
    result = eave.result(layers={layer.control: layer})
    assert lap_at(result, (162.0, 2040.0), 50.0) is None


def test_a_piece_that_is_gone_has_no_words() -> None:
    assert product_words(RESULT, "nobody") == ""
