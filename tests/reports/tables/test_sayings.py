"""What was said, in the cells of a row: what is not known stays empty, photographs bear their names."""

from dataclasses import replace
from datetime import UTC, datetime

from enclosure_app.model.said.remark import Remark
from enclosure_app.model.said.site_check import Seen, SiteCheck
from enclosure_app.reports.tables.sayings import remarks_cell, said_cells, said_columns
from tests.reports.decided import MENDED, SILL

NAMES = {SILL.key: "IMG_0042.jpg"}


def test_there_is_a_cell_for_each_column() -> None:
    heads = [column.head for column in said_columns("Verdict")]
    assert heads == ["Verdict", "By whom", "When (UTC)", "Remark", "Photographs"]
    moment = datetime(2026, 3, 2, 8, 15, tzinfo=UTC)
    other = MENDED.photographs[1]
    cells = said_cells("Mended", MENDED, NAMES)
    assert cells == ("Mended", "Ida", moment, "=taped, both sides", f"IMG_0042.jpg, {other}")


def test_what_nobody_said_is_empty() -> None:
    assert said_cells("Open", None, NAMES) == ("Open", None, None, None, None)
    bare = SiteCheck("lap:1", Seen.IN_ORDER, "")
    assert said_cells("in order", bare, NAMES) == ("in order", None, None, None, None)
    vague = replace(bare, when="in March")
    assert said_cells("in order", vague, NAMES)[2] == "in March"


def test_remarks_are_lines_with_what_is_known_of_each() -> None:
    said = (
        Remark("gap:1", "Per", "2026-03-02T10:15:00+02:00", "Ask first.", photographs=(SILL.key,)),
        Remark("gap:1", remark="Nobody knows whose."),
        Remark("gap:1", "Ida", photographs=(SILL.key, "unknown")),
    )
    assert remarks_cell(said, NAMES) == (
        "Per, 2026-03-02: Ask first. (IMG_0042.jpg)\n"
        "Nobody knows whose.\n"
        "Ida: (IMG_0042.jpg, unknown)"
    )
    assert remarks_cell((), NAMES) is None
