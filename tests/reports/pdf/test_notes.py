"""What the notes of a sheet say, and what the outline leads to."""

from dataclasses import replace

from enclosure_app.drawing.sheet.job import SheetJob
from enclosure_app.drawing.sheet.sheet import Page, compose_sheets
from enclosure_app.drawing.theme import load_theme
from enclosure_app.files.replies.names import About, named
from enclosure_app.model.drawing import Units
from enclosure_app.model.report import DrawingResult
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.reports.pdf.notes import Note, bookmarks, notes_on
from tests.drawing import eave

JOB = SheetJob(project="Boathouse", who="M. Ferreira", date="2026-11-25")
THEME = load_theme()
MENDED = Decision(eave.GAP.key, State.MENDED, "Ida", "2026-03-02T10:15:00+02:00", "Taped.")


def pages(*drawings: DrawingResult) -> tuple[Page, ...]:
    return compose_sheets(drawings or (eave.drawing(),), JOB, THEME)


def notes(drawing: DrawingResult, job: SheetJob = JOB) -> dict[str, Note]:
    (page,) = pages(drawing)
    found = zip(page.places, notes_on(page, job, THEME), strict=True)
    return {place.finding.key: note for place, note in found}


def test_a_note_says_what_was_measured_against_what_and_what_to_do() -> None:
    note = notes(eave.drawing())[eave.SHORT.key]
    assert note.contents.splitlines() == [
        "The wall sheet laps only 60 mm over the base flashing, 100 mm is required.",
        "Measured 60 mm, required 100 mm.",
        "To do: Bring the wall sheet 40 mm further down over the flashing.",
        "Figure from: Rule book: wall sheets, vertical face (unconfirmed)",
    ]
    assert (note.subject, note.author, note.when) == ("short lap", "M. Ferreira", "2026-11-25")
    assert note.state is None


def test_lengths_are_in_the_units_of_the_drawing() -> None:
    note = notes(eave.drawing(units=Units.IN))[eave.SHORT.key]
    assert 'Measured 2 3/8", required 3 15/16".' in note.contents


def test_where_nothing_is_measured_nothing_is_said_of_it() -> None:
    assert "easured" not in notes(eave.drawing())[eave.UNSEALED.key].contents
    only = replace(eave.GAP, required=None)
    told = notes(eave.drawing(eave.result(findings=(only,))))[only.key].contents
    assert "\nMeasured 30 mm.\n" in told


def test_a_verdict_is_in_the_note_and_is_a_state_of_its_own() -> None:
    result = eave.result(decisions={eave.GAP.key: MENDED})
    note = notes(eave.drawing(result))[eave.GAP.key]
    assert note.contents.endswith("Verdict: Mended by Ida, 2026-03-02: Taped.")
    assert note.state is not None
    assert (note.state.state, note.state.who) == ("Completed", "Ida")
    assert note.state.when == MENDED.when
    assert note.state.contents == "Mended by Ida, 2026-03-02: Taped."


def test_an_undecided_finding_has_no_state() -> None:
    opened = Decision(eave.GAP.key, State.OPEN)
    result = eave.result(decisions={eave.GAP.key: opened})
    note = notes(eave.drawing(result))[eave.GAP.key]
    assert note.state is None
    assert "Verdict" not in note.contents


def test_a_name_leads_back_to_the_finding_and_tells_no_folder() -> None:
    drawing = eave.drawing(file="C:/site/north/boathouse.dxf")
    for key, note in notes(drawing, replace(JOB, drawn="4f")).items():
        told = named(note.name)
        assert told is not None
        assert told.about == About("boathouse.dxf", eave.section().name, key, "4f")
        assert told.said(note.contents)


def test_without_a_name_the_program_is_the_author() -> None:
    note = notes(eave.drawing(), replace(JOB, who=""))[eave.GAP.key]
    assert note.author == "Enclosure continuity check"


def test_a_section_on_several_sheets_has_one_bookmark_with_all_its_findings() -> None:
    several = pages(eave.drawing(eave.crowded(120)))
    cover, mark = bookmarks(several, 2)
    assert (cover.title, cover.page) == ("Cover", 0)
    assert mark.title == eave.section().name
    assert mark.page == 2
    assert [each.title.split()[0] for each in mark.below] == [str(n) for n in range(1, 121)]
    assert {each.page for each in mark.below} == {
        number for number, page in enumerate(several, 2) if page.places
    }


def test_sections_of_several_drawings_are_told_apart() -> None:
    found = bookmarks(pages(eave.drawing(file="a.dxf"), eave.drawing(file="b.dxf")))
    name = eave.section().name
    assert [mark.title for mark in found] == [f"a.dxf – {name}", f"b.dxf – {name}"]
    gap = found[0].below[1]
    assert gap.title == "2  Fault · short lap, water"
    assert gap.box is not None
