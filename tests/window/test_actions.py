"""The table of actions."""

from collections import Counter

from PySide6.QtGui import QKeySequence

from enclosure_app.window.action_table import TABLE, keys_html
from enclosure_app.window.main_window import MainWindow

MADE = {"undo", "redo", "recent", "samples", "parts", "panels", "languages"}


def test_every_action_has_something_that_does_it(window: MainWindow) -> None:
    names = [row.name for row in TABLE if row.name and row.name not in MADE]
    assert [name for name in names if not callable(window.commands[name])] == []


def test_no_two_actions_share_a_key() -> None:
    keys = Counter(key for row in TABLE for key in row.keys)
    assert [key for key, n in keys.items() if n > 1] == []


def test_every_key_is_one_that_qt_knows(qapp: object) -> None:
    keys = [key for row in TABLE for key in row.keys]
    assert [key for key in keys if QKeySequence(key).isEmpty()] == []


def test_the_page_of_keys_names_every_one() -> None:
    page = keys_html()
    assert [key for row in TABLE for key in row.keys if f"{key}" not in page] == []


def test_undo_names_its_step_in_the_menu(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    sheet.do("tool_inside")
    hand.click((500.0, 500.0))
    assert sheet.actions_by_name["undo"].text() == "Undo Mark inside"
