"""Every place near the pointer that can be caught."""

from math import dist

import pytest
from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.window.canvas.catching.aids import kept_ray
from enclosure_app.window.canvas.catching.catches import (
    Ask,
    Kind,
    Near,
    Origin,
    catches_near,
    meeting,
)

FACE = Near((0.0, 0.0), (0.0, 500.0), Origin.AREA)  # of a board at its left
TOP = Near((0.0, 500.0), (-12.0, 500.0), Origin.AREA)
FRAME = Near((-100.0, 100.0), (100.0, 100.0), Origin.FRAME)


def of(kind: Kind, near: list[Near], ask: Ask) -> list[tuple[float, float]]:
    return [catch.at for catch in catches_near(near, ask) if catch.kind is kind]


def test_a_sheet_starts_beside_the_end_of_a_board() -> None:
    ask = Ask((4.0, 498.0), 10.0, beside=3.0)
    assert (3.0, 500.0) in of(Kind.OFF_END, [FACE], ask)


def test_a_sheet_turns_beside_the_corner_of_a_board() -> None:
    ask = Ask((4.0, 504.0), 10.0, beside=3.0)
    (corner,) = of(Kind.OFF_CROSSING, [FACE, TOP], ask)
    assert corner == pytest.approx((3.0, 503.0))


def test_a_sheet_beside_a_board_ends_on_the_frame() -> None:
    ask = Ask((4.0, 101.0), 10.0, beside=3.0)
    assert (3.0, 100.0) in of(Kind.OFF_CROSSING, [FACE, FRAME], ask)


def test_a_sheet_beside_a_board_is_not_drawn_to_its_middle() -> None:
    assert of(Kind.MIDDLE, [FACE], Ask((4.0, 251.0), 10.0)) == [(0.0, 250.0)]
    assert of(Kind.MIDDLE, [FACE], Ask((4.0, 251.0), 10.0, beside=3.0)) == []


def test_nothing_is_drawn_into_a_board() -> None:
    ask = Ask((-4.0, 250.0), 10.0, beside=3.0)
    assert not [catch for catch in catches_near([FACE], ask) if catch.kind.off]


def test_nothing_is_drawn_beside_the_frame() -> None:
    ask = Ask((40.0, 103.0), 10.0, beside=3.0)
    assert not [catch for catch in catches_near([FRAME], ask) if catch.kind.off]


def test_what_is_kept_to_an_angle_ends_where_it_meets_a_line_or_beside_it() -> None:
    ray = kept_ray((200.0, 250.0), (5.0, 252.0), 15.0)
    ask = Ask((5.0, 252.0), 10.0, beside=3.0, ray=ray)
    assert of(Kind.MEETS, [FACE], ask) == [pytest.approx((0.0, 250.0))]
    assert of(Kind.OFF_MEETS, [FACE], ask) == [pytest.approx((3.0, 250.0))]
    assert of(Kind.END, [FACE], ask) == []


def test_lines_side_by_side_do_not_cross() -> None:
    assert meeting(FACE, Near((5.0, 0.0), (5.0, 500.0))) is None


PLACE = st.tuples(st.floats(-500, 500), st.floats(-500, 500))


@given(
    st.lists(st.tuples(PLACE, PLACE, st.sampled_from(Origin)), max_size=6),
    PLACE,
    st.floats(0.5, 20.0),
)
def test_what_lies_beside_is_as_far_off_as_was_asked_and_on_the_side_of_the_mouse(
    segments: list, at: tuple[float, float], beside: float
) -> None:
    near = [Near(a, b, origin) for a, b, origin in segments if dist(a, b) > 1.0]
    ask = Ask(at, 1000.0, beside=beside)
    for catch in catches_near(near, ask):
        if catch.kind is Kind.OFF_LINE:
            off = [abs(off_line(catch.at, each) - beside) for each in near]
            assert min(off) < 1e-6
            same = [
                off_line(catch.at, each, signed=True) * off_line(at, each, signed=True)
                for each, far in zip(near, off, strict=True)
                if far < 1e-6
            ]
            assert max(same) > 0


def off_line(at: tuple[float, float], each: Near, *, signed: bool = False) -> float:
    """Return how far a place is from the line through a segment, above 0 at its left."""
    (ax, ay), (bx, by) = each.a, each.b
    off = ((bx - ax) * (at[1] - ay) - (by - ay) * (at[0] - ax)) / dist(each.a, each.b)
    return off if signed else abs(off)
