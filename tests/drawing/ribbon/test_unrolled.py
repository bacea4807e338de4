"""A control layer laid out straight."""

from dataclasses import replace
from math import cos, pi, sin
from random import Random

import pytest

from enclosure_app.drawing.polylines import foot, length
from enclosure_app.drawing.ribbon.unrolled import (
    Unrolled,
    end_word,
    joint_between,
    lapped,
    stretches,
    tick_step,
    unrolled,
)
from enclosure_app.model.drawing import Units
from enclosure_app.model.place import Point
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


def walked(*points: Point) -> Unrolled:
    runs = (Run("sheet", points),)
    return unrolled(LayerResult(Control.AIR, Continuity.CONTINUOUS, walk=runs))


@pytest.mark.parametrize("count", [61, 400])
def test_a_curve_of_many_short_bits_lies_as_its_parts_do(count: int) -> None:
    turns = [i / count * pi / 2 for i in range(count + 1)]
    found = stretches(walked(*((cos(t) * 900, sin(t) * 900) for t in turns)), eave.section())
    assert found[0].start == 0.0
    assert found[-1].end == pytest.approx(900 * pi / 2, rel=1e-3)
    assert [each.lie[:5] for each in found] == ["uprig", "slope", "slope", "slope"]
    assert [each.end for each in found[:-1]] == [each.start for each in found[1:]]


def test_a_walk_of_nothing_but_small_folds_lies_as_the_longest_of_them() -> None:
    steps = [(10.0 * ((i + 1) // 2), 11.0 * (i // 2)) for i in range(300)]
    (only,) = stretches(walked(*steps), eave.section())
    assert (only.start, only.lie) == (0.0, "upright")


def test_of_many_places_each_is_found_as_if_it_were_alone() -> None:
    laid = unrolled(eave.WATER)
    chance = Random(7)  # noqa: S311  the same places in every run
    places = [(chance.uniform(-800, 900), chance.uniform(-300, 3000)) for _ in range(300)]
    for place, along in zip(places, laid.all_along(places), strict=True):
        feet = [(foot(p.points, place), p.start) for p in laid.parts if len(p.points) > 1]
        off = min(each.off for each, _ in feet)
        wanted = [start + each.along for each, start in feet if each.off <= off + 1e-9]
        assert any(along == pytest.approx(w) for w in wanted)
    assert laid.all_along([]) == []
    near = laid.all_along(places, 400.0, 900.0)
    assert all(0.0 <= at <= laid.length for at in near)
    for at, whole in zip(near, laid.all_along(places), strict=True):
        assert at == whole or not 400.0 <= whole <= 900.0


def test_a_walk_without_length_has_no_stretches() -> None:
    assert stretches(walked((1.0, 1.0), (1.0, 1.0)), eave.section()) == ()


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
