"""Tables on the cover: every word in its cell, and nothing that is longer than its cell."""

import pytest

from enclosure_app.drawing.marks import Anchor, Label, Stroke
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.sheet.cover_tables import (
    ROW,
    Column,
    SetRow,
    Table,
    column_for,
    row_boxes,
    set_rows,
    shared_out,
    table_height,
    table_marks,
)
from enclosure_app.drawing.theme import load_theme
from enclosure_app.drawing.typeface import text_width

THEME = load_theme()
BOX = Box(10.0, 0.0, 110.0, 100.0)
COLUMNS = (Column("Section", 3.0), Column("faults", 1.0, number=True))
TABLE = Table("Sheets", COLUMNS, (("Eave", "3"), ("Wall base", "–")))


SIGNED = "\n".join(f"Ida Østby the {k}th, 2026-03-02" for k in range(9))


def rows(table: Table, width: float = BOX.width) -> tuple[SetRow, ...]:
    return set_rows(table, width, THEME)


def labels(table: Table) -> dict[str, Label]:
    marks = table_marks(table, rows(table), BOX, THEME)
    return {mark.text: mark for mark in marks if isinstance(mark, Label)}


def test_words_stand_at_the_left_and_numbers_at_the_right_of_their_cells() -> None:
    found = labels(TABLE)
    assert found["Eave"].at[0] == pytest.approx(11.6)
    assert found["3"].anchor is Anchor.END
    assert found["3"].at[0] == found["–"].at[0] == found["faults"].at[0] == pytest.approx(108.4)
    first, second = row_boxes(TABLE, rows(TABLE), BOX)
    assert first.bottom < found["Eave"].at[1] < first.top
    assert second.bottom < found["Wall base"].at[1] < second.top
    assert first.bottom == second.top


def test_a_table_is_as_high_as_it_says_and_ruled_below_each_row() -> None:
    tall = Table("Sheets", COLUMNS, (*TABLE.rows, (SIGNED, "2")))
    marks = list(table_marks(tall, rows(tall), BOX, THEME))
    rules = [mark for mark in marks if isinstance(mark, Stroke)]
    lowest = min(y for rule in rules for _, y in rule.points)
    assert lowest == pytest.approx(BOX.top - table_height(tall, rows(tall)))
    assert len(rules) == 1 + len(tall.rows)


@pytest.mark.parametrize("title", ["", "Sheets"])
def test_as_many_rows_are_put_into_a_room_as_it_holds(title: str) -> None:
    many = Table(title, COLUMNS, TABLE.rows[:1] * 40)
    shown, rest = shared_out(many, rows(many), 60.0)
    assert shown + rest == rows(many)
    assert table_height(many, shown) <= 60.0 < table_height(many, shown) + rest[0].height
    assert shared_out(many, (), 60.0) == ((), ())


def test_a_row_that_no_page_holds_goes_on_on_the_next_under_the_same_words() -> None:
    words = "\n".join(f"Signatory {k}, 2026-03-02" for k in range(80))
    columns = (Column("Section", 2.0), Column("Signed", 2.0), Column("faults", 1.0, number=True))
    table = Table("Sheets", columns, (("Eave", words, "3"), ("Wall", "not signed", "–")))
    left, told, pages = rows(table), list[str](), 0
    while left:
        shown, left = shared_out(table, left, 60.0)
        assert table_height(table, shown) <= 60.0
        first = shown[0].cells
        if first[0].lines == ("Eave",):
            told += first[1].lines
            assert first[2].lines == (("3",) if pages == 0 else ())
        pages += 1
    assert told == words.split("\n")
    assert pages >= 5


def test_long_words_are_set_smaller_and_on_as_many_lines_as_they_need() -> None:
    sentence = (
        "Ida Østby, 2026-03-02; Per Lund, 2026-03-03; M. Ferreira, 2026-03-04; the clerk of works, 2026-03-05; "
        * 2
    )
    for words in (sentence[:44], sentence[:66], sentence, SIGNED):
        told = Table("", COLUMNS, ((words, "1"),))
        found = list(table_marks(told, rows(told), BOX, THEME))
        lines = [m for m in found if isinstance(m, Label)][2:-1]
        assert all(text_width(m.text, m.size) <= 75.0 for m in lines)
        assert " ".join(m.text for m in lines).split() == words.split()
        (cell,) = row_boxes(told, rows(told), BOX)
        assert all(cell.bottom < m.at[1] and m.at[1] + m.size < cell.top for m in lines)


def test_a_column_of_numbers_is_as_broad_as_its_head() -> None:
    wide, narrow = column_for("continuous", THEME), column_for("open", THEME)
    assert wide.share > narrow.share > text_width("open", THEME.small)
    assert wide.number
    assert 2 * THEME.medium < ROW
