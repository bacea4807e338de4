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


def test_two_clicks_set_it_too(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    sheet.do("tool_frame")
    hand.click((300.0, 1500.0))
    assert "opposite corner" in sheet.views.hint.text()
    hand.click((1500.0, 400.0))
    assert frame(sheet)[0] == pytest.approx((hand.at((300.0, 0.0))[0], hand.at((0.0, 400.0))[1]))
    assert sheet.toolbox.name == "select"


def test_its_corners_are_typed(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    sheet.do("tool_frame")
    for text in ("100; 200", "1.1 m; 1200"):
        hand.keys(text)
        hand.press(Qt.Key.Key_Return)
    assert frame(sheet) == ((100.0, 200.0), (1100.0, 200.0), (1100.0, 1200.0), (100.0, 1200.0))


def test_a_box_without_an_inside_is_refused(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    before = frame(sheet)
    sheet.do("tool_frame")
    for text in ("100; 200", "900; 200"):
        hand.keys(text)
        hand.press(Qt.Key.Key_Return)
    assert frame(sheet) == before
    assert "draw it again" in sheet.messages.words.text()
