"""Move and turn a picture under the drawing: from a place on it to where this place belongs.

The first two clicks move it, the next two turn it about where the first one came to lie; with
Shift they bring it to scale too. So a scan is laid onto a drawing by two pairs of places.
"""

from cmath import phase
from functools import partial
from math import degrees, dist

from PySide6.QtCore import Qt
from PySide6.QtGui import QPainter

from enclosure_app.geometry.similarity import Similarity
from enclosure_app.model.edits import lay_underlay
from enclosure_app.model.place import Point
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.ink.ink import pen
from enclosure_app.window.canvas.tools.set_scale import offer_drawn
from enclosure_app.window.canvas.tools.tool import Pointer, Tool, say
from enclosure_app.window.canvas.underlay.page_moving import edit_apart
from enclosure_app.window.canvas.underlay.pick import (
    apart,
    movable,
    paint_outline,
    underlay_meant,
)
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.document import new_gesture

_DRAG = 5.0  # dots: a press that moves further is a drag, whose release is the second click
_SAME = 1e-6  # mm


class LayUnderlay(Tool):
    """Moves a picture by one pair of places, and turns it by another."""

    cursor = Qt.CursorShape.CrossCursor
    catches = True

    def __init__(self, place: Workplace) -> None:
        super().__init__(place)
        self._index: int | None = None
        self._from: Point | None = None
        self._pressed: Pointer | None = None
        self._fixed: Point | None = None
        self._end: Point | None = None
        self._scales = False
        self._gesture = -1

    @property
    def hint(self) -> str:
        """Return what to do next."""
        if self._from is not None and self._fixed is None:
            return say("Click where this place of the picture belongs.")
        if self._from is not None:
            return say(
                "Click where this second place belongs: the picture is turned; Shift scales it too."
            )
        if self._fixed is not None:
            return say("Click a second place on the picture to turn it, or Escape: it lies well.")
        if movable(self.place):
            return say("Click a place on the picture, then where it belongs; or drag it there.")
        return say("There is no picture under the drawing that could be moved.")

    @property
    def anchor(self) -> Point | None:
        """Return the place that is to be moved."""
        return self._from

    def press(self, pointer: Pointer) -> None:
        """Take hold of a place, or set it down."""
        self._pressed = pointer
        if self._from is None:
            self._take_hold(pointer.at)
        else:
            self._set_down(pointer)
        self.changed.emit()

    def move(self, pointer: Pointer) -> None:
        """Show where the picture would lie."""
        self._end, self._scales = pointer.at, pointer.adds
        if self._from is not None:
            self.changed.emit()

    def release(self, pointer: Pointer) -> None:
        """Set down what was dragged."""
        pressed, self._pressed = self._pressed, None
        if pressed is None or self._from is None:
            return
        if (pointer.dot - pressed.dot).manhattanLength() > _DRAG:
            self._set_down(pointer)
            self.changed.emit()

    def cancel(self) -> bool:
        """Let go of the place, or leave the picture as it lies."""
        begun = self._from is not None or self._fixed is not None
        if self._from is None:
            self._fixed = None
        self._from = None
        self.changed.emit()
        return begun

    def paint(self, painter: QPainter, camera: Camera) -> None:
        """Paint the edge of the picture where it would lie, and the way of the place."""
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(pen(2.0))
        for at in (self._fixed, self._from):
            if at is not None:
                painter.drawEllipse(camera.seen(at), 4.0, 4.0)
        if self._from is None or self._end is None or self._index is None:
            return
        painter.drawLine(camera.seen(self._from), camera.seen(self._end))
        there = self.place.document.project.underlays
        if self._index < len(there):
            similar = self._similar(self._from, self._end, scales=self._scales)
            paint_outline(painter, camera, there[self._index], similar)

    def _take_hold(self, at: Point) -> None:
        if self._fixed is None:
            self._index = underlay_meant(self.place, at)
            self._gesture = new_gesture()
        if self._index is None:
            text = say("Click on a picture that lies under the drawing and is not locked.")
            self.place.refused.emit(text)
        elif self._fixed is None or apart(self._fixed, at, _SAME):
            self._from = at

    def _set_down(self, pointer: Pointer) -> None:
        start, at = self._from, pointer.at
        index = self._index
        if start is None or index is None or (self._fixed and not apart(self._fixed, at, _SAME)):
            return
        scales = pointer.adds and self._fixed is not None
        similar = self._similar(start, at, scales=scales)
        self._from = None
        last, self._fixed = self._fixed is not None, None

        def then() -> None:
            if not last:
                self._fixed = at
                self.changed.emit()
                return
            if scales:
                self.place.resized.emit()
                offer_drawn(self.place, index, similar)
            self.done.emit()

        laid = partial(lay_underlay, index=index, similar=similar, to_scale=scales)
        edit_apart(self.place, say("Move the picture"), laid, then, self._gesture)

    def _similar(self, start: Point, end: Point, *, scales: bool) -> Similarity:
        """Return how the picture goes when a place of it goes from `start` to `end`."""
        fixed = self._fixed
        if fixed is None:
            return Similarity.moving((end[0] - start[0], end[1] - start[1]))
        if not (apart(fixed, end, _SAME) and apart(fixed, start, _SAME)):
            return Similarity()
        towards, now = complex(*end) - complex(*fixed), complex(*start) - complex(*fixed)
        factor = dist(fixed, end) / dist(fixed, start) if scales else 1.0
        return Similarity.about(fixed, factor, degrees(phase(towards / now)))
