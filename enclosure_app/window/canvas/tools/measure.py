"""Measure: from place to place, the length, across and up, and the angle."""

from math import atan2, degrees, dist

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QColor, QPainter, QPen

from enclosure_app.drawing.lengths import format_length
from enclosure_app.model.place import Point
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.lettering import words
from enclosure_app.window.canvas.tools.tool import Pointer, Tool, say
from enclosure_app.window.canvas.workplace import Workplace

_INK = QColor(214, 51, 132)


class Measure(Tool):
    """Shows the distance between two places; changes nothing."""

    cursor = Qt.CursorShape.CrossCursor
    catches = True

    def __init__(self, place: Workplace) -> None:
        super().__init__(place)
        self._from: Point | None = None
        self._to: Point | None = None
        self._fixed = False

    @property
    def hint(self) -> str:
        """Return what to do next, or what was measured."""
        if self._from is None:
            return say("Click the place to measure from.")
        return self.told or say("Click the place to measure to.")

    @property
    def anchor(self) -> Point | None:
        """Return the first place."""
        return None if self._fixed else self._from

    @property
    def told(self) -> str:
        """The length, how far across and up, and the angle."""
        if self._from is None or self._to is None:
            return ""
        units = self.place.document.project.units
        dx, dy = self._to[0] - self._from[0], self._to[1] - self._from[1]
        return say("{}   across {}   up {}   ∠ {:.1f}°").format(
            format_length(dist(self._from, self._to), units),
            format_length(dx, units),
            format_length(dy, units),
            degrees(atan2(dy, dx)),
        )

    def press(self, pointer: Pointer) -> None:
        """Set the first place, then the second; a third click begins anew."""
        if self._from is None or self._fixed:
            self._from, self._to, self._fixed = pointer.at, None, False
        else:
            self._to, self._fixed = pointer.at, True
        self.changed.emit()

    def move(self, pointer: Pointer) -> None:
        """Measure to the mouse."""
        if self._from is not None and not self._fixed:
            self._to = pointer.at
            self.changed.emit()

    def cancel(self) -> bool:
        """Forget what was measured."""
        begun, self._from, self._to = self._from is not None, None, None
        self.changed.emit()
        return begun

    def paint(self, painter: QPainter, camera: Camera) -> None:
        """Paint the line and what it measures."""
        if self._from is None or self._to is None:
            return
        start, end = camera.seen(self._from), camera.seen(self._to)
        painter.setPen(QPen(_INK, 1.8))
        painter.drawLine(start, end)
        for dot in (start, end):
            painter.drawEllipse(dot, 3.0, 3.0)
        words(painter, (start + end) / 2 + QPointF(12, -10), self.told)
