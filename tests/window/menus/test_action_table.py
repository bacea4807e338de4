"""The table of actions: what a menu says, its keys, and that each is done by something."""

from collections import Counter
from itertools import pairwise

import pytest
from PySide6.QtGui import QKeySequence

from enclosure_app.window.menus.action_table import TABLE, Row, say

NAMED = [row for row in TABLE if row.name]


def test_no_two_actions_share_a_name_or_a_key() -> None:
    for counted in (
        Counter(row.name for row in NAMED),
        Counter(key for row in TABLE for key in row.keys),
        Counter((row.menu, row.text) for row in TABLE if row.text),
    ):
        assert [each for each, n in counted.items() if n > 1] == []


@pytest.mark.usefixtures("qapp")
def test_every_key_is_one_that_qt_knows() -> None:
    keys = [key for row in TABLE for key in row.keys]
    assert [key for key in keys if QKeySequence(key).isEmpty()] == []


def test_the_rows_of_a_menu_stand_together() -> None:
    menus = [row.menu for row in TABLE]
    changes = sum(a != b for a, b in pairwise(menus))
    assert changes == len(set(menus)) - 1


@pytest.mark.parametrize("row", NAMED, ids=lambda row: row.name)
def test_an_action_that_is_not_made_elsewhere_says_what_it_does(row: Row) -> None:
    if row.keys or row.tip or row.check or row.choice:
        assert row.text
    assert not row.tip.endswith(".")
    assert say(row.text) == row.text  # English, while no other language is spoken


def test_a_line_between_others_is_never_first_last_or_doubled() -> None:
    for menu in dict.fromkeys(row.menu for row in TABLE):
        names = [row.name for row in TABLE if row.menu == menu]
        assert names[0]
        assert names[-1]
        assert ("", "") not in pairwise(names)
