"""Drawing the frame by a drag, by clicks and by keys."""

import pytest
from PySide6.QtCore import Qt

from enclosure_app.window.main_window import MainWindow


def frame(window: MainWindow):  # noqa: ANN201
    return window.document.project.sections[0].frame


def test_a_drag_sets_the_frame(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    sheet.do("tool_frame")
    hand.drag((300.0, 1500.0), (600.0, 900.0), (1500.0, 400.0))
    (left, bottom), _, (right, top), _ = frame(sheet)
    assert (left, top) == pytest.approx(hand.at((300.0, 1500.0)))
    assert (right, bottom) == pytest.approx(hand.at((1500.0, 400.0)))


def test_two_clicks_and_enter_make_a_box_too(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    sheet.do("tool_frame")
    hand.click((300.0, 1500.0))
    assert "Two corners and Enter" in sheet.views.hint.text()
    hand.click((1500.0, 400.0))
    hand.press(Qt.Key.Key_Return)
    assert frame(sheet)[0] == pytest.approx((hand.at((300.0, 0.0))[0], hand.at((0.0, 400.0))[1]))
    assert sheet.toolbox.name == "select"


def test_its_corners_are_typed(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    sheet.do("tool_frame")
    for text in ("100; 200", "1.1 m; 1200"):
        hand.keys(text)
        hand.press(Qt.Key.Key_Return)
    hand.press(Qt.Key.Key_Return)
    assert frame(sheet) == ((100.0, 200.0), (1100.0, 200.0), (1100.0, 1200.0), (100.0, 1200.0))


def test_a_box_without_an_inside_is_refused(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    before = frame(sheet)
    sheet.do("tool_frame")
    for text in ("100; 200", "900; 200"):
        hand.keys(text)
        hand.press(Qt.Key.Key_Return)
    hand.press(Qt.Key.Key_Return)
    assert frame(sheet) == before
    assert "draw it again" in sheet.messages.words.text()


OUTLINE = ((300.0, 400.0), (1500.0, 400.0), (1500.0, 900.0), (900.0, 1000.0), (300.0, 1500.0))


@pytest.mark.parametrize("closed_by", ["enter", "first corner"])
def test_clicks_set_an_outline_of_any_shape(sheet: MainWindow, hand, closed_by: str) -> None:  # noqa: ANN001
    sheet.do("tool_frame")
    for corner in OUTLINE:
        hand.click(corner)
    assert "closes it" in sheet.views.hint.text()
    wanted = [pytest.approx(hand.at(corner)) for corner in OUTLINE]
    if closed_by == "enter":
        hand.press(Qt.Key.Key_Return)
    else:
        hand.click(OUTLINE[0])
    assert list(frame(sheet)) == wanted
    assert sheet.document.undo_stack.undoText() == "Set the frame"
    assert sheet.toolbox.name == "select"


def test_an_outline_that_crosses_itself_is_refused_and_mended(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    before = frame(sheet)
    sheet.do("tool_frame")
    for corner in ((300.0, 400.0), (1500.0, 400.0), (300.0, 1500.0), (1500.0, 1500.0)):
        hand.click(corner)
    hand.press(Qt.Key.Key_Return)
    assert frame(sheet) == before
    assert "draw it again" in sheet.messages.words.text()
    hand.press(Qt.Key.Key_Backspace)
    hand.press(Qt.Key.Key_Return)
    assert len(frame(sheet)) == 3


def test_the_outline_is_shown_before_it_is_closed(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    sheet.do("tool_frame")
    bare = sheet.canvas.grab().toImage()
    hand.click((300.0, 400.0))
    hand.click((1500.0, 400.0))
    hand.move((900.0, 1200.0))
    assert "mm" in sheet.canvas.tool.told
    middle = sheet.canvas.camera.seen((900.0, 400.0)).toPoint()
    shown = sheet.canvas.grab().toImage()
    near = [(middle.x() + dx, middle.y() + dy) for dx in range(12) for dy in (-1, 0, 1)]
    assert any(shown.pixelColor(*dot) != bare.pixelColor(*dot) for dot in near)
