"""Say which way is down, where a section does not hang straight on its sheet."""

from math import atan2, cos, degrees, radians, sin

from PySide6.QtCore import QPointF
from PySide6.QtGui import QPainter

from enclosure_app.model.edits import set_gravity
from enclosure_app.model.place import Point
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.ink.ink import pen
from enclosure_app.window.canvas.tools.places_tool import PlacesTool
from enclosure_app.window.canvas.tools.tool import say

_BARB = 11.0  # dots


class SayDown(PlacesTool):
    """Two places, from high to low, say which way water runs."""

    def asked(self) -> str:
        """Return what to do next."""
        if self.given:
            return say("Click straight below it, or type the angle: at -90 is down the sheet.")
        return say("Click a place high up on a plumb line of the section.")

    def finish(self, given: list[Point]) -> None:
        """Say which way is down."""
        (ax, ay), (bx, by) = given
        down = bx - ax, by - ay
        if self.edit(say("Say which way is down"), lambda p, i: set_gravity(p, i, down)):
            self.done.emit()

    def paint(self, painter: QPainter, camera: Camera) -> None:
        """Paint an arrow that points down."""
        super().paint(painter, camera)
        if not self.given or self.pointer is None:
            return
        a, b = camera.seen(self.given[0]), camera.seen(self.pointer.at)
        angle = degrees(atan2(b.y() - a.y(), b.x() - a.x()))
        painter.setPen(pen(1.8))
        for turn in (155.0, -155.0):
            way = radians(angle + turn)
            tip = QPointF(b.x() + _BARB * cos(way), b.y() + _BARB * sin(way))
            painter.drawLine(b, tip)
