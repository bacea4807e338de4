"""What marks are to whoever has a page read aloud: headings, words, cells of tables, figures."""

from dataclasses import dataclass
from enum import StrEnum


class Role(StrEnum):
    """What a tag says of marks; the values are the standard's own (ISO 32000-1, 14.8.4)."""

    HEADING = "H1"
    TITLE = "H2"
    WORDS = "P"
    HEAD = "TH"
    CELL = "TD"
    FIGURE = "Figure"


@dataclass(frozen=True, slots=True)
class Tag:
    """Marks with equal tags on one page are read as one.

    `name` tells one thing from others of its role; of a cell it is its table's. `row` names the row
    of a cell and `column` counts from 0; what heads a row or a column says so in `scope` ("Row" or
    "Column"). `words` are read instead of a figure.
    """

    role: Role
    name: str = ""
    row: str = ""
    column: int = 0
    scope: str = ""
    words: str = ""


def cell(table: str, row: str, column: int, *, scope: str = "") -> Tag:
    """Return the tag of a cell, which heads a row or a column where it has a `scope`."""
    return Tag(Role.HEAD if scope else Role.CELL, table, row, column, scope)
