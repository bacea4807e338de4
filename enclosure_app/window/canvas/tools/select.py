"""Pick and move: a click picks, a drag over nothing picks by a box, a drag of what is picked moves it."""

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QKeyEvent, QPainter, QPen

from enclosure_app.drawing.placement import box_around
from enclosure_app.model.edits import move_pieces, remove_pieces
from enclosure_app.model.place import Point
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.picking import line_at, piece_at, pieces_in
from enclosure_app.window.canvas.tools.tool import Pointer, Tool, say
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.document import new_gesture

_REACH = 6.0  # dots
_STILL = 4.0  # dots: a press that moves less is a click


class Select(Tool):
    """Picks pieces and lines, moves and deletes what is picked."""

    def __init__(self, place: Workplace) -> None:
        super().__init__(place)
        self._from: Pointer | None = None
        self._to: Point | None = None
        self._moving = False
        self._gesture = -1

    @property
    def hint(self) -> str:
        """Return what to do next."""
        if self.place.picked or self.place.picked_lines:
            return say("Drag to move what is picked; Delete removes it; Shift picks more.")
        return say("Click a sheet or a line to pick it, or drag a box around several.")

    def press(self, pointer: Pointer) -> None:
        """Pick what is there, and be ready to move it."""
        section = self.place.section
        if section is None:
            return
        self._from, self._to = pointer, None
        self._gesture = new_gesture()
        name = piece_at(section, pointer.bare, pointer.reach(_REACH))
        self._moving = bool(name)
        if name and pointer.adds:
            self.place.pick(self.place.picked ^ {name}, self.place.picked_lines)
        elif name and name not in self.place.picked:
            self.place.pick((name,))

    def move(self, pointer: Pointer) -> None:
        """Move what is picked, or draw the box out."""
        if self._from is None or not self._left(pointer):
            return
        last, self._to = self._to or self._from.bare, pointer.bare
        if self._moving:
            by = pointer.bare[0] - last[0], pointer.bare[1] - last[1]
            self._moved(by)
        self.changed.emit()

    def release(self, pointer: Pointer) -> None:
        """Pick what lies in the box; a mere click on nothing picks the line there, or lets go."""
        start, self._from = self._from, None
        if start is None or self._moving:
            self._moving = False
            return
        self._pick_box(start, pointer) if self._to else self._pick_line(pointer)
        self._to = None
        self.changed.emit()

    def key(self, event: QKeyEvent) -> bool:
        """Delete what is picked."""
        if event.key() not in (Qt.Key.Key_Delete, Qt.Key.Key_Backspace) or not self.place.picked:
            return False
        self.delete()
        return True

    def delete(self) -> None:
        """Remove what is picked."""
        names = self.place.picked
        many = say("Delete {} pieces").format(len(names))
        text = say("Delete the piece") if len(names) == 1 else many
        self.edit(text, lambda p, i: remove_pieces(p, i, names))

    def cancel(self) -> bool:
        """Give up the box, or take back the move."""
        begun, self._from, self._to = self._from is not None, None, None
        self._moving = False
        self.changed.emit()
        return begun

    def paint(self, painter: QPainter, camera: Camera) -> None:
        """Paint the box."""
        if self._from is None or self._to is None or self._moving:
            return
        box = QRectF(camera.seen(self._from.bare), camera.seen(self._to)).normalized()
        dashes = (
            Qt.PenStyle.DashLine if self._to[0] < self._from.bare[0] else Qt.PenStyle.SolidLine
        )
        painter.setPen(QPen(QColor(214, 51, 132), 1.2, dashes))
        painter.setBrush(QColor(214, 51, 132, 22))
        painter.drawRect(box)

    def _left(self, pointer: Pointer) -> bool:
        """Whether the mouse has left the place of the press far enough to mean a drag."""
        start = self._from
        return self._to is not None or (
            start is not None and (pointer.dot - start.dot).manhattanLength() > _STILL
        )

    def _moved(self, by: Point) -> None:
        names = self.place.picked
        self.edit(say("Move"), lambda p, i: move_pieces(p, i, names, by), gesture=self._gesture)

    def _pick_box(self, start: Pointer, pointer: Pointer) -> None:
        section = self.place.section
        if section is None:
            return
        box = box_around((start.bare, pointer.bare))
        found = pieces_in(section, box, whole=pointer.bare[0] >= start.bare[0])
        self.place.pick(self.place.picked | found if pointer.adds else found)

    def _pick_line(self, pointer: Pointer) -> None:
        section = self.place.section
        if section is None or pointer.adds:
            return
        handle = line_at(section, pointer.bare, pointer.reach(_REACH))
        self.place.pick((), (handle,) if handle else ())
