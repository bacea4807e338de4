"""Tags say what marks are: cells of tables, some of which head a row or a column."""

from enclosure_app.drawing.marks import Label, tagged
from enclosure_app.drawing.tags import Role, Tag, cell

WORD = Label("word", (0.0, 0.0), 2.5, "black")


def test_a_cell_that_heads_something_is_a_head() -> None:
    assert cell("sums", "1", 2) == Tag(Role.CELL, "sums", "1", 2)
    assert cell("sums", "1", 0, scope="Row").role is Role.HEAD


def test_marks_keep_a_tag_of_their_own() -> None:
    figure, title = Tag(Role.FIGURE, "drawing", words="A wall."), Tag(Role.TITLE, "a")
    (own,) = tagged(title, [WORD])
    assert [mark.tag for mark in tagged(figure, [own, WORD])] == [title, figure]
