"""Move and copy what is picked: places are clicked or typed, and all is seen before it is done.

With Ctrl held at the last click the originals stay where they are and copies are made.
"""

from collections.abc import Collection
from math import dist

from PySide6.QtCore import Qt
from PySide6.QtGui import QPainter

from enclosure_app.drawing.lengths import format_length
from enclosure_app.model.edits import (
    copy_pieces,
    move_pieces,
)
from enclosure_app.model.place import Point
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.catching.picking import piece_at
from enclosure_app.window.canvas.ink.ink import pen
from enclosure_app.window.canvas.tools.proposing import REACH, ProposingTool, Wish
from enclosure_app.window.canvas.tools.tool import Pointer, say
from enclosure_app.window.canvas.workplace import Workplace

_SAME = 0.01  # mm


class Transform(ProposingTool):
    """Takes places one after the other, and does what they mean to what is picked."""

    places = 2  # how many are asked for

    def __init__(self, place: Workplace) -> None:
        super().__init__(place)
        self.given: list[Point] = []

    def meant(self, names: Collection[str], pointer: Pointer) -> Wish | None:
        """Return what the places given and that of the pointer mean."""
        raise NotImplementedError

    def ask(self) -> str:
        """Return what is asked for now, in one sentence."""
        return ""

    @property
    def next_step(self) -> str:
        """Return what to do next."""
        if not self.place.picked:
            return say("Click the sheet or board that is meant.")
        return self.ask()

    @property
    def anchor(self) -> Point | None:
        """Return the last place."""
        return self.given[-1] if self.given else None

    def wish(self, pointer: Pointer) -> Wish | None:
        """Return the change, once only the last place is missing."""
        names = self.place.picked
        ready = names and len(self.given) == self.places - 1
        return self.meant(names, pointer) if ready else None

    def take(self, pointer: Pointer) -> None:
        """Pick a piece if none is picked; else take a place, and after the last one do it."""
        if not self.place.picked:
            self._pick(pointer)
        elif len(self.given) < self.places - 1:
            self.given.append(pointer.at)
        elif self.accept(pointer):
            self.after()

    def after(self) -> None:
        """Go back to picking, with the same pieces picked."""
        self.given = []
        self.done.emit()

    def cancel(self) -> bool:
        """Give up what is typed, else the places."""
        if super().cancel():
            return True
        begun, self.given = bool(self.given), []
        self.forget()
        return begun

    @property
    def begun(self) -> bool:
        """Return whether there is a place to take back."""
        return bool(self.given)

    def step_back(self) -> bool:
        """Take the last place back."""
        return bool(self.given and self.given.pop())

    def paint(self, painter: QPainter, camera: Camera) -> None:
        """Paint the places, a line to the pointer, and the change."""
        painter.setPen(pen(1.2, Qt.PenStyle.DashLine))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        dots = [camera.seen(point) for point in self.given]
        if dots and self.pointer is not None:
            painter.drawLine(dots[0], camera.seen(self.pointer.at))
        for dot in dots:
            painter.drawEllipse(dot, 5.0, 5.0)
        super().paint(painter, camera)

    def _pick(self, pointer: Pointer) -> None:
        section = self.place.section
        name = piece_at(section, pointer.bare, pointer.reach(REACH)) if section else ""
        self.place.pick((name,) if name else ())


class Move(Transform):
    """Moves what is picked from a place to another; with `keeps`, copies it there again and again."""

    catches_beside = True

    def __init__(self, place: Workplace, *, keeps: bool = False) -> None:
        super().__init__(place)
        self._keeps = keeps

    def ask(self) -> str:
        """Return what is asked for now."""
        if not self.given:
            return say("Click the place to move from, best an end or a corner.")
        if self._keeps:
            return say("Click where the copy goes, or type how far: 600 at 90. Escape ends.")
        return say("Click the place to move to, or type how far: 600 at 90. Ctrl leaves a copy.")

    @property
    def told(self) -> str:
        """Return how far it goes."""
        if not self.given or self.pointer is None:
            return ""
        far = dist(self.given[0], self.pointer.at)
        return format_length(far, self.place.document.project.units)

    def meant(self, names: Collection[str], pointer: Pointer) -> Wish | None:
        """Move or copy by the way between the two places."""
        (ax, ay), (bx, by) = self.given[0], pointer.at
        way = bx - ax, by - ay
        if dist((0.0, 0.0), way) < _SAME:
            return None
        if self._keeps or pointer.keeps:
            return say("Copy"), lambda p, i: copy_pieces(p, i, names, way)
        return say("Move"), lambda p, i: move_pieces(p, i, names, way)

    def after(self) -> None:
        """Go on copying, or go back to picking."""
        if not self._keeps:
            super().after()
