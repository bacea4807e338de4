"""A control layer laid out straight."""

from dataclasses import replace

import pytest

from enclosure_app.drawing.polylines import length
from enclosure_app.drawing.ribbon.unrolled import (
    end_word,
    joint_between,
    lapped,
    stretches,
    tick_step,
    unrolled,
)
from enclosure_app.model.drawing import Units
from enclosure_app.model.product import Control
from enclosure_app.model.report import Continuity, LayerResult, Run
from tests.drawing import eave


def test_lengths_of_sheets_and_lifts_add_up_to_the_walk() -> None:
    laid = unrolled(eave.AIR)
    runs = sum(length(s.points) for s in eave.AIR.walk if isinstance(s, Run))
    assert laid.length == pytest.approx(runs + 30.0)
    assert [p.piece for p in laid.parts] == ["floor", "", "w1", "w2", "w3", "lid"]
    assert laid.parts[2].start == pytest.approx(905.0 + 30.0)


def test_a_place_in_the_drawing_is_found_along_the_walk() -> None:
    assert unrolled(eave.AIR).along((160, 320)) == pytest.approx(935.0 + 200.0)
    assert unrolled(LayerResult(Control.AIR, Continuity.ABSENT)).along((0, 0)) == 0.0


def test_a_lap_spans_its_two_sheets_and_knows_which_one_is_outside() -> None:
    laps = lapped(eave.WATER, unrolled(eave.WATER))
    assert [round(lap.end - lap.start) for lap in laps] == [60, 120, 120, 200, 80]
    assert [lap.earlier_outside for lap in laps] == [False, False, False, False, True]


def test_stretches_between_folds_say_how_they_lie() -> None:
    lies = [s.lie for s in stretches(unrolled(eave.WATER), eave.section())]
    assert lies == ["upright", "slope 30°"]
    air = stretches(unrolled(eave.AIR), eave.section())
    assert [s.lie for s in air] == ["level", "upright", "level"]
    assert air[1].start == pytest.approx(860.0)
    assert {
        s.lie for s in stretches(unrolled(eave.AIR), replace(eave.section(), gravity=None))
    } == {"straight"}


@pytest.mark.parametrize(
    ("whole", "units", "step"),
    [(3426, Units.MM, 500), (900, Units.MM, 100), (1300, Units.M, 200), (3426, Units.IN, 609.6), (500_000, Units.FT, 60_960)],
)  # fmt: skip
def test_ticks_are_round_lengths(whole: float, units: Units, step: float) -> None:
    assert tick_step(whole, units) == pytest.approx(step)


def test_an_end_on_the_frame_goes_on_in_the_next_drawing() -> None:
    section = eave.section()
    assert end_word((-700.0, 45.0), section) == "goes on to the left"
    assert end_word((900.0, 45.0), section) == "goes on to the right"
    assert end_word((160.0, -297.0), section) == "goes on below"
    assert end_word((160.0, 100.0), section) == "ends here"


def test_a_joint_is_found_whichever_sheet_is_named_first() -> None:
    assert joint_between(eave.WATER, "w2", "w1") is eave.W12
    assert joint_between(eave.WATER, "w1", "r2") is None


def test_a_lap_whose_runs_are_not_known_spans_its_length() -> None:
    bare = replace(eave.W12, run_a=(), run_b=())
    layer = replace(eave.WATER, joints=(bare,))
    (lap,) = lapped(layer, unrolled(layer))
    assert lap.end - lap.start == pytest.approx(120.0)
