"""Pages of a PDF."""

from pathlib import Path

import pypdf
import pytest
from PySide6.QtGui import QGuiApplication

from enclosure_app.drawing.marks import Label
from enclosure_app.reports.pdf_pages import PaintedPage, ensure_application, paint_pages


def page(width: float, height: float, text: str) -> PaintedPage:
    return PaintedPage(width, height, (Label(text, (10.0, 10.0), 3.5, "black"),))


def test_pages_may_differ_in_size_and_keep_their_order(tmp_path: Path, qapp: object) -> None:
    path = tmp_path / "two.pdf"
    paint_pages(path, [page(420, 297, "first"), page(297, 210, "second")], "Title", "Author")
    reader = pypdf.PdfReader(path)
    assert [p.extract_text().strip() for p in reader.pages] == ["first", "second"]
    sizes = [(float(p.mediabox.width), float(p.mediabox.height)) for p in reader.pages]
    assert sizes[0] == pytest.approx((420 / 25.4 * 72, 297 / 25.4 * 72), abs=0.6)
    assert sizes[1] == pytest.approx((297 / 25.4 * 72, 210 / 25.4 * 72), abs=0.6)


def test_a_file_that_cannot_be_opened_is_an_error(tmp_path: Path, qapp: object) -> None:
    with pytest.raises(FileNotFoundError):
        paint_pages(tmp_path / "missing" / "two.pdf", [page(420, 297, "first")], "", "")


def test_the_application_that_runs_is_kept(qapp: QGuiApplication) -> None:
    assert ensure_application() is QGuiApplication.instance()
