"""The cover says which sheets there are, what was found, decided and signed, and leads there."""

from dataclasses import replace

import pytest

from enclosure_app.drawing.marks import Label, points_of
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.sheet.cover import Cover, compose_cover
from enclosure_app.drawing.sheet.job import PAPERS, SheetJob, border, paper_size
from enclosure_app.drawing.sheet.sheet import Page, compose_sheets
from enclosure_app.drawing.theme import load_theme
from enclosure_app.drawing.typeface import text_width
from enclosure_app.model.report import SectionResult
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.model.said.sign_off import SignOff
from enclosure_app.model.standing.sign_offs import Signed
from tests.drawing import eave

THEME = load_theme()
NAME = eave.section().name
MIDDLE = 286.0  # mm: between the list and the sums on A3
JOB = SheetJob("A3", None, "Boathouse", "B", "M. Ferreira", "2026-11-25", cover=True)


def pages(*sections: SectionResult, job: SheetJob = JOB) -> tuple[Page, ...]:
    drawings = (eave.drawing(*sections), eave.drawing(file="slip.dxf"))
    return compose_sheets(drawings, job, THEME)


def cover(job: SheetJob = JOB, *sections: SectionResult) -> Cover:
    (only,) = compose_cover(pages(*sections, job=job), job, THEME)
    return only


def lines(page: Cover, part: str) -> list[list[str]]:
    """The words of the "list" or of the "sums" at its right, line by line, from left to right."""
    there = [
        m for m in page.marks if isinstance(m, Label) and (m.at[0] < MIDDLE) == (part == "list")
    ]
    found: dict[int, list[Label]] = {}
    for label in there:
        found.setdefault(round(label.at[1] + label.size / 2), []).append(label)
    return [[m.text for m in sorted(row, key=lambda m: m.at[0])] for row in found.values()]


def row(page: Cover, part: str, first: str) -> list[str]:
    """The words of the line that begins with `first`, without it."""
    (found,) = (line for line in lines(page, part) if line[0] == first)
    return found[1:]


def test_it_names_the_project_and_who_issues_what_and_when() -> None:
    said = [text for line in lines(cover(), "list") for text in line]
    assert "Boathouse" in said
    assert (
        "Marked-up sections of the enclosure · 2 sheets · Revision B · issued by M. Ferreira · "
        "2026-11-25" in said
    )
    bare = SheetJob(cover=True)
    told = [text for line in lines(cover(bare), "list") for text in line]
    assert "Marked-up sections of the enclosure" in told
    assert "2 sheets" in told


def test_each_section_has_its_sheets_and_its_counts() -> None:
    decided = {eave.GAP.key: Decision(eave.GAP.key, State.MENDED, "Ida")}
    found = cover(JOB, eave.result(decisions=decided), eave.crowded(60))
    assert row(found, "list", "1")[:8] == [
        "boathouse.dxf",
        NAME,
        "1:20",
        "4",
        "1",
        "1",
        "5",
        "not signed",
    ]
    assert row(found, "list", "2–5")[3:7] == ["20", "20", "20", "60"]
    assert row(found, "list", "6")[:1] == ["slip.dxf"]


def test_layers_and_findings_are_counted_over_the_whole_set() -> None:
    """Two sections: water continuous in both, with two faults and a remark each."""
    found = cover()
    assert row(found, "sums", "Water") == ["2", "–", "–", "–", "4", "–", "2"]
    assert row(found, "sums", "Air") == ["–", "2", "–", "–", "4", "–", "–"]
    assert row(found, "sums", "Vapour") == ["–", "2", "–", "–", "–", "2", "–"]
    assert not any("Heat" in line for line in lines(found, "sums"))
    loose = replace(eave.GAP, key="lap-cycle:x", control=None)
    told = cover(JOB, eave.result(findings=(*eave.result().findings, loose)))
    assert row(told, "sums", "no layer") == ["–", "–", "–", "–", "1", "–", "–"]


def test_verdicts_are_counted() -> None:
    decided = {
        eave.GAP.key: Decision(eave.GAP.key, State.MENDED, "Ida"),
        eave.SHORT.key: Decision(eave.SHORT.key, State.NO_FAULT, "Ida", remark="Measured."),
        "gap:gone": Decision("gap:gone", State.ACCEPTED, "Ida", remark="Gone."),
    }
    found = cover(JOB, eave.result(decisions=decided))
    assert [row(found, "sums", word)[-1] for word in ("Open", "To be mended", "Mended")] == [
        "10",
        "–",
        "1",
    ]
    assert [row(found, "sums", word)[-1] for word in ("Accepted", "Not a fault")] == ["–", "1"]


def test_who_signed_is_said_and_whether_it_still_is_what_was_signed() -> None:
    first = Signed(SignOff("Wall A", "Ida", "2026-03-02T10:00:00+01:00"), changed=False)
    changed = Signed(SignOff("Wall B", "Per", "2026-03-03"), changed=True)
    job = replace(JOB, signed=(("Wall A", first), ("Wall B", changed), ("Elsewhere", first)))
    walls = [eave.result(section=eave.section(name)) for name in ("Wall A", "Wall B")]
    found = cover(job, *walls)
    assert "Ida, 2026-03-02" in row(found, "list", "1")
    assert "Per, 2026-03-03 (changed since)" in row(found, "list", "2")
    assert "not signed" in row(found, "list", "3")
    assert row(found, "sums", "signed off") == ["1"]
    assert row(found, "sums", "signed, then changed") == ["1"]
    assert row(found, "sums", "not signed") == ["1"]


@pytest.mark.parametrize("paper", ["A4", "A3", "A1"])
@pytest.mark.parametrize("count", [1, 4, 12, 40])
def test_nobody_who_signed_is_cut_off_however_many_sections_there_are(
    count: int, paper: str
) -> None:
    """Four names under each section; under the first one forty, with a remark each."""
    (page,) = compose_sheets((eave.drawing(file="slip.dxf"),), JOB, THEME)
    sections = [eave.result(section=eave.section(f"Wall {k}")) for k in range(count)]
    several = [replace(page, section=each) for each in sections]
    given = [
        (f"Wall {k}", SignOff(f"Wall {k}", f"Signatory-{k}-{n}", f"2026-03-{n % 28 + 1:02}", told))
        for k in range(count)
        for n in range(4 if k else 40)
        for told in ("" if k else "with the reveals still open to the weather on the west side",)
    ]
    signed = tuple((name, Signed(each, changed=False)) for name, each in given)
    made = compose_cover(several, replace(JOB, paper=paper, signed=signed), THEME)
    words = [m.text for page in made for m in page.marks if isinstance(m, Label)]
    text = " ".join(words)
    assert not any(word.endswith("…") for word in words)
    for _, each in given:
        assert f"{each.who}, {each.when}" in text
    assert text.count("weather") == 40
    assert {sheet for page in made for _, sheet in page.links} == set(range(count))
    edge = border(paper_size(paper))
    for page in made:
        low = min(y for mark in page.marks for _, y in points_of(mark) if isinstance(mark, Label))
        assert low >= edge.bottom


def test_a_set_of_one_drawing_names_it_above_the_list_and_not_in_each_row() -> None:
    single = compose_sheets((eave.drawing(file="slip.dxf"),), JOB, THEME)
    (found,) = compose_cover(single, JOB, THEME)
    assert row(found, "list", "1")[:2] == [NAME, "1:20"]
    told = " ".join(text for line in lines(found, "list") for text in line)
    assert "enclosure · slip.dxf · 1 sheet" in told
    assert "slip.dxf" not in " ".join(
        text
        for line in lines(
            compose_cover(single, replace(JOB, project="slip.dxf"), THEME)[0], "list"
        )
        for text in line[1:]
    )


def test_every_row_leads_to_the_first_sheet_of_its_section() -> None:
    found = cover(JOB, eave.crowded(60))
    assert [sheet for _, sheet in found.links] == [0, 4]
    for (box, sheet), first in zip(found.links, ("1–4", "5"), strict=True):
        label = next(m for m in found.marks if isinstance(m, Label) and m.text == first)
        assert box.holds(label.at)
        assert first.startswith(str(sheet + 1))


@pytest.mark.parametrize("paper", PAPERS)
def test_nothing_leaves_the_border_and_a_long_list_goes_on(paper: str) -> None:
    job = replace(JOB, paper=paper)
    (page,) = compose_sheets((eave.drawing(file="slip.dxf"),), JOB, THEME)
    several = [replace(page, section=eave.result()) for _ in range(131)]
    made = compose_cover(several, job, THEME)
    edge = border(paper_size(paper))
    assert len(made) > 1
    assert sum(len(page.links) for page in made) == 131
    assert len({sheet for page in made for _, sheet in page.links}) == 131
    for page in made:
        for mark in page.marks:
            assert all(edge.holds(point, 0.01) for point in points_of(mark))
            if isinstance(mark, Label):
                reach = text_width(mark.text, mark.size, bold=mark.bold)
                right = mark.at[0] + (0.0 if mark.anchor.value == "end" else reach)
                assert right <= edge.right
    sums = [m for m in made[0].marks if isinstance(m, Label) and m.text == "not signed"]
    caution = next(
        m for m in made[0].marks if isinstance(m, Label) and m.text.startswith("This sheet is")
    )
    assert min(m.at[1] for m in sums if m.at[0] > caution.at[0] - 5) > caution.at[1] + caution.size
    assert isinstance(made[0].links[0][0], Box)


def test_the_list_is_read_before_the_sums_row_by_row() -> None:
    told = [m.text for m in cover().marks if isinstance(m, Label)]
    assert told.index("Sheets") < told.index("1") < told.index("slip.dxf")
    assert told.index("slip.dxf") < told.index("Sections and findings, by layer")
