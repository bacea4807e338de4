"""A gesture that is given places: they are clicked, or typed as a length, at an angle, or as x; y.

What is typed stands beside the pointer until Enter takes it; Backspace takes a letter back, and
Escape all of it.
"""

from dataclasses import replace
from math import atan2, degrees, dist

from PySide6.QtCore import QPointF, QSizeF, Qt
from PySide6.QtGui import QKeyEvent, QKeySequence, QPainter

from enclosure_app.errors import EnclosureError
from enclosure_app.geometry.runs.editing import turned
from enclosure_app.model.place import Point
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.ink.lettering import words
from enclosure_app.window.canvas.tools.tool import Pointer, Tool
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.typed.typed_length import Typed, read_typed

_FIRST = set("0123456789.(")
_FROM = set("-@a")  # these too, where there is a place to go on from
_TYPED = set("0123456789.,'\"/ °@atmcinf;-()")  # with the letters of at, mm, cm, in and ft
_UNSEEN = Camera((0.0, 0.0), 1.0, QSizeF(1, 1))  # for a hand that has used no mouse yet


class TypingTool(Tool):
    """A gesture that is given places by the mouse or by keys."""

    cursor = Qt.CursorShape.CrossCursor
    catches = True

    def __init__(self, place: Workplace) -> None:
        super().__init__(place)
        self.typed = ""
        self.pointer: Pointer | None = None

    # ---- what each gesture makes of it ---------------------------------------------------------

    def take(self, pointer: Pointer) -> None:
        """Take a place that is given."""

    def look(self, pointer: Pointer) -> None:
        """Look at the place where the pointer is, before it is given."""

    def end(self) -> bool:
        """End what was begun, as Enter does; say whether there was anything."""
        return False

    def step_back(self) -> bool:
        """Take back the last place; say whether there was any."""
        return False

    def read(self, text: str) -> None:
        """Take what is typed; a length counts from the anchor towards the pointer.

        Raises:
            EnclosureError: it cannot be read.
        """
        at = self._meant(read_typed(text, self.place.document.project.units))
        if at is not None:
            self.take(self.pointer_at(at))

    @property
    def begun(self) -> bool:
        """Return whether there is a place that `step_back` takes back."""
        return False

    @property
    def signed(self) -> bool:
        """Return whether what is typed may begin with a minus sign or with "at"."""
        return False

    @property
    def told(self) -> str:
        """Return what stands beside the pointer while nothing is typed."""
        return ""

    # ---- the mouse and the keys ----------------------------------------------------------------

    def press(self, pointer: Pointer) -> None:
        """Take the place that is clicked."""
        self.pointer, self.typed = pointer, ""
        self.take(pointer)
        self.changed.emit()

    def move(self, pointer: Pointer) -> None:
        """Look where the pointer is."""
        self.pointer = pointer
        self.look(pointer)
        self.changed.emit()

    def key(self, event: QKeyEvent) -> bool:
        """Take letters of a length, Enter and Backspace."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            return self._enter()
        if event.key() == Qt.Key.Key_Backspace or event.matches(QKeySequence.StandardKey.Undo):
            return self._back()
        if not self._takes(event.text()):
            return False
        self.typed += event.text()
        self.changed.emit()
        return True

    def wants(self, event: QKeyEvent) -> bool:
        """Take the letters of a length before any menu does, and undo while it is about a place."""
        if event.matches(QKeySequence.StandardKey.Undo):
            return bool(self.typed) or self.begun
        plain = not event.modifiers() & ~Qt.KeyboardModifier.ShiftModifier
        keypad = event.modifiers() == Qt.KeyboardModifier.KeypadModifier
        return (plain or keypad) and self._takes(event.text())

    def cancel(self) -> bool:
        """Give up what is typed; say whether there was anything."""
        begun, self.typed = bool(self.typed), ""
        self.changed.emit()
        return begun

    def paint_typed(self, painter: QPainter, camera: Camera) -> None:
        """Write beside the pointer what is typed, or what there is to tell."""
        text = self.typed or self.told
        if text and self.pointer is not None:
            words(painter, camera.seen(self.pointer.at) + QPointF(14, 22), text)

    def pointer_at(self, at: Point) -> Pointer:
        """Return a pointer at a place that was typed."""
        if self.pointer is None:
            return Pointer(QPointF(), at, _UNSEEN)
        return replace(self.pointer, bare=at, catch=None, ray=None)

    def _takes(self, text: str) -> bool:
        if not text:
            return False
        first = _FIRST | _FROM if self.signed or self.anchor is not None else _FIRST
        return set(text) <= (_TYPED if self.typed else first)

    def _enter(self) -> bool:
        if not self.typed:
            return self.end()
        text, self.typed = self.typed, ""
        try:
            self.read(text)
        except EnclosureError as error:
            self.place.refuse(error)
        self.changed.emit()
        return True

    def _back(self) -> bool:
        if self.typed:
            self.typed = self.typed[:-1]
        elif not self.step_back():
            return False
        self.changed.emit()
        return True

    def _meant(self, typed: Typed) -> Point | None:
        """Return the place that is typed, None where a length has nothing to count from."""
        start = self.anchor
        if typed.place is not None or start is None:
            return typed.place
        end = self.pointer.at if self.pointer else (start[0] + 1.0, start[1])
        way = atan2(end[1] - start[1], end[0] - start[0])
        angle = degrees(way) if typed.angle is None else typed.angle
        length = dist(start, end) if typed.length is None else typed.length
        return turned([(start[0] + length, start[1])], start, angle)[0]
