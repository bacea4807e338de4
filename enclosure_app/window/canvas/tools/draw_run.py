"""Draw a run from click to click: a sheet, a tape or a bead.

Shift keeps to every fifteen degrees and square to the last stretch. Lengths, angles and places can
be typed. Enter or a double click ends the run, Backspace takes its last point back.
"""

from math import atan2, degrees, dist

from PySide6.QtCore import Qt
from PySide6.QtGui import QPainter, QPolygonF

from enclosure_app.drawing.lengths import format_length
from enclosure_app.model.edits import add_piece
from enclosure_app.model.place import Line, Point, Points, Shape
from enclosure_app.model.product import Bond, Product
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.ink.ink import pen
from enclosure_app.window.canvas.tools.tool import Pointer, say
from enclosure_app.window.canvas.tools.typing_tool import TypingTool
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.typed.typed_length import read_length

_SAME = 0.01  # mm


class DrawRun(TypingTool):
    """Draws a line piece of the product that is chosen."""

    catches_beside = True

    def __init__(self, place: Workplace) -> None:
        super().__init__(place)
        self.points: list[Point] = []

    # ---- what a board makes of it --------------------------------------------------------------

    def first_hint(self) -> str:
        """Return how to begin."""
        off = format_length(self.place.aids.beside, self.place.document.project.units)
        return say(
            "Click where the sheet starts; places {} off a board are caught. Type another distance."
        ).format(off)

    def next_hint(self) -> str:
        """Return how to go on."""
        return say(
            "Click the next point, or type a length, such as 1200 or 1200 at 45. "
            "Enter ends the run; Shift keeps to 15 degrees."
        )

    def shape_of(self, points: Points, product: Product) -> Shape | None:
        """Return what the points make, None where they are too few."""
        return Line(points, self._width(product)) if len(points) > 1 else None

    @property
    def too_few(self) -> str:
        """Return what to do where the points make nothing."""
        return say("A sheet needs two points that are apart: click another one.")

    # ---- what they share -----------------------------------------------------------------------

    @property
    def hint(self) -> str:
        """Return what to do next."""
        if self.typed:
            return say("{} — Enter sets the point.").format(self.typed)
        return self.next_hint() if self.points else self.first_hint()

    @property
    def anchor(self) -> Point | None:
        """Return the last point, from which the next is seen."""
        return self.points[-1] if self.points else None

    @property
    def along(self) -> float:
        """Return the direction of the last stretch."""
        if len(self.points) < 2:
            return 0.0
        (ax, ay), (bx, by) = self.points[-2:]
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
        """Set a point."""
        last = self.anchor
        if self._ready() and (last is None or dist(pointer.at, last) > _SAME):
            self.points.append(pointer.at)

    def read(self, text: str) -> None:
        """Take what is typed; a length before the first point is how far off boards sheets go."""
        units = self.place.document.project.units
        if self.points or ";" in text:
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
        begun, self.points = bool(self.points), []
        self.changed.emit()
        return begun

    @property
    def begun(self) -> bool:
        """Return whether there is a place to take back."""
        return bool(self.points)

    def step_back(self) -> bool:
        """Take the last point back."""
        return bool(self.points and self.points.pop())

    def end(self) -> bool:
        """Make the piece; what cannot be made is told, and its points stay to be mended."""
        begun, points = bool(self.points), tuple(self.points)
        if len(points) < 2 or self._made(points, self.place.product):
            self.points = []
        self.changed.emit()
        return begun

    def _made(self, points: Points, key: str) -> bool:
        """Add the piece that the points make; say whether that was possible."""
        section = self.place.section
        product = section.products.get(key) if section else None
        shape = self.shape_of(points, product) if product else None
        if product is None or shape is None:
            self.place.refused.emit(self.too_few)
            return False
        text = say("Draw {}").format(product.name)
        return self.edit(text, lambda p, i: add_piece(p, i, key, shape))

    def paint(self, painter: QPainter, camera: Camera) -> None:
        """Paint the run so far, the line to the pointer, and its length and angle."""
        dots = [camera.seen(point) for point in self.points]
        painter.setPen(pen(2.2))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPolyline(QPolygonF(dots))
        for dot in dots:
            painter.drawEllipse(dot, 2.5, 2.5)
        if dots and self.pointer is not None:
            end = camera.seen(self.pointer.at)
            painter.setPen(pen(1.6, Qt.PenStyle.DashLine))
            painter.drawLine(dots[-1], end)
        self.paint_typed(painter, camera)

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
