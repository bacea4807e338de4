"""Side by side: lengths and distances of runs, worked by hand."""

import numpy as np
import pytest
from shapely.geometry.base import BaseGeometry

from enclosure_app.geometry.rims.rims import rims_of
from enclosure_app.geometry.rims.solids import area_solid, line_solid
from enclosure_app.geometry.runs.alongside import SideBySide, runs_between

REACH, LEAST = 15.0, 2.0


def runs(*solids: BaseGeometry, half: tuple[float, ...] | None = None) -> list[SideBySide]:
    rims = rims_of(solids)
    width = np.zeros(len(rims.owner)) if half is None else np.array(half)
    return runs_between(rims, width, REACH, LEAST)


def ends(run: SideBySide) -> tuple[float, float, float, float]:
    return run.a_from, run.a_to, run.b_from, run.b_to


def test_two_sheets_lapping_run_side_by_side_from_one_end_to_the_other() -> None:
    (run,) = runs(line_solid([(0, 0), (0, 100)]), line_solid([(5, 60), (5, 200)]))
    assert ends(run) == pytest.approx((60, 100, 0, 40))
    assert (run.length, run.distance) == pytest.approx((40, 5))


def test_drawing_direction_only_turns_the_positions_round() -> None:
    (run,) = runs(line_solid([(0, 100), (0, 0)]), line_solid([(5, 60), (5, 200)]))
    assert ends(run) == pytest.approx((0, 40, 0, 40))
    assert (run.length, run.distance) == pytest.approx((40, 5))


@pytest.mark.parametrize(("apart", "found"), [(3, 1), (10, 1), (15, 1), (16, 0)])
def test_sheets_lap_up_to_the_reach(apart: float, found: int) -> None:
    pairs = runs(line_solid([(0, 0), (0, 100)]), line_solid([(apart, 40), (apart, 200)]))
    assert [run.distance for run in pairs] == pytest.approx([apart] * found)


def test_a_run_hardly_longer_than_its_distance_is_no_lap() -> None:
    """Twice ten and two more is the least for sheets drawn ten apart."""
    wall = line_solid([(0, 0), (0, 100)])
    assert not runs(wall, line_solid([(10, 78), (10, 200)]))
    (run,) = runs(wall, line_solid([(10, 77.9), (10, 200)]))
    assert run.length == pytest.approx(22.1)


def test_distances_are_between_the_faces_of_sheets_drawn_with_a_width() -> None:
    pair = line_solid([(0, 0), (0, 100)]), line_solid([(20, 40), (20, 200)])
    (run,) = runs(*pair, half=(4.0, 2.0))
    assert run.distance == pytest.approx(14)
    assert not runs(*pair, half=(2.0, 2.0))


def test_sheets_on_top_of_each_other_lap_at_no_distance() -> None:
    (run,) = runs(line_solid([(0, 0), (0, 100)]), line_solid([(0, 60), (0, 200)]))
    assert (run.length, run.distance) == pytest.approx((40, 0))


def test_a_lap_over_a_fold_is_one_run_as_long_as_the_inner_sheet() -> None:
    inner = line_solid([(0, 0), (0, 100), (100, 100)])
    outer = line_solid([(-5, 50), (-5, 105), (80, 105)])
    (run,) = runs(inner, outer)
    assert ends(run) == pytest.approx((50, 180, 0, 140))
    assert run.length == pytest.approx(130)


def test_sheets_that_part_and_meet_again_lap_twice() -> None:
    """The legs of the bow leave at 60 degrees: too steep to run along the straight sheet."""
    straight = line_solid([(0, 0), (400, 0)])
    bowed = line_solid([(0, 5), (100, 5), (150, 90), (250, 90), (300, 5), (400, 5)])
    found = sorted(runs(straight, bowed), key=lambda run: run.a_from)
    assert [ends(run)[:2] for run in found] == [(0, 100), (300, 400)]


def test_sheets_that_cross_or_fork_do_not_run_side_by_side() -> None:
    straight = line_solid([(0, 0), (400, 0)])
    assert not runs(straight, line_solid([(200, -100), (200, 100)]))
    assert not runs(straight, line_solid([(200, 5), (260, 65)]))


def test_a_sheet_does_not_lap_itself() -> None:
    assert not runs(line_solid([(0, 0), (100, 0), (100, 5), (0, 5)]))


def test_a_sheet_laps_the_face_of_an_area() -> None:
    board = area_solid(((10, 0), (30, 0), (30, 200), (10, 200)))
    (run,) = runs(line_solid([(4, 50), (4, 300)]), board)
    assert run.length == pytest.approx(150)
    assert run.distance == pytest.approx(6)


def test_a_curve_in_short_chords_is_one_run() -> None:
    turn = np.linspace(0, np.pi / 2, 60)
    inner, outer = (
        line_solid(np.column_stack([radius * np.cos(turn), radius * np.sin(turn)]).tolist())
        for radius in (200.0, 208.0)
    )
    (run,) = runs(inner, outer)
    assert run.length == pytest.approx(100 * np.pi, rel=0.01)
    assert run.distance == pytest.approx(8, abs=0.1)
