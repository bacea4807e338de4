"""The ink of what a hand is doing: apart from every control's hue, by day and by night."""

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QPen

INK = QColor(214, 51, 132)


def pen(width: float, style: Qt.PenStyle = Qt.PenStyle.SolidLine) -> QPen:
    """Return a pen of this ink, `width` dots wide."""
    return QPen(INK, width, style)


def wash(density: int) -> QColor:
    """Return the ink thinned: `density` of 255."""
    thin = QColor(INK)
    thin.setAlpha(density)
    return thin
