"""The place of a stop, large: in the middle, moved by hand, pinched by two fingers."""

from collections.abc import Iterator

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QInputDevice, QPointingDevice
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.walk.place_view import PlaceView
from tests.drawing import eave

LEFT = Qt.MouseButton.LeftButton
MAGENTA = (214, 51, 132)


@pytest.fixture
def view(qtbot: QtBot) -> Iterator[PlaceView]:
    shown = PlaceView()
    qtbot.addWidget(shown)
    shown.resize(500, 400)
    shown.show()
    shown.show_result(eave.result(), Look())
    shown.go_to((160.0, 105.0), (((160.0, 90.0), (160.0, 120.0)),))
    return shown


def middle(view: PlaceView) -> tuple[float, float]:
    return view.camera.place(QPointF(view.width() / 2, view.height() / 2))


def test_the_place_stands_in_the_middle_at_every_size(view: PlaceView) -> None:
    assert middle(view) == pytest.approx((160, 105))
    view.resize(300, 700)
    assert middle(view) == pytest.approx((160, 105))
    assert 300 / view.camera.zoom == pytest.approx(420)  # mm across the narrow side


def test_a_long_lap_is_seen_whole(view: PlaceView) -> None:
    view.go_to((0.0, 0.0), (((0.0, -150.0), (0.0, 150.0)), ((0.0, -100.0), (0.0, 140.0))))
    low = view.camera.seen((0.0, -150.0))
    assert 0 < low.y() < view.height()


def test_the_drawing_is_painted_with_a_ring_round_the_place(view: PlaceView) -> None:
    view.finish_painting()
    image = view.grab().toImage()
    colours = {image.pixelColor(x, 200).getRgb()[:3] for x in range(200, 300)}
    assert MAGENTA in colours
    assert len({image.pixel(x, y) for x in range(0, 500, 5) for y in range(0, 400, 5)}) > 8


def test_the_mouse_moves_the_paper_and_a_double_click_goes_back(
    view: PlaceView, qtbot: QtBot
) -> None:
    qtbot.mousePress(view, LEFT, pos=QPoint(200, 200))
    QTest.mouseMove(view, QPoint(260, 200))
    qtbot.mouseRelease(view, LEFT, pos=QPoint(260, 200))
    assert middle(view)[0] < 160 - 40
    qtbot.mouseDClick(view, LEFT, pos=QPoint(200, 200))
    assert middle(view) == pytest.approx((160, 105))


def test_two_fingers_bring_it_closer_and_one_moves_it(view: PlaceView) -> None:
    screen = QTest.createTouchDevice(QInputDevice.DeviceType.TouchScreen)
    assert isinstance(screen, QPointingDevice)
    before = view.camera.zoom
    QTest.touchEvent(view, screen).press(1, QPoint(200, 200), view).press(
        2, QPoint(300, 200), view
    ).commit()
    QTest.touchEvent(view, screen).move(1, QPoint(150, 200), view).move(
        2, QPoint(350, 200), view
    ).commit()
    QTest.touchEvent(view, screen).release(1, QPoint(150, 200), view).release(
        2, QPoint(350, 200), view
    ).commit()
    assert view.camera.zoom == pytest.approx(2 * before, rel=0.02)
    at = middle(view)
    QTest.touchEvent(view, screen).press(1, QPoint(200, 200), view).commit()
    QTest.touchEvent(view, screen).move(1, QPoint(200, 260), view).commit()
    QTest.touchEvent(view, screen).release(1, QPoint(200, 260), view).commit()
    assert middle(view)[1] - at[1] == pytest.approx(60 / view.camera.zoom, rel=0.05)


def test_without_a_place_the_whole_section_is_seen(view: PlaceView) -> None:
    view.go_nowhere()
    for corner in eave.FRAME:
        dot = view.camera.seen(corner)
        assert 0 <= dot.x() <= view.width()
        assert 0 <= dot.y() <= view.height()
