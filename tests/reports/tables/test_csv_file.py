"""CSV that a spreadsheet opens: read back by Python's reader, byte order mark, no formulas."""

import csv
from datetime import UTC, datetime
from io import StringIO
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.errors import EnclosureError
from enclosure_app.reports.tables.csv_file import csv_bytes, write_csv
from enclosure_app.reports.tables.findings import findings_table
from enclosure_app.reports.tables.table import Column, Table, Value
from tests.reports.decided import PHOTOGRAPHS, result


def read(data: bytes) -> list[list[str]]:
    return list(csv.reader(StringIO(data.decode("utf-8-sig"), newline="")))


def one(value: Value) -> str:
    return read(csv_bytes(Table("t", (Column("a", 5),), ((value,),))))[1:][0][0]


def test_the_findings_are_read_back_cell_by_cell() -> None:
    table = findings_table([result()], PHOTOGRAPHS)
    head, *rows = read(csv_bytes(table))
    assert head == [column.head for column in table.columns]
    assert len(rows) == len(table.rows)
    gap = dict(zip(head, rows[0], strict=True))
    assert gap["What was found"] == table.rows[0][5]
    assert (gap["Measured (mm)"], gap["When (UTC)"]) == ("30", "2026-03-02 08:15")


def test_it_begins_with_the_mark_and_its_lines_end_as_the_standard_says() -> None:
    data = csv_bytes(Table("t", (Column("a", 5), Column("b", 5)), (("x, y", None),)))
    assert data == b'\xef\xbb\xbfa,b\r\n"x, y",\r\n'


@pytest.mark.parametrize(
    ("value", "cell"),
    [
        ("=1+1", "'=1+1"), ("\n=1+1", "'\n=1+1"), ("＝1+1", "'＝1+1"), ("- it stands", "'- it stands"), ("@x", "'@x"), ("plain", "plain"),
        (-12.5, "-12.5"), (3, "3"), (1234567.25, "1234567.25"), (0.0625, "0.0625"), (None, ""),
        (datetime(2026, 3, 2, 8, 15, tzinfo=UTC), "2026-03-02 08:15"),
    ],
)  # fmt: skip
def test_numbers_stay_numbers_and_words_become_no_formula(value: Value, cell: str) -> None:
    assert one(value) == cell


@given(st.text(st.characters(exclude_categories=("Cs",), exclude_characters="\x00")))
def test_any_words_come_back(words: str) -> None:
    assert one(f"a{words}") == f"a{words}"


@given(st.floats(-1e9, 1e9))
def test_numbers_come_back(number: float) -> None:
    assert float(one(number)) == number


def test_a_folder_that_is_not_there_is_told(tmp_path: Path) -> None:
    with pytest.raises(EnclosureError, match="cannot be written"):
        write_csv(tmp_path / "none" / "out.csv", Table("t", (), ()))
    write_csv(tmp_path / "out.csv", Table("t", (Column("a", 5),), ()))
    assert (tmp_path / "out.csv").read_bytes() == b"\xef\xbb\xbfa\r\n"
