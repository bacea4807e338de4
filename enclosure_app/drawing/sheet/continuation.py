"""Fills columns with the rows of the table, on the first sheet and on those that continue it."""

from dataclasses import dataclass

from enclosure_app.drawing.marks import Mark
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.sheet.findings_table import HEAD, TableRow, parted, row_marks
from enclosure_app.drawing.sheet.layout import Areas
from enclosure_app.drawing.theme import Theme

_GUTTER = 6.0
_SLACK = 1e-6  # mm, for roundings


@dataclass(frozen=True, slots=True)
class Filled:
    """The marks of one column, and the rows that are still left."""

    marks: tuple[Mark, ...]
    left: tuple[TableRow, ...]


def fill_column(
    left: tuple[TableRow, ...], box: Box, theme: Theme, *, whole: bool = False
) -> Filled:
    """Put as many of the rows as fit into `box`, below the table's head.

    The first is parted where it is too high and its beginning fits. A `whole` column, than which
    none is higher, takes that beginning in any case, so that no row is left for ever.
    """
    if left:
        room = box.height - HEAD
        begun, *rest = parted(left[0], room, theme)
        if whole or begun.height <= room + _SLACK:
            left = (begun, *rest, *left[1:])
    marks: list[Mark] = []
    top, count = box.top - HEAD, 0
    for row in left:
        if top - row.height < box.bottom - _SLACK and not (whole and count == 0):
            break
        marks.extend(row_marks(row, box.left, box.right, top, theme))
        top -= row.height
        count += 1
    return Filled(tuple(marks), left[count:])


def table_columns(place: Areas, width: float) -> tuple[Box, ...]:
    """Return the columns of a continued table to the left of the sheet's own column."""
    left, right = place.heading.left, place.heading.right
    free = Box(left, place.border.bottom + 3.0, right, place.heading.bottom - 2.0)
    count = max(int((free.width + _GUTTER) / (width + _GUTTER)), 1)
    each = (free.width - (count - 1) * _GUTTER) / count
    lefts = [free.left + k * (each + _GUTTER) for k in range(count)]
    return tuple(Box(x, free.bottom, x + each, free.top) for x in lefts)
