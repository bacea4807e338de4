"""Words of a PDF page as notes, against where the page's operators put them."""

import pytest

from enclosure_app.files.underlay.pdfium import POINT_MM, opened, page_of
from enclosure_app.files.underlay.texts import LAYER, page_texts
from enclosure_app.model.section import Text
from tests.made_pdf import made_pdf


def texts(content: str, rotate: int = 0) -> list[Text]:
    data = made_pdf(content, rotate=rotate)
    with opened(data, "") as document, page_of(document, 0, "") as page:
        return list(page_texts(page))


def place(x: float, y: float) -> object:
    return pytest.approx((x * POINT_MM, y * POINT_MM), abs=0.01)


def test_a_note_stands_where_its_base_line_starts_as_high_as_its_capitals() -> None:
    (note,) = texts("BT /F1 12 Tf 100 300 Td (5/8 gyp board) Tj ET")
    assert note.text == "5/8 gyp board"
    assert note.at == place(100, 300)
    assert note.height == pytest.approx(12 * 0.72 * POINT_MM)  # Helvetica's capitals: 0.718
    assert (note.angle, note.layer) == (0.0, LAYER)


def test_a_size_may_come_from_the_matrix() -> None:
    (note,) = texts("BT /F1 1 Tf 12 0 0 12 50 60 Tm (OSB) Tj ET")
    assert note.height == pytest.approx(12 * 0.72 * POINT_MM)


def test_words_far_apart_on_one_line_are_two_notes() -> None:
    found = texts(
        "BT /F1 10 Tf 20 300 Td (Vapor barrier) Tj ET BT /F1 10 Tf 300 300 Td (Roof sheet) Tj ET"
    )
    assert [note.text for note in found] == ["Vapor barrier", "Roof sheet"]
    assert found[1].at == place(300, 300)


def test_a_blank_wider_than_two_letters_parts_notes() -> None:
    found = texts("BT /F1 12 Tf 72 144 Td (INSIDE) Tj ET BT /F1 12 Tf 144 144 Td (Outside) Tj ET")
    assert [note.text for note in found] == ["INSIDE", "Outside"]
    assert [note.text for note in texts("BT /F1 12 Tf 72 144 Td (WWW WWW) Tj ET")] == ["WWW WWW"]


def test_words_set_letter_by_letter_without_blanks_are_one_note() -> None:
    """As many programs write text: each word placed, PDFium finds the blanks and misplaces them."""
    found = texts(
        "BT /F1 1 Tf 12 0 0 12 20 300 Tm (GYPSUM) Tj ET BT /F1 1 Tf 12 0 0 12 80 300 Tm (BOARD) Tj ET "
        "BT /F1 1 Tf 12 0 0 12 20 280 Tm (below) Tj ET"
    )
    assert [note.text for note in found] == ["GYPSUM BOARD", "below"]


def test_words_written_one_by_one_are_one_note() -> None:
    found = texts(
        "BT /F1 10 Tf 20 300 Td (Vapor) Tj ET BT /F1 10 Tf 50 300 Td (barrier) Tj ET "
        "BT /F1 10 Tf 20 280 Td (below) Tj ET"
    )
    assert [note.text for note in found] == ["Vapor barrier", "below"]


def test_a_turned_note_and_a_turned_page() -> None:
    turned = "BT /F1 12 Tf 0 1 -1 0 200 100 Tm (Stud) Tj ET"
    (note,) = texts(turned)
    assert (note.at, note.angle) == (place(200, 100), pytest.approx(90.0))
    (note,) = texts(turned, rotate=90)
    assert (note.at, note.angle) == (place(100, 420 - 200), pytest.approx(0.0, abs=1e-4))


def test_a_page_without_words_has_no_notes() -> None:
    assert texts("0 0 m 9 9 l S") == []
