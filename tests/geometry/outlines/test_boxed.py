"""Runs in a box, and curves divided finely enough."""

from itertools import pairwise
from math import cos, dist, hypot, radians, sin

import pytest

from enclosure_app.geometry.outlines.boxed import bezier, box_of, boxed, common_box

BOX = (0.0, 0.0, 10.0, 10.0)
QUARTER = (
    0.5522847498  # handle length of a cubic for a quarter of the unit circle (handbook value)
)


def test_a_run_in_the_box_stays_the_same_object() -> None:
    run = ((1.0, 1.0), (9.0, 9.0))
    assert boxed(run, BOX) == (run,)
    assert boxed(run, BOX)[0] is run


def test_a_run_that_leaves_and_comes_back_gives_two_stretches() -> None:
    parts = boxed(((-5, 2), (5, 2), (5, 15), (8, 15), (8, 5)), BOX)
    assert sorted(sorted(part) for part in parts) == [
        [(0, 2), (5, 2), (5, 10)],
        [(8, 5), (8, 10)],
    ]


def test_nothing_is_left_outside_or_in_an_empty_box() -> None:
    assert boxed(((-5, -5), (-1, -1)), BOX) == ()
    assert boxed(((1, 1), (2, 2)), common_box(BOX, (20, 20, 30, 30))) == ()


def test_a_box_goes_round_its_points() -> None:
    assert box_of(((3, 1), (-2, 7))) == (-2, 1, 3, 7)


@pytest.mark.parametrize("sagitta", [0.1, 0.01, 0.001])
def test_a_quarter_circle_is_followed_within_the_sagitta(sagitta: float) -> None:
    """Against the circle itself; the cubic is off it by no more than 0.03 % of the radius."""
    radius = 50.0
    k = QUARTER * radius
    run = ((radius, 0.0), *bezier((radius, 0.0), (radius, k), (k, radius), (0.0, radius), sagitta))
    assert run[-1] == (0.0, radius)
    for degrees in range(0, 91, 3):
        at = radius * cos(radians(degrees)), radius * sin(radians(degrees))
        off = min(_off(at, a, b) for a, b in pairwise(run))
        assert off <= sagitta + 0.0003 * radius


def test_a_straight_cubic_is_one_stretch() -> None:
    assert bezier((0, 0), (1, 0), (2, 0), (3, 0), 0.01) == ((3, 0),)


def _off(at: tuple[float, float], a: tuple[float, float], b: tuple[float, float]) -> float:
    dx, dy = b[0] - a[0], b[1] - a[1]
    share = ((at[0] - a[0]) * dx + (at[1] - a[1]) * dy) / hypot(dx, dy) ** 2
    share = min(max(share, 0.0), 1.0)
    return dist(at, (a[0] + share * dx, a[1] + share * dy))
