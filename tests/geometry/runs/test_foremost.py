"""Which of several lines is beside a line."""

from itertools import chain

import numpy as np
import pytest

from enclosure_app.geometry.rims.rims import rims_of
from enclosure_app.geometry.rims.solids import line_solid
from enclosure_app.geometry.runs.alongside import SideBySide, runs_between
from enclosure_app.geometry.runs.foremost import HEM, parts_left

Points = tuple[tuple[float, float], ...]


def beside(*lines: Points, hides: tuple[bool, ...] = ()) -> dict[tuple[int, int], list[float]]:
    """Return the lengths of what is left of each run, by the two lines."""
    rims = rims_of([line_solid(line) for line in lines])
    runs = runs_between(rims, np.zeros(len(lines)), reach=15.0, least=2.0)
    left: dict[tuple[int, int], list[float]] = {}
    parts = parts_left(rims, runs, np.array(hides or (True,) * len(lines)))
    for run in chain.from_iterable(parts):
        left.setdefault((run.a, run.b), []).append(round(run.length, 6))
    return left


def between_outer(*lines: Points) -> list[SideBySide]:
    """Return what is left of the runs of the first and the last of three lines."""
    rims = rims_of([line_solid(line) for line in lines])
    runs = runs_between(rims, np.zeros(len(lines)), reach=15.0, least=2.0)
    parts = parts_left(rims, runs, np.ones(3, dtype=bool))
    return [run for run in chain.from_iterable(parts) if (run.a, run.b) == (0, 2)]


def stretches(run: SideBySide) -> tuple[float, ...]:
    return tuple(round(at, 6) + 0.0 for at in (run.a_from, run.a_to, run.b_from, run.b_to))


def up(x: float, low: float, high: float) -> Points:
    return ((x, low), (x, high))


def test_two_lines_are_beside_each_other() -> None:
    assert beside(up(0, 0, 100), up(5, 20, 200)) == {(0, 1): [80.0]}


def test_the_outer_two_of_three_are_not_beside_each_other() -> None:
    found = beside(up(0, 0, 100), up(4, 0, 100), up(8, 0, 100))
    assert found == {(0, 1): [100.0], (1, 2): [100.0]}


@pytest.mark.parametrize("turned", [False, True])
def test_a_strip_over_an_edge_reaches_the_lower_sheet_only_below_it(turned: bool) -> None:
    """The upper sheet ends at 60; below that the strip lies on the lower one."""
    strip = up(8, 20, 120)
    found = beside(up(0, 0, 100), up(4, 60, 300), strip[::-1] if turned else strip)
    assert found == {(0, 1): [40.0], (0, 2): [40.0], (1, 2): [60.0]}


@pytest.mark.parametrize("turned", [False, True])
def test_a_short_line_in_the_middle_leaves_one_run_that_is_bare_on_the_longer_side(
    turned: bool,
) -> None:
    outer = up(8, 0, 100)
    (run,) = between_outer(up(0, 0, 100), up(4, 30, 60), outer[::-1] if turned else outer)
    assert stretches(run) == (0, 100, 0, 100)
    assert run.bare is not None
    assert stretches(run.bare) == (60, 100, *((0, 40) if turned else (60, 100)))


def test_a_leg_that_comes_in_between_from_below_shortens_no_overlap() -> None:
    """The lower line turns away to the right, the leg to the left: neither is the other's end."""
    lower = ((200.0, -20.0), (0.0, -20.0), (0.0, 100.0))
    leg = ((-4.0, 60.0), (-4.0, -10.0), (-60.0, -30.0))
    (run,) = between_outer(lower, leg, up(-8, 10, 300))
    assert run.length == pytest.approx(90)
    assert run.bare is not None
    assert run.bare.length == pytest.approx(40)


def test_a_strip_that_lies_between_up_to_its_end_shortens_no_overlap() -> None:
    """It covers the lower line's end, and ends itself beside the outer line."""
    (run,) = between_outer(up(0, 0, 100), up(4, 60, 150), up(8, 20, 300))
    assert (run.length, run.bare and run.bare.length) == (80, 40)


@pytest.mark.parametrize("past", [14.0, 16.0])
def test_a_line_that_takes_over_past_both_ends_bounds_the_overlap(past: float) -> None:
    """What goes on for no more than a hem takes nothing over."""
    (run,) = between_outer(up(0, 0, 100), up(4, 60, 120 + past), up(8, 20, 120))
    assert run.length == (80 if past < HEM else 40)


def test_what_lies_between_all_the_way_leaves_no_run() -> None:
    assert between_outer(up(0, 0, 100), up(4, 10, 150), up(8, 20, 300)) == []


def test_a_bead_between_two_sheets_hides_nothing() -> None:
    found = beside(up(0, 0, 100), up(4, 40, 60), up(8, 0, 100), hides=(True, False, True))
    assert found[0, 2] == [100.0]


def test_lines_on_the_other_side_hide_nothing() -> None:
    found = beside(up(0, 0, 100), up(-3, 0, 100), up(9, 0, 100))
    assert found == {(0, 1): [100.0], (0, 2): [100.0]}


def test_one_run_is_kept_as_it_is() -> None:
    rims = rims_of([line_solid(up(0, 0, 100)), line_solid(up(5, 0, 100))])
    run = SideBySide(0, 1, 0.0, 100.0, 0.0, 100.0, 5.0)
    assert parts_left(rims, [run], np.array([True, True])) == [(run,)]
