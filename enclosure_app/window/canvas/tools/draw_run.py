"""Draw a run from click to click: a sheet, a tape, a bead, or a closed board.

Shift keeps to every fifteen degrees and square to the last stretch. Lengths, angles and places can
be typed. Enter or a double click ends the run, Backspace takes its last point back.
"""

from math import atan2, degrees, dist

from PySide6.QtCore import Qt
from PySide6.QtGui import QPainter, QPolygonF

from enclosure_app.drawing.lengths import format_length
from enclosure_app.model.edits import add_piece
from enclosure_app.model.place import Area, Line, Point, Shape
from enclosure_app.model.product import Bond, Product
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.ink import pen
from enclosure_app.window.canvas.tools.tool import Pointer, say
from enclosure_app.window.canvas.tools.typing_tool import TypingTool
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.typed_length import read_length

_SAME = 0.01  # mm


class DrawRun(TypingTool):
    """Draws a line piece, or with `closed` an area, of the product that is chosen."""

    catches_beside = True

    def __init__(self, place: Workplace, *, closed: bool = False) -> None:
        super().__init__(place)
        self._closed = closed
        self._points: list[Point] = []

    @property
    def hint(self) -> str:
        """Return what to do next."""
        if self.typed:
            return say("{} — Enter sets the point.").format(self.typed)
        if not self._points:
            return self._first_hint()
        return say(
            "Click the next point, or type a length, such as 1200 or 1200 at 45. "
            "Enter ends the run; Shift keeps to 15 degrees."
        )

    @property
    def anchor(self) -> Point | None:
        """Return the last point, from which the next is seen."""
        return self._points[-1] if self._points else None

    @property
    def along(self) -> float:
        """Return the direction of the last stretch."""
        if len(self._points) < 2:
            return 0.0
        (ax, ay), (bx, by) = self._points[-2:]
        return degrees(atan2(by - ay, bx - ax))

    @property
    def told(self) -> str:
        """Return the length and the angle of the stretch that is drawn."""
        start = self.anchor
        if start is None or self.pointer is None or dist(start, self.pointer.at) < _SAME:
            return ""
        end = self.pointer.at
        angle = degrees(atan2(end[1] - start[1], end[0] - start[0]))
        length = format_length(dist(start, end), self.place.document.project.units)
        kept = say("kept to {:.1f}°") if self.pointer.ray else "∠ {:.1f}°"
        return f"{length}   {kept.format(angle)}"

    def take(self, pointer: Pointer) -> None:
        """Set a point; the first corner of a board closes it."""
        if not self._ready():
            return
        point, last = pointer.at, self.anchor
        if self._closed and len(self._points) > 2 and dist(point, self._points[0]) < _SAME:
            self.end()
        elif last is None or dist(point, last) > _SAME:
            self._points.append(point)

    def read(self, text: str) -> None:
        """Take what is typed; a length before the first point is how far off boards sheets go."""
        units = self.place.document.project.units
        if self._points or ";" in text:
            super().read(text)
        else:
            self.place.aid(beside=read_length(text, units))

    def double(self, pointer: Pointer) -> None:
        """End the run: the first of the two clicks has set its last point."""
        del pointer
        self.end()

    def cancel(self) -> bool:
        """Give up what is typed, else the run."""
        if super().cancel():
            return True
        begun, self._points = bool(self._points), []
        self.changed.emit()
        return begun

    @property
    def begun(self) -> bool:
        """Return whether there is a place to take back."""
        return bool(self._points)

    def step_back(self) -> bool:
        """Take the last point back."""
        return bool(self._points and self._points.pop())

    def end(self) -> bool:
        """Make the piece; too few points are none."""
        points, self._points = tuple(self._points), []
        section = self.place.section
        if section is not None and len(points) > (2 if self._closed else 1):
            product = section.products[self.place.product]
            shape: Shape = Area(points) if self._closed else Line(points, self._width(product))
            text = say("Draw {}").format(product.name)
            self.edit(text, lambda p, i: add_piece(p, i, product.key, shape))
        self.changed.emit()
        return bool(points)

    def paint(self, painter: QPainter, camera: Camera) -> None:
        """Paint the run so far, the line to the pointer, and its length and angle."""
        dots = [camera.seen(point) for point in self._points]
        painter.setPen(pen(2.2))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPolyline(QPolygonF(dots))
        for dot in dots:
            painter.drawEllipse(dot, 2.5, 2.5)
        if dots and self.pointer is not None:
            end = camera.seen(self.pointer.at)
            painter.setPen(pen(1.6, Qt.PenStyle.DashLine))
            painter.drawLine(dots[-1], end)
            if self._closed and len(dots) > 1:
                painter.drawLine(end, dots[0])
        self.paint_typed(painter, camera)

    def _first_hint(self) -> str:
        if self._closed:
            return say("Click the first corner of the board.")
        off = format_length(self.place.aids.beside, self.place.document.project.units)
        return say(
            "Click where the sheet starts; places {} off a board are caught. Type another distance."
        ).format(off)

    def _width(self, product: Product) -> float:
        """Return how thick a tape or a bead is drawn, 0 for a sheet, which is a bare line."""
        if product.bond is Bond.TAPE:
            return product.thickness_mm or 0.0
        if product.bond is Bond.SEALANT:
            return product.thickness_mm or self.place.aids.bead
        return 0.0

    def _ready(self) -> bool:
        """Whether there is a section and a product to draw with; say what is missing."""
        section = self.place.section
        if section is not None and self.place.product in section.products:
            return True
        self.place.refused.emit(say("Choose a product in the list first: what is to be drawn?"))
        return False
