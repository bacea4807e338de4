"""Tracing a sheet along drawn lines."""

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt

from enclosure_app.model.section import Stroke
from enclosure_app.window.main_window import MainWindow

WALL = Stroke(((400.0, 300.0), (400.0, 1200.0)), "A", "1")
ROOF = Stroke(((400.0, 1200.0), (1200.0, 1600.0)), "A", "2")
AROUND = Stroke(((400.0, 300.0), (1200.0, 300.0), (1200.0, 1600.0)), "A", "3")


@pytest.fixture
def drawn(sheet: MainWindow) -> MainWindow:
    project = sheet.document.project
    section = replace(project.sections[0], strokes=(WALL, ROOF, AROUND))
    sheet.document.open(replace(project, sections=(section,)))
    sheet.checking.check_now()
    sheet.canvas.catching = True
    sheet.do("tool_trace")
    return sheet


def test_two_clicks_make_one_sheet_along_the_lines(drawn: MainWindow, hand) -> None:  # noqa: ANN001
    hand.click((400.0, 300.0))
    hand.click((1200.0, 1600.0))
    (piece,) = drawn.document.project.sections[0].pieces
    assert piece.shape.points == ((400.0, 300.0), (400.0, 1200.0), (1200.0, 1600.0))
    assert piece.product == "self-adhered-sheet"


def test_a_key_takes_the_other_way_and_all_of_it_is_one_step(drawn: MainWindow, hand) -> None:  # noqa: ANN001
    before = drawn.document.project
    hand.click((400.0, 300.0))
    hand.click((1200.0, 1600.0))
    hand.press(Qt.Key.Key_A)
    (piece,) = drawn.document.project.sections[0].pieces
    assert piece.shape.points == ((400.0, 300.0), (1200.0, 300.0), (1200.0, 1600.0))
    drawn.do("undo")
    assert drawn.document.project is before


def test_a_key_puts_the_sheet_three_mm_beside_the_line(drawn: MainWindow, hand) -> None:  # noqa: ANN001
    hand.click((400.0, 300.0))
    hand.click((400.0, 1200.0))
    hand.press(Qt.Key.Key_D)
    (piece,) = drawn.document.project.sections[0].pieces
    assert {x for x, _ in piece.shape.points} == {397.0}
    hand.press(Qt.Key.Key_D)
    (piece,) = drawn.document.project.sections[0].pieces
    assert {x for x, _ in piece.shape.points} == {403.0}


def test_places_that_no_lines_join_are_told(drawn: MainWindow, hand) -> None:  # noqa: ANN001
    project = drawn.document.project
    lone = Stroke(((1700.0, 200.0), (1700.0, 400.0)), "A", "4")
    section = replace(project.sections[0], strokes=(WALL, lone))
    drawn.document.open(replace(project, sections=(section,)))
    drawn.checking.check_now()
    hand.click((400.0, 300.0))
    hand.click((1700.0, 400.0))
    assert "not joined by drawn lines" in drawn.messages.words.text()
    assert drawn.document.project.sections[0].pieces == ()
