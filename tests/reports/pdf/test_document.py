"""A document that is written whole: the same bytes from the same pages, clean, and not too large."""

from pathlib import Path

import pypdf
import pytest

from enclosure_app.drawing.marks import Label, Overlay
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.theme import Pen
from enclosure_app.reports.pdf.document import write_document
from enclosure_app.reports.pdf.notes import Bookmark, Note, PageLink
from enclosure_app.reports.pdf.outline import About
from enclosure_app.reports.pdf.pages import PaintedPage
from tests.reports.rendering import complaints, information, text_of

pytestmark = pytest.mark.usefixtures("qapp")

NOTE = Note(
    "a", Box(10, 10, 20, 20), (), closed=False, pen=Pen("#202020", 0.7), author="Ida",
    subject="gap", contents="A gap – 3 mm.", when="2026-03-02",
)  # fmt: skip


def page(width: float, height: float, text: str, *notes: Note) -> PaintedPage:
    mark = Label(text, (10.0, 10.0), 3.5, "black", overlays=(Overlay.FINDINGS,))
    return PaintedPage(width, height, (mark,), notes, (PageLink(Box(1, 1, 5, 5), 0),))


PAGES = [page(420, 297, "first"), page(297, 210, "second", NOTE)]
ABOUT = About("Two – deux", "Ida Østby", "de", "2026-03-02", 1, (Bookmark("Second", 1),))


def test_pages_may_differ_in_size_and_keep_their_order(tmp_path: Path) -> None:
    write_document(tmp_path / "two.pdf", PAGES, ABOUT)
    pages = pypdf.PdfReader(tmp_path / "two.pdf").pages
    assert [p.extract_text().strip() for p in pages] == ["first", "second"]
    sizes = [(float(p.mediabox.width), float(p.mediabox.height)) for p in pages]
    assert sizes[0] == pytest.approx((420 / 25.4 * 72, 297 / 25.4 * 72), abs=0.6)
    assert sizes[1] == pytest.approx((297 / 25.4 * 72, 210 / 25.4 * 72), abs=0.6)


def test_the_same_pages_give_the_same_bytes(tmp_path: Path) -> None:
    for name in ("one.pdf", "other.pdf"):
        write_document(tmp_path / name, PAGES, ABOUT)
    assert (tmp_path / "one.pdf").read_bytes() == (tmp_path / "other.pdf").read_bytes()


def test_poppler_and_qpdf_are_content(tmp_path: Path) -> None:
    path = tmp_path / "two.pdf"
    write_document(path, PAGES, ABOUT)
    assert complaints(path) == ""
    assert text_of(path) == "first second"
    told = information(path)
    assert told["Title"] == "Two – deux"
    assert told["Author"] == "Ida Østby"
    assert told["Pages"] == "2"
    assert told["CreationDate"].startswith("2026-03-02")


def test_a_place_that_cannot_be_written_is_an_error(tmp_path: Path) -> None:
    with pytest.raises(FileNotFoundError):
        write_document(tmp_path / "missing" / "two.pdf", PAGES, ABOUT)
