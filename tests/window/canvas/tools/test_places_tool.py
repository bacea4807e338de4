"""Gestures that ask for a few places."""

from PySide6.QtCore import Qt

from enclosure_app.window.main_window import MainWindow


def test_a_place_given_twice_counts_once(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    sheet.do("hangs_askew")
    hand.click((500.0, 1000.0))
    hand.click((500.0, 1000.0))
    assert sheet.canvas.tool.given == [hand.at((500.0, 1000.0))]
    assert not sheet.document.undo_stack.canUndo()


def test_escape_gives_the_places_up_and_then_the_tool(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    sheet.do("hangs_askew")
    hand.click((500.0, 1000.0))
    hand.press(Qt.Key.Key_Escape)
    assert sheet.canvas.tool.given == []
    assert sheet.toolbox.name == "down"
    hand.press(Qt.Key.Key_Escape)
    assert sheet.toolbox.name == "select"


def test_the_length_and_angle_from_the_last_place_are_told(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    sheet.do("hangs_askew")
    hand.click((500.0, 1000.0))
    hand.move((900.0, 1000.0))
    assert sheet.canvas.tool.told.endswith("∠ 0.0°")
    hand.move((500.0, 500.0))
    assert sheet.canvas.tool.told.endswith("∠ -90.0°")
