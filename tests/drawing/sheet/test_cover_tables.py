"""Tables on the cover: every word in its cell, and nothing that is longer than its cell."""

import pytest

from enclosure_app.drawing.marks import Anchor, Label, Stroke
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.sheet.cover_tables import (
    ROW,
    Column,
    Table,
    column_for,
    row_boxes,
    rows_in,
    table_marks,
)
from enclosure_app.drawing.theme import load_theme
from enclosure_app.drawing.typeface import text_width

THEME = load_theme()
BOX = Box(10.0, 0.0, 110.0, 100.0)
COLUMNS = (Column("Section", 3.0), Column("faults", 1.0, number=True))
TABLE = Table("Sheets", COLUMNS, (("Eave", "3"), ("Wall base", "–")))


def labels(table: Table) -> dict[str, Label]:
    return {mark.text: mark for mark in table_marks(table, BOX, THEME) if isinstance(mark, Label)}


def test_words_stand_at_the_left_and_numbers_at_the_right_of_their_cells() -> None:
    found = labels(TABLE)
    assert found["Eave"].at[0] == pytest.approx(11.6)
    assert found["3"].anchor is Anchor.END
    assert found["3"].at[0] == found["–"].at[0] == found["faults"].at[0] == pytest.approx(108.4)
    first, second = row_boxes(TABLE, BOX)
    assert first.bottom < found["Eave"].at[1] < first.top
    assert second.bottom < found["Wall base"].at[1] < second.top
    assert first.bottom == second.top


def test_a_table_is_as_high_as_it_says_and_ruled_below_each_row() -> None:
    rules = [mark for mark in table_marks(TABLE, BOX, THEME) if isinstance(mark, Stroke)]
    lowest = min(y for rule in rules for _, y in rule.points)
    assert lowest == pytest.approx(BOX.top - TABLE.height)
    assert len(rules) == 1 + len(TABLE.rows)


@pytest.mark.parametrize("title", ["", "Sheets"])
def test_as_many_rows_fit_as_are_said_to(title: str) -> None:
    count = rows_in(60.0, title=bool(title))
    assert Table(title, COLUMNS, TABLE.rows[:1] * count).height <= 60.0
    assert Table(title, COLUMNS, TABLE.rows[:1] * (count + 1)).height > 60.0
    assert rows_in(3.0, title=False) == 0


def test_long_words_are_set_smaller_then_on_two_lines_and_only_then_cut_off() -> None:
    sentence = (
        "Ida Østby, 2026-03-02; Per Lund, 2026-03-03; M. Ferreira, 2026-03-04; the clerk of works, 2026-03-05; "
        * 2
    )
    for words in (sentence[:44], sentence[:66], sentence):
        told = Table("", COLUMNS, ((words, "1"),))
        lines = [m for m in table_marks(told, BOX, THEME) if isinstance(m, Label)][2:-1]
        assert all(text_width(m.text, m.size) <= 75.0 for m in lines)
        assert len(lines) <= 2
        if words != sentence:
            assert " ".join(m.text for m in lines) == words.strip()
        (cell,) = row_boxes(told, BOX)
        assert all(cell.bottom < m.at[1] and m.at[1] + m.size < cell.top for m in lines)
    assert lines[-1].text.endswith("…")


def test_a_column_of_numbers_is_as_broad_as_its_head() -> None:
    wide, narrow = column_for("continuous", THEME), column_for("open", THEME)
    assert wide.share > narrow.share > text_width("open", THEME.small)
    assert wide.number
    assert 2 * THEME.medium < ROW
