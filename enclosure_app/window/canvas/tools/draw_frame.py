"""Draw the frame: two corners, dragged, clicked or typed, say where the section is judged."""

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QPainter

from enclosure_app.drawing.lengths import format_length
from enclosure_app.drawing.placement import box_around
from enclosure_app.model.edits import set_frame
from enclosure_app.model.place import Point
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.ink import pen
from enclosure_app.window.canvas.tools.places_tool import PlacesTool
from enclosure_app.window.canvas.tools.tool import Pointer, say

_STILL = 4.0  # dots: a drag that is smaller is a click


class DrawFrame(PlacesTool):
    """Sets the frame of the section in view."""

    def asked(self) -> str:
        """Return what to do next."""
        if self.given:
            return say("Click the opposite corner: the section is judged inside the box.")
        return say("Drag a box from corner to corner: the section is judged inside it.")

    @property
    def told(self) -> str:
        """Return how wide and how high the frame gets."""
        if not self.given or self.pointer is None:
            return ""
        box, units = (
            box_around((self.given[0], self.pointer.at)),
            self.place.document.project.units,
        )
        return f"{format_length(box.width, units)} × {format_length(box.height, units)}"

    def release(self, pointer: Pointer) -> None:
        """Set the frame where a drag ends; after a mere click the other corner is clicked too."""
        if self.given and self._far(self.given[0], pointer) > _STILL:
            self.take(pointer)

    def finish(self, given: list[Point]) -> None:
        """Set the frame."""
        box = box_around(given)
        if self.edit(say("Set the frame"), lambda p, i: set_frame(p, i, box.ring)):
            self.done.emit()

    def paint(self, painter: QPainter, camera: Camera) -> None:
        """Paint the box."""
        if self.given and self.pointer is not None:
            painter.setPen(pen(1.4, Qt.PenStyle.DashDotLine))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            corner, other = camera.seen(self.given[0]), camera.seen(self.pointer.at)
            painter.drawRect(QRectF(corner, other).normalized())
        self.paint_typed(painter, camera)

    def _far(self, start: Point, pointer: Pointer) -> float:
        """Return how many dots the pointer is from a place."""
        return (pointer.camera.seen(start) - pointer.dot).manhattanLength()
