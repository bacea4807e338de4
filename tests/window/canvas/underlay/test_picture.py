"""Dots of an underlay: in several sizes, turned over by night unless it is a photograph."""

from io import BytesIO

import numpy as np
import pytest
from PIL import Image, ImageDraw
from PySide6.QtGui import QColor, QImage

from enclosure_app.errors import EnclosureError
from enclosure_app.model.underlay import Underlay
from enclosure_app.window.canvas.underlay import picture
from enclosure_app.window.canvas.underlay.picture import dots_of, dots_of_part
from tests.made_pdf import made_pdf


def scan(ground: str = "white", ink: str = "black", wide: int = 2000) -> Underlay:
    image = Image.new("RGB", (wide, wide // 2), ground)
    ImageDraw.Draw(image).rectangle((0, 0, wide // 4, wide // 4), fill=ink)
    held = BytesIO()
    image.save(held, "PNG")
    return Underlay("scan.png", "png", held.getvalue(), size=(float(wide), wide / 2))


def page(content: str) -> Underlay:
    return Underlay("a.pdf", "pdf", made_pdf(content), size=(420.0, 595.0))


def colour(image: QImage, x: float, y: float) -> tuple[int, int, int]:
    """Return the colour at shares of the width and height, from the upper left."""
    at = QColor(image.pixel(int(x * image.width()), int(y * image.height())))
    return (at.red(), at.green(), at.blue())


def test_every_size_is_half_the_one_before_and_shows_the_same() -> None:
    dots = dots_of(scan(), dark=False)
    assert [size.width() for size in dots.sizes] == [2000, 1000, 500]
    for size in dots.sizes:
        assert size.height() * 2 == size.width()
        assert colour(size, 0.1, 0.1) == (0, 0, 0)
        assert colour(size, 0.9, 0.9) == (255, 255, 255)
    assert dots.part == (0, 0, 2000, 1000)
    assert dots.finest == 1.0


@pytest.mark.parametrize(("wanted", "wide"), [(2.0, 2000), (0.6, 2000), (0.5, 1000), (0.01, 500)])
def test_the_smallest_size_that_is_fine_enough_is_taken(wanted: float, wide: int) -> None:
    assert dots_of(scan(), dark=False).for_dots(wanted).width() == wide


def test_by_night_a_drawing_is_turned_over_and_hues_stay() -> None:
    dots = dots_of(scan(ink=(0, 0, 160)), dark=True)
    assert dots.turned_over
    assert colour(dots.sizes[0], 0.9, 0.9) == (0, 0, 0)
    assert colour(dots.sizes[0], 0.1, 0.1) == (95, 95, 255)  # dark blue becomes light blue


def test_by_night_a_dark_photograph_stays_as_it_is() -> None:
    dots = dots_of(scan(ground="#334455"), dark=True)
    assert not dots.turned_over
    assert colour(dots.sizes[0], 0.9, 0.9) == (0x33, 0x44, 0x55)


def test_a_page_is_rendered_at_three_hundred_to_the_inch(monkeypatch: pytest.MonkeyPatch) -> None:
    dots = dots_of(page("1 0 0 rg 0 0 100 100 re f"), dark=False)
    assert dots.finest == pytest.approx(300 / 72, rel=1e-3)
    assert colour(dots.sizes[0], 0.1, 0.95) == (255, 0, 0)
    monkeypatch.setattr(picture, "_MOST", 250_000)
    small = dots_of(page(""), dark=False).sizes[0]
    assert small.width() * small.height() == pytest.approx(250_000, rel=0.01)


def test_a_huge_scan_is_shown_with_fewer_dots(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(picture, "_MOST", 500_000)
    dots = dots_of(scan(), dark=False)
    assert dots.sizes[0].width() == 1000
    assert dots.finest == 0.5


def test_a_part_is_as_fine_as_wanted_and_says_what_it_shows() -> None:
    dots = dots_of_part(page("1 0 0 rg 0 0 100 100 re f"), (90, 90, 110, 110), 20.0, over=True)
    (image,) = dots.sizes
    assert dots.part[0] <= 90
    assert dots.part[3] >= 110
    assert dots.finest == pytest.approx(20.0, rel=1e-3)
    bits = np.frombuffer(image.constBits(), dtype=np.uint8).reshape(image.height(), -1, 4)
    red = (bits[:, :, 2] > 200) & (bits[:, :, 1] < 100)
    assert red[-5, : image.width() // 2 - 5].all()
    assert not red[:, image.width() // 2 + 5 :].any()


def test_what_is_damaged_is_said() -> None:
    with pytest.raises(EnclosureError, match=r"“a.png” in this project is damaged: remove it"):
        dots_of(Underlay("a.png", "png", b"no picture", size=(9.0, 9.0)), dark=False)
