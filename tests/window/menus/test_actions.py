"""The table of actions."""

from enclosure_app.window.main_window import MainWindow
from enclosure_app.window.menus.action_table import TABLE

MADE = {"undo", "redo", "recent", "samples", "parts", "panels", "languages"}


def test_every_action_has_something_that_does_it(window: MainWindow) -> None:
    names = [row.name for row in TABLE if row.name and row.name not in MADE]
    assert [name for name in names if not callable(window.commands[name])] == []


def test_undo_names_its_step_in_the_menu(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    sheet.do("tool_inside")
    hand.click((500.0, 500.0))
    assert sheet.actions_by_name["undo"].text() == "Undo Mark inside"


def test_tips_name_the_keys_and_teach_the_words_that_stand_in_them(window: MainWindow) -> None:
    tip = window.actions_by_name["tool_sheet"].toolTip().splitlines()
    assert tip[0].endswith("(S)")
    assert any(line.startswith("Sheet: A membrane") for line in tip[1:])
    assert window.actions_by_name["why"].toolTip() == "Why is this a fault?"


def test_only_what_is_allowed_can_be_done_until_all_is_again(window: MainWindow) -> None:
    actions = window.actions_by_name
    actions.allow({"save"})
    assert (actions["save"].isEnabled(), actions["delete"].isEnabled()) == (True, False)
    actions.allow(None)
    assert actions["delete"].isEnabled()
    assert not actions["undo"].isEnabled()
