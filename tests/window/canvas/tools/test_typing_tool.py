"""Places that are typed instead of clicked."""

from PySide6.QtCore import Qt

from enclosure_app.window.main_window import MainWindow


def points(window: MainWindow):  # noqa: ANN201
    (piece,) = window.document.project.sections[0].pieces
    return piece.shape.points


def test_a_sheet_is_drawn_without_the_mouse(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    sheet.do("tool_sheet")
    for text in ("200; 300", "200; 1.1 m", "600 at 0"):
        hand.keys(text)
        hand.press(Qt.Key.Key_Return)
    hand.press(Qt.Key.Key_Return)
    assert points(sheet) == ((200.0, 300.0), (200.0, 1100.0), (800.0, 1100.0))


def test_a_place_below_zero_stands_in_brackets(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    sheet.do("tool_sheet")
    for text in ("(-50; -20)", "(-50; 900)"):
        hand.keys(text)
        hand.press(Qt.Key.Key_Return)
    hand.press(Qt.Key.Key_Return)
    assert points(sheet) == ((-50.0, -20.0), (-50.0, 900.0))


def test_letters_of_a_length_are_no_shortcuts_once_it_is_begun(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    sheet.do("tool_sheet")
    hand.click((200.0, 300.0))
    hand.keys("2 m at 90")
    assert sheet.toolbox.name == "sheet"
    assert sheet.views.hint.text().startswith("2 m at 90")
    hand.press(Qt.Key.Key_Backspace)
    assert sheet.canvas.tool.typed == "2 m at 9"
    hand.press(Qt.Key.Key_Escape)
    assert sheet.canvas.tool.typed == ""
    assert sheet.canvas.tool.anchor is not None


def test_letters_are_shortcuts_before_that(sheet: MainWindow, hand, qtbot) -> None:  # noqa: ANN001
    sheet.do("tool_sheet")
    qtbot.keyClick(sheet, Qt.Key.Key_M)
    assert sheet.toolbox.name == "measure"


def test_undo_takes_back_the_last_place_before_it_takes_back_a_step(
    sheet: MainWindow,
    hand,  # noqa: ANN001
    qtbot,  # noqa: ANN001
) -> None:
    sheet.do("tool_inside")
    hand.click((1500.0, 500.0))
    sheet.do("tool_sheet")
    hand.click((200.0, 300.0))
    for points in (0, 0):
        qtbot.keyClick(sheet.canvas, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
        assert bool(sheet.canvas.tool.begun) is bool(points)
    assert sheet.document.project.sections[0].inside == ()
