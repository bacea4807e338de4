"""A gesture that asks for a few places one after the other, and then does its work."""

from math import atan2, degrees, dist

from PySide6.QtCore import Qt
from PySide6.QtGui import QPainter

from enclosure_app.drawing.lengths import format_length
from enclosure_app.language import written
from enclosure_app.model.place import Point
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.ink.ink import pen
from enclosure_app.window.canvas.tools.tool import Pointer
from enclosure_app.window.canvas.tools.typing_tool import TypingTool
from enclosure_app.window.canvas.workplace import Workplace

_SAME = 0.01  # mm


class PlacesTool(TypingTool):
    """Takes places until it has `places` of them; two that follow each other are apart."""

    places = 2

    def __init__(self, place: Workplace) -> None:
        super().__init__(place)
        self.given: list[Point] = []

    def finish(self, given: list[Point]) -> None:
        """Do what the places mean."""
        raise NotImplementedError

    def asked(self) -> str:
        """Return what is asked for now, in one sentence."""
        raise NotImplementedError

    @property
    def hint(self) -> str:
        """Return what is typed, or what is asked for now."""
        return self.typed or self.asked()

    @property
    def anchor(self) -> Point | None:
        """Return the last place."""
        return self.given[-1] if self.given else None

    @property
    def told(self) -> str:
        """Return the length and the angle from the last place."""
        start = self.anchor
        if start is None or self.pointer is None:
            return ""
        end = self.pointer.at
        angle = degrees(atan2(end[1] - start[1], end[0] - start[0]))
        length = format_length(dist(start, end), self.place.document.project.units)
        return f"{length}   ∠ {written(f'{angle:.1f}')}°"

    def take(self, pointer: Pointer) -> None:
        """Take a place; after the last one, do the work."""
        if self.given and dist(self.given[-1], pointer.at) < _SAME:
            return
        self.given.append(pointer.at)
        if len(self.given) == self.places:
            given, self.given = self.given, []
            self.finish(given)

    def cancel(self) -> bool:
        """Give up what is typed, else the places."""
        if super().cancel():
            return True
        begun, self.given = bool(self.given), []
        self.changed.emit()
        return begun

    @property
    def begun(self) -> bool:
        """Return whether there is a place to take back."""
        return bool(self.given)

    def step_back(self) -> bool:
        """Take the last place back."""
        return bool(self.given and self.given.pop())

    def paint(self, painter: QPainter, camera: Camera) -> None:
        """Paint the way from place to place and on to the pointer."""
        dots = [camera.seen(point) for point in self.given]
        if dots and self.pointer is not None:
            dots.append(camera.seen(self.pointer.at))
        painter.setPen(pen(1.8))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPolyline(dots)
        for dot in dots:
            painter.drawEllipse(dot, 3.0, 3.0)
        self.paint_typed(painter, camera)
