"""Cutting off at the edges of a box."""

from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.drawing.clipping import clip_line, clip_ring, clipped
from enclosure_app.drawing.marks import Fill, Label, Stroke, points_of
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.section.flags import Site, flag_at
from enclosure_app.drawing.theme import Pen, load_theme
from enclosure_app.model.finding import Severity

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


def test_marks_are_cut_and_texts_are_whole_or_not_there() -> None:
    pen = Pen("black", 0.25)
    across = Stroke(((5.0, 5.0), (15.0, 5.0)), pen, "w1")
    ring = Stroke(((8.0, 2.0), (12.0, 2.0), (12.0, 4.0), (8.0, 4.0)), pen, closed=True)
    area = Fill((((5.0, 5.0), (15.0, 5.0), (15.0, 9.0), (5.0, 9.0)),), "grey", "a")
    short = Label("x", (1.0, 1.0), 1.8, "black")
    cut = Label("xxxxxxxxxxxx", (8.0, 1.0), 1.8, "black")
    upright = Label("xxxxxxxxxxxx", (8.0, 9.0), 1.8, "black", angle=90.0)
    found = list(clipped([across, ring, area, short, cut, upright], BOX))
    assert found[0] == Stroke(((5.0, 5.0), (10.0, 5.0)), pen, "w1")
    assert all(BOX.holds(p) for mark in found for p in points_of(mark))
    assert [m for m in found if isinstance(m, Label)] == [short]
    assert sum(isinstance(m, Stroke) for m in found) == 3  # the ring is cut into two


def test_flags_are_not_cut() -> None:
    flag = flag_at(Site(1, (0.0, 0.0), Severity.FAULT), (10.0, 10.0), load_theme())
    assert list(clipped([flag], BOX)) == [flag]
