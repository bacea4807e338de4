"""Cutting off at the edges of a box."""

from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.drawing.clipping import clip_line, clip_ring
from enclosure_app.drawing.placement import Box

BOX = Box(0, 0, 10, 10)
points = st.lists(st.tuples(st.floats(-20, 30), st.floats(-20, 30)), min_size=2, max_size=7)


def test_a_line_that_leaves_and_comes_back_is_in_two_parts() -> None:
    line = ((2.0, 5.0), (12.0, 5.0), (12.0, 8.0), (4.0, 8.0))
    assert list(clip_line(line, BOX)) == [((2.0, 5.0), (10.0, 5.0)), ((10.0, 8.0), (4.0, 8.0))]


def test_a_line_outside_leaves_nothing() -> None:
    assert list(clip_line(((12.0, 0.0), (12.0, 10.0)), BOX)) == []
    assert list(clip_line(((-5.0, 4.0), (4.0, 14.5)), Box(0, 0, 2, 2))) == []


def test_a_ring_is_cut_to_the_box() -> None:
    ring = ((5.0, 5.0), (15.0, 5.0), (15.0, 15.0), (5.0, 15.0))
    assert set(clip_ring(ring, BOX)) == {(5.0, 5.0), (10.0, 5.0), (10.0, 10.0), (5.0, 10.0)}
    assert clip_ring(((20.0, 20.0), (25.0, 20.0), (25.0, 25.0)), BOX) == ()


@given(points)
def test_nothing_that_is_left_lies_outside(line: list[tuple[float, float]]) -> None:
    for part in clip_line(tuple(line), BOX):
        assert all(BOX.holds(p, 1e-9) for p in part)
    assert all(BOX.holds(p, 1e-9) for p in clip_ring(tuple(line), BOX))
