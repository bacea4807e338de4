"""Editing the points of a sheet."""

import pytest
from PySide6.QtCore import Qt

from enclosure_app.model.edits import add_piece
from enclosure_app.model.place import Line
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
