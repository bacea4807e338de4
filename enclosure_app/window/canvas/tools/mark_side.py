"""Mark a side: a click says where inside or outside is; a click on a mark of it takes it away."""

from PySide6.QtCore import QPointF
from PySide6.QtGui import QPainter

from enclosure_app.model.edits import Side, add_mark, remove_mark
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.ink import pen
from enclosure_app.window.canvas.picking import vertex_at
from enclosure_app.window.canvas.tools.tool import Pointer, say
from enclosure_app.window.canvas.tools.typing_tool import TypingTool
from enclosure_app.window.canvas.workplace import Workplace

_REACH = 10.0  # dots


class MarkSide(TypingTool):
    """Sets and takes away the marks of one side."""

    catches = False

    def __init__(self, place: Workplace, side: Side) -> None:
        super().__init__(place)
        self._side = side

    @property
    def hint(self) -> str:
        """Return what to do next."""
        if self.typed:
            return self.typed
        if self._side is Side.INSIDE:
            return say("Click a place inside the building; click a mark again to take it away.")
        return say("Click a place outside the building; click a mark again to take it away.")

    def take(self, pointer: Pointer) -> None:
        """Set a mark, or take away the one that is clicked."""
        section = self.place.section
        if section is None:
            return
        inside = self._side is Side.INSIDE
        marks = section.inside if inside else section.outside
        there = vertex_at(marks, pointer.at, pointer.reach(_REACH))
        if there is None:
            text = say("Mark inside") if inside else say("Mark outside")
            self.edit(text, lambda p, i: add_mark(p, i, self._side, pointer.at))
        else:
            text = say("Take the mark away")
            self.edit(text, lambda p, i: remove_mark(p, i, self._side, there))
        self.done.emit()

    def paint(self, painter: QPainter, camera: Camera) -> None:
        """Show exactly where the marks of this side stand."""
        section = self.place.section
        if section is None:
            return
        painter.setPen(pen(2.0))
        for mark in section.inside if self._side is Side.INSIDE else section.outside:
            at = camera.seen(mark)
            painter.drawLine(at - QPointF(8, 0), at + QPointF(8, 0))
            painter.drawLine(at - QPointF(0, 8), at + QPointF(0, 8))
        self.paint_typed(painter, camera)
