"""The grid: thin lines under the hand, and the crossings of them that it catches."""

from math import ceil, floor

from PySide6.QtCore import QLineF
from PySide6.QtGui import QColor, QPainter, QPen

from enclosure_app.model.place import Point
from enclosure_app.window.canvas.camera import Camera

_LEAST = 9.0  # dots between two lines of the grid
_FINE, _STRONG = 26, 60  # of 255: how dense lines are, and every fifth of them


def seen_spacing(spacing: float, zoom: float) -> float:
    """Return the spacing that can be told apart at a zoom: 1, 2 or 5 times a power of ten of it."""
    power = 1.0
    while True:
        for times in (1.0, 2.0, 5.0):
            if spacing * times * power * zoom >= _LEAST:
                return spacing * times * power
        power *= 10.0


def nearest_crossing(at: Point, spacing: float) -> Point:
    """Return the crossing of the grid's lines that is nearest to a place."""
    return round(at[0] / spacing) * spacing, round(at[1] / spacing) * spacing


def paint_grid(painter: QPainter, camera: Camera, spacing: float, ink: QColor) -> None:
    """Paint the grid's lines across the view, every fifth of them stronger."""
    step, window = seen_spacing(spacing, camera.zoom), camera.window
    lines: dict[bool, list[QLineF]] = {True: [], False: []}
    for i in range(ceil(window.left / step), floor(window.right / step) + 1):
        x = camera.seen((i * step, 0.0)).x()
        lines[i % 5 == 0].append(QLineF(x, 0.0, x, camera.size.height()))
    for i in range(ceil(window.bottom / step), floor(window.top / step) + 1):
        y = camera.seen((0.0, i * step)).y()
        lines[i % 5 == 0].append(QLineF(0.0, y, camera.size.width(), y))
    for strong, those in lines.items():
        pale = QColor(ink)
        pale.setAlpha(_STRONG if strong else _FINE)
        painter.setPen(QPen(pale, 1.0))
        painter.drawLines(those)
