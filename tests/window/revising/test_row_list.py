"""The list is as long as the filters let it be."""

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.planning.revision import Fate, LookedAt, LookMatch
from enclosure_app.window.revising.row_list import RowFilters, RowList
from enclosure_app.window.revising.rows import rows_of
from tests.window.revising.walls_laid import laid

ROWS = rows_of(laid())


@pytest.fixture
def shown(qtbot: QtBot) -> tuple[RowFilters, RowList]:
    filters, listed = RowFilters(), RowList()
    for each in (filters, listed):
        qtbot.addWidget(each)
        each.show()
    filters.show_rows(ROWS)
    filters.changed.connect(lambda: listed.fill(ROWS, filters, {}))
    listed.fill(ROWS, filters, {})
    return filters, listed


def test_only_what_something_was_said_of(shown: tuple[RowFilters, RowList], qtbot: QtBot) -> None:
    filters, listed = shown
    assert listed.count() == len(ROWS)
    assert listed.shown is ROWS[0]
    qtbot.keyClick(filters.spoken, Qt.Key.Key_Space)
    assert listed.count() == 1
    assert listed.item(0).text().startswith("Not sure, please look · Wall · To be mended · Ida\n")


def test_what_is_left_out_for_lack_of_words_comes_back_with_other_rows(
    shown: tuple[RowFilters, RowList], qtbot: QtBot
) -> None:
    filters, listed = shown
    qtbot.keyClick(filters.spoken, Qt.Key.Key_Space)
    wordless = tuple(row for row in ROWS if not row.said)
    filters.show_rows(wordless)
    listed.fill(wordless, filters, {})
    assert not filters.spoken.isVisible()
    assert listed.count() == len(wordless) > 0


def test_each_fate_is_left_out_by_its_button(
    shown: tuple[RowFilters, RowList], qtbot: QtBot
) -> None:
    filters, listed = shown
    qtbot.keyClick(filters.fates[Fate.STILL_THERE], Qt.Key.Key_Space)
    assert listed.count() == sum(row.match.fate is not Fate.STILL_THERE for row in ROWS)


def test_what_the_person_answered_is_told(shown: tuple[RowFilters, RowList]) -> None:
    _, listed = shown
    assert "You say: it is gone" in listed.words(ROWS[0], "")
    assert "You say: it is found again" in listed.words(ROWS[0], ROWS[0].match.asked[0])
    assert "You say" not in listed.words(ROWS[0], None)
    place = LookedAt("lap:1", "Wall", (0.0, 0.0), "Sheet over sheet", (), ("lap:1:wide",))
    look = replace(ROWS[0], match=LookMatch(Fate.NOT_SURE, place, None))
    assert "You say: it is to be looked at again" in listed.words(look, "")
