"""Runs are moved, cut and met where a person says."""

from math import dist

import pytest
from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.geometry.runs import editing

RUN = ((0.0, 0.0), (10.0, 0.0), (10.0, 10.0))
FAR = 1e6  # mm: offices draw this far from the origin


def test_crossings_are_in_order_along_the_run_whichever_way_others_are_listed() -> None:
    others = [((5.0, 8.0), (15.0, 8.0)), ((3.0, -1.0), (3.0, 1.0))]
    assert editing.crossings(RUN, others) == pytest.approx([3.0, 18.0])
    assert editing.crossings(RUN, others[::-1]) == pytest.approx([3.0, 18.0])


def test_a_crossing_at_a_corner_counts_once() -> None:
    assert editing.crossings(RUN, [((5.0, 5.0), (15.0, -5.0))]) == pytest.approx([10.0])


def test_where_another_lies_on_the_run_both_ends_of_the_stretch_count() -> None:
    assert editing.crossings(RUN, [((2.0, 0.0), (7.0, 0.0))]) == pytest.approx([2.0, 7.0])


def test_an_end_that_was_snapped_to_the_run_touches_it() -> None:
    """The foot of an end on a sloping line is never exactly on it."""
    run = ((FAR, FAR), (FAR + 700.0, FAR + 300.0))
    foot = (FAR + 700.0 / 3, FAR + 100.0)
    beside = (foot[0] - 30.0, foot[1] + 70.0)
    (at,) = editing.crossings(run, [(foot, beside)])
    assert at == pytest.approx(dist(run[0], run[1]) / 3, abs=1e-6)


def test_a_run_that_nothing_crosses_has_no_crossings() -> None:
    assert editing.crossings(RUN, []) == []
    assert editing.crossings(RUN, [((0.0, 5.0), (9.0, 5.0)), ((3.0, 3.0),)]) == []


def test_a_ray_stops_at_the_first_that_it_meets_and_not_where_it_begins() -> None:
    walls = [((9.0, -5.0), (9.0, 5.0)), ((4.0, -5.0), (4.0, 5.0)), ((0.0, -5.0), (0.0, 5.0))]
    assert editing.first_hit((0.0, 0.0), (0.1, 0.0), walls) == pytest.approx((4.0, 0.0))
    assert editing.first_hit((0.0, 0.0), (-1.0, 0.0), walls) is None
    assert editing.first_hit((0.0, 0.0), (1.0, 0.0), []) is None


def test_a_ray_meets_an_end_that_it_grazes() -> None:
    hit = editing.first_hit((FAR, FAR), (7.0, 3.0), [((FAR + 700, FAR + 300), (FAR, FAR + 900))])
    assert hit == pytest.approx((FAR + 700, FAR + 300), abs=1e-5)


def test_a_closed_run_is_cut_over_its_seam() -> None:
    ring = ((0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (0.0, 10.0), (0.0, 0.0))
    assert editing.part_over_seam(ring, 5.0, 25.0) == (
        (5.0, 10.0),
        (0.0, 10.0),
        (0.0, 0.0),
        (5.0, 0.0),
    )


@given(st.floats(0, 20), st.floats(0, 20))
def test_the_part_of_a_run_is_as_long_as_was_asked(a: float, b: float) -> None:
    start, end = sorted((a, b))
    if end - start > 1e-3:
        part = editing.part_of(RUN, start, end)
        assert editing.length_of(part) == pytest.approx(end - start, abs=1e-5)
        assert editing.position_of(RUN, part[0]) == pytest.approx(start, abs=1e-5)


@pytest.mark.parametrize(
    ("degrees", "turned"),
    [(0, (2.0, 1.0)), (90, (1.0, 2.0)), (-90, (1.0, 0.0)), (180, (0.0, 1.0)), (450, (1.0, 2.0))],
)
def test_quarter_turns_are_exact(degrees: float, turned: tuple[float, float]) -> None:
    assert editing.turned(((2.0, 1.0),), (1.0, 1.0), degrees) == (turned,)


def test_a_ring_is_sound_with_three_corners_that_do_not_cross() -> None:
    assert editing.sound_ring(RUN)
    assert not editing.sound_ring(RUN[:2])
    assert not editing.sound_ring(((0.0, 0.0), (9.0, 9.0), (9.0, 0.0), (0.0, 9.0)))
    assert not editing.sound_ring(((0.0, 0.0), (5.0, 0.0), (9.0, 0.0)))
