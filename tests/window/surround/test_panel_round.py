"""F6 leads round the window: drawing, panels, tools, and back to the drawing."""

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from enclosure_app.window.main_window import MainWindow

Opened = Callable[..., MainWindow]


def part_with_the_keys(window: MainWindow) -> str:
    now = QApplication.focusWidget()
    parts = {"drawing": window.canvas, "tools": window.tools}
    parts |= {dock.objectName(): dock for dock in window.docks}
    return next(
        (name for name, part in parts.items() if part is now or part.isAncestorOf(now)), "none"
    )


def walked(window: MainWindow, qtbot: QtBot, keys: Qt.KeyboardModifier, steps: int) -> list[str]:
    found = []
    for _ in range(steps):
        qtbot.keyClick(QApplication.focusWidget() or window, Qt.Key.Key_F6, keys)
        found.append(part_with_the_keys(window))
    return found


def test_f6_leads_once_round_and_back(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    window.activateWindow()
    window.canvas.setFocus()
    found = walked(window, qtbot, Qt.KeyboardModifier.NoModifier, 5)
    assert sorted(found) == sorted(
        ["drawing", "tools", *(dock.objectName() for dock in window.docks)]
    )
    assert found[-1] == "drawing"


def test_shift_f6_leads_the_other_way(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    window.activateWindow()
    window.canvas.setFocus()
    there = walked(window, qtbot, Qt.KeyboardModifier.NoModifier, 5)
    back = walked(window, qtbot, Qt.KeyboardModifier.ShiftModifier, 5)
    assert back == [*there[-2::-1], there[-1]]


def test_a_hidden_panel_is_left_out(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    window.activateWindow()
    window.canvas.setFocus()
    window.docks[0].hide()
    found = walked(window, qtbot, Qt.KeyboardModifier.NoModifier, 4)
    assert window.docks[0].objectName() not in found
    assert found[-1] == "drawing"
