"""A board between two sheets parts them; one that both lie in does not."""

import numpy as np

from enclosure_app.geometry.rims.between import not_parted
from enclosure_app.geometry.rims.solids import Solid, area_solid, line_solid

CHORD = [[[0.0, 50.0], [20.0, 50.0]]]


def clear(*solids: Solid, chords: object = CHORD) -> list[bool]:
    return [bool(free) for free in not_parted(np.array(chords), solids)]


def board(left: float, right: float) -> Solid:
    return area_solid(((left, 0), (right, 0), (right, 100), (left, 100)))


def test_nothing_between_leaves_them_together() -> None:
    assert clear() == [True]
    assert clear(board(30, 40)) == [True]


def test_a_board_between_parts_them() -> None:
    assert clear(board(4, 16.5)) == [False]


def test_a_board_that_fills_the_whole_way_parts_them() -> None:
    assert clear(board(0, 20)) == [False]


def test_half_a_millimetre_is_drafting_slop() -> None:
    assert clear(board(4, 4.5)) == [True]
    assert clear(board(-10, 0.9)) == [True]


def test_sheets_cast_into_concrete_are_not_parted_by_it() -> None:
    assert clear(board(-50, 50)) == [True]


def test_one_sheet_in_the_concrete_and_one_outside_are_parted() -> None:
    assert clear(board(-50, 10)) == [False]


def test_a_sheet_between_does_not_part_them() -> None:
    assert clear(line_solid([(10, 0), (10, 100)])) == [True]


def test_each_way_is_judged_by_itself() -> None:
    chords = [[[0.0, 50.0], [20.0, 50.0]], [[0.0, 150.0], [20.0, 150.0]]]
    assert clear(board(4, 16), chords=chords) == [False, True]
