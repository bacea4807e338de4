"""The bar of tools: words, reached by keys, and a way to what a narrow window has no room for."""

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QToolButton
from pytestqt.qtbot import QtBot

from enclosure_app.window.main_window import MainWindow

Opened = Callable[..., MainWindow]


def buttons(window: MainWindow) -> dict[str, QToolButton]:
    return {b.text(): b for b in window.tools.findChildren(QToolButton) if b.text()}


def test_a_click_takes_the_tool_and_shows_which_is_in_hand(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    assert buttons(window)["Pick"].isChecked()
    qtbot.mouseClick(buttons(window)["Measure"], Qt.MouseButton.LeftButton)
    assert window.toolbox.name == "measure"
    assert buttons(window)["Measure"].isChecked()
    assert not buttons(window)["Pick"].isChecked()


def test_undo_keeps_its_word_whatever_the_step_is_called(sheet: MainWindow, qtbot: QtBot) -> None:
    button = buttons(sheet)["Undo"]
    assert not button.isEnabled()
    sheet.do("tool_inside")
    qtbot.mouseClick(sheet.canvas, Qt.MouseButton.LeftButton, pos=sheet.canvas.rect().center())
    assert button.isEnabled()
    assert button.text() == "Undo"
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    assert not sheet.document.project.sections[0].inside


def test_a_narrow_window_says_that_there_are_more_tools(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    more = window.tools.findChild(QToolButton, "qt_toolbar_ext_button")
    assert more.accessibleName() == "More tools"
    assert not more.isVisible()
    window.resize(window.minimumSizeHint())
    qtbot.waitUntil(more.isVisible)


def test_no_button_moves_when_another_tool_is_in_hand(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    qtbot.wait(50)  # the bar is laid out
    button = buttons(window)["Undo"]
    before = button.x()
    for tool in ("seal", "cut_short", "points", "run_on", "select"):
        window.do(f"tool_{tool}")
        qtbot.wait(20)
        assert button.x() == before, tool


def test_on_a_screen_at_200_percent_the_bar_closes_up(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    qtbot.wait(50)
    more = window.tools.findChild(QToolButton, "qt_toolbar_ext_button")
    roomy = buttons(window)["Pick"].width()
    window.resize(960, 520)
    qtbot.waitUntil(lambda: buttons(window)["Pick"].width() < roomy)
    qtbot.waitUntil(lambda: not more.isVisible())
    assert buttons(window)["Write PDF"].isVisible()
    window.resize(1366, 768)
    qtbot.waitUntil(lambda: buttons(window)["Pick"].width() == roomy)
