"""What is a person's own is in force from the start and at once."""

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from enclosure_app.window.main_window import MainWindow
from enclosure_app.window.settings import Settings


def test_the_key_shows_the_preferences(window: MainWindow, qtbot: QtBot) -> None:
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    qtbot.keyClick(window, Qt.Key.Key_Comma, Qt.KeyboardModifier.ControlModifier)
    shown = window.commands.preferring.shown
    assert shown is not None
    assert shown.isVisible()
    assert not shown.isModal()


def test_what_was_set_another_day_is_in_force(qtbot: QtBot, settings: Settings) -> None:
    settings.who, settings.motion, settings.copy_after = "Ida", "off", 60
    window = MainWindow(settings)
    qtbot.addWidget(window)
    assert not window.canvas.rain.allowed
    assert window.findings.advice.verdict.who.text() == "Ida"
    assert window.keeping.copied_after == 60
    window.commands.files.leaving = True
    window.close()


def test_motion_name_and_light_follow_at_once(window: MainWindow, qtbot: QtBot) -> None:
    window.do("preferences")
    shown = window.commands.preferring.shown
    assert shown is not None
    qtbot.keyClick(shown.own.motion, Qt.Key.Key_End)
    assert not window.canvas.rain.allowed
    qtbot.keyClick(shown.own.ground, Qt.Key.Key_End)
    assert window.canvas.overlay.paper.lightness() < 60
    QTest.keyClicks(shown.own.who, "Jon")
    QTest.keyClick(shown.own.who, Qt.Key.Key_Return)
    assert window.findings.advice.verdict.who.text() == "Jon"
    window.show_ground("day")
