"""Cut short: says that the drawing leaves a strip out, between two break lines side by side.

The first line is given by its two ends, the second by how far off it lies. A click on a break line
that is there takes the break away.
"""

from itertools import chain
from math import dist, hypot

from PySide6.QtCore import Qt
from PySide6.QtGui import QPainter

from enclosure_app.drawing.lengths import format_length
from enclosure_app.geometry.runs.editing import moved
from enclosure_app.model.edits import add_break, remove_break
from enclosure_app.model.place import Point
from enclosure_app.model.section import Break
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.catching.catches import distance_to
from enclosure_app.window.canvas.ink.ink import pen
from enclosure_app.window.canvas.tools.places_tool import PlacesTool
from enclosure_app.window.canvas.tools.tool import Pointer, say
from enclosure_app.window.typed.typed_length import read_length

_REACH = 8.0  # dots
_LEAST = 0.1  # mm between the two lines


class CutShort(PlacesTool):
    """Sets and takes away the strips that a drawing leaves out."""

    places = 3

    def asked(self) -> str:
        """Return what to do next."""
        return (
            say("Click where a break line starts; a click on one that is there takes it away."),
            say("Click where the break line ends, right across all that is cut short."),
            say("Click where the second line lies, or type how wide the blank strip is."),
        )[len(self.given)]

    @property
    def anchor(self) -> Point | None:
        """Return the start of the first line while its end is asked for."""
        return self.given[0] if len(self.given) == 1 else None

    @property
    def told(self) -> str:
        """Return how long the line is, or how wide the strip."""
        if len(self.given) < 2 or self.pointer is None:
            return super().told
        units = self.place.document.project.units
        return format_length(abs(self._off(self.pointer.at)), units)

    def take(self, pointer: Pointer) -> None:
        """Take a place, or take away the break that is clicked first."""
        there = None if self.given else self._break_at(pointer)
        if there is None:
            super().take(pointer)
        else:
            self.edit(say("Take the break away"), lambda p, i: remove_break(p, i, there))

    def read(self, text: str) -> None:
        """Take a typed place, or how wide the strip is on the side of the pointer."""
        if len(self.given) < 2 or ";" in text:
            super().read(text)
            return
        wide = read_length(text, self.place.document.project.units)
        back = self.pointer is not None and self._off(self.pointer.at) < 0
        (ax, ay), (nx, ny) = self.given[0], self._across()
        wide = -wide if back else wide
        self.take(self.pointer_at((ax + nx * wide, ay + ny * wide)))

    def finish(self, given: list[Point]) -> None:
        """Say that what lies between the two lines is left out."""
        self.given = given
        off = self._off(given[2])
        far, self.given = self._far_line(off), []
        if abs(off) < _LEAST:
            return
        cut = Break((given[0], given[1]), far)
        if self.edit(say("Cut the drawing short"), lambda p, i: add_break(p, i, cut)):
            self.done.emit()

    def paint(self, painter: QPainter, camera: Camera) -> None:
        """Paint the two lines."""
        if len(self.given) < 2 or self.pointer is None:
            super().paint(painter, camera)
            return
        painter.setPen(pen(1.8))
        near, far = self.given[:2], self._far_line(self._off(self.pointer.at))
        for a, b in (near, far):
            painter.drawLine(camera.seen(a), camera.seen(b))
        painter.setPen(pen(1.2, Qt.PenStyle.DotLine))
        for a, b in zip(near, far, strict=True):
            painter.drawLine(camera.seen(a), camera.seen(b))
        self.paint_typed(painter, camera)

    def _across(self) -> Point:
        """Return the unit vector square to the first line, to its left."""
        (ax, ay), (bx, by) = self.given[:2]
        size = hypot(bx - ax, by - ay)
        return -(by - ay) / size, (bx - ax) / size

    def _off(self, at: Point) -> float:
        """Return how far a place lies to the left of the first line, mm."""
        (ax, ay), (nx, ny) = self.given[0], self._across()
        return (at[0] - ax) * nx + (at[1] - ay) * ny

    def _far_line(self, off: float) -> tuple[Point, Point]:
        nx, ny = self._across()
        a, b = moved(self.given[:2], (nx * off, ny * off))
        return a, b

    def _break_at(self, pointer: Pointer) -> int | None:
        section = self.place.section
        breaks = section.breaks if section else ()
        lines = chain.from_iterable(((i, b.near), (i, b.far)) for i, b in enumerate(breaks))
        off = [(distance_to(pointer.bare, *line), i) for i, line in lines if dist(*line) > 0]
        near = min(off, default=(float("inf"), 0))
        return near[1] if near[0] <= pointer.reach(_REACH) else None
