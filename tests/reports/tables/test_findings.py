"""Every finding is one row, with what was decided; verdicts without a finding are not lost."""

from dataclasses import replace
from datetime import UTC, datetime

from enclosure_app.model.drawing import Units
from enclosure_app.reports.tables.findings import findings_table, units_of
from enclosure_app.reports.tables.table import Table, Value
from tests.drawing import eave
from tests.reports.decided import GONE, NAMELESS, PHOTOGRAPHS, SILL, result


def by_head(table: Table) -> list[dict[str, Value]]:
    heads = [column.head for column in table.columns]
    assert len(set(heads)) == len(heads)
    return [dict(zip(heads, row, strict=True)) for row in table.rows]


def test_findings_stand_in_walking_order_with_their_figures() -> None:
    rows = by_head(findings_table([eave.drawing()]))
    found = eave.result().findings
    assert [(row["No."], row["Key"]) for row in rows] == [
        (n, f.key) for n, f in enumerate(found, 1)
    ]
    gap = rows[0]
    assert (gap["Severity"], gap["Control"], gap["Rule"]) == ("fault", "air", "gap")
    assert (gap["Measured (mm)"], gap["Required (mm)"]) == (30.0, 0.0)
    assert (gap["x (mm)"], gap["y (mm)"], gap["Drawing"]) == (160.0, 105.0, "boathouse.dxf")
    assert gap["What was found"] == eave.GAP.message
    assert gap["What to do"] == eave.GAP.advice
    assert (gap["Verdict"], gap["By whom"], gap["When (UTC)"]) == ("Open", None, None)


def test_a_verdict_stands_with_who_when_why_and_the_names_of_photographs() -> None:
    gap = by_head(findings_table([result()], PHOTOGRAPHS))[0]
    assert (gap["Verdict"], gap["By whom"]) == ("Mended", "Ida")
    assert gap["When (UTC)"] == datetime(2026, 3, 2, 8, 15, tzinfo=UTC)
    assert gap["Remark"] == "=taped, both sides"
    assert gap["Photographs"] == f"IMG_0042-{SILL.key[:8]}.jpg, photograph-{NAMELESS.key[:8]}.jpg"


def test_a_verdict_whose_finding_is_gone_has_a_row_of_its_own() -> None:
    last = by_head(findings_table([result()]))[-1]
    assert (last["No."], last["Severity"], last["Key"]) == (None, "no longer found", GONE.key)
    assert (last["What was found"], last["Verdict"]) == (GONE.about, "Accepted")


def test_lengths_are_in_the_units_of_the_drawings_or_in_mm_where_these_differ() -> None:
    inches = eave.drawing(units=Units.IN)
    assert units_of([inches, inches]) is Units.IN
    assert units_of([inches, eave.drawing()]) is Units.MM
    assert units_of([]) is Units.MM
    rows = by_head(findings_table([inches]))
    assert rows[0]["Measured (in)"] == round(30 / 25.4, 3)


def test_what_measures_nothing_leaves_its_cells_empty() -> None:
    bare = replace(eave.GAP, control=None, measured=None, required=None, advice="")
    row = by_head(findings_table([eave.drawing(eave.result(findings=(bare,)))]))[0]
    assert (row["Control"], row["Measured (mm)"], row["What to do"]) == (None, None, None)
