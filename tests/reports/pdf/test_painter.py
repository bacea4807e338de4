"""The painter paints marks where and as they say."""

from collections.abc import Callable
from pathlib import Path

import pypdfium2
import pytest

from enclosure_app.drawing.marks import Anchor, Fill, Label, Mark, Stroke
from enclosure_app.drawing.theme import Pen
from enclosure_app.reports.pdf.document import write_document
from enclosure_app.reports.pdf.outline import About
from enclosure_app.reports.pdf.pages import PaintedPage

PER_MM = 10.0


class Picture:
    """A page of 60 mm by 40 mm as pixels."""

    def __init__(self, path: Path) -> None:
        with pypdfium2.PdfDocument(path) as document:
            bitmap = document[0].render(scale=PER_MM * 25.4 / 72, draw_annots=False)
            self.pixels = bitmap.to_numpy().copy()

    def dark(self, x: float, y: float) -> bool:
        """Whether the place in sheet mm is dark."""
        row, column = round((40.0 - y) * PER_MM), round(x * PER_MM)
        return int(self.pixels[row, column].mean()) < 128

    def run(self, y: float, start: float, end: float) -> list[bool]:
        return [self.dark(start + k / PER_MM, y) for k in range(int((end - start) * PER_MM))]


Paint = Callable[..., Picture]


@pytest.fixture
def picture(tmp_path: Path, qapp: object) -> Paint:
    def paint(*marks: Mark) -> Picture:
        path = tmp_path / "marks.pdf"
        write_document(path, [PaintedPage(60.0, 40.0, marks)], About(""))
        return Picture(path)

    return paint


def test_a_stroke_is_where_and_as_wide_as_it_says(picture: Paint) -> None:
    seen = picture(Stroke(((10.0, 30.0), (50.0, 30.0)), Pen("#000000", 2.0)))
    assert seen.dark(30.0, 30.8)
    assert seen.dark(30.0, 29.2)
    assert not seen.dark(30.0, 31.3)
    assert not seen.dark(9.5, 30.0)  # blunt ends


def test_dashes_are_as_long_as_they_say(picture: Paint) -> None:
    seen = picture(Stroke(((10.0, 30.0), (50.0, 30.0)), Pen("#000000", 1.0, (4.0, 2.0))))
    dark = seen.run(30.0, 10.0, 50.0)
    assert sum(dark) / len(dark) == pytest.approx(28 / 40, abs=0.03)
    assert seen.dark(12.0, 30.0)
    assert not seen.dark(15.0, 30.0)
    assert seen.dark(18.0, 30.0)


def test_a_hole_in_a_fill_stays_empty_and_later_marks_cover_earlier_ones(picture: Paint) -> None:
    outer = ((10.0, 10.0), (30.0, 10.0), (30.0, 30.0), (10.0, 30.0))
    hole = ((15.0, 15.0), (25.0, 15.0), (25.0, 25.0), (15.0, 25.0))
    cover = ((10.0, 10.0), (13.0, 10.0), (13.0, 13.0), (10.0, 13.0))
    seen = picture(Fill((outer, hole), "#000000"), Fill((cover,), "#ffffff"))
    assert seen.dark(28.0, 20.0)
    assert not seen.dark(20.0, 20.0)
    assert not seen.dark(11.0, 11.0)


def test_a_closed_stroke_comes_back_to_its_start(picture: Paint) -> None:
    seen = picture(
        Stroke(((10.0, 10.0), (30.0, 10.0), (30.0, 30.0)), Pen("#000000", 1.0), closed=True)
    )
    assert seen.dark(20.0, 20.0)


@pytest.mark.parametrize(
    ("anchor", "left", "right"),
    [(Anchor.START, 30, 50), (Anchor.MIDDLE, 24, 36), (Anchor.END, 10, 30)],
)
def test_a_label_stands_on_its_base_line_beside_its_place(
    picture: Paint, anchor: Anchor, left: float, right: float
) -> None:
    seen = picture(Label("HHHH", (30.0, 20.0), 3.5, "#000000", anchor))
    inked = [x for x in range(600) for y in (21.0, 22.0) if seen.dark(x / 10, y)]
    assert left - 0.3 <= min(inked) / 10
    assert max(inked) / 10 <= right + 0.3
    rows = [y / 10 for y in range(150, 300) if any(seen.run(y / 10, 10, 50))]
    assert (min(rows), max(rows)) == pytest.approx((20.0, 23.5), abs=0.2)


def test_a_label_turns_anticlockwise(picture: Paint) -> None:
    seen = picture(Label("HHHHHH", (30.0, 10.0), 3.5, "#000000", angle=90.0))
    assert any(seen.run(20.0, 26.0, 30.5))
    assert not any(seen.run(12.0, 31.0, 50.0))


def test_a_halo_clears_the_ground_around_letters(picture: Paint) -> None:
    ground = Fill((((10.0, 10.0), (50.0, 10.0), (50.0, 30.0), (10.0, 30.0)),), "#000000")
    seen = picture(ground, Label("l", (30.0, 18.0), 3.5, "#000000", halo="#ffffff"))
    assert not all(seen.run(20.0, 29.0, 33.0))
    assert all(seen.run(13.0, 29.0, 33.0))


def test_a_text_with_half_a_letter_is_painted_all_the_same(picture: Paint) -> None:
    """Names in damaged drawings can hold lone surrogates."""
    assert picture(Label("H\udcffH", (30.0, 20.0), 3.5, "#000000")).dark(30.6, 21.0)
