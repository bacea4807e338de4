"""A wall that is sketched from nothing: typed, caught, cut, mended, undone and done again."""

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.model.product import Control
from enclosure_app.model.report import Continuity
from enclosure_app.window.main_window import MainWindow

X = 800.0  # the outer face of the wall board


def enter(hand, *typed: str) -> None:  # noqa: ANN001
    for text in typed:
        hand.keys(text)
        hand.press(Qt.Key.Key_Return)


def continuity(window: MainWindow, qtbot: QtBot) -> Continuity:
    qtbot.waitUntil(lambda: window.checking.current, timeout=5000)
    return window.checking.results[0].layers[Control.AIR].continuity


def test_a_wall_is_sketched_from_nothing(sheet: MainWindow, hand, qtbot: QtBot) -> None:  # noqa: ANN001
    draw_board(sheet, hand)
    draw_sheets(sheet, hand)
    for name, place in (("outside", (200.0, 900.0)), ("inside", (1600.0, 900.0))):
        sheet.do(f"tool_{name}")
        hand.click(place)
    assert (
        continuity(sheet, qtbot) is Continuity.BROKEN
    )  # the upper sheet stops short of the frame

    sheet.do("tool_run_on")
    hand.click((X - 6.0, 1700.0))
    assert continuity(sheet, qtbot) is Continuity.CONTINUOUS
    section = sheet.document.project.sections[0]
    lower, upper = (section.by_name[f"drawn-{n}"].shape.points for n in (2, 3))
    assert list(lower) == [pytest.approx((X - 3.0, 0.0)), pytest.approx((X - 3.0, 1000.0))]
    assert list(upper) == [pytest.approx((X - 6.0, 850.0)), pytest.approx((X - 6.0, 2000.0))]

    steps = sheet.document.undo_stack.count()
    for _ in range(steps):
        sheet.do("undo")
    assert sheet.document.project.sections[0].pieces == ()
    for _ in range(steps):
        sheet.do("redo")
    assert sheet.document.project.sections[0] == section


def draw_board(window: MainWindow, hand) -> None:  # noqa: ANN001
    window.lines.choose("osb")
    window.do("tool_area")
    enter(hand, f"{X}; 0", "12 at 0", "1800 at 90", "12 at 180", "")


def draw_sheets(window: MainWindow, hand) -> None:  # noqa: ANN001
    """Draw the lower sheet 3 mm off the board from the frame up, the upper one over it."""
    window.lines.choose("self-adhered-permeable")
    window.canvas.catching = True
    window.do("tool_sheet")
    hand.click((X - 8.0, 4.0))  # beside the board, on the frame
    enter(hand, "1000 at 90", "")
    window.canvas.catching = False
    window.do("tool_beside")
    hand.keys(f"{X - 12.0}; 700")  # beside the lower sheet
    hand.press(Qt.Key.Key_Return)
    window.place.pick(("drawn-3",))
    window.do("tool_points")
    hand.press(Qt.Key.Key_PageDown)  # its first point
    enter(hand, f"{X - 6.0}; 850")
    hand.press(Qt.Key.Key_PageDown)
    enter(hand, f"{X - 6.0}; 1800")
