"""What the mouse means."""

from dataclasses import replace

import pytest

from enclosure_app.drawing.placement import Box
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.place import Area, Line
from enclosure_app.model.section import Piece, Section, Stroke
from enclosure_app.window.canvas.catching.picking import (
    line_at,
    line_piece_at,
    lines_in,
    lines_pass,
    piece_at,
    pieces_in,
    segment_at,
    vertex_at,
)

BOARD = Area(
    ((0.0, 0.0), (100.0, 0.0), (100.0, 100.0), (0.0, 100.0)),
    (((40.0, 40.0), (60.0, 40.0), (60.0, 60.0), (40.0, 60.0)),),
)
PIECES = (
    Piece("board", "plywood", BOARD),
    Piece("sheet", "felt", Line(((20.0, 20.0), (20.0, 80.0)))),
    Piece("upper", "felt", Line(((22.0, 50.0), (22.0, 150.0)))),
)
STROKES = (Stroke(((200.0, 0.0), (300.0, 0.0)), "A", "1"),)
SECTION = Section("s", (), PIECES, load_products(), strokes=STROKES)


@pytest.mark.parametrize(
    ("at", "name"),
    [
        ((19.0, 30.0), "sheet"),
        ((23.0, 60.0), "upper"),
        ((80.0, 80.0), "board"),
        ((50.0, 50.0), ""),  # the hole
        ((180.0, 50.0), ""),
    ],
)
def test_a_line_is_meant_before_the_board_that_it_lies_on(
    at: tuple[float, float], name: str
) -> None:
    assert piece_at(SECTION, at, 3.0) == name


def test_lines_of_the_office_lie_in_a_box_as_a_whole_or_reach_into_it() -> None:
    around, half = Box(190.0, -10.0, 310.0, 10.0), Box(250.0, -10.0, 400.0, 10.0)
    assert lines_in(SECTION, around, whole=True) == {"1"}
    assert lines_in(SECTION, half, whole=True) == frozenset()
    assert lines_in(SECTION, half, whole=False) == {"1"}
    assert lines_in(SECTION, Box(0.0, 200.0, 400.0, 300.0), whole=False) == frozenset()


def test_a_line_is_meant_before_an_area_but_not_before_a_sheet_at_hand() -> None:
    line = Stroke(((70.0, 0.0), (70.0, 100.0)), "A", "2")
    section = replace(SECTION, strokes=(line,))
    assert lines_pass(section, (71.0, 50.0), 3.0)
    assert not lines_pass(section, (80.0, 50.0), 3.0)
    assert not lines_pass(section, (71.0, 1.0), 3.0)  # the board's own edge


def test_of_lines_only_the_nearest_within_reach_is_meant() -> None:
    found = line_piece_at(SECTION, (21.5, 60.0), 3.0)
    assert found is not None
    assert found.name == "upper"
    assert line_piece_at(SECTION, (100.0, 50.0), 3.0) is None


def test_lines_of_the_office_are_found_by_their_handles() -> None:
    assert line_at(SECTION, (250.0, 2.0), 3.0) == "1"
    assert line_at(SECTION, (250.0, 9.0), 3.0) == ""


def test_a_box_holds_whole_pieces_or_all_that_it_touches() -> None:
    box = Box(10.0, 10.0, 30.0, 90.0)
    assert pieces_in(SECTION, box, whole=True) == {"sheet"}
    assert pieces_in(SECTION, box, whole=False) == {"sheet", "upper"}


def test_a_box_that_a_line_only_passes_through_touches_it() -> None:
    assert pieces_in(SECTION, Box(15.0, 140.0, 30.0, 145.0), whole=False) == {"upper"}


def test_points_and_stretches_are_found_within_reach() -> None:
    run = ((0.0, 0.0), (100.0, 0.0), (100.0, 50.0))
    assert vertex_at(run, (98.0, 1.0), 3.0) == 1
    assert vertex_at(run, (50.0, 1.0), 3.0) is None
    assert segment_at(run, (101.0, 30.0), 3.0) == 1
    assert segment_at(run, (50.0, 30.0), 3.0) is None
