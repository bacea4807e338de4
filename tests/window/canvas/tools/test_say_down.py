"""Saying which way is down."""

import pytest
from PySide6.QtCore import Qt

from enclosure_app.window.main_window import MainWindow


def test_two_places_on_a_plumb_line_say_which_way_is_down(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    sheet.do("hangs_askew")
    for text in ("500; 1000", "800; 600"):
        hand.keys(text)
        hand.press(Qt.Key.Key_Return)
    assert sheet.document.project.sections[0].gravity == pytest.approx((0.6, -0.8))
    assert sheet.document.undo_stack.undoText() == "Say which way is down"
    sheet.checking.check_now()
    assert sheet.actions_by_name["hangs_askew"].isChecked()


def test_giving_it_up_leaves_gravity_as_it_was(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    sheet.do("hangs_askew")
    assert not sheet.actions_by_name["tool_select"].isChecked()
    hand.press(Qt.Key.Key_Escape)
    assert sheet.actions_by_name["tool_select"].isChecked()
    assert sheet.actions_by_name["hangs_down"].isChecked()


def test_the_angle_of_the_plumb_line_is_typed(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    sheet.do("hangs_askew")
    hand.click((500.0, 1000.0))
    hand.keys("at -90")
    hand.press(Qt.Key.Key_Return)
    assert sheet.document.project.sections[0].gravity == pytest.approx((0.0, -1.0), abs=1e-12)
