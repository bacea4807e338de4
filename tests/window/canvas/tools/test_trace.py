"""Tracing a sheet along drawn lines."""

from dataclasses import replace
from pathlib import Path

import ezdxf
import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.model.edits import Side, add_mark
from enclosure_app.model.place import Points
from enclosure_app.model.section import Piece, Stroke
from enclosure_app.window.main_window import MainWindow

WALL = Stroke(((400.0, 300.0), (400.0, 1200.0)), "A", "1")
ROOF = Stroke(((400.0, 1200.0), (1200.0, 1600.0)), "A", "2")
AROUND = Stroke(((400.0, 300.0), (1200.0, 300.0), (1200.0, 1600.0)), "A", "3")
DIRECT = ((400.0, 300.0), (400.0, 1200.0), (1200.0, 1600.0))
ROUND = ((400.0, 300.0), (1200.0, 300.0), (1200.0, 1600.0))


def lines(window: MainWindow, *strokes: Stroke) -> None:
    """Put an office's lines on the empty sheet."""
    project = window.document.project
    section = replace(project.sections[0], strokes=strokes)
    window.document.open(replace(project, sections=(section,)))
    window.checking.check_now()


@pytest.fixture
def drawn(sheet: MainWindow) -> MainWindow:
    lines(sheet, WALL, ROOF, AROUND)
    sheet.canvas.catching = True
    sheet.do("tool_trace")
    return sheet


def pieces(window: MainWindow) -> tuple[Piece, ...]:
    return window.document.project.sections[0].pieces


def run(window: MainWindow) -> Points:
    (piece,) = pieces(window)
    return piece.shape.points


def test_two_clicks_make_one_sheet_along_the_lines(drawn: MainWindow, hand) -> None:  # noqa: ANN001
    hand.click((400.0, 300.0))
    hand.click((1200.0, 1600.0))
    (piece,) = pieces(drawn)
    assert piece.shape.points == DIRECT
    assert piece.product == "self-adhered-sheet"


def test_the_way_is_shown_before_it_is_clicked(
    drawn: MainWindow,
    hand,  # noqa: ANN001
    qtbot: QtBot,
) -> None:
    tool = drawn.canvas.tool
    hand.click((400.0, 300.0))
    hand.move((1200.0, 1600.0))
    qtbot.waitUntil(lambda: tool.told != "")
    assert tool.told == "1\u202f794 mm"
    before = drawn.canvas.grab().toImage()
    hand.move((1500.0, 500.0))
    qtbot.waitUntil(lambda: tool.told == "")
    assert drawn.canvas.grab().toImage() != before
    assert pieces(drawn) == (), "shown is not done"


def test_tab_takes_the_other_way_and_all_of_it_is_one_step(drawn: MainWindow, hand) -> None:  # noqa: ANN001
    before = drawn.document.project
    hand.click((400.0, 300.0))
    hand.click((1200.0, 1600.0))
    hand.press(Qt.Key.Key_Tab)
    assert run(drawn) == ROUND
    hand.press(Qt.Key.Key_Tab)
    assert run(drawn) == DIRECT, "after the last the first comes again"
    hand.press(Qt.Key.Key_Backtab)
    assert run(drawn) == ROUND
    drawn.do("undo")
    assert drawn.document.project is before


def test_tab_takes_the_other_way_of_what_is_only_shown(
    drawn: MainWindow,
    hand,  # noqa: ANN001
    qtbot: QtBot,
) -> None:
    tool = drawn.canvas.tool
    hand.click((400.0, 300.0))
    hand.move((1200.0, 1600.0))
    qtbot.waitUntil(lambda: tool.told == "1\u202f794 mm")
    hand.press(Qt.Key.Key_Tab)
    assert tool.told == "2\u202f100 mm"
    hand.click((1200.0, 1600.0))
    assert run(drawn) == ROUND


def test_tab_goes_to_the_next_panel_while_nothing_is_traced(drawn: MainWindow, hand) -> None:  # noqa: ANN001
    drawn.activateWindow()
    drawn.canvas.setFocus()
    hand.press(Qt.Key.Key_Tab)
    assert not drawn.canvas.hasFocus()


def test_further_clicks_go_on_until_enter(drawn: MainWindow, hand) -> None:  # noqa: ANN001
    hand.click((400.0, 300.0))
    hand.click((400.0, 1200.0))
    hand.click((1200.0, 1600.0))
    assert run(drawn) == DIRECT
    hand.press(Qt.Key.Key_Return)
    hand.click((1200.0, 300.0))
    hand.click((1200.0, 1600.0))
    assert [piece.shape.points for piece in pieces(drawn)] == [
        DIRECT,
        ((1200.0, 300.0), (1200.0, 1600.0)),
    ]
    drawn.do("undo")
    assert run(drawn) == DIRECT
    drawn.do("undo")
    assert pieces(drawn) == ()


def test_another_product_begins_another_sheet(drawn: MainWindow, hand) -> None:  # noqa: ANN001
    hand.click((400.0, 300.0))
    hand.click((400.0, 1200.0))
    drawn.lines.choose("underlayment")
    hand.click((400.0, 1200.0))
    hand.click((1200.0, 1600.0))
    assert [(piece.product, piece.shape.points) for piece in pieces(drawn)] == [
        ("self-adhered-sheet", DIRECT[:2]),
        ("underlayment", DIRECT[1:]),
    ]


def test_backspace_takes_the_last_leg_back(drawn: MainWindow, hand) -> None:  # noqa: ANN001
    hand.click((400.0, 300.0))
    hand.click((400.0, 1200.0))
    hand.click((1200.0, 1600.0))
    hand.press(Qt.Key.Key_Backspace)
    assert run(drawn) == DIRECT[:2]
    hand.press(Qt.Key.Key_Backspace)
    assert pieces(drawn) == ()
    hand.click((1200.0, 300.0))
    assert run(drawn) == ((400.0, 300.0), (1200.0, 300.0)), "the start is still there"


def test_undo_by_its_key_takes_the_last_place_back_before_any_step(
    drawn: MainWindow,
    hand,  # noqa: ANN001
    qtbot: QtBot,
) -> None:
    def undo() -> None:
        qtbot.keyClick(drawn.canvas, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)

    hand.click((1200.0, 300.0))
    hand.click((1200.0, 1600.0))
    hand.press(Qt.Key.Key_Return)
    hand.click((400.0, 300.0))
    hand.click((400.0, 1200.0))
    hand.click((1200.0, 1600.0))
    undo()
    assert pieces(drawn)[1].shape.points == DIRECT[:2]
    undo()
    assert len(pieces(drawn)) == 1
    assert "Click where the sheet ends" in drawn.views.hint.text(), "the start is still there"
    undo()
    assert len(pieces(drawn)) == 1
    assert "Click where the sheet starts" in drawn.views.hint.text()
    drawn.activateWindow()
    drawn.canvas.setFocus()
    undo()
    assert pieces(drawn) == (), "now it is a step that is taken back"


def test_undo_in_the_middle_begins_anew(drawn: MainWindow, hand) -> None:  # noqa: ANN001
    hand.click((400.0, 300.0))
    hand.click((400.0, 1200.0))
    drawn.do("undo")
    hand.click((1200.0, 300.0))
    hand.click((1200.0, 1600.0))
    assert run(drawn) == ((1200.0, 300.0), (1200.0, 1600.0))


def test_the_outside_mark_knows_on_which_side_a_sheet_lies(drawn: MainWindow, hand) -> None:  # noqa: ANN001
    project = drawn.document.project
    drawn.document.apply("Mark", add_mark(project, 0, Side.OUTSIDE, (900.0, 700.0)))
    hand.press(Qt.Key.Key_D)
    hand.click((400.0, 300.0))
    hand.click((400.0, 1200.0))
    assert run(drawn) == ((403.0, 300.0), (403.0, 1200.0))
    assert "outside of the line" in drawn.views.hint.text()
    hand.press(Qt.Key.Key_D)
    assert run(drawn) == ((397.0, 300.0), (397.0, 1200.0))
    hand.press(Qt.Key.Key_D)
    assert run(drawn) == ((400.0, 300.0), (400.0, 1200.0))


def test_a_side_that_is_chosen_for_another_product_leaves_the_sheet_before(
    drawn: MainWindow,
    hand,  # noqa: ANN001
) -> None:
    hand.click((400.0, 300.0))
    hand.click((400.0, 1200.0))
    drawn.lines.choose("underlayment")
    hand.press(Qt.Key.Key_D)
    assert run(drawn) == DIRECT[:2]


def test_a_typed_length_is_the_distance_and_is_remembered(drawn: MainWindow, hand) -> None:  # noqa: ANN001
    hand.click((400.0, 300.0))
    hand.click((400.0, 1200.0))
    hand.keys('1/2"')
    hand.press(Qt.Key.Key_Return)
    assert {round(x, 6) for x, _ in run(drawn)} == {387.3}, "unmarked, left of the line"
    assert "to the left of the line" in drawn.views.hint.text()
    drawn.do("tool_select")
    drawn.do("tool_trace")
    hand.click((1200.0, 300.0))
    hand.click((1200.0, 1600.0))
    assert {round(x, 6) for x, _ in pieces(drawn)[1].shape.points} == {1187.3}


def test_what_is_no_length_is_told_and_leaves_the_sheet(drawn: MainWindow, hand) -> None:  # noqa: ANN001
    hand.click((400.0, 300.0))
    hand.click((400.0, 1200.0))
    hand.keys("3''3")
    hand.press(Qt.Key.Key_Return)
    assert "is no length" in drawn.messages.words.text()
    assert run(drawn) == DIRECT[:2]


def test_places_that_no_lines_join_are_told(drawn: MainWindow, hand) -> None:  # noqa: ANN001
    lines(drawn, WALL, Stroke(((1700.0, 200.0), (1700.0, 400.0)), "A", "4"))
    hand.click((400.0, 300.0))
    hand.click((1700.0, 400.0))
    assert "not joined by drawn lines" in drawn.messages.words.text()
    assert pieces(drawn) == ()


def test_a_gap_that_is_clicked_over_is_bridged_and_shown(drawn: MainWindow, hand) -> None:  # noqa: ANN001
    lines(drawn, WALL, Stroke(((400.0, 1342.0), (1200.0, 1700.0)), "A", "4"))
    hand.click((400.0, 300.0))
    hand.click((400.0, 1200.0))
    bare = drawn.canvas.grab().toImage()
    hand.click((400.0, 1342.0))
    hand.click((1200.0, 1700.0))
    assert run(drawn) == ((400.0, 300.0), (400.0, 1342.0), (1200.0, 1700.0))
    assert drawn.canvas.grab().toImage() != bare
    (_, bridge, _) = [leg.way for leg in drawn.canvas.tool._legs]  # noqa: SLF001
    assert bridge.gaps == (((400.0, 1200.0), (400.0, 1342.0)),)


def test_a_click_far_from_every_line_is_told(drawn: MainWindow, hand) -> None:  # noqa: ANN001
    hand.click((1800.0, 900.0))
    assert "No line is drawn here" in drawn.messages.words.text()


def test_a_traced_sheet_is_no_line_to_trace_along(drawn: MainWindow, hand) -> None:  # noqa: ANN001
    """The second sheet follows the wall, not the sheet that lies 3 mm beside it."""
    hand.press(Qt.Key.Key_D)
    for _ in range(2):
        hand.click((400.0, 300.0))
        hand.click((400.0, 1200.0))
        hand.press(Qt.Key.Key_Return)
    assert [piece.shape.points for piece in pieces(drawn)] == [
        ((397.0, 300.0), (397.0, 1200.0))
    ] * 2


def test_hatches_and_blocks_are_followed_too(
    sheet: MainWindow,
    hand,  # noqa: ANN001
    tmp_path: Path,
) -> None:
    """A wall that is only a hatch, and a roof that is only in a block."""
    drawing = ezdxf.new("R2010")
    drawing.header["$INSUNITS"] = 4
    space = drawing.modelspace()
    hatch = space.add_hatch(dxfattribs={"layer": "X1"})
    hatch.paths.add_polyline_path([(0, 0), (140, 0), (140, 2400), (0, 2400)], is_closed=True)
    block = drawing.blocks.new("ROOF")
    block.add_line((0, 0), (2000, 900), {"layer": "X2"})
    space.add_blockref("ROOF", (0, 2400), {"layer": "X2"})
    path = tmp_path / "hatched.dxf"
    drawing.saveas(path)
    sheet.filing.open(path)
    sheet.lines.choose("self-adhered-sheet")
    sheet.canvas.catching = True  # a dot of the view is some mm wide
    sheet.do("tool_trace")
    hand.click((0.0, 0.0))
    hand.click((2000.0, 3300.0))
    traced = [piece for piece in pieces(sheet) if piece.product == "self-adhered-sheet"]
    assert [piece.shape.points for piece in traced] == [
        ((0.0, 0.0), (0.0, 2400.0), (2000.0, 3300.0))
    ]


def test_a_click_while_a_large_drawing_is_gathered_is_done_when_it_is(
    sheet: MainWindow,
    hand,  # noqa: ANN001
    qtbot: QtBot,
) -> None:
    many = tuple(
        Stroke(((x * 9.0 + 600, y * 9.0), (x * 9.0 + 606, y * 9.0)), "B", f"{x}-{y}")
        for x in range(60)
        for y in range(60)
    )
    lines(sheet, WALL, ROOF, *many)
    sheet.canvas.catching = True
    sheet.do("tool_trace")
    hand.click((400.0, 300.0))
    assert "your click is not forgotten" in sheet.views.hint.text()
    hand.click((1200.0, 1600.0))
    qtbot.waitUntil(lambda: bool(pieces(sheet)), timeout=9000)
    assert run(sheet) == DIRECT
