"""Measure: from place to place, the length, across and up, and the angle."""

from math import atan2, degrees, dist

from PySide6.QtGui import QPainter

from enclosure_app.drawing.lengths import format_length
from enclosure_app.model.place import Point
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.ink.ink import pen
from enclosure_app.window.canvas.ink.lettering import words
from enclosure_app.window.canvas.tools.places_tool import PlacesTool
from enclosure_app.window.canvas.tools.tool import Pointer, say
from enclosure_app.window.canvas.workplace import Workplace


class Measure(PlacesTool):
    """Shows the distance between two places; changes nothing."""

    def __init__(self, place: Workplace) -> None:
        super().__init__(place)
        self._measured: tuple[Point, Point] | None = None

    def asked(self) -> str:
        """Return what to do next, or what was measured."""
        if self._measured:
            return self._words(*self._measured)
        if self.given:
            return self.told or say("Click the place to measure to.")
        return say("Click the place to measure from.")

    @property
    def told(self) -> str:
        """The length, how far across and up, and the angle."""
        if not self.given or self.pointer is None:
            return ""
        return self._words(self.given[0], self.pointer.at)

    def take(self, pointer: Pointer) -> None:
        """Take the first place, then the second; a third click begins anew."""
        self._measured = None
        super().take(pointer)

    def finish(self, given: list[Point]) -> None:
        """Keep showing what was measured."""
        self._measured = given[0], given[1]

    def cancel(self) -> bool:
        """Forget what was measured."""
        shown, self._measured = self._measured is not None, None
        return super().cancel() or shown

    def paint(self, painter: QPainter, camera: Camera) -> None:
        """Paint the line and what it measures."""
        super().paint(painter, camera)
        if self._measured is None:
            return
        start, end = (camera.seen(place) for place in self._measured)
        painter.setPen(pen(1.8))
        painter.drawLine(start, end)
        for dot in (start, end):
            painter.drawEllipse(dot, 3.0, 3.0)
        words(painter, (start + end) / 2, self._words(*self._measured))

    def _words(self, a: Point, b: Point) -> str:
        units = self.place.document.project.units
        dx, dy = b[0] - a[0], b[1] - a[1]
        return say("{}   across {}   up {}   ∠ {:.1f}°").format(
            format_length(dist(a, b), units),
            format_length(dx, units),
            format_length(dy, units),
            degrees(atan2(dy, dx)),
        )
