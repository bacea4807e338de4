"""Marks are plain values that a painter can take apart."""

from enclosure_app.drawing.flags import Site, flag_at
from enclosure_app.drawing.marks import Fill, Label, Stroke, points_of
from enclosure_app.drawing.theme import Pen, load_theme
from enclosure_app.model.finding import Severity

PEN = Pen("black", 0.25)


def test_a_flag_is_painted_ground_first_and_number_last() -> None:
    leader = Stroke(((0.0, 0.0), (5.0, 5.0)), PEN)
    flag = flag_at(
        Site(7, (0.0, 0.0), Severity.FAULT, source="gap:x"), (8.0, 5.0), load_theme(), leader
    )
    line, ground, edge, number = flag.parts
    assert line is leader
    assert isinstance(ground, Fill)
    assert isinstance(edge, Stroke)
    assert edge.closed
    assert isinstance(number, Label)
    assert number.text == "7"
    assert {edge.source, ground.source} == {"gap:x"}


def test_a_flag_without_a_leader_has_three_parts() -> None:
    flag = flag_at(Site(7, (0.0, 0.0), Severity.DOUBT), (8.0, 5.0), load_theme())
    assert [type(part) for part in flag.parts] == [Fill, Stroke, Label]


def test_every_kind_of_mark_tells_its_points() -> None:
    ring = ((0.0, 0.0), (1.0, 0.0), (1.0, 1.0))
    assert points_of(Stroke(ring, PEN)) == ring
    assert points_of(Fill((ring, ring), "white")) == [*ring, *ring]
    assert points_of(Label("x", (3.0, 4.0), 1.8, "black")) == [(3.0, 4.0)]
    flag = flag_at(Site(7, (0.0, 0.0), Severity.FAULT), (8.0, 5.0), load_theme())
    assert set(flag.shape) < set(points_of(flag))


def test_marks_are_equal_when_they_look_the_same() -> None:
    """What is shown is compared mark by mark, so equal marks need not be painted anew."""
    assert Stroke(((0.0, 0.0), (1.0, 0.0)), PEN) == Stroke(
        ((0.0, 0.0), (1.0, 0.0)), Pen("black", 0.25)
    )
    assert len({Label("x", (3.0, 4.0), 1.8, "black"), Label("x", (3.0, 4.0), 1.8, "black")}) == 1
