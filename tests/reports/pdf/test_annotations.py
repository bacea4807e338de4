"""Findings are real annotations: read with another library than they were written with."""

from dataclasses import replace
from pathlib import Path

import numpy as np
import pypdf
import pytest

from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.sheet.job import SheetJob
from enclosure_app.drawing.sheet.sheet import Page, compose_sheets
from enclosure_app.drawing.theme import Pen, load_theme
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.reports.pdf.document import write_document
from enclosure_app.reports.pdf.notes import Note, PageLink, StateNote, notes_on
from enclosure_app.reports.pdf.outline import About
from enclosure_app.reports.pdf.pages import PaintedPage
from tests.drawing import eave
from tests.reports.rendering import complaints, pictures

pytestmark = pytest.mark.usefixtures("qapp")

JOB = SheetJob(who="M. Ferreira", date="2026-11-25")
NOTE = Note(
    "name", Box(90, 40, 110, 60), (), closed=False, pen=Pen("#ff0080", 0.7), author="Ида",
    subject="gap", contents="30 mm – Lücke\nмм", when="2026-03-02",
)  # fmt: skip
STATE = StateNote("state", "Completed", "Zoë", "2026-03-02T10:15:00+02:00", "Mended by Zoë")


def annotations(
    tmp_path: Path, *notes: Note, links: tuple[PageLink, ...] = ()
) -> list[pypdf.generic.DictionaryObject]:
    path = tmp_path / "notes.pdf"
    write_document(path, [PaintedPage(420, 297, (), notes, links)], About("notes"))
    assert complaints(path) == ""
    listed = pypdf.PdfReader(path).pages[0].get("/Annots", [])
    return [each.get_object() for each in listed]


def mm(points: list[float], height: float = 842.0) -> list[float]:
    """Places of a page 297 mm high in mm, y up; Qt makes its height whole points."""
    down = [float(y) for y in points[1::2]]
    xs = [float(x) * 25.4 / 72 for x in points[::2]]
    ys = [297.0 - (height - y) * 25.4 / 72 for y in down]
    return [each for pair in zip(xs, ys, strict=True) for each in pair]


def test_a_place_is_a_ring_with_all_that_was_said(tmp_path: Path) -> None:
    note, popup = annotations(tmp_path, NOTE)
    assert note["/Subtype"] == "/Circle"
    assert mm(note["/Rect"]) == pytest.approx([90, 40, 110, 60], abs=0.01)
    assert [float(part) for part in note["/RD"]] == pytest.approx([1 / 25.4 * 72] * 4, abs=0.01)
    told = {name: note[f"/{name}"] for name in ("NM", "T", "Subj", "Contents", "M")}
    assert told == {
        "NM": "name", "T": "Ида", "Subj": "gap", "Contents": "30 mm – Lücke\nмм", "M": "D:20260302"
    }  # fmt: skip
    assert note["/CreationDate"] == "D:20260302"
    assert [float(part) for part in note["/C"]] == pytest.approx([1, 0, 128 / 255], abs=1e-3)
    assert float(note["/BS"]["/W"]) == pytest.approx(0.7 / 25.4 * 72, abs=1e-3)
    assert int(note["/F"]) == 4
    assert popup["/Subtype"] == "/Popup"
    assert popup["/Parent"]["/NM"] == "name"
    assert note["/Popup"]["/Parent"]["/NM"] == "name"
    assert not popup["/Open"].value


@pytest.mark.parametrize(
    ("line", "closed", "kind", "where"),
    [
        (((95, 50), (105, 50)), False, "/Line", "/L"),
        (((95, 50), (105, 50), (105, 55)), False, "/PolyLine", "/Vertices"),
        (((95, 50), (105, 50), (105, 55)), True, "/Polygon", "/Vertices"),
    ],
)
def test_a_line_and_an_area_are_what_they_show(
    tmp_path: Path, line: tuple[tuple[float, float], ...], closed: bool, kind: str, where: str
) -> None:
    note, _ = annotations(tmp_path, replace(NOTE, line=line, closed=closed))
    assert note["/Subtype"] == kind
    flat = [each for point in line for each in point]
    assert mm(note[where]) == pytest.approx(flat, abs=0.01)


def test_a_verdict_is_a_state_of_the_review_model(tmp_path: Path) -> None:
    note, _, state = annotations(tmp_path, replace(NOTE, state=STATE))
    assert state["/Subtype"] == "/Text"
    assert state["/IRT"]["/NM"] == note["/NM"]
    told = [str(state[f"/{name}"]) for name in ("StateModel", "State", "T", "Contents", "NM")]
    assert told == ["Review", "Completed", "Zoë", "Mended by Zoë", "state"]
    assert state["/M"] == "D:20260302101500+02'00"
    assert int(state["/F"]) & 2  # hidden on the page


def test_the_window_of_a_note_stays_on_the_page(tmp_path: Path) -> None:
    corner = replace(NOTE, box=Box(410, 1, 419, 9))
    _, popup = annotations(tmp_path, corner)
    left, bottom, right, top = mm(popup["/Rect"])
    assert -0.1 <= left < right <= 410
    assert -0.2 <= bottom < top <= 297


def test_a_link_leads_to_its_page(tmp_path: Path) -> None:
    path = tmp_path / "links.pdf"
    pages = [
        PaintedPage(420, 297, (), (), (PageLink(Box(10, 10, 60, 20), 1),)),
        PaintedPage(420, 297, ()),
    ]
    write_document(path, pages, About("links"))
    reader = pypdf.PdfReader(path)
    (link,) = (each.get_object() for each in reader.pages[0]["/Annots"])
    assert link["/Subtype"] == "/Link"
    assert mm(link["/Rect"]) == pytest.approx([10, 10, 60, 20], abs=0.01)
    target, how = link["/Dest"]
    assert target.get_object() == reader.pages[1].get_object()
    assert how == "/Fit"
    assert "/Annots" not in reader.pages[1]


@pytest.fixture(scope="module")
def sheet(qapp: object, tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, Page]:
    decided = Decision(eave.GAP.key, State.MENDED, "Ida", "2026-03-02T10:15:00+02:00", "Taped.")
    result = eave.result(decisions={eave.GAP.key: decided})
    (page,) = compose_sheets((eave.drawing(result),), JOB, load_theme())
    path = tmp_path_factory.mktemp("sheet") / "sheet.pdf"
    marks, notes = page.numbered(1, 1, load_theme()), notes_on(page, JOB, load_theme())
    write_document(path, [PaintedPage(page.width, page.height, marks, notes)], About("sheet"))
    bare = path.with_name("bare.pdf")
    write_document(bare, [PaintedPage(page.width, page.height, marks)], About("bare"))
    return path, page


def test_every_finding_of_a_sheet_lies_where_its_ring_is_painted(
    sheet: tuple[Path, Page],
) -> None:
    path, page = sheet
    listed = [each.get_object() for each in pypdf.PdfReader(path).pages[0]["/Annots"]]
    found = [each for each in listed if "/IRT" not in each and each["/Subtype"] != "/Popup"]
    kinds = {"gap": "/Line", "no-drip": "/Circle", "reverse-lap": "/Line"}
    assert len(found) == len(page.places) == 6
    for note, place in zip(found, page.places, strict=True):
        left, bottom, right, top = mm(note["/Rect"])
        assert Box(left, bottom, right, top).holds(place.at)
        assert note["/Subtype"] == kinds.get(place.finding.rule, note["/Subtype"])
        if note["/Subtype"] == "/Line":
            assert mm(note["/L"]) == pytest.approx(
                [each for point in place.line for each in point], abs=0.01
            )


def test_annotations_are_switched_with_the_findings(sheet: tuple[Path, Page]) -> None:
    listed = pypdf.PdfReader(sheet[0]).pages[0]["/Annots"]
    assert {each.get_object()["/OC"]["/Name"] for each in listed} == {"Findings"}


def test_annotations_do_not_change_what_is_seen_or_printed(sheet: tuple[Path, Page]) -> None:
    """Poppler paints annotations as a printer would: dot by dot the page is as without them."""
    (whole,) = pictures(sheet[0])
    (bare,) = pictures(sheet[0].with_name("bare.pdf"))
    assert np.array_equal(whole, bare)
