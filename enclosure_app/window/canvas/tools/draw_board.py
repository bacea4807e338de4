"""Draw a board: a closed outline from corner to corner, or one face of it and its thickness.

Two corners and Enter make a board along the line between them, as thick as its product is, on the
side of the mouse; more corners and Enter, or a click on the first corner, close the outline.
"""

from math import dist

from PySide6.QtCore import Qt
from PySide6.QtGui import QPainter, QPolygonF

from enclosure_app.drawing.lengths import format_length
from enclosure_app.geometry.runs.editing import offset_run
from enclosure_app.model.place import Area, Points, Shape
from enclosure_app.model.product import Product
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.ink.ink import pen
from enclosure_app.window.canvas.tools.draw_run import DrawRun
from enclosure_app.window.canvas.tools.tool import Pointer, say

_REACH = 8.0  # dots within which a click is one on the first corner


class DrawBoard(DrawRun):
    """Draws an area of the product that is chosen."""

    catches_beside = False  # boards touch boards

    def first_hint(self) -> str:
        """Return how to begin."""
        return say("Click the first corner of the board.")

    def next_hint(self) -> str:
        """Return how to go on."""
        thick = self._thickness()
        if len(self.points) == 2 and thick:
            told = format_length(thick, self.place.document.project.units)
            return say(
                "Click the next corner, or type a length. Enter makes the board {} thick, on the "
                "side of the mouse."
            ).format(told)
        return say(
            "Click the next corner, or type a length, such as 1200 or 1200 at 45. "
            "Enter closes the outline; Shift keeps to 15 degrees."
        )

    @property
    def too_few(self) -> str:
        """Return what to do where two corners make nothing."""
        return say("No thickness is known of this product: click a third corner.")

    def read(self, text: str) -> None:
        """Take a typed corner; there is no length to type before the first one."""
        if self.points or ";" in text:
            super().read(text)

    def take(self, pointer: Pointer) -> None:
        """Set a corner; a click on the first one closes the outline."""
        if len(self.points) > 2 and self._is_first(pointer):
            self.end()
        else:
            super().take(pointer)

    def shape_of(self, points: Points, product: Product) -> Shape | None:
        """Return the outline, or the board along two corners."""
        if len(points) == 2:
            points = self._along(points, product.thickness_mm or 0.0)
        return Area(points) if len(points) > 2 else None

    def paint(self, painter: QPainter, camera: Camera) -> None:
        """Paint the outline as it would be closed, or the board along two corners."""
        super().paint(painter, camera)
        if len(self.points) < 2 or self.pointer is None:
            return
        ring = self._along(tuple(self.points), self._thickness()) if len(self.points) == 2 else ()
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(pen(1.2, Qt.PenStyle.DotLine))
        painter.drawPolygon(QPolygonF([camera.seen(point) for point in ring]))
        painter.setPen(pen(1.6, Qt.PenStyle.DashLine))
        painter.drawLine(camera.seen(self.pointer.at), camera.seen(self.points[0]))

    def _is_first(self, pointer: Pointer) -> bool:
        return dist(pointer.at, self.points[0]) <= pointer.reach(_REACH)

    def _thickness(self) -> float:
        section = self.place.section
        product = section.products.get(self.place.product) if section else None
        return (product.thickness_mm or 0.0) if product else 0.0

    def _along(self, points: Points, thick: float) -> Points:
        """Return the corners of a board along two of its corners, on the side of the pointer."""
        if not thick or self.pointer is None:
            return ()
        other = offset_run(points, thick, self.pointer.bare, closed=False)
        return (*points, *other[::-1])
