"""A language is chosen in the menu, kept, and comes with the next start."""

from collections.abc import Callable, Mapping
from pathlib import Path

from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QMainWindow
from pytestqt.qtbot import QtBot

from enclosure_app.window.menus.language_menu import made_language_menu
from enclosure_app.window.settings import Settings


def test_the_choice_is_kept_and_the_person_told_when_it_comes(
    qtbot: QtBot, tmp_path: Path
) -> None:
    settings = Settings(QSettings(str(tmp_path / "kept.ini"), QSettings.Format.IniFormat))
    window, asked, again = QMainWindow(), [], []
    qtbot.addWidget(window)

    def ask(sentence: str, answers: Mapping[str, Callable[[], object]]) -> None:
        asked.append((sentence, answers))

    menu = made_language_menu(window, settings, ask, lambda: again.append(1))
    by_name = {action.text(): action for action in menu.actions()}
    assert [action.text() for action in menu.actions() if action.isChecked()] == ["As the system"]
    by_name["Deutsch"].trigger()
    assert settings.language == "de"
    ((sentence, answers),) = asked
    assert sentence == "The language changes when the program is started again."
    answers["Start again now"]()
    assert again == [1]
    anew = made_language_menu(window, settings, ask, lambda: None)
    assert [action.text() for action in anew.actions() if action.isChecked()] == ["Deutsch"]
    by_name["As the system"].trigger()
    assert settings.language == ""
