"""The one door to PDFium: what opens, what does not and why, and pages as pictures."""

from io import BytesIO

import numpy as np
import pypdf
import pytest

from enclosure_app.errors import EnclosureError
from enclosure_app.files.underlay.pdfium import opened, page_of, rendered
from tests.made_pdf import made_pdf

LINE = "10 w 0 100 m 420 100 l S"


def locked() -> bytes:
    writer = pypdf.PdfWriter(clone_from=BytesIO(made_pdf(LINE)))
    writer.encrypt("secret", algorithm="RC4-128")
    held = BytesIO()
    writer.write(held)
    return held.getvalue()


def no_pages() -> bytes:
    return made_pdf()


@pytest.mark.parametrize(
    ("data", "sentence"),
    [
        (b"", "a.pdf: the file is empty; export or scan the page again."),
        (b"%PDF-1.7 rubbish", "a.pdf: this is no sound PDF, it was cut short or has no pages"),
        (locked(), "a.pdf: this PDF is protected by a password; save a copy without one and"),
        (no_pages(), "a.pdf: this is no sound PDF, it was cut short or has no pages; export"),
    ],
    ids=["empty", "rubbish", "password", "no pages"],
)
def test_what_does_not_open_is_said_in_a_sentence(data: bytes, sentence: str) -> None:
    with pytest.raises(EnclosureError) as caught, opened(data, "a.pdf"):
        pass
    assert str(caught.value).startswith(sentence)
    assert "\n" not in str(caught.value)


def test_a_page_that_is_not_there_is_said() -> None:
    with (
        opened(made_pdf(LINE, LINE), "a.pdf") as document,
        pytest.raises(EnclosureError, match=r"there is no page 3; it has 2, choose one of them"),
        page_of(document, 2, "a.pdf"),
    ):
        pass


def test_a_page_of_no_size_of_a_drawing_is_refused() -> None:
    data = made_pdf(LINE, size=(90_000.0, 90_000.0))
    with (
        opened(data, "a.pdf") as document,
        pytest.raises(EnclosureError, match=r"page 1 is 31.7 m by 31.7 m, which is no size of a"),
        page_of(document, 0, "a.pdf"),
    ):
        pass


def test_a_page_is_rendered_as_dots() -> None:
    picture, part = rendered(made_pdf(LINE), 0, 0.5)
    assert part == (0.0, 0.0, 420.0, 595.0)
    assert picture.shape == (298, 210, 4)
    dark = (picture[:, :, 0] < 128).all(axis=1).nonzero()[0]
    assert [int(row) for row in dark] == list(range(245, 250))  # 100 points up, 10 wide


def test_a_part_of_a_page_is_rendered_alone() -> None:
    picture, part = rendered(made_pdf(LINE), 0, 1.0, (100.0, 80.0, 200.0, 120.0))
    assert picture.shape == (40, 100, 4)
    assert part == (100.0, 80.0, 200.0, 120.0)
    assert [int(row) for row in (picture[:, 0, 0] < 128).nonzero()[0]] == list(range(15, 25))


def test_the_part_that_is_shown_is_told_where_dots_do_not_fit_it() -> None:
    picture, part = rendered(made_pdf(LINE), 0, 0.7, (100.0, 80.0, 200.0, 120.0))
    assert part[0] <= 100 < part[2]
    assert part[1] <= 80
    assert part[3] >= 120
    dark = 255.0 - picture[:, 5, 0]
    rows = part[3] - (np.arange(len(dark)) + 0.5) * (part[3] - part[1]) / len(dark)
    assert (dark * rows).sum() / dark.sum() == pytest.approx(100, abs=0.2)
