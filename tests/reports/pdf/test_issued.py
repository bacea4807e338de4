"""A page knows which notes it was issued with; another library can read it."""

from pathlib import Path

import pikepdf
import pypdf
import pytest

from enclosure_app.drawing.sheet.job import SheetJob
from enclosure_app.files.replies.issued import PIECE, issued_on
from enclosure_app.reports.pdf.report import write_sheets
from tests.drawing import eave

pytestmark = pytest.mark.usefixtures("qapp")

FINDINGS = eave.result().findings


@pytest.fixture(scope="module")
def sheet(qapp: object, tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("issued") / "sheet.pdf"
    job = SheetJob(who="M. Ferreira", date="2026-11-25", cover=True)
    write_sheets(path, (eave.drawing(),), job)
    return path


def test_each_finding_is_listed_with_its_number_its_place_and_its_measure(sheet: Path) -> None:
    with pikepdf.open(sheet) as pdf:
        cover, page = pdf.pages
        assert list(issued_on(cover, 1)) == []
        listed = list(issued_on(page, 2))
    assert [each.about.about.key for each in listed] == [finding.key for finding in FINDINGS]
    assert [each.number for each in listed] == list(range(1, len(FINDINGS) + 1))
    assert [each.measured for each in listed] == [finding.measured for finding in FINDINGS]
    assert {each.page for each in listed} == {2}
    notes = pypdf.PdfReader(sheet).pages[1]["/Annots"]
    middles = {
        note["/NM"]: ((x0 + x1) / 2, (y0 + y1) / 2)
        for note in (each.get_object() for each in notes)
        if "/NM" in note
        for x0, y0, x1, y1 in [map(float, note["/Rect"])]
    }
    for each in listed:
        assert each.at == pytest.approx(middles[each.name], abs=0.01)


def test_the_list_stands_where_the_standard_puts_it(sheet: Path) -> None:
    """ISO 32000-1, tables 318 and 319: the data and the page tell when it was put there."""
    page = pypdf.PdfReader(sheet).pages[1]
    kept = page["/PieceInfo"][PIECE]
    assert kept["/LastModified"] == page["/LastModified"] == "D:20261125"
    assert len(kept["/Private"]["/Notes"]) == len(FINDINGS)


@pytest.mark.parametrize(
    "damaged",
    [
        pikepdf.Array([]),
        pikepdf.Dictionary(),
        pikepdf.Dictionary(Private=3),
        pikepdf.Dictionary(Private=pikepdf.Dictionary(Notes=pikepdf.Array([1, None]))),
        pikepdf.Dictionary(
            Private=pikepdf.Dictionary(
                Notes=pikepdf.Array([pikepdf.Dictionary(NM="theirs"), pikepdf.Dictionary()])
            )
        ),
    ],
)
def test_a_damaged_list_is_an_empty_one(damaged: pikepdf.Object) -> None:
    pdf = pikepdf.new()  # a page lives as long as its document
    page = pdf.add_blank_page(page_size=(200, 200))
    page.obj.PieceInfo = pikepdf.Dictionary({PIECE: damaged})
    assert list(issued_on(page, 1)) == []
