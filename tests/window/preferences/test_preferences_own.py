"""What is a person's own."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from enclosure_app.window.preferences.preferences_own import OwnPage
from enclosure_app.window.settings import Settings


@pytest.fixture
def page(qtbot: QtBot, settings: Settings) -> OwnPage:
    made = OwnPage(settings)
    qtbot.addWidget(made)
    made.show()
    return made


def test_a_name_is_taken_when_the_line_is_left(
    page: OwnPage, settings: Settings, qtbot: QtBot
) -> None:
    QTest.keyClicks(page.who, "R. Lind")
    with qtbot.waitSignal(page.changed):
        QTest.keyClick(page.who, Qt.Key.Key_Return)
    assert settings.who == "R. Lind"
    with qtbot.assertNotEmitted(page.changed):
        QTest.keyClick(page.who, Qt.Key.Key_Return)


def test_motion_light_and_copies_are_chosen(
    page: OwnPage, settings: Settings, qtbot: QtBot
) -> None:
    for choice in (page.motion, page.ground, page.copies):
        with qtbot.waitSignal(page.changed):
            qtbot.keyClick(choice, Qt.Key.Key_End)
    assert (settings.motion, settings.ground, settings.copy_after) == ("off", "night", 600)


def test_what_was_set_elsewhere_is_shown(page: OwnPage, settings: Settings) -> None:
    settings.who, settings.motion, settings.ground, settings.copy_after = "Ida", "on", "day", 55
    page.show_settings()
    assert page.who.text() == "Ida"
    assert page.motion.currentData() == "on"
    assert page.ground.currentData() == "day"
    assert page.copies.currentText() == "1 min"
