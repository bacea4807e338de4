"""Ruled tables on the cover of a set: columns of words, a row for each thing."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise

from enclosure_app.drawing.marks import Anchor, Label, Mark, Stroke
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.theme import Theme
from enclosure_app.drawing.typeface import shorten, text_width, wrap

ROW = 7.0  # mm, the height of a row
HEAD = 6.0
_LINES, _STEP = 2, 1.6  # small lines in a cell, and their distance in heights of capitals
_AIR = 1.6  # left and right of the words in a cell


@dataclass(frozen=True, slots=True)
class Column:
    """One column: its head, its share of the table's breadth, and whether it holds numbers."""

    head: str
    share: float
    number: bool = False


@dataclass(frozen=True, slots=True)
class Table:
    """A table: its columns and, for each row, as many texts."""

    title: str
    columns: tuple[Column, ...]
    rows: tuple[tuple[str, ...], ...]

    @property
    def height(self) -> float:
        """How high it is, with its title."""
        return _title_height(self) + HEAD + ROW * len(self.rows)


def table_marks(table: Table, box: Box, theme: Theme) -> Iterator[Mark]:
    """Yield a table from the top of `box` down, as wide as the box."""
    if table.title:
        at = (box.left, box.top - theme.medium - 0.6)
        yield Label(table.title, at, theme.medium, theme.ink, bold=True)
    top = box.top - _title_height(table)
    heads = tuple(column.head for column in table.columns)
    yield from _cells(table, heads, Box(box.left, top - HEAD, box.right, top), theme, head=True)
    yield _rule(box, top - HEAD, theme, "table")
    for row, place in zip(table.rows, row_boxes(table, box), strict=True):
        yield from _cells(table, row, place, theme)
        yield _rule(box, place.bottom, theme, "rule")


def column_for(head: str, theme: Theme) -> Column:
    """Return a column of numbers that is as broad as its head."""
    return Column(head, text_width(head, theme.small) + 2 * _AIR, number=True)


def row_boxes(table: Table, box: Box) -> tuple[Box, ...]:
    """Return where the rows of a table stand."""
    top = box.top - _title_height(table) - HEAD
    edges = [top - k * ROW for k in range(len(table.rows) + 1)]
    return tuple(Box(box.left, low, box.right, high) for high, low in pairwise(edges))


def rows_in(height: float, *, title: bool) -> int:
    """Return how many rows of a table fit into a height."""
    return max(int((height - HEAD - (ROW if title else 0.0) + 1e-9) / ROW), 0)


def _title_height(table: Table) -> float:
    return ROW if table.title else 0.0


def _rule(box: Box, y: float, theme: Theme, pen: str) -> Stroke:
    return Stroke(((box.left, y), (box.right, y)), theme.pen(pen))


def _cells(
    table: Table, texts: Sequence[str], box: Box, theme: Theme, *, head: bool = False
) -> Iterator[Label]:
    left = box.left
    whole = sum(column.share for column in table.columns)
    for column, text in zip(table.columns, texts, strict=True):
        right = left + box.width * column.share / whole
        cell = Box(left + _AIR, box.bottom, right - _AIR, box.top)
        yield from _words(text, cell, theme, head=head, number=column.number)
        left = right


def _words(text: str, cell: Box, theme: Theme, *, head: bool, number: bool) -> Iterator[Label]:
    """Yield the words of a cell: smaller and on two lines where they are long, then cut off."""
    size, colour = (theme.small, theme.quiet) if head else (theme.medium, theme.ink)
    lines: tuple[str, ...] = (text,)
    if text_width(text, size) > cell.width:
        size = theme.small
        lines = wrap(text, size, cell.width)
    if len(lines) > _LINES:
        rest = " ".join(lines[_LINES - 1 :])
        lines = (*lines[: _LINES - 1], shorten(rest, size, cell.width))
    step = size * _STEP
    y = (cell.bottom + cell.top - size + (len(lines) - 1) * step) / 2
    anchor, x = (Anchor.END, cell.right) if number else (Anchor.START, cell.left)
    for k, line in enumerate(lines):
        yield Label(line, (x, y - k * step), size, colour, anchor)
