"""Pick and move: a click picks, a drag over nothing picks by a box, a drag of what is picked moves it.

What is dragged is held by the end or corner that is near the mouse, and lands on ends, crossings
and places beside boards. Shift while dragging keeps to angles, Ctrl drags a copy.
"""

from math import dist

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QKeyEvent, QPainter

from enclosure_app.drawing.placement import box_around
from enclosure_app.model.edits import copy_pieces, move_pieces, remove_pieces
from enclosure_app.model.edits.looking_up import runs_of
from enclosure_app.model.place import Point
from enclosure_app.model.project import Project
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.catching.picking import (
    line_at,
    lines_in,
    lines_pass,
    piece_at,
    pieces_in,
)
from enclosure_app.window.canvas.ink.ink import pen, wash
from enclosure_app.window.canvas.ink.lettering import words
from enclosure_app.window.canvas.tools.arrows import nudged
from enclosure_app.window.canvas.tools.tool import Pointer, Tool, say
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.document import new_gesture

_REACH = 6.0  # dots
_GRIP = 10.0  # dots: an end so near to the press is what is held
_STILL = 4.0  # dots: a press that moves less is a click


class Select(Tool):
    """Picks pieces and lines, moves and deletes what is picked."""

    catches_beside = True

    def __init__(self, place: Workplace) -> None:
        super().__init__(place)
        self._from: Pointer | None = None
        self._to: Point | None = None
        self._touching = False  # whether the box also picks what it only touches
        self._held: Point | None = None  # the place of what is dragged that follows the mouse
        self._before: Project | None = None
        self._gesture = new_gesture()
        self._nudging: frozenset[str] = frozenset()

    @property
    def hint(self) -> str:
        """Return what to do next."""
        if self.place.picked or self.place.picked_lines:
            return say(
                "Drag it, with Ctrl a copy; arrows move it a little; a double click shows its points; "
                "Shift picks more."
            )
        return say(
            "Click a sheet or a line to pick it, or drag a box around several; with Ctrl it picks all "
            "it touches."
        )

    @property
    def anchor(self) -> Point | None:
        """Return where what is dragged came from."""
        return self._held if self._before else None

    @property
    def without(self) -> frozenset[str]:
        """Return what is dragged, which is not to catch itself."""
        return self.place.picked if self._before else frozenset()

    def press(self, pointer: Pointer) -> None:
        """Pick what is there, and be ready to move it."""
        section = self.place.section
        if section is None:
            return
        self._from, self._to, self._before = pointer, None, None
        at, reach = pointer.bare, pointer.reach(_REACH)
        name = "" if lines_pass(section, at, reach) else piece_at(section, at, reach)
        self._held = self._grip(pointer) if name else None
        if name and pointer.adds:
            self.place.pick(self.place.picked ^ {name}, self.place.picked_lines)
        elif name and name not in self.place.picked:
            self.place.pick((name,))
        self._held = self._grip(pointer) if name else None

    def move(self, pointer: Pointer) -> None:
        """Move what is picked, or draw the box out."""
        if self._from is None or not self._left(pointer):
            return
        self._to, self._touching = pointer.bare, pointer.keeps
        if self._held is not None and self.place.picked:
            self._drag(pointer, self._held)
        self.changed.emit()

    def release(self, pointer: Pointer) -> None:
        """Pick what lies in the box; a mere click on nothing picks the line there, or lets go."""
        start, held, self._from = self._from, self._held, None
        self._end_drag()
        if start is None or held is not None:
            return
        self._pick_box(start, pointer) if self._to else self._pick_line(pointer)
        self._to = None
        self.changed.emit()

    def double(self, pointer: Pointer) -> None:
        """Go on with the points of the piece that is there."""
        section = self.place.section
        name = piece_at(section, pointer.bare, pointer.reach(_REACH)) if section else ""
        if name:
            self.place.pick((name,))
            self.wanted.emit("points")

    def key(self, event: QKeyEvent) -> bool:
        """Delete what is picked, or move it by arrows."""
        if not self.place.picked:
            return False
        if event.key() in (Qt.Key.Key_Delete, Qt.Key.Key_Backspace):
            self.delete()
            return True
        by = nudged(self.place, event)
        if by is not None:
            self._nudge(by)
        return by is not None

    def delete(self) -> None:
        """Remove what is picked."""
        names = self.place.picked
        many = say("Delete {} pieces").format(len(names))
        text = say("Delete the piece") if len(names) == 1 else many
        self.edit(text, lambda p, i: remove_pieces(p, i, names))

    def cancel(self) -> bool:
        """Take back the move, give up the box, or let go of what is picked."""
        begun = self._from is not None
        self.put_away()
        if not begun and (self.place.picked or self.place.picked_lines):
            self.place.pick(())
            begun = True
        self.changed.emit()
        return begun

    def put_away(self) -> None:
        """Take back the move and give up the box; what is picked stays so, for the next tool."""
        if self._before is not None:
            self.place.document.apply(say("Move"), self._before, gesture=self._gesture)
        self._from, self._to = None, None
        self._end_drag()

    def paint(self, painter: QPainter, camera: Camera) -> None:
        """Paint the box."""
        if self._from is None or self._to is None or self._held is not None:
            return
        box = QRectF(camera.seen(self._from.bare), camera.seen(self._to)).normalized()
        style = Qt.PenStyle.DashLine if self._touching else Qt.PenStyle.SolidLine
        painter.setPen(pen(1.2, style))
        painter.setBrush(wash(22))
        painter.drawRect(box)
        told = say("all it touches") if self._touching else say("what lies in it as a whole")
        words(painter, camera.seen(self._to) + QPointF(14, 22), told)

    def _left(self, pointer: Pointer) -> bool:
        """Whether the mouse has left the place of the press far enough to mean a drag."""
        start = self._from
        return self._to is not None or (
            start is not None and (pointer.dot - start.dot).manhattanLength() > _STILL
        )

    def _grip(self, pointer: Pointer) -> Point:
        """Return the end or corner of what is picked that is near the press, else its place."""
        section, at = self.place.section, pointer.bare
        pieces = [section.by_name[name] for name in self.place.picked] if section else []
        points = [point for piece in pieces for run in runs_of(piece.shape) for point in run]
        near = min(points, key=lambda point: dist(point, at), default=at)
        return near if dist(near, at) <= pointer.reach(_GRIP) else at

    def _drag(self, pointer: Pointer, held: Point) -> None:
        """Move what is picked, as it was at the press, to where the mouse is now."""
        if self._before is None:
            self._before, self._gesture = self.place.document.project, new_gesture()
            self.catches = True
        before, names, start = self._before, self.place.picked, self._from
        at = pointer.at
        if start is not None and pointer.catch is None and pointer.ray is None:
            bare = pointer.bare  # the grip keeps its distance from the mouse until it is caught
            at = held[0] + bare[0] - start.bare[0], held[1] + bare[1] - start.bare[1]
        by = at[0] - held[0], at[1] - held[1]
        keeps = pointer.keeps
        change = copy_pieces if keeps else move_pieces
        self.edit(
            say("Copy") if keeps else say("Move"),
            lambda _, i: change(before, i, names, by),
            gesture=self._gesture,
        )

    def _end_drag(self) -> None:
        self._before, self._held, self.catches = None, None, False

    def _nudge(self, by: Point) -> None:
        """Move by a little; arrows pressed one after the other undo as one step."""
        names = self.place.picked
        if self._nudging != names:
            self._nudging, self._gesture = names, new_gesture()
        self.edit(say("Move"), lambda p, i: move_pieces(p, i, names, by), gesture=self._gesture)

    def _pick_box(self, start: Pointer, pointer: Pointer) -> None:
        section = self.place.section
        if section is None:
            return
        box = box_around((start.bare, pointer.bare))
        whole = not pointer.keeps
        found = pieces_in(section, box, whole=whole)
        lines = frozenset[str]() if found else lines_in(section, box, whole=whole)
        if pointer.adds:
            found, lines = found | self.place.picked, lines | self.place.picked_lines
        self.place.pick(found, lines)

    def _pick_line(self, pointer: Pointer) -> None:
        section = self.place.section
        if section is None:
            return
        handle = line_at(section, pointer.bare, pointer.reach(_REACH))
        lines = frozenset((handle,) if handle else ())
        if pointer.adds:
            self.place.pick(self.place.picked, self.place.picked_lines ^ lines)
        else:
            self.place.pick((), lines)
