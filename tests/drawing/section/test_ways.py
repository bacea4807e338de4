"""What is near a place or a window on a long way is what a walk over all of it would find."""

import random
from itertools import pairwise
from math import dist

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from enclosure_app.drawing.placement import Box, Placement
from enclosure_app.drawing.polylines import distinct, foot, length, walk_to
from enclosure_app.drawing.section.ways import Way, seen_parts, way_through
from enclosure_app.model.place import Points

places = st.tuples(st.floats(-600.0, 600.0), st.floats(-600.0, 600.0))


def scattered(seed: int) -> Points:
    chance = random.Random(seed)  # noqa: S311  the same way in every run
    return tuple((chance.uniform(-500, 500), chance.uniform(-500, 500)) for _ in range(300))


ways = st.integers(0, 10**6).map(scattered)
ZIGZAG: Points = tuple((10.0 * (i % 2), 7.0 * i) for i in range(400))


def way(points: Points) -> Way:
    return way_through((points,))


def test_runs_are_joined_without_repeats() -> None:
    joined = way_through((((0, 0), (1, 0)), ((1, 0), (1, 1)), ((1, 1), (2, 1))))
    assert joined.points == ((0, 0), (1, 0), (1, 1), (2, 1))
    assert joined.stations.tolist() == [0, 1, 2, 3]
    assert way_through(()).points == ()


def test_small_steps_are_left_out_as_from_any_polyline() -> None:
    points = tuple((i * 4e-10, 0.0) for i in range(20))
    assert way(points).points == distinct(points)


@given(ways, places)
@settings(max_examples=30, deadline=None)
def test_the_nearest_place_is_that_of_the_whole_polyline(points: Points, at: Points) -> None:
    found, true = way(points).foot(at), foot(distinct(points), at)
    assert found.at == true.at
    assert (found.off, found.direction, found.left) == (true.off, true.direction, true.left)
    assert found.along == pytest.approx(true.along, rel=1e-12)


@given(ways, st.floats(-50.0, 150000.0))
@settings(max_examples=30, deadline=None)
def test_a_place_along_the_way_is_that_of_the_whole_polyline(points: Points, along: float) -> None:
    (place, _), (true, _) = way(points).at(along), walk_to(points, along)
    assert place == pytest.approx(true, abs=1e-6)


def test_a_way_without_a_stretch_has_no_nearest_place() -> None:
    with pytest.raises(ValueError, match="two points"):
        way(((1.0, 1.0),)).foot((0.0, 0.0))


def test_on_the_sheet_a_way_lies_where_its_points_do() -> None:
    placement = Placement(7.0, (3.0, -2.0), (11.0, 13.0))
    assert way(ZIGZAG).placed(placement).points == placement.points(ZIGZAG)


@given(ways, places, places)
@settings(max_examples=30, deadline=None)
def test_every_stretch_that_comes_into_a_box_is_near_it(
    points: Points, a: tuple[float, float], b: tuple[float, float]
) -> None:
    box = Box(min(a[0], b[0]), min(a[1], b[1]), max(a[0], b[0]), max(a[1], b[1]))
    whole = way(points)
    near = set(whole.near(box))
    for number, (start, end) in enumerate(pairwise(whole.points)):
        shares = [k / 16 for k in range(17)]
        on_it = [
            (start[0] + s * (end[0] - start[0]), start[1] + s * (end[1] - start[1]))
            for s in shares
        ]
        if any(box.holds(place, 0.0) for place in on_it):
            assert number in near


@pytest.mark.parametrize("period", [1.0, 13.0, 700.0, 1e6])
def test_a_part_starts_beyond_the_view_after_whole_dashes(period: float) -> None:
    box = Box(-50.0, 1000.0, 50.0, 1100.0)
    whole = way(ZIGZAG)
    (part,) = seen_parts(whole, box, period)
    start = foot(ZIGZAG, part[0])
    assert start.off == pytest.approx(0.0, abs=1e-9)
    assert start.along / period == pytest.approx(round(start.along / period), abs=1e-9)
    seen = [point for point in ZIGZAG if box.holds(point)]
    assert [point for point in part if box.holds(point)] == seen
    assert part[0][1] <= 1000.0
    assert part[-1][1] >= 1100.0
    assert length(part) <= 2 * dist((0, 1000), (0, 1100)) + period + 3 * dist((0, 0), (10, 7))


def test_a_way_that_comes_back_is_seen_in_parts() -> None:
    there = tuple((100.0 * i, 0.0) for i in range(40))
    back = tuple((100.0 * i, 5.0) for i in reversed(range(40)))
    whole = way((*there, *back))
    first, second = seen_parts(whole, Box(950.0, -10.0, 1050.0, 10.0), 0.0)
    assert first == ((900, 0), (1000, 0), (1100, 0))
    assert second == ((1100, 5), (1000, 5), (900, 5))
    assert seen_parts(whole, Box(0.0, 50.0, 10.0, 60.0), 0.0) == []
