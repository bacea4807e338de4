"""Saying that a drawing is cut short between two break lines."""

import pytest
from PySide6.QtCore import Qt

from enclosure_app.window.main_window import MainWindow


def start(window: MainWindow, hand) -> None:  # noqa: ANN001
    window.do("tool_cut_short")
    for text in ("200; 1000", "1200; 1000"):
        hand.keys(text)
        hand.press(Qt.Key.Key_Return)


def test_a_strip_is_left_out_as_wide_as_is_typed(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    start(sheet, hand)
    hand.move((700.0, 1200.0))
    hand.keys("150")
    hand.press(Qt.Key.Key_Return)
    (cut,) = sheet.document.project.sections[0].breaks
    assert cut.near == ((200.0, 1000.0), (1200.0, 1000.0))
    assert cut.far == ((200.0, 1150.0), (1200.0, 1150.0))
    assert sheet.toolbox.name == "select"


def test_the_strip_lies_on_the_side_of_the_mouse(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    start(sheet, hand)
    hand.click((700.0, 800.0))
    (cut,) = sheet.document.project.sections[0].breaks
    assert cut.far[0] == pytest.approx((200.0, 800.0), abs=8.0)


def test_a_click_on_a_break_line_takes_the_break_away(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    start(sheet, hand)
    hand.click((700.0, 800.0))
    sheet.do("tool_cut_short")
    hand.click((400.0, 1000.0))
    assert sheet.document.project.sections[0].breaks == ()
    assert sheet.document.undo_stack.undoText() == "Take the break away"
    sheet.do("undo")
    assert len(sheet.document.project.sections[0].breaks) == 1


def test_backspace_takes_a_place_back(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    start(sheet, hand)
    hand.press(Qt.Key.Key_Backspace)
    assert "where the break line ends" in sheet.views.hint.text()
