"""A language is chosen in the menu, kept, and comes with the next start."""

from pathlib import Path

from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QMainWindow
from pytestqt.qtbot import QtBot

from enclosure_app.window.language_menu import made_language_menu
from enclosure_app.window.settings import Settings


def test_the_choice_is_kept_and_the_person_told_when_it_comes(
    qtbot: QtBot, tmp_path: Path
) -> None:
    settings = Settings(QSettings(str(tmp_path / "kept.ini"), QSettings.Format.IniFormat))
    window, told = QMainWindow(), []
    qtbot.addWidget(window)
    menu = made_language_menu(window, settings, told.append)
    by_name = {action.text(): action for action in menu.actions()}
    assert [action.text() for action in menu.actions() if action.isChecked()] == ["As the system"]
    by_name["Deutsch"].trigger()
    assert settings.language == "de"
    assert told == ["The language changes when the program is started again."]
    again = made_language_menu(window, settings, told.append)
    assert [action.text() for action in again.actions() if action.isChecked()] == ["Deutsch"]
    by_name["As the system"].trigger()
    assert settings.language == ""
