"""Cutting back, running on, cutting and joining, each seen before it is done."""

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt

from enclosure_app.model.edits import add_piece
from enclosure_app.model.place import Line
from enclosure_app.model.section import Stroke
from enclosure_app.window.main_window import MainWindow


def test_the_part_under_the_mouse_is_taken_away_up_to_the_crossing(
    crossed: MainWindow,
    hand,  # noqa: ANN001
    run,  # noqa: ANN001
) -> None:
    crossed.do("tool_cut_back")
    hand.move((400.0, 1200.0))
    assert crossed.canvas.tool.preview.gone[0].name == "drawn-1"
    assert crossed.canvas.tool.told == "−700 mm"
    hand.click((400.0, 1200.0))
    assert run("drawn-1") == ((400.0, 300.0), (400.0, 800.0))
    crossed.do("undo")
    assert run("drawn-1") == ((400.0, 300.0), (400.0, 1500.0))


def test_what_cannot_be_cut_back_says_why_before_and_after_the_click(
    crossed: MainWindow,
    hand,  # noqa: ANN001
    section,  # noqa: ANN001
) -> None:
    project = add_piece(crossed.document.project, 0, "felt", Line(((1700, 300), (1700, 900))))
    crossed.document.apply("Draw", project)
    crossed.do("tool_cut_back")
    hand.move((1700.0, 500.0))
    assert "Nothing cuts" in crossed.views.hint.text()
    hand.click((1700.0, 500.0))
    assert "Nothing cuts" in crossed.messages.words.text()
    assert len(section().pieces) == 5


def test_a_sheet_runs_on_to_the_board_in_its_way(crossed: MainWindow, hand, run) -> None:  # noqa: ANN001
    crossed.do("tool_run_on")
    hand.move((1050.0, 800.0))
    assert crossed.canvas.tool.told == "+300 mm"
    hand.click((1050.0, 800.0))
    assert run("drawn-3") == ((200.0, 800.0), (1400.0, 800.0))


def test_a_sheet_runs_on_to_the_offices_line_in_its_way(
    crossed: MainWindow,
    hand,  # noqa: ANN001
    run,  # noqa: ANN001
) -> None:
    project = crossed.document.project
    drawn = (
        Stroke(((1250.0, 0.0), (1250.0, 1900.0)), "A", "1"),
        Stroke(((300.0, 1000.0), (1900.0, 1000.0)), "A", "2"),  # beside its way
    )
    section = replace(project.sections[0], strokes=drawn)
    crossed.document.apply("", replace(project, sections=(section,)))
    crossed.do("tool_run_on")
    hand.move((1050.0, 800.0))
    assert crossed.canvas.tool.told == "+150 mm"
    hand.click((1050.0, 800.0))
    assert run("drawn-3") == ((200.0, 800.0), (1250.0, 800.0))


@pytest.mark.parametrize(("typed", "x"), [("50", 1150.0), ("-50", 1050.0)])
def test_a_sheet_runs_on_by_a_typed_length(
    crossed: MainWindow,
    hand,  # noqa: ANN001
    run,  # noqa: ANN001
    typed: str,
    x: float,
) -> None:
    crossed.do("tool_run_on")
    hand.move((1050.0, 800.0))
    hand.keys(typed)
    hand.press(Qt.Key.Key_Return)
    assert run("drawn-3")[1] == pytest.approx((x, 800.0))
    assert crossed.document.undo_stack.undoText() == "Run on"


def test_a_sheet_is_cut_where_it_is_clicked(crossed: MainWindow, hand, run, section) -> None:  # noqa: ANN001
    crossed.canvas.catching = True
    crossed.do("tool_cut")
    hand.click((402.0, 815.0))
    assert run("drawn-1") == ((400.0, 300.0), (400.0, 800.0))
    assert section().by_name["drawn-5"].shape.points == ((400.0, 800.0), (400.0, 1500.0))


def test_two_sheets_are_joined_end_to_end(crossed: MainWindow, hand, run, section) -> None:  # noqa: ANN001
    line = Line(((400.0, 1500.0), (700.0, 1800.0)))
    crossed.document.apply("Draw", add_piece(crossed.document.project, 0, "felt", line))
    crossed.do("tool_join")
    hand.click((400.0, 1100.0))
    assert crossed.place.picked == {"drawn-1"}
    hand.click((550.0, 1650.0))
    assert run("drawn-1") == ((400.0, 300.0), (400.0, 1500.0), (700.0, 1800.0))
    assert "drawn-5" not in section().by_name


def test_sheets_that_do_not_meet_are_told(crossed: MainWindow, hand) -> None:  # noqa: ANN001
    before = crossed.document.project
    crossed.do("tool_join")
    hand.click((400.0, 1100.0))
    hand.click((900.0, 1100.0))
    assert "more than 2 mm apart" in crossed.messages.words.text()
    assert crossed.document.project is before
