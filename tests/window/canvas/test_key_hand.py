"""Whoever works by keys reaches the drawing: a cross moves, clicks, holds and asks for the menu."""

from math import dist

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QContextMenuEvent
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from enclosure_app.model.place import Line
from enclosure_app.window.main_window import MainWindow

CTRL, SHIFT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier
KEY = Qt.Key


@pytest.fixture
def keys(sheet: MainWindow, qtbot: QtBot) -> "Keys":
    sheet.activateWindow()
    qtbot.waitUntil(sheet.isActiveWindow)
    sheet.canvas.clearFocus()
    sheet.canvas.setFocus(Qt.FocusReason.TabFocusReason)
    return Keys(sheet, qtbot)


class Keys:
    """Presses keys on the drawing."""

    def __init__(self, window: MainWindow, qtbot: QtBot) -> None:
        self.window, self.canvas, self._qtbot = window, window.canvas, qtbot

    def ctrl(self, key: Qt.Key, times: int = 1, *, shift: bool = False) -> None:
        for _ in range(times):
            self._qtbot.keyClick(self.canvas, key, CTRL | SHIFT if shift else CTRL)

    @property
    def dot(self) -> QPointF:
        dot = self.canvas.key_hand.dot
        assert dot is not None
        return dot


def test_the_cross_starts_in_the_middle_and_moves_by_strides_and_dots(keys: Keys) -> None:
    middle = QPointF(keys.canvas.rect().center())
    keys.ctrl(KEY.Key_Right, 3)
    keys.ctrl(KEY.Key_Up, 2, shift=True)
    assert keys.dot == middle + QPointF(48, -2)
    assert keys.canvas.key_hand.sign.isVisible()


def test_the_cross_stays_on_the_drawing(keys: Keys) -> None:
    keys.ctrl(KEY.Key_Left, 200)
    assert keys.dot.x() == 0


def test_the_status_bar_follows_the_cross(keys: Keys) -> None:
    keys.ctrl(KEY.Key_Right)
    x = keys.canvas.camera.place(keys.dot)[0]
    assert keys.window.views.where.text().startswith(f"x {x:.1f}")


def test_a_sheet_is_drawn_by_keys_alone(keys: Keys, qtbot: QtBot) -> None:
    qtbot.keyClick(keys.canvas, KEY.Key_S)
    assert keys.window.toolbox.name == "sheet"
    start = keys.canvas.camera.place(QPointF(keys.canvas.rect().center()))
    keys.ctrl(KEY.Key_Return)
    keys.ctrl(KEY.Key_Right, 8)
    end = keys.canvas.camera.place(keys.dot)
    keys.ctrl(KEY.Key_Return)
    qtbot.keyClick(keys.canvas, KEY.Key_Return)
    (piece,) = keys.window.document.project.sections[0].pieces
    assert isinstance(piece.shape, Line)
    assert dist(piece.shape.points[0], start) < 1e-6
    assert dist(piece.shape.points[-1], end) < 1e-6


def test_the_frame_is_drawn_by_holding_the_button(keys: Keys, qtbot: QtBot) -> None:
    before = keys.window.document.project.sections[0].frame
    qtbot.keyClick(keys.canvas, KEY.Key_F)
    keys.ctrl(KEY.Key_Space)
    keys.ctrl(KEY.Key_Right, 10)
    keys.ctrl(KEY.Key_Down, 10)
    keys.ctrl(KEY.Key_Space)
    after = keys.window.document.project.sections[0].frame
    assert after != before
    across = max(x for x, _ in after) - min(x for x, _ in after)
    assert across * keys.canvas.camera.zoom == pytest.approx(160)


def test_the_menu_key_asks_for_the_menu_where_the_cross_is(keys: Keys) -> None:
    keys.canvas.asked_menu.disconnect()  # a menu that pops up wants a screen
    asked: list[QPoint] = []
    keys.canvas.asked_menu.connect(lambda at, _pointer: asked.append(at))
    keys.ctrl(KEY.Key_Right)
    middle = keys.canvas.rect().center()
    event = QContextMenuEvent(
        QContextMenuEvent.Reason.Keyboard, middle, keys.canvas.mapToGlobal(middle)
    )
    QApplication.sendEvent(keys.canvas, event)
    assert asked == [keys.canvas.mapToGlobal(keys.dot).toPoint()]


def test_a_ring_shows_that_keys_lead_to_the_drawing_and_a_click_needs_none(
    keys: Keys, qtbot: QtBot
) -> None:
    sign = keys.canvas.key_hand.sign
    assert sign.ring
    keys.canvas.clearFocus()
    assert not sign.ring
    qtbot.mouseClick(keys.canvas, Qt.MouseButton.LeftButton, pos=keys.canvas.rect().center())
    assert not sign.ring


def test_the_cross_goes_when_a_mouse_comes(keys: Keys) -> None:
    keys.ctrl(KEY.Key_Right)
    keys.canvas.key_hand.leave()
    assert keys.canvas.key_hand.dot is None
    keys.canvas.clearFocus()
    assert not keys.canvas.key_hand.sign.isVisible()
