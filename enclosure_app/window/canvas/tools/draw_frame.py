"""Draw the frame, which says where the section is judged: a box by a drag, any outline by clicks.

Enter or a click on the first corner closes the outline; two corners and Enter make a box. Corners
can be typed, and Backspace takes the last one back.
"""

from math import dist

from PySide6.QtCore import Qt
from PySide6.QtGui import QPainter, QPolygonF

from enclosure_app.drawing.lengths import format_length
from enclosure_app.drawing.placement import box_around
from enclosure_app.model.edits import set_frame
from enclosure_app.model.place import Point, Points
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.ink.ink import pen
from enclosure_app.window.canvas.tools.places_tool import PlacesTool
from enclosure_app.window.canvas.tools.tool import Pointer, say
from enclosure_app.window.canvas.workplace import Workplace

_STILL = 4.0  # dots: a drag that is smaller is a click
_REACH = 8.0  # dots within which a click is one on the first corner


class DrawFrame(PlacesTool):
    """Sets the frame of the section in view."""

    places = 0  # as many as there are corners

    def __init__(self, place: Workplace) -> None:
        super().__init__(place)
        self._held = False

    def asked(self) -> str:
        """Return what to do next."""
        if self._held and self.given:
            return say("Let go at the opposite corner: the section is judged inside the box.")
        if not self.given:
            return say(
                "Drag a box, or click the corners of an outline: the section is judged inside it."
            )
        if len(self.given) < 3:
            return say("Click the next corner of the outline. Two corners and Enter make a box.")
        return say("Click the next corner. Enter, or a click on the first corner, closes it.")

    @property
    def told(self) -> str:
        """Return how wide and how high a box gets that is dragged, else how long the last side."""
        if not self._held or len(self.given) != 1 or self.pointer is None:
            return super().told
        box = box_around((self.given[0], self.pointer.at))
        units = self.place.document.project.units
        return f"{format_length(box.width, units)} × {format_length(box.height, units)}"

    def press(self, pointer: Pointer) -> None:
        """Take a corner; the first one may be that of a box which is dragged from it."""
        self._held = not self.given
        super().press(pointer)

    def take(self, pointer: Pointer) -> None:
        """Take a corner; a click on the first one closes the outline."""
        if len(self.given) > 2 and dist(pointer.at, self.given[0]) <= pointer.reach(_REACH):
            self.end()
        else:
            super().take(pointer)

    def release(self, pointer: Pointer) -> None:
        """Set the frame where a drag ends; after a mere click the other corners are clicked too."""
        held, self._held = self._held, False
        if held and self.given and self._far(self.given[0], pointer) > _STILL:
            self.take(pointer)
            self.end()
        self.changed.emit()

    def double(self, pointer: Pointer) -> None:
        """Close the outline: the first of the two clicks has set its last corner."""
        del pointer
        self.end()

    def end(self) -> bool:
        """Set the frame; the corners of one that cannot be are kept, to be mended."""
        begun, ring = bool(self.given), self._ring(tuple(self.given))
        if len(ring) < 3:
            return begun
        if self.edit(say("Set the frame"), lambda p, i: set_frame(p, i, ring)):
            self.given = []
            self.done.emit()
        self.changed.emit()
        return begun

    def cancel(self) -> bool:
        """Give up what is typed, else the corners."""
        self._held = False
        return super().cancel()

    def paint(self, painter: QPainter, camera: Camera) -> None:
        """Paint the outline as it would be closed, or the box that is dragged."""
        if self.given:
            ahead = () if self.pointer is None else (self.pointer.at,)
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(pen(1.4, Qt.PenStyle.DashDotLine))
            ring = self._ring((*self.given, *ahead)) if self._held else (*self.given, *ahead)
            painter.drawPolygon(QPolygonF([camera.seen(point) for point in ring]))
            if len(self.given) == 2 and not self._held:
                painter.setPen(pen(1.2, Qt.PenStyle.DotLine))
                box = self._ring(tuple(self.given))
                painter.drawPolygon(QPolygonF([camera.seen(point) for point in box]))
        self.paint_typed(painter, camera)

    def _ring(self, corners: Points) -> Points:
        """Return the outline that corners make: of two it is the box between them."""
        return box_around(corners).ring if len(corners) == 2 else corners

    def _far(self, start: Point, pointer: Pointer) -> float:
        """Return how many dots the pointer is from a place."""
        return (pointer.camera.seen(start) - pointer.dot).manhattanLength()
