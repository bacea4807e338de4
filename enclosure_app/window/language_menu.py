"""The menu in which a person chooses the window's language."""

from collections.abc import Callable

from PySide6.QtCore import QCoreApplication
from PySide6.QtGui import QActionGroup
from PySide6.QtWidgets import QMainWindow, QMenu

from enclosure_app.window.languages import AS_SYSTEM, TONGUES
from enclosure_app.window.settings import Settings


def made_language_menu(
    window: QMainWindow, settings: Settings, tell: Callable[[str], object]
) -> QMenu:
    """Return the menu of languages; the one chosen is kept, and `tell` says when it comes."""
    menu = QMenu(say("Language"), window)
    group = QActionGroup(menu)
    for code, name in ((AS_SYSTEM, say("As the system")), *((t.code, t.name) for t in TONGUES)):
        action = menu.addAction(name)
        action.setObjectName(f"language-{code or 'system'}")
        action.setCheckable(True)
        action.setChecked(code == settings.language)
        group.addAction(action)
        action.triggered.connect(lambda _=False, one=code: _choose(settings, one, tell))
    return menu


def _choose(settings: Settings, code: str, tell: Callable[[str], object]) -> None:
    settings.language = code
    tell(say("The language changes when the program is started again."))


def say(text: str) -> str:
    """Return a text in the window's language."""
    return QCoreApplication.translate("LanguageMenu", text)
