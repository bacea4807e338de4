"""The ribbon: from the band to the drawing and back."""

from collections.abc import Callable
from math import dist

from PySide6.QtCore import QPoint, Qt
from pytestqt.qtbot import QtBot

from enclosure_app.drawing.unrolled import unrolled
from enclosure_app.model.product import Control
from enclosure_app.window.canvas.look import DOTS
from enclosure_app.window.main_window import MainWindow
from enclosure_app.window.ribbon_view import place_along

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
    tall = window.ribbon.view.height()
    window.place.show_only(Control.VAPOUR)
    assert window.ribbon.view.height() < tall / 3
