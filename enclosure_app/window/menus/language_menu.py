"""The menu in which a person chooses the window's language."""

from collections.abc import Callable, Mapping

from PySide6.QtCore import QCoreApplication
from PySide6.QtGui import QActionGroup
from PySide6.QtWidgets import QMainWindow, QMenu

from enclosure_app.window.languages import AS_SYSTEM, TONGUES
from enclosure_app.window.settings import Settings

Ask = Callable[[str, Mapping[str, Callable[[], object]]], object]


def made_language_menu(
    window: QMainWindow, settings: Settings, ask: Ask, again: Callable[[], object]
) -> QMenu:
    """Return the menu of languages.

    The one chosen is kept; `ask` says that it comes with the next start and offers `again`, which
    opens the window anew.
    """
    menu = QMenu(say("Language"), window)
    menu.setObjectName("languages")
    group = QActionGroup(menu)

    def choose(code: str) -> None:
        settings.language = code
        told = say("The language changes when the program is started again.")
        ask(told, {say("Start again now"): again})

    for code, name in ((AS_SYSTEM, say("As the system")), *((t.code, t.name) for t in TONGUES)):
        action = menu.addAction(name)
        action.setObjectName(f"language-{code or 'system'}")
        action.setCheckable(True)
        action.setChecked(code == settings.language)
        group.addAction(action)
        action.triggered.connect(lambda _=False, one=code: choose(one))
    return menu


def say(text: str) -> str:
    """Return a text in the window's language."""
    return QCoreApplication.translate("LanguageMenu", text)
