"""Mark a side: a click says where inside or outside is; a mark of it is dragged, or clicked away."""

from PySide6.QtCore import QPointF
from PySide6.QtGui import QPainter

from enclosure_app.model.edits import Side, add_mark, move_mark, remove_mark
from enclosure_app.model.place import Points
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.catching.picking import vertex_at
from enclosure_app.window.canvas.ink.ink import pen
from enclosure_app.window.canvas.tools.tool import Pointer, say
from enclosure_app.window.canvas.tools.typing_tool import TypingTool
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.document import new_gesture

_REACH = 10.0  # dots
_STILL = 4.0  # dots: a press that moves less is a click


class MarkSide(TypingTool):
    """Sets, moves and takes away the marks of one side."""

    catches = False

    def __init__(self, place: Workplace, side: Side) -> None:
        super().__init__(place)
        self._side = side
        self._held: int | None = None
        self._from: Pointer | None = None
        self._gesture = -1

    @property
    def hint(self) -> str:
        """Return what to do next."""
        if self.typed:
            return self.typed
        if self._side is Side.INSIDE:
            return say("Click a place inside the building; drag its mark, or click it away.")
        return say("Click a place outside the building; drag its mark, or click it away.")

    @property
    def marks(self) -> Points:
        """The marks of this side."""
        section = self.place.section
        if section is None:
            return ()
        return section.inside if self._side is Side.INSIDE else section.outside

    def press(self, pointer: Pointer) -> None:
        """Take hold of the mark that is there, or set one."""
        self._held = vertex_at(self.marks, pointer.at, pointer.reach(_REACH))
        self._from, self._gesture = pointer, new_gesture()
        if self._held is None:
            super().press(pointer)

    def move(self, pointer: Pointer) -> None:
        """Drag the mark that is held."""
        super().move(pointer)
        held, side = self._held, self._side
        if held is not None and self._dragged(pointer):
            self.edit(
                say("Move the mark"),
                lambda p, i: move_mark(p, i, side, held, pointer.at),
                gesture=self._gesture,
            )

    def release(self, pointer: Pointer) -> None:
        """Let the mark go; one that was only clicked is taken away."""
        held, self._held = self._held, None
        if held is None:
            return
        if self._dragged(pointer):
            self.done.emit()
        else:
            self._remove(held)

    def take(self, pointer: Pointer) -> None:
        """Set a mark, or take away the one that is there."""
        there = vertex_at(self.marks, pointer.at, pointer.reach(_REACH))
        if there is not None:
            self._remove(there)
            return
        text = say("Mark inside") if self._side is Side.INSIDE else say("Mark outside")
        if self.edit(text, lambda p, i: add_mark(p, i, self._side, pointer.at)):
            self.done.emit()

    def _remove(self, number: int) -> None:
        text = say("Take the mark away")
        if self.edit(text, lambda p, i: remove_mark(p, i, self._side, number)):
            self.done.emit()

    def _dragged(self, pointer: Pointer) -> bool:
        start = self._from
        return start is not None and (pointer.dot - start.dot).manhattanLength() > _STILL

    def paint(self, painter: QPainter, camera: Camera) -> None:
        """Show exactly where the marks of this side stand."""
        painter.setPen(pen(2.0))
        for mark in self.marks:
            at = camera.seen(mark)
            painter.drawLine(at - QPointF(8, 0), at + QPointF(8, 0))
            painter.drawLine(at - QPointF(0, 8), at + QPointF(0, 8))
        self.paint_typed(painter, camera)
