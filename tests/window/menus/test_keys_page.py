"""The page of keys names every one, as it is written on the person's keyboard."""

import pytest
from PySide6.QtCore import QCoreApplication

from enclosure_app.window.languages import TONGUES, speak_in
from enclosure_app.window.main_window import MainWindow
from enclosure_app.window.menus.action_table import TABLE
from enclosure_app.window.menus.keys_page import keys_html, named


@pytest.mark.usefixtures("qapp")
def test_every_key_of_the_menus_stands_on_the_page() -> None:
    page = keys_html()
    rows = [row for row in TABLE if row.keys]
    assert [row.name for row in rows if f"<b>{named(row.keys)}</b>" not in page] == []
    assert [row.name for row in rows if row.text.replace("'", "&#x27;") not in page] == []


def test_undo_and_redo_have_the_keys_that_the_page_says(window: MainWindow) -> None:
    page = keys_html()
    for name in ("undo", "redo"):
        keys = [each.toString() for each in window.actions_by_name[name].shortcuts()]
        assert f"<b>{named(keys)}</b>" in page


@pytest.mark.usefixtures("qapp")
def test_what_mouse_and_cross_do_is_said_too() -> None:
    page = keys_html()
    for words in ("Wheel", "Middle button, or Space and drag", "Ctrl+Space", "Esc"):
        assert words in page


@pytest.mark.usefixtures("qapp")
def test_the_keys_of_the_walk_stand_on_the_page() -> None:
    page = keys_html().partition("On the walk")[2]
    for keys in ("1, 2, 3, 4", "A", "R", "P", "W", "+, -, 0", "Esc"):
        assert f"<b>{keys}</b>" in page


def test_keys_are_named_in_the_language_of_the_keyboard(qapp: QCoreApplication) -> None:
    english, german = TONGUES
    speak_in(qapp, german)
    try:
        assert named(["Ctrl+Shift+S"]) == "Strg+Umschalt+S"
    finally:
        speak_in(qapp, english)
    assert named(["Ctrl+S", "Del"]) == "Ctrl+S, Del"
