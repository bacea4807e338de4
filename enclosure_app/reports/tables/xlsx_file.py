"""Tables as a workbook (XLSX, ISO/IEC 29500), ready to be filtered and printed."""

import re
from collections.abc import Sequence
from datetime import datetime
from io import BytesIO
from pathlib import Path

from openpyxl import Workbook
from openpyxl.cell.cell import ILLEGAL_CHARACTERS_RE, Cell, MergedCell
from openpyxl.styles import Alignment, Font
from openpyxl.utils import get_column_letter
from openpyxl.worksheet.properties import PageSetupProperties
from openpyxl.worksheet.worksheet import Worksheet

from enclosure_app.files.atomic import write_atomically
from enclosure_app.language import say
from enclosure_app.reports.tables.table import Column, Table, Value

_LONGEST = 32_767  # letters in a cell (ECMA-376)
_NAME = 31  # letters in the name of a sheet
_NOT_IN_A_NAME = re.compile(r"[\[\]:*?/\\]")


def write_xlsx(path: Path, tables: Sequence[Table], about: Sequence[str] = ()) -> None:
    """Write tables as the sheets of one workbook to `path`, whole or not at all.

    `about` are lines for a last sheet: what the tables are of, and what they are not.

    Raises:
        EnclosureError: `path` cannot be written.
    """
    write_atomically(path, xlsx_bytes(tables, about))


def xlsx_bytes(tables: Sequence[Table], about: Sequence[str] = ()) -> bytes:
    """Return tables as the bytes of a workbook.

    Every sheet has a frozen head with filters; lengths are numbers, moments are dates in UTC.
    """
    book = Workbook()
    book.remove(book.worksheets[0])
    for table in tables:
        _fill(book.create_sheet(_sheet_name(table.name)), table)
    if about:
        _tell(book.create_sheet(_sheet_name(say("About this table"))), about)
    stream = BytesIO()
    book.save(stream)
    return stream.getvalue()


def _sheet_name(name: str) -> str:
    return _NOT_IN_A_NAME.sub(" ", name)[:_NAME]


def _fill(sheet: Worksheet, table: Table) -> None:
    rows = ([column.head for column in table.columns], *table.rows)
    for number, row in enumerate(rows, 1):
        for place, (value, column) in enumerate(zip(row, table.columns, strict=True), 1):
            _put(sheet.cell(number, place), value, column, head=number == 1)
    for place, column in enumerate(table.columns, 1):
        sheet.column_dimensions[get_column_letter(place)].width = column.width
    sheet.freeze_panes = "A2"
    last = get_column_letter(len(table.columns))
    sheet.auto_filter.ref = f"A1:{last}{max(len(table.rows) + 1, 2)}"
    _for_paper(sheet)


def _for_paper(sheet: Worksheet) -> None:
    """Let a sheet be printed across, as wide as the paper, its head on every page."""
    sheet.print_title_rows = "1:1"
    sheet.page_setup.orientation = "landscape"
    sheet.page_setup.fitToHeight = 0
    sheet.sheet_properties.pageSetUpPr = PageSetupProperties(fitToPage=True)


def _put(cell: Cell | MergedCell, value: Value, column: Column, *, head: bool) -> None:
    cell.alignment = Alignment(vertical="top", wrap_text=column.width > 12 or head)
    if head:
        cell.font = Font(bold=True)
    if isinstance(value, datetime):
        cell.value = value.replace(tzinfo=None)  # a workbook knows no zones
        cell.number_format = "yyyy-mm-dd hh:mm"
    elif isinstance(value, str):
        cell.value = _text(value)
        cell.data_type = "s"  # words, also where they begin like a formula
    elif value is not None:
        cell.value = value
        if column.decimals is not None:
            cell.number_format = f"0.{'0' * column.decimals}"


def _text(text: str) -> str:
    text = text.encode("utf-16", "surrogatepass").decode("utf-16", "replace")
    return ILLEGAL_CHARACTERS_RE.sub(" ", text)[:_LONGEST]


def _tell(sheet: Worksheet, lines: Sequence[str]) -> None:
    sheet.column_dimensions["A"].width = 100
    for number, line in enumerate(lines, 1):
        cell = sheet.cell(number, 1)
        cell.value = _text(line)
        cell.data_type = "s"
        cell.alignment = Alignment(vertical="top", wrap_text=True)
