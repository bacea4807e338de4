"""Runs and areas are cut along a frame."""

from math import cos, sin

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from enclosure_app.geometry.outlines.clipping import (
    Points,
    boxes_of,
    clip_area,
    clip_run,
    inside_of,
    reaching,
    reaching_points,
    sampled,
    standing,
    within,
    without_strip,
)
from enclosure_app.geometry.rims.solids import area_solid, line_solid

FRAME: Points = ((0, 0), (100, 0), (100, 80), (0, 80))
NOTCHED: Points = ((0, 0), (100, 0), (100, 80), (60, 80), (60, 40), (40, 40), (40, 80), (0, 80))


def test_points_on_the_frame_are_within() -> None:
    assert within([(50, 50), (0, 40), (101, 5)], FRAME).tolist() == [True, True, False]


def test_what_reaches_a_frame_lies_in_it_or_holds_it_or_is_near_it() -> None:
    solids = [
        line_solid(((-50, 30), (150, 30))),
        area_solid(((-500, -500), (500, -500), (500, 500), (-500, 500))),
        line_solid(((0, 81.5), (100, 81.5))),
        line_solid(((0, 83), (100, 83))),
        line_solid(((50, 45), (50, 79))),
    ]
    assert reaching(solids, FRAME, 2.0).tolist() == [True, True, True, False, True]
    assert reaching(solids, NOTCHED, 2.0).tolist() == [True, True, True, False, False]


def test_points_reach_a_frame() -> None:
    places = [(50, 60), (50, 43), (50, 41), (200, 5)]
    assert reaching_points(places, NOTCHED, 2.0).tolist() == [False, False, True, False]
    assert reaching_points([], NOTCHED, 2.0).tolist() == []


def test_a_box_surely_lies_in_a_frame_that_is_a_box() -> None:
    boxes = boxes_of([((10, 10), (90, 70)), ((0, 0), (100, 80)), ((50, 50), (150, 50))])
    assert inside_of(boxes, FRAME).tolist() == [True, True, False]
    assert not inside_of(boxes, NOTCHED).any()


def test_runs_stand_wholly_partly_or_not_in_the_frame() -> None:
    runs = [((10, 10), (90, 70)), ((50, 50), (150, 50)), ((-9, -9), (-1, 200)), ((0, 0), (100, 0))]
    whole, partly = standing(runs, FRAME)
    assert whole.tolist() == [True, False, False, True]
    assert partly.tolist() == [True, True, False, True]


def test_a_run_is_cut_where_it_leaves_the_frame() -> None:
    assert clip_run(((50, -20), (50, 40), (130, 40)), FRAME) == (((50, 0), (50, 40), (100, 40)),)


def test_stretches_come_in_walking_order() -> None:
    assert clip_run(((10, 60), (90, 60)), NOTCHED) == (((10, 60), (40, 60)), ((60, 60), (90, 60)))


def test_a_run_that_crosses_itself_stays_whole() -> None:
    loop = ((10, 10), (90, 10), (90, 60), (50, 60), (50, -20))
    assert clip_run(loop, FRAME) == (((10, 10), (90, 10), (90, 60), (50, 60), (50, 0)),)


def test_what_runs_along_the_frame_is_inside() -> None:
    (run,) = clip_run(((-20, 0), (150, 0)), FRAME)
    assert [pytest.approx(point) for point in run] == [(0, 0), (100, 0)]


def test_scraps_are_dropped() -> None:
    assert clip_run(((99.8, 40), (150, 40)), FRAME) == ()


def test_a_loop_that_leaves_the_frame_is_an_open_run() -> None:
    loop = ((50, 20), (150, 20), (150, 60), (50, 60))
    (run,) = clip_run(loop, FRAME, closed=True)
    assert run == ((100, 60), (50, 60), (50, 20), (100, 20))


def test_an_area_is_cut_with_its_holes() -> None:
    outer = ((50, 10), (150, 10), (150, 70), (50, 70))
    hole = ((60, 20), (70, 20), (70, 30), (60, 30))
    ((ring, holes),) = clip_area(outer, [hole], FRAME)
    assert set(ring) == {(50, 10), (100, 10), (100, 70), (50, 70)}
    assert [set(each) for each in holes] == [set(hole)]


def test_an_area_around_the_frame_fills_it() -> None:
    ((ring, _),) = clip_area(((-9, -9), (200, -9), (200, 200), (-9, 200)), (), FRAME)
    assert set(ring) == set(FRAME)


def test_an_area_in_two_parts_comes_from_left_to_right() -> None:
    parts = clip_area(((10, 50), (90, 50), (90, 70), (10, 70)), (), NOTCHED)
    assert [min(ring) for ring, _ in parts] == [(10, 50), (60, 50)]


def test_a_strip_is_taken_off_a_ring() -> None:
    assert set(without_strip(FRAME, ((60, -1), (200, -1), (200, 200), (60, 200)))) == {
        (0, 0), (60, 0), (60, 80), (0, 80)
    }  # fmt: skip


def test_samples_are_no_further_apart_than_asked() -> None:
    found = sampled([((0, 0), (100, 0)), ((5, 5), (5, 6))], 30)
    assert [tuple(p) for p in found.tolist()] == [
        (0, 0), (25, 0), (50, 0), (75, 0), (100, 0), (5, 5), (5, 6)
    ]  # fmt: skip


@example(run=[(0, 0), (0, 81)], shift=1e6, angle=1.0)  # along an edge, past its corner
@example(run=[(0, 0), (0, 1)], shift=0.0, angle=2.225073858507e-311)  # hardly turned at all
@settings(max_examples=60, deadline=None)
@given(
    st.lists(st.tuples(st.integers(-50, 150), st.integers(-50, 150)), min_size=2, max_size=6),
    st.sampled_from([0.0, 1e6, 1e9]),
    st.floats(0, 6.3),
)
def test_no_stretch_leaves_the_frame(
    run: list[tuple[int, int]], shift: float, angle: float
) -> None:
    c, s = cos(angle), sin(angle)

    def moved(points: Points) -> Points:
        return tuple((c * x - s * y + shift, s * x + c * y) for x, y in points)

    frame = moved(FRAME)
    for stretch in clip_run(moved(tuple((float(x), float(y)) for x, y in run)), frame):
        for x, y in stretch:
            home = (c * (x - shift) + s * y, -s * (x - shift) + c * y)
            assert -0.01 <= home[0] <= 100.01
            assert -0.01 <= home[1] <= 80.01


@pytest.mark.parametrize("function", [standing, sampled])
def test_nothing_gives_nothing(function: object) -> None:
    if function is standing:
        assert [part.tolist() for part in standing([], FRAME)] == [[], []]
    else:
        assert sampled([], 5).shape == (0, 2)
