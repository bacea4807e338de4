"""Trace: a click where a sheet starts and one where it ends; the drawn lines between become it.

The way is shown before it is clicked. Further clicks go on with the same sheet, Enter or a double
click ends it. Tab takes the next way that the lines offer; D lays the sheet outside of its line,
inside of it or on it; a typed length is the distance. Every sheet undoes as one step.
"""

from math import dist

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QKeyEvent, QPainter

from enclosure_app.drawing.lengths import format_length
from enclosure_app.errors import EnclosureError
from enclosure_app.model.edits import add_piece
from enclosure_app.model.place import Line, Point, Points
from enclosure_app.model.project import Project
from enclosure_app.model.section import Section
from enclosure_app.planning.tracing.guiding import Lay, laid, on_line, outer_left, run_of
from enclosure_app.planning.tracing.tracing import LineworkGraph, NotJoinedError
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.tools.net import Net
from enclosure_app.window.canvas.tools.tool import Pointer, say
from enclosure_app.window.canvas.tools.trace_leg import REACH, Leg, leg_shown, leg_to
from enclosure_app.window.canvas.tools.trace_marks import (
    lay_words,
    paint_gap,
    paint_start,
    paint_way,
)
from enclosure_app.window.canvas.tools.typing_tool import TypingTool
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.document import new_gesture
from enclosure_app.window.typed.typed_length import read_length

_LOOK = 30  # ms between two looks at the way to the mouse
_LAYS = (Lay.ON, Lay.OUTSIDE, Lay.INSIDE)


class Trace(TypingTool):
    """Follows drawn lines from click to click."""

    def __init__(self, place: Workplace) -> None:
        super().__init__(place)
        self._net = Net(self)
        self._net.ready.connect(self._go_on)
        self._start: Point | None = None
        self._legs: list[Leg] = []
        self._ahead: Leg | None = None
        self._before: Project | None = None
        self._after: Project | None = None
        self._product, self._gesture = "", -1
        self._gap: tuple[Point, Point] | None = None
        self._waiting: list[Pointer] = []  # clicks that came before the net was there
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(_LOOK)
        self._soon.timeout.connect(self._look_ahead)
        section = place.section
        if section is not None:
            self._net.of(section)  # so that it is there when the first click comes

    @property
    def hint(self) -> str:
        """Return what to do next."""
        if self._waiting:
            return say("The drawn lines are being gathered; your click is not forgotten…")
        if self.typed:
            return say("{} beside the line — Enter takes it.").format(self.typed)
        if self._start is None:
            return say("Click where the sheet starts, on a line that is drawn.")
        if not self._legs:
            return (
                say("Click where the sheet ends: the lines between are followed.") + self._lies()
            )
        told = say("Click to go on, Enter ends the sheet; Tab takes another way.")
        return told + self._lies()

    def _lies(self) -> str:
        """Say where the sheet lies, and by which key it lies elsewhere."""
        section, lay = self.place.section, self.place.aids.lay
        marked = section is not None and bool(section.outside or section.inside)
        off = format_length(self.place.aids.beside, self.place.document.project.units)
        return " " + lay_words(lay, marked=marked).format(off)

    # ---- the mouse and the keys ----------------------------------------------------------------

    def take(self, pointer: Pointer) -> None:
        """Set the start, then the end of one leg after the other."""
        section = self.place.section
        if section is None or self.place.product not in section.products:
            self.place.refused.emit(say("Choose a product in the list first: what is traced?"))
            return
        self._gap = None
        if self._is_over():
            self.end()
        net = self._net.of(section)
        if net is None:
            self._waiting.append(pointer)
        else:
            self._click(net, pointer)

    def look(self, pointer: Pointer) -> None:
        """Look soon at the way to the mouse."""
        del pointer
        if self._start is not None and not self._soon.isActive():
            self._soon.start()

    def double(self, pointer: Pointer) -> None:
        """End the sheet: the first of the two clicks has set its end."""
        del pointer
        self.end()

    def read(self, text: str) -> None:
        """Take a typed distance beside the line.

        Raises:
            EnclosureError: it is no length.
        """
        off = read_length(text, self.place.document.project.units)
        lay = Lay.OUTSIDE if self.place.aids.lay is Lay.ON else self.place.aids.lay
        self._lay(beside=off, lay=lay)

    def key(self, event: QKeyEvent) -> bool:
        """Lay the sheet on another side of the line, or take what is typed."""
        if self.typed or event.key() != Qt.Key.Key_D:
            return super().key(event)
        lays = _LAYS.index(self.place.aids.lay)
        self._lay(lay=_LAYS[(lays + 1) % len(_LAYS)])
        return True

    def wants(self, event: QKeyEvent) -> bool:
        """Take D and the letters of a length before any menu does."""
        plain = event.modifiers() == Qt.KeyboardModifier.NoModifier
        return (plain and event.key() == Qt.Key.Key_D) or super().wants(event)

    def turn(self, *, onward: bool) -> bool:
        """Take the next way of the leg that was clicked, or of the one that is shown."""
        if self._is_over():
            self.end()
        leg = self._ahead or (self._legs[-1] if self._legs else None)
        if leg is None:
            return False
        leg.turn(1 if onward else -1)
        if self._ahead is None:
            self._draw()
        self.changed.emit()
        return True

    def cancel(self) -> bool:
        """Give up what is typed, or what is not clicked yet; what was clicked stays."""
        begun = bool(self.typed) or self._start is not None or self._gap is not None
        if not super().cancel():
            self.end()
        return begun

    def end(self) -> bool:
        """End the sheet, so that the next click begins another; say whether there was one."""
        begun = self._start is not None
        self._start, self._legs, self._ahead, self._gap = None, [], None, None
        self._waiting = []
        self.changed.emit()
        return begun

    @property
    def begun(self) -> bool:
        """Return whether there is a place to take back, which something else has not overtaken."""
        return self._start is not None and not self._is_over()

    def step_back(self) -> bool:
        """Take the last leg back, else the start."""
        if self._start is None:
            return False
        if not self._legs or self._is_over():
            return self.end()
        self._legs.pop()
        self._ahead = None
        self._draw() if self._legs else self._undo()
        return True

    # ---- what is traced ------------------------------------------------------------------------

    def _click(self, net: LineworkGraph, pointer: Pointer) -> None:
        try:
            at = on_line(net, pointer.at, pointer.reach(REACH))
            if self._start is None:
                self._begin(at)
            else:
                self._add(net, at)
        except NotJoinedError as error:
            self._gap = error.gap
            self.place.refuse(error)
        except EnclosureError as error:
            self.place.refuse(error)

    def _begin(self, at: Point) -> None:
        self._start, self._product = at, self.place.product
        self._before = self._after = self.place.document.project
        self._gesture = new_gesture()

    def _add(self, net: LineworkGraph, at: Point) -> None:
        """Add the leg to a place: the one that is shown, if that is where it leads."""
        shown = self._ahead
        if shown is None or dist(shown.way.points[-1], at) > 1e-6:
            shown = leg_to(net, self._last, at)
        self._legs.append(shown)
        self._ahead = None
        self._draw()

    @property
    def _last(self) -> Point:
        """The place from which the next leg goes."""
        if self._legs:
            return self._legs[-1].way.points[-1]
        return self._start or (0.0, 0.0)

    def _look_ahead(self) -> None:
        """Find the way to the mouse; where there is none, nothing is shown."""
        section, pointer = self.place.section, self.pointer
        shown, self._ahead = self._ahead, None
        if section is None or pointer is None or self._start is None or self._is_over():
            return
        net = self._net.of(section)
        if net is not None:
            found = leg_shown(net, self._last, (pointer.at, pointer.reach(REACH)))
            same = shown and found and shown.way.points[-1] == found.way.points[-1]
            self._ahead = shown if same else found  # a way that was chosen by Tab stays chosen
        self.changed.emit()

    def _run(self, several: list[Leg]) -> Points:
        """Return where the sheet lies."""
        section, aids = self.place.section, self.place.aids
        points = run_of([leg.way for leg in several])
        if section is None or aids.lay is Lay.ON or len(points) < 2:
            return points
        left = outer_left(section, points)
        return laid(points, aids.lay, aids.beside, outer_left=left)

    def _draw(self) -> None:
        """Put the sheet into the project in place of what it was before."""
        before, product = self._before, self._product
        if before is None or not self._legs:
            return
        try:
            run = self._run(self._legs)
        except EnclosureError as error:
            self.place.refuse(error)
            return
        text = say("Trace {}").format(_name(before.sections[self.place.index], product))
        self.edit(
            text,
            lambda _, i: add_piece(before, i, product, Line(run)),
            gesture=self._gesture,
        )
        self._after = self.place.document.project
        self.changed.emit()

    def _is_over(self) -> bool:
        """Whether something else was done meanwhile, so that the next click begins anew."""
        same = self.place.document.project is self._after and self.place.product == self._product
        return self._start is not None and not same

    def _lay(self, **how: object) -> None:
        if self._is_over():
            self.end()  # it is meant for the sheet to come
        self.place.aid(**how)
        self._draw()
        self.changed.emit()

    def _undo(self) -> None:
        """Take the whole sheet back; the start stays."""
        self.place.document.undo_stack.undo()
        self._after = self._before = self.place.document.project
        self._gesture = new_gesture()

    def _go_on(self) -> None:
        """Do the clicks that came before the net was there."""
        waiting, self._waiting = self._waiting, []
        for pointer in waiting:
            self.take(pointer)
        self.changed.emit()

    # ---- what is shown -------------------------------------------------------------------------

    def paint(self, painter: QPainter, camera: Camera) -> None:
        """Paint the start, the way to the mouse, and what is carried over where nothing is drawn."""
        paint_start(painter, camera, None if self._start is None else self._last)
        several = [*self._legs, *([self._ahead] if self._ahead else [])]
        if self._ahead is not None:
            paint_way(painter, camera, self._shown_run(several))
        gaps = [gap for leg in several for gap in leg.way.gaps]
        units = self.place.document.project.units
        for gap in (*gaps, *((self._gap,) if self._gap else ())):
            paint_gap(painter, camera, gap, units)
        self.paint_typed(painter, camera)

    @property
    def told(self) -> str:
        """Return how long the sheet would be."""
        if self._ahead is None:
            return ""
        several = [*self._legs, self._ahead]
        return format_length(_length(several), self.place.document.project.units)

    def _shown_run(self, several: list[Leg]) -> Points:
        try:
            return self._run(several)
        except EnclosureError:
            return several[-1].way.points  # what is amiss is said when it is clicked


def _length(several: list[Leg]) -> float:
    return sum(leg.way.length for leg in several)


def _name(section: Section, product: str) -> str:
    return section.products[product].name
