"""Edit points: drag a point of a sheet; a double click on its line adds one, Delete takes one out."""

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QColor, QKeyEvent, QPainter, QPen

from enclosure_app.model.edits import delete_point, insert_point, move_point
from enclosure_app.model.place import Line, Points
from enclosure_app.model.section import Piece
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.picking import piece_at, segment_at, vertex_at
from enclosure_app.window.canvas.tools.tool import Pointer, Tool, say
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.document import new_gesture

_REACH = 9.0  # dots
_INK = QColor(214, 51, 132)


class EditPoints(Tool):
    """Moves, adds and removes the points of one piece."""

    catches = True
    catches_beside = True

    def __init__(self, place: Workplace) -> None:
        super().__init__(place)
        self._name = next(iter(place.picked), "")
        self._held: int | None = None
        self._last: int | None = None
        self._gesture = -1

    @property
    def without(self) -> frozenset[str]:
        """Return the piece that is not to catch itself."""
        return frozenset({self._name}) if self._held is not None else frozenset()

    @property
    def hint(self) -> str:
        """Return what to do next."""
        if not self._piece():
            return say("Click the sheet whose points are to be changed.")
        return say("Drag a point; double-click the line to add one; Delete takes the last out.")

    def press(self, pointer: Pointer) -> None:
        """Take hold of a point, or turn to another piece."""
        section = self.place.section
        if section is None:
            return
        piece = self._piece()
        near = vertex_at(_points(piece), pointer.bare, pointer.reach(_REACH)) if piece else None
        if near is None:
            name = piece_at(section, pointer.bare, pointer.reach(_REACH))
            self._turn_to(name)
            piece = self._piece()
            near = (
                vertex_at(_points(piece), pointer.bare, pointer.reach(_REACH)) if piece else None
            )
        self._held = self._last = near
        self._gesture = new_gesture()
        self.changed.emit()

    def move(self, pointer: Pointer) -> None:
        """Move the point that is held."""
        if self._held is None:
            return
        name, held, to = self._name, self._held, pointer.at
        self.edit(
            say("Move a point"),
            lambda p, i: move_point(p, i, name, held, to),
            gesture=self._gesture,
        )

    def release(self, pointer: Pointer) -> None:
        """Let the point go."""
        del pointer
        self._held = None
        self.changed.emit()

    def double(self, pointer: Pointer) -> None:
        """Add a point to the line."""
        piece = self._piece()
        points = _points(piece) if piece else ()
        if piece is None or vertex_at(points, pointer.bare, pointer.reach(_REACH)) is not None:
            return
        closed = not (isinstance(piece.shape, Line) and not piece.shape.closed)
        run = (*points, points[0]) if closed else points
        segment = segment_at(run, pointer.bare, pointer.reach(_REACH))
        if segment is not None:
            name, at = piece.name, pointer.bare
            self.edit(say("Add a point"), lambda p, i: insert_point(p, i, name, segment, at))
            self._last = segment + 1

    def key(self, event: QKeyEvent) -> bool:
        """Take out the point that was held last."""
        if event.key() not in (Qt.Key.Key_Delete, Qt.Key.Key_Backspace) or self._last is None:
            return False
        name, last = self._name, self._last
        self.edit(say("Take a point out"), lambda p, i: delete_point(p, i, name, last))
        self._last = None
        return True

    def wants(self, event: QKeyEvent) -> bool:
        """Take Delete while there is a point to take out, before it takes the whole piece."""
        return event.key() == Qt.Key.Key_Delete and self._last is not None

    def cancel(self) -> bool:
        """Let go of the piece."""
        begun = bool(self._name)
        self._name, self._held, self._last = "", None, None
        self.changed.emit()
        return begun

    def paint(self, painter: QPainter, camera: Camera) -> None:
        """Paint handles on the points."""
        piece = self._piece()
        if piece is None:
            return
        for number, point in enumerate(_points(piece)):
            at: QPointF = camera.seen(point)
            held = number in (self._held, self._last)
            painter.setPen(QPen(_INK, 1.6))
            painter.setBrush(_INK if held else QColor("#ffffff"))
            painter.drawEllipse(at, 4.5, 4.5)

    def _turn_to(self, name: str) -> None:
        self._name = name
        self.place.pick((name,) if name else ())

    def _piece(self) -> Piece | None:
        section = self.place.section
        return section.by_name.get(self._name) if section else None


def _points(piece: Piece) -> Points:
    return piece.shape.points if isinstance(piece.shape, Line) else piece.shape.outer
