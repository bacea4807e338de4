"""A table as CSV (RFC 4180), in UTF-8 with a mark at the beginning, so that spreadsheets open it."""

import csv
from datetime import datetime
from io import StringIO
from pathlib import Path

from enclosure_app.files.atomic import write_atomically
from enclosure_app.reports.tables.table import Table, Value

_TAKEN_FOR_A_FORMULA = ("=", "+", "-", "@", "＝", "＋", "－", "＠", "\t", "\r", "\n")


def write_csv(path: Path, table: Table) -> None:
    """Write a table to `path`, whole or not at all.

    Raises:
        EnclosureError: `path` cannot be written.
    """
    write_atomically(path, csv_bytes(table))


def csv_bytes(table: Table) -> bytes:
    """Return a table as the bytes of a CSV file: commas, points in numbers, lines ending in CRLF.

    A text that a spreadsheet would take for a formula has an apostrophe in front of it.
    """
    text = StringIO()
    writer = csv.writer(text, lineterminator="\r\n")
    writer.writerow([column.head for column in table.columns])
    writer.writerows([[_written(value) for value in row] for row in table.rows])
    return text.getvalue().encode("utf-8-sig", "replace")


def _written(value: Value) -> str:
    if value is None:
        return ""
    if isinstance(value, datetime):
        return f"{value:%Y-%m-%d %H:%M}"
    if isinstance(value, float):
        return f"{value:g}" if value == round(value, 3) and abs(value) < 1e5 else repr(value)
    text = str(value)
    return f"'{text}" if text.startswith(_TAKEN_FOR_A_FORMULA) else text
