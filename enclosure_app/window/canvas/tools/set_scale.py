"""Set scale: two clicks on a picture under the drawing, and how far apart they truly are.

What is typed stands beside the line between the clicks: a length, in which the picture becomes as
large as it truly is, or a length ``at`` an angle, in which it is turned as well. Lines of its page
go along; what was drawn over it by hand is offered to.
"""

from functools import partial
from math import atan2, degrees, dist

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QKeyEvent, QPainter

from enclosure_app.drawing.lengths import format_length
from enclosure_app.errors import EnclosureError
from enclosure_app.geometry.similarity import Similarity
from enclosure_app.model.edits import drawn_over, lay_drawn_too, lay_underlay, scaling
from enclosure_app.model.place import Point
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.ink.ink import pen
from enclosure_app.window.canvas.ink.lettering import words
from enclosure_app.window.canvas.tools.tool import Pointer, Tool, say
from enclosure_app.window.canvas.underlay.page_moving import edit_apart
from enclosure_app.window.canvas.underlay.pick import apart, movable, underlay_meant
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.typed.typed_length import read_typed

_TYPED = set("0123456789.,'\"/ °@atmcinf")  # with the letters of at, mm, cm, in and ft
_SAME = 1e-6  # mm


class SetScale(Tool):
    """Brings a picture to scale by two places and the length between them."""

    cursor = Qt.CursorShape.CrossCursor
    catches = True

    def __init__(self, place: Workplace) -> None:
        super().__init__(place)
        self._index: int | None = None
        self._first: Point | None = None
        self._second: Point | None = None
        self._end: Point | None = None
        self._typed = ""

    @property
    def hint(self) -> str:
        """Return what to do next."""
        if self._typed:
            return say("{} — Enter brings the picture to this scale.").format(self._typed)
        if self._second is not None:
            return say(
                "Type how far apart these two places truly are, such as 1200 or 4' 6\"; with "
                "“at 0” after it the line is laid level as well."
            )
        if self._first is not None:
            return say("Click the other end of that length; the longer it is, the better.")
        if movable(self.place):
            return say(
                "Click one end of a length that you know: a dimension, a door, a stud wall."
            )
        return say("There is no picture under the drawing that could be brought to scale.")

    @property
    def anchor(self) -> Point | None:
        """Return the first place."""
        return self._first if self._second is None else None

    def press(self, pointer: Pointer) -> None:
        """Set the first place, then the second; a third click begins anew."""
        if self._first is None or self._second is not None:
            self._begin(pointer.at)
        elif apart(self._first, pointer.at, _SAME):
            self._second = pointer.at
        self._typed = ""
        self.changed.emit()

    def move(self, pointer: Pointer) -> None:
        """Draw the line out to the mouse."""
        self._end = pointer.at
        if self._first is not None and self._second is None:
            self.changed.emit()

    def key(self, event: QKeyEvent) -> bool:
        """Take letters of a length, Enter and Backspace."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            return self._enter()
        if event.key() == Qt.Key.Key_Backspace and self._first is not None:
            self._take_back()
            return True
        text = event.text()
        if self._second is None or not text or not set(text) <= _TYPED:
            return False
        if self._typed or text != " ":
            self._typed += text
            self.changed.emit()
        return True

    def wants(self, event: QKeyEvent) -> bool:
        """Take the letters of a length before any menu does, once a digit is typed."""
        text = event.text()
        if self._second is None or not text:
            return False
        return text.isdigit() or (bool(self._typed) and set(text) <= _TYPED)

    def cancel(self) -> bool:
        """Give up what is typed, else the places."""
        begun = bool(self._typed) or self._first is not None
        if not self._typed:
            self._first = self._second = None
        self._typed = ""
        self.changed.emit()
        return begun

    def paint(self, painter: QPainter, camera: Camera) -> None:
        """Paint the line between the places, and what it measures or shall measure."""
        end = self._second or self._end
        if self._first is None or end is None or not apart(self._first, end, _SAME):
            return
        a, b = camera.seen(self._first), camera.seen(end)
        fixed = self._second is not None
        painter.setPen(pen(2.0, Qt.PenStyle.SolidLine if fixed else Qt.PenStyle.DashLine))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawLine(a, b)
        for dot in (a, b):
            painter.drawEllipse(dot, 3.5, 3.5)
        words(painter, (a + b) / 2 + QPointF(12, -10), self._told(self._first, end))

    def _told(self, first: Point, end: Point) -> str:
        if self._typed:
            return f"{self._typed}▏"
        units = self.place.document.project.units
        now = format_length(dist(first, end), units)
        return say("{} now. How long is it truly?").format(now) if self._second else now

    def _begin(self, at: Point) -> None:
        self._second = None
        self._first = None
        self._index = underlay_meant(self.place, at)
        if self._index is not None:
            self._first = at
        elif movable(self.place):
            self.place.refused.emit(say("Click on the picture that is to be brought to scale."))
        else:
            self.place.refused.emit(
                say(
                    "No picture here can be brought to scale: put one under the drawing, or unlock it."
                )
            )

    def _enter(self) -> bool:
        if self._first is None or self._second is None or self._index is None:
            return False
        if self._typed:
            try:
                similar = self._similar((self._first, self._second))
            except EnclosureError as error:
                self.place.refuse(error)
                self._typed = ""
                self.changed.emit()
            else:
                self._apply(self._index, similar)
        return True

    def _similar(self, places: tuple[Point, Point]) -> Similarity:
        """Return what the typed length, and angle, make of the picture."""
        typed = read_typed(self._typed, self.place.document.project.units)
        if typed.length is None:
            raise EnclosureError(say("Type a length first, as in 1200 at 0."))
        if typed.angle is None:
            return scaling(places, typed.length)
        (ax, ay), (bx, by) = places
        now = degrees(atan2(by - ay, bx - ax))
        # a line laid level may have been clicked from either end: nothing is turned on its head
        over = 180.0 if abs((typed.angle - now + 180.0) % 360.0 - 180.0) > 90.0 else 0.0
        return scaling(places, typed.length, typed.angle + over)

    def _apply(self, index: int, similar: Similarity) -> None:
        self._typed = ""
        self._first = self._second = None

        def then() -> None:
            self.place.resized.emit()
            offer_drawn(self.place, index, similar)
            self.done.emit()

        text = say("Set the scale of the picture")
        scaled = partial(lay_underlay, index=index, similar=similar, to_scale=True)
        edit_apart(self.place, text, scaled, then)

    def _take_back(self) -> None:
        if self._typed:
            self._typed = self._typed[:-1]
        elif self._second is not None:
            self._second = None
        else:
            self._first = None
        self.changed.emit()


def offer_drawn(place: Workplace, index: int, similar: Similarity) -> None:
    """Offer to bring to scale what was drawn over a picture before it was."""
    drawn = drawn_over(place.document.project, index)
    if not drawn:
        return
    after = place.document.project

    def bring() -> None:
        if place.document.project is after:
            place.document.apply(
                say("Bring what is drawn to scale"), lay_drawn_too(after, index, similar)
            )
            place.resized.emit()

    one = say("The sheet that you drew over the picture has kept its size.")
    many = say("The {} pieces that you drew over the picture have kept their size.")
    question = one if len(drawn) == 1 else many.format(len(drawn))
    place.asked.emit(question, {say("Bring it to scale as well"): bring})
