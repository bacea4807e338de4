"""What of an underlay is painted: its dots in several sizes, by day and by night.

By night a picture that is mostly light, as drawings and scans are, is turned over: dark becomes
light and hues stay. A photograph stays as it is.
"""

from dataclasses import dataclass
from math import sqrt

import numpy as np
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage

from enclosure_app.files.underlay.pdfium import Part, rendered
from enclosure_app.model.underlay import Underlay
from enclosure_app.reports.pdf.pictures import decoded, dots_in, image_of

_MOST = 12_000_000  # dots of the largest size that is kept
_FINEST = 300 / 72  # dots for a point of a page
_SMALLEST = 400  # dots along the longer side of the smallest size
_LIGHT = 0.6  # mean lightness of a picture that is a drawing


@dataclass(frozen=True, slots=True)
class Dots:
    """Pictures of an underlay, each half as large as the one before.

    `part` is what of it they show, in its pixels; `turned_over` whether dark and light have changed places.
    """

    sizes: tuple[QImage, ...]
    part: Part
    turned_over: bool

    @property
    def finest(self) -> float:
        """How many dots the largest has for one pixel of the underlay."""
        return self.sizes[0].width() / (self.part[2] - self.part[0])

    def for_dots(self, wanted: float) -> QImage:
        """Return the smallest picture that has so many dots for one pixel of the underlay."""
        wide = wanted * (self.part[2] - self.part[0])
        enough = [size for size in self.sizes if size.width() >= wide]
        return enough[-1] if enough else self.sizes[0]


def dots_of(underlay: Underlay, *, dark: bool) -> Dots:
    """Return the pictures of a whole underlay; takes its time.

    Raises:
        EnclosureError: its bytes are no picture.
    """
    wide, high = underlay.size
    if underlay.kind == "pdf":
        fine = min(_FINEST, sqrt(_MOST / (wide * high)))
        image = image_of(rendered(underlay.data, underlay.page, fine)[0])
    else:
        image = _small_enough(underlay)
    over = dark and _is_light(image)
    first = _turned_over(image) if over else image
    return Dots(_halves(first), (0.0, 0.0, wide, high), over)


def dots_of_part(underlay: Underlay, part: Part, fine: float, *, over: bool) -> Dots:
    """Return a part of a PDF page; takes its time.

    Args:
        underlay: The page.
        part: What of it.
        fine: How many dots for one point.
        over: Whether dark and light change places.
    """
    picture, shown = rendered(underlay.data, underlay.page, fine, part)
    image = image_of(picture)
    return Dots((_turned_over(image) if over else image,), shown, over)


def _small_enough(underlay: Underlay) -> QImage:
    image = decoded(underlay)
    area = image.width() * image.height()
    if area <= _MOST:
        return image
    return _smaller(image, max(int(image.width() * sqrt(_MOST / area)), 1))


def _halves(image: QImage) -> tuple[QImage, ...]:
    sizes = [image]
    while max(sizes[-1].width(), sizes[-1].height()) > _SMALLEST * 2:
        sizes.append(_smaller(sizes[-1], max(sizes[-1].width() // 2, 1)))
    return tuple(sizes)


def _smaller(image: QImage, wide: int) -> QImage:
    high = max(round(image.height() * wide / image.width()), 1)
    smooth = Qt.TransformationMode.SmoothTransformation
    small = image.scaled(wide, high, Qt.AspectRatioMode.IgnoreAspectRatio, smooth)
    return small.convertToFormat(QImage.Format.Format_RGB32)


def _is_light(image: QImage) -> bool:
    look = image.scaled(200, 200).convertToFormat(QImage.Format.Format_Grayscale8)
    bits = np.frombuffer(look.constBits(), dtype=np.uint8)
    return bool(bits.mean() >= _LIGHT * 255)


def _turned_over(image: QImage) -> QImage:
    """Return an image with dark for light; each hue stays what it is.

    Lightness is halfway between the strongest and the weakest colour, and is mirrored: the sums
    may pass 255 on their way, but what comes out never does, so that eight bits are enough.
    """
    plain = image.convertToFormat(QImage.Format.Format_RGB32)
    bits = dots_in(plain)
    blue, green, red = (bits[:, :, number] for number in range(3))
    strongest = np.maximum(np.maximum(blue, green), red)
    by = ~(strongest + np.minimum(np.minimum(blue, green), red))
    over = np.empty((*by.shape, 4), dtype=np.uint8)
    for number, colour in enumerate((blue, green, red)):
        np.add(colour, by, out=over[:, :, number])
    over[:, :, 3] = 255
    return image_of(over)
