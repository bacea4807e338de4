"""Words over the drawing that can be read on any ground."""

from functools import cache

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter

from enclosure_app.reports.pdf.fonts import font
from enclosure_app.window.canvas.ink.look import DOTS

_SIZE = 2.3  # mm, of capitals
_GROUND, _INK = QColor(24, 28, 32, 225), QColor("#ffffff")
_ROOM = 5.0


@cache
def face(size: float) -> QFont:
    """Return the bold figures whose capitals are `size` mm high.

    It is kept, since Qt takes longer to find a font anew than to paint everything else.
    """
    return font(size, DOTS, bold=True)


def words(painter: QPainter, at: QPointF, text: str) -> None:
    """Write a few words on a dark tab with their base line at `at`, or so near that all is seen."""
    metrics = QFontMetricsF(face(_SIZE))
    at = at + _inwards(metrics.boundingRect(text).translated(at), QRectF(painter.window()))
    box = metrics.boundingRect(text).translated(at).adjusted(-_ROOM, -_ROOM, _ROOM, _ROOM)
    painter.save()
    painter.setPen(_GROUND)
    painter.setBrush(_GROUND)
    painter.drawRoundedRect(box, 4, 4)
    painter.setFont(face(_SIZE))
    painter.setPen(_INK)
    painter.drawText(at, text)
    painter.restore()


def _inwards(box: QRectF, room: QRectF) -> QPointF:
    """Return the way that brings a box, with its tab, into the room there is."""
    free = room.adjusted(2 * _ROOM, 2 * _ROOM, -2 * _ROOM, -2 * _ROOM)
    right = min(free.right() - box.right(), 0.0) + max(free.left() - box.left(), 0.0)
    down = min(free.bottom() - box.bottom(), 0.0) + max(free.top() - box.top(), 0.0)
    return QPointF(right, down)
