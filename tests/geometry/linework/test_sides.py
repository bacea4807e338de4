"""On which side of a run a place lies."""

from collections.abc import Sequence
from math import cos, pi, sin

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from enclosure_app.geometry.linework.sides import Point, side_of

UP = ((0.0, 0.0), (0.0, 100.0))
HOOK = ((0.0, 0.0), (0.0, 100.0), (80.0, 100.0))


def lies_left(run: Sequence[Point], place: Point) -> bool:
    return side_of(run, place) > 0


def test_left_is_seen_along_the_run() -> None:
    assert lies_left(UP, (-5.0, 50.0))
    assert not lies_left(UP, (5.0, 50.0))
    assert not lies_left(UP[::-1], (-5.0, 50.0))


def test_beyond_an_end_the_run_counts_as_going_on() -> None:
    assert lies_left(UP, (-5.0, 400.0))
    assert not lies_left(UP, (5.0, -400.0))


def test_at_a_corner_both_its_stretches_decide() -> None:
    assert lies_left(HOOK, (-40.0, 130.0))
    assert lies_left(HOOK, (-1.0, 190.0))
    assert not lies_left(HOOK, (30.0, 60.0))


def test_what_lies_beyond_an_end_is_less_beside_the_run() -> None:
    assert side_of(UP, (-7.0, 50.0)) == pytest.approx(1.0)
    assert side_of(UP, (7.0, 0.0)) == pytest.approx(-1.0)
    assert side_of(UP, (-30.0, 140.0)) == pytest.approx(0.6)
    assert side_of(UP, (0.0, 140.0)) == pytest.approx(0.0)


def test_points_on_top_of_each_other_do_no_harm() -> None:
    assert lies_left(((0.0, 0.0), (0.0, 0.0), (0.0, 9.0)), (-1.0, 4.0))


@given(st.floats(0, 2 * pi), st.floats(-900, 900), st.floats(-900, 900))
def test_turning_the_sheet_changes_nothing(angle: float, x: float, y: float) -> None:
    assume(abs(x) > 1 and abs(y - 100) > 1)

    def turned(p: tuple[float, float]) -> tuple[float, float]:
        return p[0] * cos(angle) - p[1] * sin(angle), p[0] * sin(angle) + p[1] * cos(angle)

    run = tuple(turned(p) for p in HOOK)
    assert lies_left(run, turned((x, y))) is lies_left(HOOK, (x, y))
    assert lies_left(run[::-1], turned((x, y))) is not lies_left(HOOK, (x, y))
