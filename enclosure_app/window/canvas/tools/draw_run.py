"""Draw a run from click to click: a sheet, or a closed board. Lengths and angles can be typed.

Shift keeps to every fifteen degrees. What is typed stands beside the line that is drawn: a length,
a length ``at`` an angle; Enter sets the point. Enter or a double click ends the run, Backspace
takes its last point back.
"""

from math import atan2, cos, degrees, dist, radians, sin

from PySide6.QtCore import QPointF, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QPainter, QPen, QPolygonF

from enclosure_app.drawing.lengths import format_length
from enclosure_app.errors import EnclosureError
from enclosure_app.model.edits import add_piece
from enclosure_app.model.place import Area, Line, Point, Shape
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.lettering import words
from enclosure_app.window.canvas.tools.tool import Pointer, Tool, say
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.typed_length import read_typed

_TURN = 15  # degrees that Shift keeps to
_SAME = 0.01  # mm
_TYPED = set("0123456789.,'\"/ °@atmcinf")  # with the letters of at, mm, cm, in and ft
_INK = QColor(214, 51, 132)


class DrawRun(Tool):
    """Draws a line piece, or with `closed` an area, of the product that is chosen."""

    cursor = Qt.CursorShape.CrossCursor
    catches = True
    catches_beside = True
    told = Signal(str)

    def __init__(self, place: Workplace, *, closed: bool = False) -> None:
        super().__init__(place)
        self._closed = closed
        self._points: list[Point] = []
        self._end: Point | None = None
        self._typed = ""

    @property
    def hint(self) -> str:
        """Return what to do next."""
        if not self._points:
            if self._closed:
                return say("Click the first corner of the board.")
            return say("Click where the sheet starts; ends and lines are caught.")
        if self._typed:
            return say("{} — Enter sets the point.").format(self._typed)
        return say(
            "Click the next point, or type a length, such as 1200 or 1200 at 45. "
            "Enter ends the run; Shift keeps to 15 degrees."
        )

    @property
    def anchor(self) -> Point | None:
        """Return the last point, from which the next is seen."""
        return self._points[-1] if self._points else None

    def press(self, pointer: Pointer) -> None:
        """Set a point."""
        if not self._ready():
            return
        self._set(self._meant(pointer))

    def move(self, pointer: Pointer) -> None:
        """Draw the line out to the mouse."""
        self._end = self._meant(pointer)
        self.changed.emit()

    def double(self, pointer: Pointer) -> None:
        """End the run: the first of the two clicks has set its last point."""
        del pointer
        self._finish()

    def key(self, event: QKeyEvent) -> bool:
        """Take letters of a length, Enter and Backspace."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            return self._enter()
        if event.key() == Qt.Key.Key_Backspace and (self._typed or self._points):
            self._take_back()
            return True
        text = event.text()
        if self._points and text and set(text) <= _TYPED and (self._typed or text != " "):
            self._typed += text
            self.changed.emit()
            return True
        return False

    def wants(self, event: QKeyEvent) -> bool:
        """Take the letters of a length before any menu does, once a digit is typed."""
        text = event.text()
        begun = bool(self._points) and bool(text)
        return begun and (text.isdigit() or (bool(self._typed) and set(text) <= _TYPED))

    def cancel(self) -> bool:
        """Give up what is typed, else the run."""
        begun = bool(self._typed or self._points)
        if not self._typed:
            self._points, self._end = [], None
        self._typed = ""
        self.changed.emit()
        return begun

    def paint(self, painter: QPainter, camera: Camera) -> None:
        """Paint the run so far, the line to the mouse, and its length and angle."""
        if not self._points:
            return
        dots = [camera.seen(point) for point in self._points]
        painter.setPen(QPen(_INK, 2.2))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPolyline(QPolygonF(dots))
        for dot in dots:
            painter.drawEllipse(dot, 2.5, 2.5)
        end = self._end
        if end is None or dist(end, self._points[-1]) < _SAME:
            return
        painter.setPen(QPen(_INK, 1.6, Qt.PenStyle.DashLine))
        painter.drawLine(dots[-1], camera.seen(end))
        if self._closed and len(dots) > 1:
            painter.drawLine(camera.seen(end), dots[0])
        words(painter, camera.seen(end) + QPointF(14, 20), self._typed or self._told(end))

    def _told(self, end: Point) -> str:
        start = self._points[-1]
        units = self.place.document.project.units
        angle = degrees(atan2(end[1] - start[1], end[0] - start[0]))
        return f"{format_length(dist(start, end), units)}  ∠ {angle:.1f}°"

    def _meant(self, pointer: Pointer) -> Point:
        """Return the place that is meant: what was caught, or kept to the nearest fifteen degrees."""
        if not (pointer.adds and self._points) or pointer.catch:
            return pointer.at
        start, at = self._points[-1], pointer.bare
        angle = degrees(atan2(at[1] - start[1], at[0] - start[0]))
        turned = radians(round(angle / _TURN) * _TURN)
        size = (at[0] - start[0]) * cos(turned) + (at[1] - start[1]) * sin(turned)
        return start[0] + size * cos(turned), start[1] + size * sin(turned)

    def _set(self, point: Point) -> None:
        last = self._points[-1] if self._points else None
        if self._closed and len(self._points) > 2 and dist(point, self._points[0]) < _SAME:
            self._finish()
            return
        if last is None or dist(point, last) > _SAME:
            self._points.append(point)
        self._typed = ""
        self.changed.emit()

    def _enter(self) -> bool:
        """Set the point that is typed, or end the run."""
        if not self._points:
            return False
        if not self._typed:
            self._finish()
            return True
        try:
            typed = read_typed(self._typed, self.place.document.project.units)
        except EnclosureError as error:
            self.place.refuse(error)
            self._typed = ""
            return True
        start, end = self._points[-1], self._end or self._points[-1]
        angle = atan2(end[1] - start[1], end[0] - start[0])
        angle = angle if typed.angle is None else radians(typed.angle)
        length = dist(start, end) if typed.length is None else typed.length
        self._set((start[0] + length * cos(angle), start[1] + length * sin(angle)))
        return True

    def _take_back(self) -> None:
        if self._typed:
            self._typed = self._typed[:-1]
        else:
            self._points.pop()
        self.changed.emit()

    def _finish(self) -> None:
        """Make the piece; too few points are none."""
        points, self._points, self._typed = tuple(self._points), [], ""
        if len(points) > (2 if self._closed else 1):
            shape: Shape = Area(points) if self._closed else Line(points)
            product = self.place.product
            section = self.place.section
            name = section.products[product].name if section else ""
            text = say("Draw {}").format(name)
            self.edit(text, lambda p, i: add_piece(p, i, product, shape))
        self.changed.emit()

    def _ready(self) -> bool:
        """Whether there is a section and a product to draw with; say what is missing."""
        section = self.place.section
        if section is not None and self.place.product in section.products:
            return True
        self.place.refused.emit(say("Choose a product in the list first: what is to be drawn?"))
        return False
