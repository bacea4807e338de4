"""Editing the points of a sheet."""

import pytest
from PySide6.QtCore import Qt

from enclosure_app.model.edits import add_piece
from enclosure_app.model.place import Area, Line
from enclosure_app.window.main_window import MainWindow

RUN = ((400.0, 300.0), (400.0, 1000.0), (1200.0, 1000.0))


@pytest.fixture
def bent(sheet: MainWindow) -> MainWindow:
    sheet.document.apply("Draw", add_piece(sheet.document.project, 0, "felt", Line(RUN)))
    sheet.do("tool_points")
    return sheet


def points(window: MainWindow):  # noqa: ANN201
    return window.document.project.sections[0].by_name["drawn-1"].shape.points


def test_a_point_is_dragged_in_one_step(bent: MainWindow, hand) -> None:  # noqa: ANN001
    steps = bent.document.undo_stack.count()
    hand.drag(RUN[1], (450.0, 1050.0), (500.0, 1100.0), (600.0, 1200.0))
    assert points(bent)[1] == pytest.approx(hand.at((600.0, 1200.0)))
    assert points(bent)[0] == RUN[0]
    assert bent.document.undo_stack.count() == steps + 1


def test_a_double_click_on_the_line_adds_a_point_there(bent: MainWindow, hand) -> None:  # noqa: ANN001
    hand.click((400.0, 600.0))
    hand.double((800.0, 1000.0))
    assert points(bent)[:2] == RUN[:2]
    assert points(bent)[2] == pytest.approx(hand.at((800.0, 1000.0)))
    assert points(bent)[3] == RUN[2]


def test_delete_takes_the_last_point_out(bent: MainWindow, hand) -> None:  # noqa: ANN001
    hand.click(RUN[1])
    hand.press(Qt.Key.Key_Delete)
    assert points(bent) == (RUN[0], RUN[2])


def test_too_few_points_are_refused_in_words(bent: MainWindow, hand) -> None:  # noqa: ANN001
    for place in (RUN[1], RUN[0]):
        hand.click(place)
        hand.press(Qt.Key.Key_Delete)
    assert len(points(bent)) == 2
    assert bent.messages.isVisible()


def test_a_point_is_put_by_typing_how_far_it_is_from_the_one_before(
    bent: MainWindow,
    hand,  # noqa: ANN001
) -> None:
    hand.click(RUN[1])
    assert "600 at 90" in bent.views.hint.text()
    hand.keys("500 at 90")
    hand.press(Qt.Key.Key_Return)
    assert points(bent)[1] == pytest.approx((400.0, 800.0))
    assert points(bent)[2] == RUN[2]


def test_arrows_move_it_and_page_keys_go_on(bent: MainWindow, hand) -> None:  # noqa: ANN001
    hand.click(RUN[0])
    hand.press(Qt.Key.Key_Left)
    hand.press(Qt.Key.Key_PageDown)
    hand.press(Qt.Key.Key_Up)
    assert points(bent) == ((399.0, 300.0), (400.0, 1001.0), RUN[2])


def test_a_corner_of_a_hole_is_dragged(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    hole = ((600.0, 600.0), (900.0, 600.0), (900.0, 900.0))
    outer = ((300.0, 300.0), (1500.0, 300.0), (1500.0, 1500.0), (300.0, 1500.0))
    shape = Area(outer, (hole,))
    sheet.document.apply("Draw", add_piece(sheet.document.project, 0, "plywood", shape))
    sheet.place.pick(("drawn-1",))
    sheet.do("tool_points")
    hand.drag(hole[1], (950.0, 560.0), (1000.0, 500.0))
    after = sheet.document.project.sections[0].by_name["drawn-1"].shape
    assert after.outer == outer
    assert after.holes[0][1] == pytest.approx(hand.at((1000.0, 500.0)))


def test_escape_lets_go_of_the_point_and_then_of_the_piece(bent: MainWindow, hand) -> None:  # noqa: ANN001
    hand.click(RUN[1])
    hand.press(Qt.Key.Key_Escape)
    assert "double-click" in bent.views.hint.text()
    hand.press(Qt.Key.Key_Escape)
    assert "Click the sheet" in bent.views.hint.text()
    hand.press(Qt.Key.Key_Escape)
    assert bent.toolbox.name == "select"
