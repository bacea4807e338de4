"""Edit points: drag a point of a sheet; a double click on its line adds one, Delete takes one out.

The point that was held last can also be moved by arrows, or by typing how far it is to be from the
point before it. Page Up and Page Down go from point to point.
"""

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QKeyEvent, QPainter

from enclosure_app.model.edits import delete_point, insert_point, move_point
from enclosure_app.model.place import Line, Point, Points
from enclosure_app.model.section import Piece
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.catching.picking import piece_at, segment_at, vertex_at
from enclosure_app.window.canvas.ink.ink import INK, pen
from enclosure_app.window.canvas.tools.arrows import nudged
from enclosure_app.window.canvas.tools.tool import Pointer, say
from enclosure_app.window.canvas.tools.typing_tool import TypingTool
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.document import new_gesture

_REACH = 9.0  # dots

Where = tuple[int, int]
"""A point of a piece: which ring (0 for a line and for the outline of an area), and which of it."""


class EditPoints(TypingTool):
    """Moves, adds and removes the points of one piece."""

    cursor = Qt.CursorShape.ArrowCursor
    catches_beside = True

    def __init__(self, place: Workplace) -> None:
        super().__init__(place)
        self._name = next(iter(sorted(place.picked)), "")
        self._held = False
        self._last: Where | None = None
        self._gesture = new_gesture()

    @property
    def without(self) -> frozenset[str]:
        """Return the piece that is not to catch itself."""
        return frozenset({self._name}) if self._held else frozenset()

    @property
    def hint(self) -> str:
        """Return what to do next."""
        if self.typed:
            return self.typed
        if not self._piece():
            return say("Click the sheet whose points are to be changed.")
        if self._last is None:
            return say("Drag a point; double-click the line to add one.")
        return say(
            "Drag it, move it by arrows, or type how far it is from the point before: 600 at 90. "
            "Delete takes it out."
        )

    @property
    def anchor(self) -> Point | None:
        """Return the point before the one that was held last, or after it where it is the first."""
        piece = self._piece()
        if piece is None or self._last is None:
            return None
        ring, index = self._last
        points = _rings(piece)[ring]
        if index == 0 and isinstance(piece.shape, Line) and not piece.shape.closed:
            return points[1]
        return points[index - 1]

    def press(self, pointer: Pointer) -> None:
        """Take hold of a point, or turn to another piece."""
        section = self.place.section
        if section is None:
            return
        self.pointer, self.typed = pointer, ""
        near = self._point_at(pointer)
        if near is None:
            self._turn_to(piece_at(section, pointer.bare, pointer.reach(_REACH)))
            near = self._point_at(pointer)
        self._held, self._last = near is not None, near
        self._gesture = new_gesture()
        self.changed.emit()

    def move(self, pointer: Pointer) -> None:
        """Move the point that is held."""
        self.pointer = pointer
        if self._held:
            self._put(pointer.at)
        self.changed.emit()

    def take(self, pointer: Pointer) -> None:
        """Move the point that was held last to a place that is typed."""
        self._gesture = new_gesture()
        self._put(pointer.at)

    def release(self, pointer: Pointer) -> None:
        """Let the point go."""
        del pointer
        self._held = False
        self.changed.emit()

    def double(self, pointer: Pointer) -> None:
        """Add a point to the line, where no point is yet."""
        piece = self._piece()
        if piece is None or self._point_at(pointer) is not None:
            return
        closed = not (isinstance(piece.shape, Line) and not piece.shape.closed)
        for ring, points in enumerate(_rings(piece)):
            run = (*points, points[0]) if closed else points
            segment = segment_at(run, pointer.bare, pointer.reach(_REACH))
            if segment is not None:
                self._add((ring, segment), pointer.bare)
                return

    def key(self, event: QKeyEvent) -> bool:
        """Take the last point out, move it by arrows, or go to another."""
        deletes = event.key() == Qt.Key.Key_Delete or (
            event.key() == Qt.Key.Key_Backspace and not self.typed
        )
        by = nudged(self.place, event)
        if deletes and self._last is not None:
            self._delete(self._last)
        elif by is not None and self._last is not None:
            x, y = self._at(self._last)
            self._put((x + by[0], y + by[1]))
        elif event.key() in (Qt.Key.Key_PageUp, Qt.Key.Key_PageDown):
            self._step(1 if event.key() == Qt.Key.Key_PageDown else -1)
        else:
            return super().key(event)
        return True

    def wants(self, event: QKeyEvent) -> bool:
        """Take Delete while there is a point to take out, before it takes the whole piece."""
        deletes = event.key() == Qt.Key.Key_Delete and self._last is not None
        return deletes or super().wants(event)

    def cancel(self) -> bool:
        """Give up what is typed, else let go of the point, else of the piece."""
        if super().cancel():
            return True
        begun = bool(self._name)
        if self._last is None:
            self._name = ""
        self._held, self._last = False, None
        self.changed.emit()
        return begun

    def paint(self, painter: QPainter, camera: Camera) -> None:
        """Paint handles on the points."""
        piece = self._piece()
        for ring, points in enumerate(_rings(piece)) if piece else ():
            for index, point in enumerate(points):
                painter.setPen(pen(1.6))
                held = (ring, index) == self._last
                painter.setBrush(INK if held else QColor(Qt.GlobalColor.white))
                painter.drawEllipse(camera.seen(point), 4.5, 4.5)
        self.paint_typed(painter, camera)

    def _put(self, to: Point) -> None:
        name, last = self._name, self._last
        if last is not None:
            self.edit(
                say("Move a point"),
                lambda p, i: move_point(p, i, name, last, to),
                gesture=self._gesture,
            )

    def _add(self, after: Where, at: Point) -> None:
        name = self._name
        self.edit(say("Add a point"), lambda p, i: insert_point(p, i, name, after, at))
        self._last = after[0], after[1] + 1

    def _delete(self, where: Where) -> None:
        name = self._name
        self.edit(say("Take a point out"), lambda p, i: delete_point(p, i, name, where))
        self._last = None
        self.changed.emit()

    def _step(self, by: int) -> None:
        """Go to the next point, or to the one before."""
        piece = self._piece()
        if piece is None:
            return
        every = [
            (ring, i) for ring, points in enumerate(_rings(piece)) for i in range(len(points))
        ]
        now = every.index(self._last) if self._last in every else (-1 if by > 0 else 0)
        self._last, self._gesture = every[(now + by) % len(every)], new_gesture()
        self.changed.emit()

    def _at(self, where: Where) -> Point:
        piece = self._piece()
        return _rings(piece)[where[0]][where[1]] if piece else (0.0, 0.0)

    def _point_at(self, pointer: Pointer) -> Where | None:
        piece = self._piece()
        for ring, points in enumerate(_rings(piece)) if piece else ():
            index = vertex_at(points, pointer.bare, pointer.reach(_REACH))
            if index is not None:
                return ring, index
        return None

    def _turn_to(self, name: str) -> None:
        self._name = name
        self.place.pick((name,) if name else ())

    def _piece(self) -> Piece | None:
        """Return the piece, whose points may have become fewer since the last one was held."""
        section = self.place.section
        piece = section.by_name.get(self._name) if section else None
        if piece is None or (self._last and self._last[1] >= len(_rings(piece)[self._last[0]])):
            self._last = None
        return piece


def _rings(piece: Piece) -> tuple[Points, ...]:
    shape = piece.shape
    return (shape.points,) if isinstance(shape, Line) else (shape.outer, *shape.holes)
