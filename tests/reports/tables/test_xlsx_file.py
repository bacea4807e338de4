"""A workbook, read back by a small reader of its own XML (ECMA-376) that knows nothing of the writer."""

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from io import BytesIO
from pathlib import Path
from xml.etree import ElementTree as ET
from zipfile import ZipFile

from enclosure_app.reports.tables.findings import findings_table
from enclosure_app.reports.tables.table import Column, Table
from enclosure_app.reports.tables.xlsx_file import write_xlsx, xlsx_bytes
from tests.reports.decided import PHOTOGRAPHS, result

MAIN = "{http://schemas.openxmlformats.org/spreadsheetml/2006/main}"
TABLE = findings_table([result()], PHOTOGRAPHS)


def part(data: bytes, name: str) -> ET.Element:
    with ZipFile(BytesIO(data)) as book:
        assert book.testzip() is None
        return ET.fromstring(book.read(name))  # noqa: S314  our own file


def cells(data: bytes, sheet: int = 1) -> dict[str, tuple[str | float, str]]:
    """Return the value and the kind of every cell of a sheet: ``n`` a number, ``s`` words."""
    found: dict[str, tuple[str | float, str]] = {}
    for cell in part(data, f"xl/worksheets/sheet{sheet}.xml").iter(f"{MAIN}c"):
        assert cell.find(f"{MAIN}f") is None, "words have become a formula"
        value = cell.findtext(f"{MAIN}v")
        if cell.get("t") == "inlineStr":
            text = "".join(each.text or "" for each in cell.iter(f"{MAIN}t"))
            found[cell.attrib["r"]] = (text, "s")
        elif value is not None:
            assert cell.get("t", "n") == "n"
            found[cell.attrib["r"]] = (float(value), "n")
    return found


def test_every_cell_is_read_back_by_another_reader() -> None:
    data = xlsx_bytes([TABLE])
    read = cells(data)
    for column, head in enumerate(TABLE.columns):
        letter = chr(ord("A") + column)
        assert read[f"{letter}1"] == (head.head, "s")
        for row, values in enumerate(TABLE.rows, 2):
            value = values[column]
            if isinstance(value, datetime):
                days = (value - datetime(1899, 12, 30, tzinfo=UTC)) / timedelta(days=1)
                assert abs(float(read[f"{letter}{row}"][0]) - days) < 1e-6
            elif value is None:
                assert f"{letter}{row}" not in read
            else:
                assert read[f"{letter}{row}"][0] == value


def test_words_that_begin_like_a_formula_stay_words() -> None:
    remark = next(v for v, kind in cells(xlsx_bytes([TABLE])).values() if str(v).startswith("="))
    assert remark == "=taped, both sides"


def test_the_head_stays_in_view_and_filters() -> None:
    sheet = part(xlsx_bytes([TABLE]), "xl/worksheets/sheet1.xml")
    pane = next(sheet.iter(f"{MAIN}pane"))
    assert (pane.get("ySplit"), pane.get("topLeftCell"), pane.get("state")) == (
        "1",
        "A2",
        "frozen",
    )
    assert next(sheet.iter(f"{MAIN}autoFilter")).get("ref") == f"A1:T{len(TABLE.rows) + 1}"
    widths = [float(each.attrib["width"]) for each in sheet.iter(f"{MAIN}col")]
    assert len(widths) == len(TABLE.columns)
    assert max(widths) == 60


def test_sheets_bear_the_names_of_their_tables_within_what_is_allowed() -> None:
    long = replace(TABLE, name="Findings: the [north] wall / roof of the boathouse")
    book = part(xlsx_bytes([long], ["Only an aid."]), "xl/workbook.xml")
    names = [each.attrib["name"] for each in book.iter(f"{MAIN}sheet")]
    assert names == [long.name.translate(str.maketrans(":[]/", "    "))[:31], "About this table"]


def test_letters_that_no_workbook_takes_are_left_out() -> None:
    odd = Table("t", (Column("a", 20),), (("bell\x07 and \udce4",), (None,), ("",)))
    assert cells(xlsx_bytes([odd]))["A2"] == ("bell  and \ufffd", "s")


def test_an_empty_table_still_opens(tmp_path: Path) -> None:
    path = tmp_path / "out.xlsx"
    write_xlsx(path, [Table("Findings", (Column("a", 5),), ())], ["Nothing was found."])
    data = path.read_bytes()
    assert cells(data, 2) == {"A1": ("Nothing was found.", "s")}
