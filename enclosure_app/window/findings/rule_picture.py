"""The picture of a rule on the screen: its two little sections, judged and painted."""

from functools import cache
from math import ceil

from PySide6.QtCore import QSize
from PySide6.QtGui import QColor, QImage, QPainter

from enclosure_app.drawing.rule_examples import example_sections
from enclosure_app.drawing.rule_pictures import Pair, picture_height, picture_marks
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.maps.rule_book import load_limits
from enclosure_app.reports.pdf.painter import MarkPainter
from enclosure_app.window.canvas.ink.look import DOTS, Look

_EDGE = 6  # dots of paper around the picture


def rule_picture(rule: str, width: int, look: Look, ratio: float = 1.0) -> QImage | None:
    """Return the picture of a rule, `width` dots wide; None for a rule without an example."""
    pair = judged(rule)
    if pair is None:
        return None
    breadth = (width - 2 * _EDGE) / DOTS
    high = picture_height(pair, breadth)
    size = QSize(width, ceil(high * DOTS) + 2 * _EDGE)
    image = QImage(size * ratio, QImage.Format.Format_RGB32)
    image.setDevicePixelRatio(ratio)
    image.fill(QColor(look.theme.paper))
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.translate(_EDGE, _EDGE)
    MarkPainter(painter, DOTS, high).paint(picture_marks(pair, breadth, look.units, look.theme))
    painter.end()
    return image


@cache
def judged(rule: str) -> Pair | None:
    """Return the results of a rule's two sections by the usual rule book."""
    from enclosure_app.checker import check_section  # noqa: PLC0415  after the window is seen

    sections = example_sections(rule, load_products())
    if sections is None:
        return None
    drawn, mended = (check_section(section, load_limits()) for section in sections)
    return Pair(rule, drawn, mended)
