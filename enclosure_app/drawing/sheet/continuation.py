"""Fills columns with the rows of the table, on the first sheet and on those that continue it."""

from dataclasses import dataclass

from enclosure_app.drawing.marks import Mark
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.sheet.findings_table import HEAD, TableRow, row_marks
from enclosure_app.drawing.sheet.layout import Areas
from enclosure_app.drawing.theme import Theme

_GUTTER = 6.0


@dataclass(frozen=True, slots=True)
class Filled:
    """The marks of one column, and how many rows went into it."""

    marks: tuple[Mark, ...]
    count: int


def fill_column(left: tuple[TableRow, ...], box: Box, theme: Theme) -> Filled:
    """Put as many of the rows as fit into `box`, below the table's head."""
    marks: list[Mark] = []
    top, count = box.top - HEAD, 0
    for row in left:
        if top - row.height < box.bottom:
            break
        marks.extend(row_marks(row, box.left, box.right, top, theme))
        top -= row.height
        count += 1
    return Filled(tuple(marks), count)


def table_columns(place: Areas, width: float) -> tuple[Box, ...]:
    """Return the columns of a continued table to the left of the sheet's own column."""
    left, right = place.heading.left, place.heading.right
    free = Box(left, place.border.bottom + 3.0, right, place.heading.bottom - 2.0)
    count = max(int((free.width + _GUTTER) / (width + _GUTTER)), 1)
    each = (free.width - (count - 1) * _GUTTER) / count
    lefts = [free.left + k * (each + _GUTTER) for k in range(count)]
    return tuple(Box(x, free.bottom, x + each, free.top) for x in lefts)
