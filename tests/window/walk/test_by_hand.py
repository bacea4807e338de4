"""Fingers and the mouse move and pinch what is looked at."""

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from enclosure_app.window.walk.by_hand import ByHand
from tests.window.walk.test_whole_walk import touch_screen

LEFT = Qt.MouseButton.LeftButton


class Told(ByHand):
    """A view that remembers what it was told."""

    def __init__(self) -> None:
        super().__init__()
        self.moved = QPointF()
        self.factor = 1.0
        self.came_back = 0
        self.about: QPointF | None = None

    def pan(self, by: QPointF) -> None:
        self.moved += by

    def zoom(self, factor: float, about: QPointF | None = None) -> None:
        self.factor *= factor
        self.about = about

    def come_back(self) -> None:
        self.came_back += 1


@pytest.fixture
def view(qtbot: QtBot) -> Told:
    made = Told()
    qtbot.addWidget(made)
    made.resize(400, 300)
    made.show()
    return made


def test_the_mouse_moves_it_while_its_button_is_down(view: Told, qtbot: QtBot) -> None:
    qtbot.mouseMove(view, QPoint(20, 20))
    assert view.moved == QPointF()
    qtbot.mousePress(view, LEFT, pos=QPoint(20, 20))
    qtbot.mouseMove(view, QPoint(70, 50))
    qtbot.mouseRelease(view, LEFT, pos=QPoint(70, 50))
    assert view.moved == QPointF(50, 30)
    qtbot.mouseDClick(view, LEFT)
    assert view.came_back == 1


def test_one_finger_moves_it_and_two_pinch_it(view: Told) -> None:
    screen = touch_screen()
    QTest.touchEvent(view, screen).press(1, QPoint(100, 100), view).commit()
    QTest.touchEvent(view, screen).move(1, QPoint(130, 120), view).commit()
    assert view.moved == QPointF(30, 20)
    both = QTest.touchEvent(view, screen)
    both.stationary(1).press(2, QPoint(230, 120), view).commit()
    both = QTest.touchEvent(view, screen)
    both.move(1, QPoint(80, 120), view).move(2, QPoint(280, 120), view).commit()
    assert view.factor == pytest.approx(2.0)
    assert view.about == QPointF(180, 120)
    both = QTest.touchEvent(view, screen)
    both.release(1, QPoint(80, 120), view).release(2, QPoint(280, 120), view).commit()


def test_a_view_has_to_say_what_it_does() -> None:
    view = ByHand.__new__(ByHand)
    for wanted in (lambda: view.pan(QPointF()), lambda: view.zoom(2.0), view.come_back):
        with pytest.raises(NotImplementedError):
            wanted()
