"""Draw the frame: a drag from corner to corner says where the section is judged."""

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen

from enclosure_app.drawing.placement import box_around
from enclosure_app.model.edits import set_frame
from enclosure_app.model.place import Point
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.tools.tool import Pointer, Tool, say
from enclosure_app.window.canvas.workplace import Workplace

_STILL = 4.0  # dots: a drag that is smaller is none


class DrawFrame(Tool):
    """Sets the frame of the section in view."""

    cursor = Qt.CursorShape.CrossCursor
    catches = True

    def __init__(self, place: Workplace) -> None:
        super().__init__(place)
        self._from: Point | None = None
        self._to: Point | None = None

    @property
    def hint(self) -> str:
        """Return what to do next."""
        return say("Drag a box from corner to corner: the section is judged inside it.")

    def press(self, pointer: Pointer) -> None:
        """Begin at a corner."""
        self._from = self._to = pointer.at

    def move(self, pointer: Pointer) -> None:
        """Draw the box out."""
        if self._from is not None:
            self._to = pointer.at
            self.changed.emit()

    def release(self, pointer: Pointer) -> None:
        """Set the frame."""
        start, self._from = self._from, None
        if start is None:
            return
        box = box_around((start, pointer.at))
        large = min(box.width, box.height) > pointer.reach(_STILL)
        if large and self.edit(say("Set the frame"), lambda p, i: set_frame(p, i, box.ring)):
            self.done.emit()
        self.changed.emit()

    def cancel(self) -> bool:
        """Give up the box."""
        begun, self._from = self._from is not None, None
        self.changed.emit()
        return begun

    def paint(self, painter: QPainter, camera: Camera) -> None:
        """Paint the box."""
        if self._from is not None and self._to is not None:
            painter.setPen(QPen(QColor(214, 51, 132), 1.4, Qt.PenStyle.DashDotLine))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(QRectF(camera.seen(self._from), camera.seen(self._to)).normalized())
