"""Trace: a click where a sheet starts and one where it ends; the drawn lines between become it.

After the second click the sheet is there. A key takes the next way that the lines offer, another
puts the sheet 3 mm beside the line, on one side and on the other. All of it undoes as one step.
"""

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QKeyEvent, QPainter, QPen

from enclosure_app.drawing.lengths import format_length
from enclosure_app.errors import EnclosureError
from enclosure_app.model.edits import add_piece
from enclosure_app.model.place import Line, Point, Points
from enclosure_app.model.project import Project
from enclosure_app.model.section import Section
from enclosure_app.planning.tracing import (
    BESIDE,
    LineworkGraph,
    NotJoinedError,
    Way,
    beside,
    graph_of,
    traced,
)
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.tools.tool import Pointer, Tool, say
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.document import new_gesture

_WAYS = 6
_INK = QColor(214, 51, 132)
_SIDES = (0.0, BESIDE, -BESIDE)  # mm to the left of the way, seen along it


class Trace(Tool):
    """Follows drawn lines from click to click."""

    cursor = Qt.CursorShape.CrossCursor
    catches = True

    def __init__(self, place: Workplace) -> None:
        super().__init__(place)
        self._from: Point | None = None
        self._graph: LineworkGraph | None = None
        self._graph_of: Section | None = None
        self._before: Project | None = None
        self._ways: tuple[Way, ...] = ()
        self._way, self._side, self._gesture = 0, 0, -1
        self._gap: tuple[Point, Point] | None = None

    @property
    def hint(self) -> str:
        """Return what to do next."""
        if self._from is not None:
            return say("Click where the sheet ends: the lines between are followed.")
        if self._ways:
            way = self._ways[self._way]
            told = say("Traced {}, way {} of {}. A takes the next way, D puts it beside the line.")
            units = self.place.document.project.units
            return told.format(format_length(way.length, units), self._way + 1, len(self._ways))
        return say("Click where the sheet starts, on a line that is drawn.")

    def press(self, pointer: Pointer) -> None:
        """Set the start, then the end."""
        section = self.place.section
        if section is None or self.place.product not in section.products:
            self.place.refused.emit(say("Choose a product in the list first: what is traced?"))
            return
        if self._from is None:
            self._from, self._ways, self._gap = pointer.at, (), None
        else:
            start, self._from = self._from, None
            self._trace(section, start, pointer.at)
        self.changed.emit()

    def key(self, event: QKeyEvent) -> bool:
        """Take the next way, or the next side of the line."""
        if not self._ways or self._from is not None:
            return False
        if event.key() == Qt.Key.Key_A:
            self._way = (self._way + 1) % len(self._ways)
        elif event.key() == Qt.Key.Key_D:
            self._side = (self._side + 1) % len(_SIDES)
        else:
            return False
        self._draw()
        return True

    def wants(self, event: QKeyEvent) -> bool:
        """Take A and D before any menu does, while there is a choice."""
        return bool(self._ways) and event.key() in (Qt.Key.Key_A, Qt.Key.Key_D)

    def cancel(self) -> bool:
        """Forget the start."""
        begun = self._from is not None or bool(self._ways) or self._gap is not None
        self._from, self._ways, self._gap = None, (), None
        self.changed.emit()
        return begun

    def paint(self, painter: QPainter, camera: Camera) -> None:
        """Paint the start, what was carried over gaps, and the gap where the lines part."""
        painter.setPen(QPen(_INK, 2.0))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        if self._from is not None:
            painter.drawEllipse(camera.seen(self._from), 6.0, 6.0)
        gaps = self._ways[self._way].gaps if self._ways else ()
        painter.setPen(QPen(_INK, 2.0, Qt.PenStyle.DotLine))
        for a, b in (*gaps, *((self._gap,) if self._gap else ())):
            painter.drawLine(camera.seen(a), camera.seen(b))
            painter.drawEllipse(camera.seen(a), 4.0, 4.0)
            painter.drawEllipse(camera.seen(b), 4.0, 4.0)

    def _trace(self, section: Section, start: Point, end: Point) -> None:
        if self._graph is None or self._graph_of is not section:
            self._graph, self._graph_of = graph_of(section), section
        try:
            self._ways = traced(self._graph, start, end, _WAYS)
        except NotJoinedError as error:
            self._gap = error.gap
            self.place.refuse(error)
            return
        except EnclosureError as error:
            self.place.refuse(error)
            return
        self._way = self._side = 0
        self._before, self._gesture = self.place.document.project, new_gesture()
        self._draw()

    def _draw(self) -> None:
        """Put the way that is chosen into the project in place of the one before."""
        before, product = self._before, self.place.product
        if before is None:
            return
        try:
            run = self._run()
        except EnclosureError as error:
            self.place.refuse(error)
            return
        name = before.sections[self.place.index].products[product].name
        text = say("Trace {}").format(name)
        self.edit(
            text,
            lambda _, i: add_piece(before, i, product, Line(run)),
            gesture=self._gesture,
        )
        self.changed.emit()

    def _run(self) -> Points:
        points, off = self._ways[self._way].points, _SIDES[self._side]
        if off == 0.0:
            return points
        (ax, ay), (bx, by) = points[0], points[1]
        middle = ((ax + bx) / 2, (ay + by) / 2)
        size = max(((bx - ax) ** 2 + (by - ay) ** 2) ** 0.5, 1e-9)
        side = middle[0] - (by - ay) / size * off, middle[1] + (bx - ax) / size * off
        return beside(points, side, abs(off))
