"""A page of a PDF: kept alone and no larger than needed, looking as it did."""

from io import BytesIO

import numpy as np
import pypdf
import pytest
from PIL import Image

from enclosure_app.files.underlay import pdf as underlay_pdf
from enclosure_app.files.underlay.paths import TooManyLinesError
from enclosure_app.files.underlay.pdf import page_names, read_page
from enclosure_app.files.underlay.pdfium import POINT_MM, rendered
from tests.made_pdf import made_pdf

LINE = "3 w 20 30 m 120 30 l S BT /F1 12 Tf 100 300 Td (OSB) Tj ET"
OTHER = "3 w 20 90 m 120 90 l S"


def test_pages_are_called_by_their_labels_or_numbers() -> None:
    data = made_pdf(LINE, OTHER)
    assert page_names(data, "a.pdf") == ("1", "2")
    writer = pypdf.PdfWriter(clone_from=BytesIO(data))
    writer.set_page_label(0, 1, prefix="A-50", style="/D", start=1)
    held = BytesIO()
    writer.write(held)
    assert page_names(held.getvalue(), "a.pdf") == ("A-501", "A-502")


def test_one_page_is_kept_alone_with_its_lines_and_notes() -> None:
    data = made_pdf(*[OTHER] * 40, LINE, rotate=90)
    page = read_page(data, "a.pdf", 40)
    assert (page.kind, page.page, page.size) == ("pdf", 0, (595.0, 420.0))
    assert page.paper_mm == POINT_MM
    assert len(page.data) < len(data) / 4
    assert (rendered(page.data, 0, 1.0)[0] == rendered(data, 40, 1.0)[0]).all()
    assert [len(stroke.points) for stroke in page.lines.strokes] == [2]
    assert [text.text for text in page.lines.texts] == ["OSB"]
    assert page.notes == ()


def test_notes_say_which_side_is_inside() -> None:
    words = "BT /F1 12 Tf 72 144 Td (INSIDE) Tj ET BT /F1 12 Tf 144 144 Td (Outside corner) Tj ET "
    page = read_page(made_pdf(words + "BT /F1 12 Tf 216 72 Td (EXT) Tj ET"), "a.pdf", 0)
    assert page.lines.inside == (pytest.approx((25.4, 50.8), abs=0.01),)
    assert page.lines.outside == (pytest.approx((76.2, 25.4), abs=0.01),)


def test_layers_that_are_off_stay_off() -> None:
    content = "/OC /L0 BDC 9 9 m 99 9 l S EMC /OC /L1 BDC 9 19 m 99 19 l S EMC"
    data = made_pdf(OTHER, content, layers=("Shown", "Off"), hidden=("Off",))
    page = read_page(data, "a.pdf", 1)
    assert [stroke.layer for stroke in page.lines.strokes] == ["Shown"]
    assert (rendered(page.data, page.page, 1.0)[0] == rendered(data, 1, 1.0)[0]).all()


def test_a_heavy_page_with_layers_off_is_kept_as_a_picture(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(underlay_pdf, "_WHOLE", 10)
    content = "/OC /L0 BDC 9 9 m 99 9 l S EMC /OC /L1 BDC 9 19 m 99 19 l S EMC"
    page = read_page(made_pdf(content, layers=("Shown", "Off"), hidden=("Off",)), "a.pdf", 0)
    assert page.kind == "png"
    assert page.size == (1751.0, 2480.0)
    assert page.size[0] * page.paper_mm == pytest.approx(420 * POINT_MM, rel=1e-3)
    image = np.asarray(Image.open(BytesIO(page.data)).convert("L"))
    rows = sorted({int(row) for row in (image < 200).nonzero()[0]})
    assert rows[0] > 2480 - 10.5 / 595 * 2480
    assert page.notes[0].startswith("a.pdf: this page is heavy; it is kept as a picture of 1751")


def test_a_heavy_scan_is_kept_as_a_picture_where_that_is_lighter() -> None:
    noise = np.random.default_rng(3).integers(0, 255, (1200, 1000, 3), dtype=np.uint8)
    held = BytesIO()
    Image.fromarray(noise).resize((2000, 2400), 0).save(held, "PDF", resolution=600, quality=98)
    page = read_page(held.getvalue(), "scan.pdf", 0)
    assert len(held.getvalue()) > 3_000_000
    assert page.kind == "jpeg"
    assert len(page.data) < 0.6 * len(held.getvalue())
    assert page.size[0] * page.paper_mm == pytest.approx(2000 / 600 * 25.4, rel=1e-3)


def test_a_page_with_too_many_lines_is_a_picture_and_says_so(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    def refuse(*_: object) -> None:
        raise TooManyLinesError

    monkeypatch.setattr(underlay_pdf, "page_strokes", refuse)
    page = read_page(made_pdf(LINE), "a.pdf", 0)
    assert page.lines.strokes == ()
    assert page.notes[0].startswith("a.pdf: the page holds more than 200000 lines; it is laid")
