"""Loose paths become the same chains however they were drawn."""

from itertools import pairwise
from math import cos, pi, sin
from random import Random

import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.ops import substring

from enclosure_app.geometry.outlines.chaining import (
    Points,
    canonical_ring,
    chain,
    signed_area,
    tidy,
)


def test_ends_on_one_point_are_joined() -> None:
    (found,) = chain([((10, 0), (10, 5)), ((0, 0), (10, 0))])
    assert found.points == ((0, 0), (10, 0), (10, 5))
    assert found.members == (1, 0)
    assert not found.closed


def test_ends_within_reach_meet_half_way() -> None:
    (found,) = chain([((0, 0), (100, 0)), ((100.5, 0.5), (100, 90))])
    assert found.points == ((0, 0), (100.25, 0.25), (100, 90))


def test_ends_out_of_reach_stay_apart() -> None:
    assert [c.points for c in chain([((0, 0), (10, 0)), ((11.1, 0), (20, 0))])] == [
        ((0, 0), (10, 0)),
        ((11.1, 0), (20, 0)),
    ]


def test_a_branch_goes_straight_on() -> None:
    stem, left, right = ((50, 0), (50, 40)), ((0, 0), (50, 0)), ((50, 0), (100, 0))
    found = chain([stem, left, right])
    assert [(c.points, c.members) for c in found] == [
        (((50, 0), (50, 40)), (0,)),
        (((0, 0), (100, 0)), (1, 2)),
    ]


def test_a_branch_without_a_straight_way_on_is_not_joined() -> None:
    arms = [((0, 0), (50 * cos(a), 50 * sin(a))) for a in (0.3, 0.3 + 2 * pi / 3, 4.5)]
    assert sorted(c.members for c in chain(arms)) == [(0,), (1,), (2,)]


def test_a_crossing_of_four_ends_goes_straight_on_twice() -> None:
    arms = [((0, 0), p) for p in ((50, 0), (-50, 1), (0, 50), (1, -50))]
    assert sorted(sorted(c.members) for c in chain(arms)) == [[0, 1], [2, 3]]


def test_four_sides_make_a_ring() -> None:
    sides = [((0, 0), (10, 0)), ((10, 8), (10, 0)), ((0, 8), (10, 8)), ((0, 8), (0, 0))]
    (found,) = chain(sides)
    assert found.closed
    assert found.points == ((0, 0), (10, 0), (10, 8), (0, 8))


def test_a_polyline_back_at_its_start_is_a_ring() -> None:
    (found,) = chain([((0, 0), (10, 0), (10, 8), (0, 8), (0, 0.4))])
    assert found.closed
    assert len(found.points) == 4


def test_a_line_there_and_back_is_no_ring() -> None:
    (found,) = chain([((0, 0), (10, 0), (0, 0))])
    assert not found.closed


def test_a_line_drawn_twice_counts_once_and_names_both() -> None:
    (found,) = chain([((0, 0), (9, 1)), ((9, 1), (0, 0))])
    assert sorted(found.members) == [0, 1]
    assert found.points == ((0, 0), (9, 1))


def test_paths_of_no_length_are_left_out() -> None:
    assert chain([((3, 3), (3, 3))]) == ()


def test_points_on_a_straight_run_are_dropped_but_a_turn_back_is_kept() -> None:
    assert tidy([(0, 0), (5, 0), (5, 0), (10, 0), (4, 0)]) == ((0, 0), (10, 0), (4, 0))


def test_a_ring_starts_lower_left_and_runs_anticlockwise() -> None:
    ring = canonical_ring(((10, 5), (10, 0), (0, 0), (0, 5)))
    assert ring == ((0, 0), (10, 0), (10, 5), (0, 5))
    assert signed_area(ring) == 50


def cut(path: Points, shares: list[float]) -> list[Points]:
    """Cut a polyline at shares of its length."""
    line = shapely.LineString(path)
    stations = sorted({0.0, *shares, 1.0})
    return [
        tuple(substring(line, a, b, normalized=True).coords)
        for a, b in pairwise(stations)
        if (b - a) * line.length > 0.01
    ]


RUNS = [
    ((0, 0), (200, 0), (200, 90), (320, 130)),
    ((0, 300), (80, 240), (80, 400)),
    ((500, 0), (600, 0), (600, 100), (500, 100), (500, 0)),
    tuple((800 + 100 * cos(a / 10), 100 * sin(a / 10)) for a in range(32)),
]


@settings(max_examples=80, deadline=None)
@given(
    shares=st.lists(st.lists(st.floats(0.01, 0.99), max_size=6), min_size=4, max_size=4),
    random=st.randoms(use_true_random=False),
    angle=st.floats(0, 2 * pi),
    mirror=st.booleans(),
    shift=st.sampled_from([0.0, 1e6, 1e9]),
)
def test_chains_do_not_depend_on_how_they_were_drawn(
    *, shares: list[list[float]], random: Random, angle: float, mirror: bool, shift: float
) -> None:
    """Cut, shuffled, reversed, turned, mirrored, moved by 1e9 mm: the same chains."""
    c, s, flip = cos(angle), sin(angle), -1 if mirror else 1

    def moved(path: Points, by: float) -> Points:
        return tuple((c * flip * x - s * y + by, s * flip * x + c * y - by) for x, y in path)

    parts = [
        part[::-1] if random.random() < 0.5 else part
        for run, at in zip(RUNS, shares, strict=True)
        for part in cut(run, at)
    ]
    random.shuffle(parts)
    found = chain([moved(part, shift) for part in parts])
    assert len(found) == len(RUNS)
    wanted = [shapely.LineString(moved(run, 0)) for run in RUNS]
    for each in found:
        home = [(x - shift, y + shift) for x, y in each.points]
        line = shapely.LineString([*home, home[0]] if each.closed else home)
        assert min(line.hausdorff_distance(other) for other in wanted) < 0.01
    assert sum(each.closed for each in found) == 1


@pytest.mark.parametrize("order", [(0, 1, 2, 3), (3, 1, 0, 2), (2, 3, 1, 0)])
def test_order_does_not_change_a_single_coordinate(order: tuple[int, ...]) -> None:
    parts = [((0, 0), (50, 3)), ((50, 3), (90, 3)), ((90.6, 3.2), (120, 60)), ((0, 0), (0, 40))]
    (found,) = chain([parts[i] for i in order])
    assert found.points in (
        ((0, 40), (0, 0), (50, 3), (90.3, 3.1), (120, 60)),
        ((0, 0), (50, 3), (90.3, 3.1), (120, 60)),
    )
