"""Marks are plain values that a painter can take apart."""

from dataclasses import replace
from math import dist

from enclosure_app.drawing.marks import (
    BADGE,
    Fill,
    Flag,
    Label,
    Overlay,
    Stroke,
    on,
    overlays_of,
    points_of,
)
from enclosure_app.drawing.section.flags import Site, flag_at
from enclosure_app.drawing.theme import Pen, load_theme
from enclosure_app.model.finding import Severity
from enclosure_app.model.product import Control
from enclosure_app.model.said.decision import State

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


def test_a_flag_bears_what_was_decided_on_its_upper_right_corner() -> None:
    pen = Pen("#000000", 0.5)
    label = Label("3", (0.0, -1.0), 2.5, "#111111")
    shape = ((-3.0, -2.0), (3.0, -2.0), (3.0, 2.0), (-3.0, 2.0))
    plain = Flag(3, (0.0, 0.0), shape, pen, "#fffbe6", label)
    decided = replace(plain, state=State.ACCEPTED)
    more = decided.parts[len(plain.parts) :]
    assert decided.parts[: len(plain.parts)] == plain.parts
    disc, _, *bars = more
    assert isinstance(disc, Fill)
    assert disc.colour == "#111111"
    assert [type(bar) for bar in bars] == [Stroke, Stroke]
    assert all(
        dist(point, (3.0, 2.0)) <= BADGE + 1e-9 for part in more for point in points_of(part)
    )


def test_marks_are_laid_on_an_overlay_but_not_taken_off_their_own() -> None:
    free = Stroke(((0.0, 0.0), (1.0, 0.0)), PEN)
    laid = Fill((((0.0, 0.0), (1.0, 0.0), (1.0, 1.0)),), "white", overlays=(Overlay.AIR,))
    assert free.overlays == ()
    first, second = on((Overlay.FINDINGS,), (free, laid))
    assert first == replace(free, overlays=(Overlay.FINDINGS,))
    assert second is laid


def test_every_control_has_its_overlay() -> None:
    assert [overlays_of(control) for control in Control] == [
        (Overlay.WATER,), (Overlay.AIR,), (Overlay.VAPOUR,), (Overlay.HEAT,)
    ]  # fmt: skip
    assert overlays_of(Control.WATER, Control.AIR) == (Overlay.WATER, Overlay.AIR)
