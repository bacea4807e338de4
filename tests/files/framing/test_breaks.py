"""Break lines are recognised by their zigzag and paired across a blank strip."""

from math import cos, pi, sin

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from enclosure_app.files.framing.breaks import cut_off, ended_on, find_breaks, is_break_line
from enclosure_app.model.place import Line, Points
from enclosure_app.model.section import Break, Piece


def zigzag(y: float, kink: float = 12) -> Points:
    """A break line of the usual make, 240 mm long."""
    return ((0, y), (110, y), (115, y + kink), (125, y - kink), (130, y), (240, y))


WALL = (((100, -500), (100, 0)), ((100, 30), (100, 500)))


@given(st.floats(0, 2 * pi), st.booleans(), st.sampled_from([0.0, 1e9]))
@settings(max_examples=30, deadline=None)
def test_a_zigzag_is_a_break_line_wherever_it_lies(
    angle: float,
    mirror: bool,
    shift: float,
) -> None:
    c, s, flip = cos(angle), sin(angle), -1 if mirror else 1
    line = tuple((c * x * flip - s * y + shift, s * x * flip + c * y) for x, y in zigzag(0))
    assert is_break_line(line)
    assert is_break_line(line[::-1])


@pytest.mark.parametrize(
    "points",
    [
        ((0, 0), (240, 0)),
        ((0, 0), (100, 0), (100, 50), (200, 50)),
        ((0, 0), (50, 0), (50, 30), (80, 30), (80, 0), (200, 0)),
        ((0, 0), (5, 0), (10, 12), (20, -12), (25, 0), (240, 0)),
        ((0, 0), (110, 0), (115, 12), (125, -12), (130, 0), (240, 90)),
        ((0, 0), (10, 9), (20, -9), (30, 9), (40, -9), (50, 9), (60, 0)),
    ],
    ids=["straight", "step", "upstand", "at one end", "bent", "zigzag all along"],
)
def test_other_bent_lines_are_no_break_lines(points: Points) -> None:
    assert not is_break_line(points)


def test_two_break_lines_with_a_blank_strip_are_a_pair() -> None:
    breaks, single = find_breaks([zigzag(0), zigzag(30)[::-1]], WALL)
    assert breaks == (Break(((0, 0), (240, 0)), ((0, 30), (240, 30))),)
    assert single == ()


def test_what_runs_on_through_both_is_not_broken() -> None:
    lines = [zigzag(0), zigzag(30)]
    breaks, single = find_breaks(lines, [*WALL, ((50, -500), (50, 500))])
    assert breaks == ()
    assert single == tuple(lines)


def test_the_nearest_break_line_is_the_partner() -> None:
    lines = [zigzag(0), zigzag(30), zigzag(200), zigzag(235)]
    breaks, _ = find_breaks(lines, [])
    assert {(each.near[0][1], each.far[0][1]) for each in breaks} == {(0, 30), (200, 235)}


def test_break_lines_side_by_side_in_a_row_are_no_pair() -> None:
    beside = tuple((x + 400, y) for x, y in zigzag(30))
    across = tuple((y, x) for x, y in zigzag(30))
    assert find_breaks([zigzag(0), beside], [])[0] == ()
    assert find_breaks([zigzag(0), across], [])[0] == ()


FRAME = ((-100, -600), (400, -600), (400, 100), (-100, 100))


def test_the_frame_ends_at_a_single_break_line() -> None:
    ring, notes = cut_off(FRAME, zigzag(0), WALL[:1])
    assert notes == ()
    assert set(ring) == {
        (-100, -600), (400, -600), (400, 100), (240, 100), (240, 0), (0, 0), (0, 100), (-100, 100)
    }  # fmt: skip


def test_a_single_break_line_in_the_middle_of_things_is_left_out() -> None:
    ring, notes = cut_off(FRAME, zigzag(0), [((100, -500), (100, 90))])
    assert ring == FRAME
    assert notes[0].text == (
        "The break line at 120,0 has no second one; material goes on beyond it."
    )


def test_runs_that_end_on_the_kinks_end_on_the_chord() -> None:
    kinked = Piece("1", "sheet", Line(((116, -300), (116, 11))))
    short = Piece("2", "sheet", Line(((124, -9.5), (124, -300))))
    clear = Piece("3", "sheet", Line(((60, -300), (60, -40))))
    found = ended_on([kinked, short, clear], [zigzag(0)])
    assert [piece.shape for piece in found] == [
        Line(((116, -300), (116, 0))),
        Line(((124, 0), (124, -300))),
        Line(((60, -300), (60, -40))),
    ]
