"""Pens of the theme for the screen: of any width, their patterns in scale."""

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QPen

from enclosure_app.drawing.theme import Pen


def line_pen(pen: Pen, thick: float) -> QPen:
    """Return a pen of the theme for the screen, `thick` dots wide, its pattern in scale."""
    made = QPen(QColor(pen.colour), thick)
    made.setCapStyle(Qt.PenCapStyle.FlatCap)
    if pen.dash:
        made.setDashPattern([max(part / pen.width * 0.5, 0.4) for part in pen.dash])
    return made
