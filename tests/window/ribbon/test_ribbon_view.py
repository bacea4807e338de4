"""The ribbon: from the band to the drawing and back."""

from collections.abc import Callable
from math import dist

import pytest
from PySide6.QtCore import QPoint, QPointF, QRect, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from enclosure_app.drawing.ribbon.unrolled import lapped, unrolled
from enclosure_app.model.product import Control
from enclosure_app.window.canvas.ink.look import DOTS
from enclosure_app.window.main_window import MainWindow
from enclosure_app.window.ribbon.ribbon_told import stops
from enclosure_app.window.ribbon.ribbon_view import RibbonView, place_along

Opened = Callable[..., MainWindow]


def test_a_click_in_the_band_goes_to_the_place_in_the_drawing(
    opened: Opened, qtbot: QtBot
) -> None:
    window = opened()
    view = window.ribbon.view
    laid = unrolled(window.result.layers[Control.WATER])
    x = round((6.0 + 0.25 * (view.width() / DOTS - 12.0)) * DOTS)
    with qtbot.waitSignal(view.walked) as told:
        qtbot.mouseClick(view, Qt.MouseButton.LeftButton, pos=QPoint(x, 40))
    place = told.args[0]
    assert dist(place, place_along(laid, 0.25 * laid.length)) < 0.01 * laid.length
    assert window.canvas.camera.centre == place


def test_a_finding_is_shown_in_its_own_band(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    with qtbot.waitSignal(window.ribbon.view.reached) as told:
        window.commands.finding.next_finding()
    assert told.args == [0]


def test_arrows_walk_along_the_layer(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    view = window.ribbon.view
    laid = unrolled(window.result.layers[Control.WATER])
    places = []
    view.walked.connect(places.append)
    for _ in range(3):
        qtbot.keyClick(view, Qt.Key.Key_Right)
    assert dist(places[2], place_along(laid, 0.03 * laid.length)) < 1e-6


def test_a_single_control_has_a_single_band(opened: Opened) -> None:
    window = opened()
    tall = window.ribbon.view.minimumHeight()
    window.place.show_only(Control.VAPOUR)
    assert window.ribbon.view.minimumHeight() < tall / 3


def wheel(view: RibbonView, dot: QPoint, notches: int, keys: Qt.KeyboardModifier) -> QWheelEvent:
    event = QWheelEvent(
        QPointF(dot), QPointF(view.mapToGlobal(dot)), QPoint(0, 0), QPoint(0, 120 * notches),
        Qt.MouseButton.NoButton, keys, Qt.ScrollPhase.NoScrollPhase, False,
    )  # fmt: skip
    QApplication.sendEvent(view, event)
    return event


def test_the_wheel_walks_the_section_and_the_drawing_follows(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    view = window.ribbon.view
    laid = unrolled(window.result.layers[Control.WATER])
    plain = Qt.KeyboardModifier.NoModifier
    qtbot.keyClick(view, Qt.Key.Key_Home)
    for n in range(1, 4):
        assert wheel(view, QPoint(300, 40), -1, plain).isAccepted()
        place = place_along(laid, n * 0.02 * laid.length)
        assert dist(window.canvas.camera.centre, place) < 1e-6
    wheel(view, QPoint(300, 40), 30, plain)  # back, and no further than the beginning
    assert dist(window.canvas.camera.centre, place_along(laid, 0.0)) < 1e-6


def test_the_wheel_with_shift_is_left_to_the_strip(opened: Opened, qtbot: QtBot) -> None:
    view = opened().ribbon.view
    with qtbot.assertNotEmitted(view.walked):
        wheel(view, QPoint(300, 40), -1, Qt.KeyboardModifier.ShiftModifier)


def test_page_keys_leap_from_lap_to_lap(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    view = window.ribbon.view
    water = window.result.layers[Control.WATER]
    laid = unrolled(water)
    places = []
    view.walked.connect(places.append)
    qtbot.keyClick(view, Qt.Key.Key_Home)
    for _ in range(3):
        qtbot.keyClick(view, Qt.Key.Key_PageDown)
    wanted = [place_along(laid, at) for at in stops(water, laid)[:4]]
    assert all(dist(a, b) < 1e-6 for a, b in zip(places, wanted, strict=True))
    qtbot.keyClick(view, Qt.Key.Key_PageUp)
    assert dist(places[-1], wanted[2]) < 1e-6
    qtbot.keyClick(view, Qt.Key.Key_End)
    assert dist(places[-1], place_along(laid, laid.length)) < 1e-6


def test_down_turns_to_the_next_layer_and_brings_it_into_view(
    opened: Opened, qtbot: QtBot
) -> None:
    view = opened().ribbon.view
    qtbot.keyClick(view, Qt.Key.Key_Right)
    with qtbot.waitSignal(view.reached) as told:
        qtbot.keyClick(view, Qt.Key.Key_Down)
    assert told.args == [1]


def test_a_sheet_picked_in_the_drawing_is_marked_in_the_band(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    water = window.result.layers[Control.WATER]
    laid = unrolled(water)
    course = laid.courses[1]
    middle = place_along(laid, (course.start + course.end) / 2)
    with qtbot.waitSignal(window.ribbon.view.reached) as told:
        window.canvas.pointed.emit(middle)
        window.place.pick((course.piece,))
    assert told.args == [0]
    number, along = window.ribbon.view.at
    assert number == 0
    assert abs(along - (course.start + course.end) / 2) < 1e-6


def test_the_mouse_is_told_what_it_is_over(opened: Opened) -> None:
    window = opened()
    view = window.ribbon.view
    water = window.result.layers[Control.WATER]
    laid = unrolled(water)
    lap = lapped(water, laid)[0]
    share = (lap.start + lap.end) / 2 / laid.length
    x = (6.0 + share * (view.width() / DOTS - 12.0)) * DOTS
    assert view.told(QPointF(x, 40)).startswith("Lap of ")
    assert " over " in view.told(QPointF(x, 40))


def test_every_control_has_its_band_where_it_is_drawn(opened: Opened) -> None:
    window = opened()
    assert window.ribbon.view.height() >= 4 * 100


@pytest.mark.parametrize(("room", "bands"), [(768, 0.0), (900, 1.9), (1080, 2.6), (2160, 4.0)])
def test_the_strip_begins_with_one_band_or_with_all_where_there_is_room(
    opened: Opened, room: int, bands: float
) -> None:
    strip = opened().ribbon
    assert strip.wished_height(room) / (25.6 * DOTS) == pytest.approx(bands, abs=0.2)


def test_the_page_fills_its_strip_however_high_it_is(sheet: MainWindow, qtbot: QtBot) -> None:
    for height in (700, 1080):
        sheet.resize(1920, height)
        qtbot.waitUntil(lambda: sheet.ribbon.view.height() == sheet.ribbon.viewport().height())


def test_the_last_picture_is_seen_until_the_new_one_is_whole(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    view = window.ribbon.view
    qtbot.wait(200)  # the window is laid out
    view.finish_painting()
    top = QRect(0, 0, 400, 60)
    before = view.grab(top).toImage()
    window.place.show_only(Control.AIR)
    assert not view.whole
    assert view.grab(top).toImage() == before
    qtbot.waitUntil(lambda: view.whole)  # by itself
    assert view.grab(top).toImage() != before
    window.place.show_only(None)
    qtbot.waitUntil(lambda: view.whole and view.grab(top).toImage() == before)
