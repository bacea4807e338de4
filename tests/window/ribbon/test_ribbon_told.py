"""What stands at a place of the ribbon, in words."""

import pytest

from enclosure_app.drawing.ribbon.unrolled import lapped, unrolled
from enclosure_app.model.drawing import Units
from enclosure_app.model.report import LayerResult
from enclosure_app.window.ribbon.ribbon_told import stops, told_at
from tests.drawing import eave

RESULT = eave.result()


def told(layer: LayerResult, along: float, units: Units = Units.MM) -> list[str]:
    return told_at(RESULT, layer, unrolled(layer), along, units).splitlines()


def test_a_sheet_is_told_by_its_product() -> None:
    laid = unrolled(eave.WATER)
    at = laid.along((163.0, 1500.0))
    name = RESULT.section.product(RESULT.section.by_name["w2"]).name
    assert told(eave.WATER, at)[0] == name


@pytest.mark.parametrize("number", range(5))
def test_a_lap_is_told_with_which_sheet_is_over_which(number: int) -> None:
    laid = unrolled(eave.WATER)
    lap = lapped(eave.WATER, laid)[number]
    joint = (eave.BASE_LAP, eave.W12, eave.W23, eave.W3R, eave.R12)[number]
    under = joint.b if joint.over == joint.a else joint.a
    names = [RESULT.section.product(RESULT.section.by_name[n]).name for n in (joint.over, under)]
    line = told(eave.WATER, (lap.start + lap.end) / 2)[0]
    assert line == f"Lap of {joint.length:.0f} mm: {names[0]} over {names[1]}, sealed"


def test_a_lift_is_told_with_its_width_and_the_word_is_taught() -> None:
    lines = told(eave.AIR, 920.0)
    assert lines[0] == "Lift: 30 mm wide"
    assert lines[1].startswith("Lift: A place where a pen")
    assert told(eave.AIR, 920.0, Units.IN)[0] == 'Lift: 1 3/16" wide'


def test_one_steps_from_end_to_end_over_every_lap_lift_and_joint() -> None:
    places = stops(eave.AIR, unrolled(eave.AIR))
    assert places[0] == 0.0
    assert places[-1] == unrolled(eave.AIR).length
    assert 920.0 in [round(at, 6) for at in places]
    assert list(places) == sorted(set(places))
