"""Columns filled with rows."""

from itertools import pairwise

from enclosure_app.drawing.marks import Flag, Label, points_of
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.sheet.continuation import fill_column, table_columns
from enclosure_app.drawing.sheet.findings_table import HEAD, rows
from enclosure_app.drawing.sheet.job import PAPERS, paper_size
from enclosure_app.drawing.sheet.layout import areas
from enclosure_app.drawing.theme import load_theme
from enclosure_app.model.drawing import Units
from enclosure_app.model.said.decision import Decision, State
from tests.drawing import eave

THEME = load_theme()
RESULT = eave.crowded(12)
NUMBERS = {f.key: i for i, f in enumerate(RESULT.findings, 1)}
ROWS = rows(RESULT.findings, NUMBERS, 90.0, (Units.MM, THEME))


def test_as_many_rows_as_fit_go_in_and_in_their_order() -> None:
    box = Box(0, 0, 90, HEAD + ROWS[0].height * 3.5)
    filled = fill_column(ROWS, box, THEME)
    assert filled.left == ROWS[3:]
    flags = [m for m in filled.marks if isinstance(m, Flag)]
    assert [f.number for f in flags] == [1, 2, 3]
    assert [f.at[1] for f in flags] == sorted((f.at[1] for f in flags), reverse=True)
    assert all(box.holds(p, 1.0) for m in filled.marks for p in points_of(m))


def test_a_column_without_room_stays_empty() -> None:
    filled = fill_column(ROWS, Box(0, 0, 90, HEAD + 1), THEME)
    assert filled.left == ROWS
    assert not filled.marks


def test_a_row_that_is_higher_than_a_column_goes_on_in_the_next_and_loses_no_word() -> None:
    words = [f"word{k}" for k in range(400)]
    first = RESULT.findings[0]
    said = Decision(first.key, State.ACCEPTED, "Ida", "2026-01-02", " ".join(words))
    left = rows((first,), NUMBERS, 90.0, (Units.MM, THEME), {first.key: said})
    box, shown = Box(0, 0, 90, 70), []
    for _ in range(20):
        filled = fill_column(left, box, THEME, whole=True)
        shown += filled.marks
        left = filled.left
        assert all(box.holds(p, 1.0) for m in filled.marks for p in points_of(m))
    assert not left
    told = " ".join(m.text for m in shown if isinstance(m, Label))
    assert [word for word in told.split() if word.startswith("word")] == words


def test_a_column_begins_a_long_row_only_where_its_own_words_fit() -> None:
    first = RESULT.findings[0]
    said = Decision(first.key, State.ACCEPTED, "Ida", "2026-01-02", "A long story. " * 200)
    left = rows((first,), NUMBERS, 90.0, (Units.MM, THEME), {first.key: said})
    own = ROWS[0].height
    assert fill_column(left, Box(0, 0, 90, HEAD + own - 1), THEME).left == left
    filled = fill_column(left, Box(0, 0, 90, HEAD + own + 20), THEME)
    assert filled.marks
    assert 0 < filled.left[0].height < left[0].height


def test_columns_of_a_continued_table_are_at_least_as_wide_and_apart() -> None:
    for paper in PAPERS:
        place = areas(paper_size(paper), 2)
        columns = table_columns(place, place.column.width)
        for column in columns:
            assert column.width >= place.column.width - 1e-6
            assert place.border.holds((column.left, column.bottom))
        for a, b in pairwise(columns):
            assert a.right < b.left
        assert columns[-1].right < place.column.left
