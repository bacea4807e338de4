"""Paints pictures that lie under a section, and makes images of them; pale by their own colours.

No more is painted than is seen, with no more dots than a printer shows: a page of a PDF is rendered
for the sheet, a photograph made smaller.
"""

from math import sqrt

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QImage, QPainter, QPainterPath, QPolygonF, QTransform

from enclosure_app.drawing.marks import Picture
from enclosure_app.errors import EnclosureError
from enclosure_app.files.underlay.pdfium import Part, rendered
from enclosure_app.language import say
from enclosure_app.model.underlay import Underlay

_FINEST = 300 / 25.4  # dots for a mm of the sheet
_MOST = 12_000_000  # dots of one picture


def paint_picture(
    painter: QPainter, mark: Picture, at: QPointF, dots: float, within: QPolygonF
) -> None:
    """Paint a picture on a sheet.

    Args:
        painter: What paints the sheet.
        mark: The picture.
        at: Where its lower left corner stands, in dots of the device.
        dots: How many dots of the device are one mm.
        within: The ring within which it is seen, in dots of the device.
    """
    onto = QTransform()
    onto.translate(at.x(), at.y())
    onto.rotate(-mark.underlay.angle)
    onto.scale(mark.pixel * dots, -mark.pixel * dots)
    seen = _seen(mark.underlay, onto, within)
    if seen is None:
        return
    image, part = image_of_part(mark.underlay, seen, mark.pixel * _FINEST)
    clip = QPainterPath()
    clip.addPolygon(within)
    clip.closeSubpath()
    painter.save()
    painter.setClipPath(clip)
    painter.setTransform(onto, combine=True)
    painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
    left, bottom, right, top = part
    painter.translate(left, top)
    painter.scale(1.0, -1.0)
    painter.drawImage(QRectF(0, 0, right - left, top - bottom), _paled(image, mark.share))
    painter.restore()


def image_of_part(underlay: Underlay, seen: Part, fine: float) -> tuple[QImage, Part]:
    """Return an image of a part of an underlay, and exactly which part it shows.

    Args:
        underlay: The picture or page.
        seen: What of it is wanted, in its pixels.
        fine: How many dots are wanted for one pixel.

    Raises:
        EnclosureError: its bytes are no picture.
    """
    area = (seen[2] - seen[0]) * (seen[3] - seen[1])
    fine = min(fine, sqrt(_MOST / area))
    if underlay.kind == "pdf":
        picture, part = rendered(underlay.data, underlay.page, fine, seen)
        return image_of(picture), part
    return _cut(decoded(underlay), underlay, seen, fine)


def decoded(underlay: Underlay) -> QImage:
    """Return the image that a picture's bytes hold, as RGB.

    Raises:
        EnclosureError: they hold none.
    """
    image = QImage.fromData(underlay.data)
    if image.isNull():
        raise EnclosureError(
            say(
                "The picture “{name}” in this project is damaged: remove it, and lay it in again.",
                name=underlay.name,
            )
        )
    return image.convertToFormat(QImage.Format.Format_RGB32)


def image_of(picture: "NDArray[np.uint8]") -> QImage:
    """Return dots of the shape (height, width, 4) as an image that holds them itself."""
    rows, columns = picture.shape[:2]
    held = np.ascontiguousarray(picture)
    return QImage(held.data, columns, rows, columns * 4, QImage.Format.Format_RGB32).copy()


def dots_in(image: QImage) -> "NDArray[np.uint8]":
    """Return the dots of an RGB image, shape (height, width, 4), as long as the image lives."""
    shape = (image.height(), image.bytesPerLine() // 4, 4)
    bits = np.frombuffer(image.constBits(), dtype=np.uint8).reshape(shape)
    return bits[:, : image.width()]


def _cut(image: QImage, underlay: Underlay, seen: Part, fine: float) -> tuple[QImage, Part]:
    """Cut a part out of an image, and make it as small as it need be."""
    by = image.width() / underlay.size[0]
    left, right = int(seen[0] * by), min(int(seen[2] * by) + 1, image.width())
    above = image.height() - min(int(seen[3] * by) + 1, image.height())
    below = image.height() - int(seen[1] * by)
    part = image.copy(left, above, right - left, below - above)
    shown = (left / by, (image.height() - below) / by, right / by, (image.height() - above) / by)
    if fine < by:
        smooth = Qt.TransformationMode.SmoothTransformation
        wide = max(round(part.width() * fine / by), 1)
        part = part.scaledToWidth(wide, smooth).convertToFormat(QImage.Format.Format_RGB32)
    return part, shown


def _seen(underlay: Underlay, onto: QTransform, within: QPolygonF) -> Part | None:
    back, invertible = onto.inverted()
    wide, high = underlay.size
    box = back.map(within).boundingRect().intersected(QRectF(0, 0, wide, high))
    if not invertible or box.isEmpty():
        return None
    return (box.left(), box.top(), box.right(), box.bottom())


def _paled(image: QImage, share: float) -> QImage:
    """Return an image on white paper, of which a share is seen."""
    bits = dots_in(image)
    pale = (255 - (255 - bits.astype(np.uint16)) * round(share * 256) // 256).astype(np.uint8)
    return image_of(pale)
