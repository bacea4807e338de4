"""Ruled tables on the cover of a set: columns of words, a row for each thing.

A row is as high as its words need; no word of it is left out. `set_rows` sets the rows of a table
for a breadth, and what is set can be parted and put onto several pages.
"""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import accumulate

from enclosure_app.drawing.marks import Anchor, Label, Mark, Stroke
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.tags import Role, Tag, cell
from enclosure_app.drawing.theme import Theme
from enclosure_app.drawing.typeface import text_width, wrap

ROW = 7.0  # mm, the least height of a row
HEAD = 6.0
_FIRST = 4.75  # from the upper edge of a row down to its first line
_STEP = 1.6  # the distance of lines, in heights of capitals
_BELOW = 1.8  # from the last of several lines to the lower edge
_AIR = 1.6  # left and right of the words in a cell


@dataclass(frozen=True, slots=True)
class Column:
    """One column: its head, its share of the table's breadth, and whether it holds numbers."""

    head: str
    share: float
    number: bool = False


@dataclass(frozen=True, slots=True)
class Table:
    """A table: its columns and, for each row, as many texts; a text may have several lines."""

    title: str
    columns: tuple[Column, ...]
    rows: tuple[tuple[str, ...], ...]


@dataclass(frozen=True, slots=True)
class Cell:
    """The lines of one cell, with capitals `size` mm high."""

    lines: tuple[str, ...]
    size: float


@dataclass(frozen=True, slots=True)
class SetRow:
    """One row as it is set: its cells, and how high it is in mm."""

    cells: tuple[Cell, ...]

    @property
    def height(self) -> float:
        """How high it is: at least `ROW`."""
        return max(ROW, *(_needed(len(cell.lines), cell.size) for cell in self.cells))

    def parted(self, room: float, columns: Sequence[Column]) -> "tuple[SetRow, SetRow | None]":
        """Return as many of its lines as `room` mm hold, and the rest under the same words.

        Numbers stand in the first part only, so that nobody adds them twice.
        """
        if self.height <= room:
            return self, None
        most = max(_lines_in(room, min(cell.size for cell in self.cells)), 1)
        pairs = tuple(zip(self.cells, columns, strict=True))
        first = tuple(replace(cell, lines=cell.lines[:most]) for cell, _ in pairs)
        rest = tuple(replace(cell, lines=_rest(cell, column, most)) for cell, column in pairs)
        return SetRow(first), SetRow(rest)


def _rest(cell: Cell, column: Column, most: int) -> tuple[str, ...]:
    if column.number:
        return ()
    return cell.lines[most:] or cell.lines


def _needed(lines: int, size: float) -> float:
    return _FIRST + (lines - 1) * size * _STEP + _BELOW if lines > 1 else 0.0


def _lines_in(room: float, size: float) -> int:
    return int((room - _FIRST - _BELOW) / (size * _STEP) + 1e-9) + 1


def set_rows(table: Table, width: float, theme: Theme) -> tuple[SetRow, ...]:
    """Return the rows of a table set for a breadth of `width` mm."""
    rooms = [right - left - 2 * _AIR for left, right in _edges(table.columns, 0.0, width)]
    return tuple(
        SetRow(tuple(_cell(text, room, theme) for text, room in zip(row, rooms, strict=True)))
        for row in table.rows
    )


def _cell(text: str, room: float, theme: Theme) -> Cell:
    """Return words as one line, or smaller and on as many as they need."""
    if "\n" not in text and text_width(text, theme.medium) <= room:
        return Cell((text,), theme.medium)
    size = theme.small
    return Cell(tuple(line for part in text.split("\n") for line in wrap(part, size, room)), size)


def table_height(table: Table, rows: Sequence[SetRow]) -> float:
    """Return how high a table is with these rows, with its title and head."""
    return head_height(table) + sum(row.height for row in rows)


def head_height(table: Table) -> float:
    """Return how high the title and the head of a table are."""
    return (ROW if table.title else 0.0) + HEAD


def table_marks(table: Table, rows: Sequence[SetRow], box: Box, theme: Theme) -> Iterator[Mark]:
    """Yield a table with these of its rows from the top of `box` down, as wide as the box."""
    if table.title:
        at = (box.left, box.top - theme.medium - 0.6)
        tag = Tag(Role.TITLE, table.title)
        yield Label(table.title, at, theme.medium, theme.ink, bold=True, tag=tag)
    low = box.top - head_height(table)
    heads = SetRow(tuple(Cell((column.head,), theme.small) for column in table.columns))
    place = Box(box.left, low, box.right, low + HEAD)
    words = _row_marks(table.columns, heads, place, theme.quiet, HEAD / 2 + theme.small / 2)
    yield from _as_cells(table, "", words)
    yield _rule(box, low, theme, "table")
    for k, (row, place) in enumerate(zip(rows, row_boxes(table, rows, box), strict=True), 1):
        words = _row_marks(table.columns, row, place, theme.ink)
        yield from _as_cells(table, str(k), words)
        yield _rule(box, place.bottom, theme, "rule")


def _as_cells(table: Table, row: str, words: Iterable[tuple[int, Label]]) -> Iterator[Label]:
    """Yield the words of a row as cells; the first row heads the columns, the first cell its row."""
    for column, label in words:
        scope = ("" if column else "Row") if row else "Column"
        yield replace(label, tag=cell(table.title, row, column, scope=scope))


def column_for(head: str, theme: Theme) -> Column:
    """Return a column of numbers that is as broad as its head."""
    return Column(head, text_width(head, theme.small) + 2 * _AIR, number=True)


def row_boxes(table: Table, rows: Sequence[SetRow], box: Box) -> tuple[Box, ...]:
    """Return where the rows of a table stand."""
    top, places = box.top - head_height(table), []
    for row in rows:
        places.append(Box(box.left, top - row.height, box.right, top))
        top -= row.height
    return tuple(places)


def shared_out(
    table: Table, rows: Sequence[SetRow], room: float
) -> tuple[tuple[SetRow, ...], tuple[SetRow, ...]]:
    """Return the rows that `room` mm hold below the head of the table, and the rest.

    A row that is higher than the whole room is parted, so that there is always some progress.
    """
    free = room - head_height(table) + 1e-9
    ends = accumulate(row.height for row in rows)
    count = sum(end <= free for end in ends)
    if count or not rows:
        return tuple(rows[:count]), tuple(rows[count:])
    first, rest = rows[0].parted(free, table.columns)
    return (first,), (*((rest,) if rest else ()), *rows[1:])


def _rule(box: Box, y: float, theme: Theme, pen: str) -> Stroke:
    return Stroke(((box.left, y), (box.right, y)), theme.pen(pen))


def _edges(columns: Sequence[Column], left: float, right: float) -> Iterator[tuple[float, float]]:
    """Yield the left and the right edge of each column of a table between two edges."""
    whole, width = sum(column.share for column in columns), right - left
    for column in columns:
        edge = left + width * column.share / whole
        yield left, edge
        left = edge


def _row_marks(
    columns: Sequence[Column], row: SetRow, box: Box, colour: str, first: float = _FIRST
) -> Iterator[tuple[int, Label]]:
    """Yield the words of a row with their columns; the first lines of all cells stand on one line."""
    edges = _edges(columns, box.left, box.right)
    for number, (column, each, (left, right)) in enumerate(
        zip(columns, row.cells, edges, strict=True)
    ):
        anchor, x = (Anchor.END, right - _AIR) if column.number else (Anchor.START, left + _AIR)
        for k, line in enumerate(each.lines):
            y = box.top - first - k * each.size * _STEP
            yield number, Label(line, (x, y), each.size, colour, anchor)
