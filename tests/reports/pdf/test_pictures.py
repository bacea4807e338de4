"""Pictures painted on a sheet: at their place, pale, within the frame, with no more dots than of use."""

from io import BytesIO

import pytest
from PIL import Image, ImageDraw
from PySide6.QtGui import QColor, QImage, QPainter

from enclosure_app.drawing.marks import Picture
from enclosure_app.errors import EnclosureError
from enclosure_app.model.underlay import Underlay
from enclosure_app.reports.pdf.pages import ensure_application
from enclosure_app.reports.pdf.painter import MarkPainter
from enclosure_app.reports.pdf.pictures import decoded, image_of_part
from tests.made_pdf import made_pdf

ALL = ((0.0, 0.0), (200.0, 0.0), (200.0, 100.0), (0.0, 100.0))
DOTS = 2.0


def scan(wide: int = 400) -> Underlay:
    """Return a white picture, half as high as wide, whose lower left quarter is black."""
    image = Image.new("L", (wide, wide // 2), 255)
    ImageDraw.Draw(image).rectangle((0, wide // 4, wide // 2, wide // 2), fill=0)
    held = BytesIO()
    image.save(held, "PNG")
    return Underlay("scan.png", "png", held.getvalue(), size=(float(wide), wide / 2))


def page() -> Underlay:
    return Underlay("a.pdf", "pdf", made_pdf("0 0 210 297.5 re f"), size=(420.0, 595.0))


def painted(mark: Picture) -> QImage:
    ensure_application()
    image = QImage(int(200 * DOTS), int(100 * DOTS), QImage.Format.Format_RGB32)
    image.fill(QColor("white"))
    painter = QPainter(image)
    MarkPainter(painter, DOTS, 100.0).paint([mark])
    painter.end()
    return image


def grey(image: QImage, x: float, y: float) -> int:
    """Return the colour at mm of the sheet, from its lower left corner."""
    return QColor(image.pixel(int(x * DOTS), int((100.0 - y) * DOTS))).red()


def test_a_picture_is_pale_the_right_way_up_and_at_its_place() -> None:
    image = painted(Picture(scan(), (20.0, 10.0), 0.2, 0.5, ALL))
    assert grey(image, 40, 20) == pytest.approx(128, abs=2)
    for white in ((80, 20), (40, 40), (15, 20), (40, 8)):
        assert grey(image, *white) == 255


def test_a_page_is_too() -> None:
    image = painted(Picture(page(), (20.0, 10.0), 0.1, 1.0, ALL))
    assert grey(image, 30, 20) == 0
    assert grey(image, 55, 20) == grey(image, 30, 60) == 255


def test_nothing_is_seen_outside_the_ring() -> None:
    ring = ((30.0, 10.0), (50.0, 10.0), (50.0, 100.0), (30.0, 100.0))
    image = painted(Picture(scan(), (20.0, 10.0), 0.2, 1.0, ring))
    assert (grey(image, 25, 20), grey(image, 40, 20), grey(image, 55, 20)) == (255, 0, 255)
    beside = ((150.0, 10.0), (190.0, 10.0), (190.0, 90.0))
    assert grey(painted(Picture(scan(), (20.0, 10.0), 0.2, 1.0, beside)), 40, 20) == 255


def test_a_turned_picture_lies_as_in_the_window() -> None:
    turned = Underlay("scan.png", "png", scan().data, angle=90.0, size=(400.0, 200.0))
    image = painted(Picture(turned, (60.0, 10.0), 0.2, 1.0, ALL))
    assert grey(image, 50, 20) == 0  # the lower left quarter is now at the lower right
    assert grey(image, 50, 80) == grey(image, 30, 20) == 255


def test_no_more_dots_are_painted_than_a_printer_shows() -> None:
    image, part = image_of_part(scan(4000), (0.0, 0.0, 2000.0, 1000.0), 0.1)
    assert image.width() == pytest.approx(200, abs=1)
    assert part[:2] == (0.0, 0.0)
    assert part[2:] == pytest.approx((2000, 1000), abs=2)
    image, part = image_of_part(page(), (0.0, 0.0, 100.0, 100.0), 4.0)
    assert image.width() == pytest.approx(400, abs=2)
    assert part[2:] == pytest.approx((100, 100), abs=0.5)


def test_damage_is_said() -> None:
    with pytest.raises(EnclosureError, match=r"“a.png” in this project is damaged"):
        decoded(Underlay("a.png", "png", b"", size=(9.0, 9.0)))
