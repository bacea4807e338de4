"""The canvas: zoom about the mouse, pan by middle button, space and arrows, fit, go to a place."""

from collections.abc import Callable
from dataclasses import replace

import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, QRect, Qt
from PySide6.QtGui import QMouseEvent, QWheelEvent
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from enclosure_app.model.report import RainRoute, RouteEnd
from enclosure_app.window.canvas.canvas import Canvas
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.main_window import MainWindow

Opened = Callable[..., MainWindow]
LEFT, MIDDLE = Qt.MouseButton.LeftButton, Qt.MouseButton.MiddleButton
PLAIN = Qt.KeyboardModifier.NoModifier
AT = QPoint(180, 140)


@pytest.fixture
def canvas(opened: Opened) -> Canvas:
    return opened().canvas


def drag(canvas: Canvas, button: Qt.MouseButton, by: QPoint) -> None:
    for kind, dot, held in (
        (QEvent.Type.MouseButtonPress, AT, button),
        (QEvent.Type.MouseMove, AT + by, button),
        (QEvent.Type.MouseButtonRelease, AT + by, Qt.MouseButton.NoButton),
    ):
        place = QPointF(dot)
        everywhere = QPointF(canvas.mapToGlobal(dot))
        QApplication.sendEvent(canvas, QMouseEvent(kind, place, everywhere, button, held, PLAIN))


def turn(canvas: Canvas, notches: float) -> None:
    dot = QPointF(AT)
    event = QWheelEvent(
        dot, QPointF(canvas.mapToGlobal(AT)), QPoint(), QPoint(0, round(120 * notches)),
        Qt.MouseButton.NoButton, PLAIN, Qt.ScrollPhase.NoScrollPhase, False,
    )  # fmt: skip
    QApplication.sendEvent(canvas, event)


@pytest.mark.parametrize("notches", [1, 3, -2, 0.25])
def test_the_wheel_zooms_about_the_mouse(canvas: Canvas, notches: float) -> None:
    before, zoom = canvas.camera.place(QPointF(AT)), canvas.camera.zoom
    turn(canvas, notches)
    assert canvas.camera.place(QPointF(AT)) == pytest.approx(before)
    assert canvas.camera.zoom == pytest.approx(zoom * 1.25**notches)


def test_the_middle_button_moves_the_paper_with_the_mouse(canvas: Canvas) -> None:
    before = canvas.camera.place(QPointF(AT))
    drag(canvas, MIDDLE, QPoint(90, -40))
    assert canvas.camera.place(QPointF(AT + QPoint(90, -40))) == pytest.approx(before)


def test_space_and_the_left_button_move_the_paper_and_pick_nothing(
    canvas: Canvas, qtbot: QtBot
) -> None:
    before = canvas.camera.place(QPointF(AT))
    qtbot.keyPress(canvas, Qt.Key.Key_Space)
    drag(canvas, LEFT, QPoint(-60, 30))
    qtbot.keyRelease(canvas, Qt.Key.Key_Space)
    assert canvas.camera.place(QPointF(AT + QPoint(-60, 30))) == pytest.approx(before)
    assert not canvas.place.picked
    after = canvas.camera
    drag(canvas, LEFT, QPoint(-60, 30))
    assert canvas.camera == after  # the hand has let go


def test_space_is_let_go_when_the_keys_go_elsewhere(canvas: Canvas, qtbot: QtBot) -> None:
    canvas.window().activateWindow()
    qtbot.waitUntil(canvas.window().isActiveWindow)
    canvas.setFocus()
    qtbot.keyPress(canvas, Qt.Key.Key_Space)
    canvas.clearFocus()
    before = canvas.camera
    drag(canvas, LEFT, QPoint(50, 50))
    assert canvas.camera == before


@pytest.mark.parametrize(
    ("key", "by"),
    [
        (Qt.Key.Key_Left, (-60, 0)),
        (Qt.Key.Key_Right, (60, 0)),
        (Qt.Key.Key_Up, (0, 60)),
        (Qt.Key.Key_Down, (0, -60)),
    ],
)
def test_an_arrow_looks_further_that_way(
    canvas: Canvas, qtbot: QtBot, key: Qt.Key, by: tuple[int, int]
) -> None:
    x, y = canvas.camera.centre
    qtbot.keyClick(canvas, key)
    zoom = canvas.camera.zoom
    assert canvas.camera.centre == pytest.approx((x + by[0] / zoom, y + by[1] / zoom))


def test_a_place_is_brought_to_the_middle_and_never_further_away(canvas: Canvas) -> None:
    canvas.go_to((100.0, 50.0), 300.0)
    assert canvas.camera.centre == (100.0, 50.0)
    near = canvas.camera.zoom
    canvas.go_to((0.0, 0.0), 5000.0)
    assert canvas.camera.zoom == near


def test_a_wider_window_keeps_the_middle_in_the_middle(canvas: Canvas) -> None:
    centre = canvas.camera.centre
    canvas.resize(canvas.width() + 120, canvas.height() - 30)
    assert canvas.camera.centre == centre
    assert canvas.camera.size.width() == canvas.width()


def test_the_right_button_asks_for_the_menu_there(canvas: Canvas, qtbot: QtBot) -> None:
    canvas.asked_menu.disconnect()  # a menu that pops up wants a screen
    asked: list[QPoint] = []
    canvas.asked_menu.connect(lambda at, _pointer: asked.append(at))
    qtbot.mouseClick(canvas, Qt.MouseButton.RightButton, PLAIN, AT)
    assert asked == [canvas.mapToGlobal(AT)]


def test_no_drop_is_painted_over_a_flag(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    qtbot.waitUntil(lambda: window.checking.current)
    canvas, result = window.canvas, window.result
    assert result is not None
    canvas.rain.allow(motion=False)
    canvas.rain.show_result(replace(result, rain=()), Look())
    canvas.finish_painting()
    flag = canvas.flags()[0][0].adjusted(2, 2, -2, -2).toRect()
    strip = QRect(flag.left(), 0, flag.width(), canvas.height())
    dry, bare = canvas.grab(flag).toImage(), canvas.grab(strip).toImage()
    x, top = canvas.camera.place(QPointF(flag.center().x(), 0.0))
    end = canvas.camera.place(QPointF(flag.center().x(), canvas.height()))
    close = [RainRoute(((x, top + up), end), (), RouteEnd.OUTSIDE) for up in range(0, 60, 5)]
    canvas.rain.show_result(replace(result, rain=tuple(close)), Look())
    assert canvas.grab(flag).toImage() == dry
    assert canvas.grab(strip).toImage() != bare
