"""Cut back, run on, cut, join: what a click would do to a line is seen before it is done."""

from itertools import pairwise
from math import dist

from enclosure_app.model.edits import End, join, lengthen, nearest_end, run_on, split, trim
from enclosure_app.model.edits.looking_up import runs_of
from enclosure_app.model.place import Line, Point, Points
from enclosure_app.model.section import Piece
from enclosure_app.window.canvas.catching.catches import distance_to
from enclosure_app.window.canvas.catching.picking import line_piece_at, lines_along
from enclosure_app.window.canvas.tools.proposing import REACH, ProposingTool, Wish
from enclosure_app.window.canvas.tools.tool import Pointer, say
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.typed.typed_length import read_signed

_ON = 0.01  # mm


class LineTool(ProposingTool):
    """Works on the line under the pointer."""

    catches = False

    def wish(self, pointer: Pointer) -> Wish | None:
        """Return what a click would do to the line that is there."""
        piece = self.line_at(pointer)
        return self.on_line(piece, pointer) if piece else None

    def on_line(self, piece: Piece, pointer: Pointer) -> Wish | None:
        """Return what a click would do to a line."""
        raise NotImplementedError

    def line_at(self, pointer: Pointer) -> Piece | None:
        """Return the line piece at the pointer."""
        section = self.place.section
        if section is None:
            return None
        return line_piece_at(section, pointer.bare, pointer.reach(REACH))


class CutBack(LineTool):
    """Takes a part of a line away, up to where others cross it."""

    @property
    def next_step(self) -> str:
        """Return what to do next."""
        return say("Click the part of a sheet to take away, up to where another crosses it.")

    def on_line(self, piece: Piece, pointer: Pointer) -> Wish | None:
        """Take away the part at the pointer."""
        name, at = piece.name, pointer.bare
        return say("Cut back"), lambda p, i: trim(p, i, name, at)


class RunOn(LineTool):
    """Lets a line run straight on from an end, to what is in its way or by a typed length."""

    def __init__(self, place: Workplace) -> None:
        super().__init__(place)
        self._last: Piece | None = None
        self._over: Pointer | None = None

    @property
    def next_step(self) -> str:
        """Return what to do next."""
        if self._last is None:
            return say("Point at a sheet near the end that is to run on.")
        return say("Click: it runs on to what is in its way. Or type how far; below 0 is back.")

    def look(self, pointer: Pointer) -> None:
        """Remember the line, since what is typed goes on from its end when the mouse has left."""
        piece = self.line_at(pointer)
        if piece is not None:
            self._last, self._over = piece, pointer
        super().look(pointer)

    def on_line(self, piece: Piece, pointer: Pointer) -> Wish | None:
        """Run on to what is in the way."""
        if not isinstance(piece.shape, Line):
            return None
        name, end, section = piece.name, nearest_end(piece.shape, pointer.bare), self.place.section
        points = piece.shape.points if end is End.END else piece.shape.points[::-1]
        before = next((p for p in reversed(points) if dist(p, points[-1]) > _ON), None)
        lines = lines_along(section, before, points[-1]) if section and before else None
        return say("Run on"), lambda p, i: run_on(p, i, name, end, lines)

    def read(self, text: str) -> None:
        """Run on by a typed length."""
        if self._last is None or self._over is None or ";" in text:
            super().read(text)
            return
        by = read_signed(text, self.place.document.project.units)
        piece, over = self._last, self._over
        if isinstance(piece.shape, Line):
            name, end = piece.name, nearest_end(piece.shape, over.bare)
            self.edit(say("Run on"), lambda p, i: lengthen(p, i, name, end, by))
        self._last = None
        self.forget()

    @property
    def signed(self) -> bool:
        """Return whether a length may be typed: there is a line to run on."""
        return self._last is not None


class Cut(LineTool):
    """Cuts a line in two."""

    catches = True

    @property
    def next_step(self) -> str:
        """Return what to do next."""
        return say("Click where a sheet is to be cut in two.")

    def on_line(self, piece: Piece, pointer: Pointer) -> Wish | None:
        """Cut it at what the pointer caught on it, else at the place nearest to the pointer."""
        name = piece.name
        caught = any(_passes(run, pointer.at) for run in runs_of(piece.shape))
        at = pointer.at if caught else pointer.bare
        return say("Cut"), lambda p, i: split(p, i, name, at)


def _passes(run: Points, at: Point) -> bool:
    return any(distance_to(at, a, b) < _ON for a, b in pairwise(run))


class Join(LineTool):
    """Joins two lines end to end, or closes one that is clicked twice."""

    def __init__(self, place: Workplace) -> None:
        super().__init__(place)
        picked = sorted(place.picked)
        self._first = picked[0] if len(picked) == 1 else ""

    @property
    def next_step(self) -> str:
        """Return what to do next."""
        if not self._first:
            return say("Click the first of two sheets of one product that meet end to end.")
        return say("Click the sheet that goes on from it; the same one again closes it.")

    def on_line(self, piece: Piece, pointer: Pointer) -> Wish | None:
        """Join it to the first."""
        del pointer
        first, second = self._first, piece.name
        return (say("Join"), lambda p, i: join(p, i, first, second)) if first else None

    def take(self, pointer: Pointer) -> None:
        """Take the first line, then join the second to it."""
        piece = self.line_at(pointer)
        if piece is None:
            return
        if not self._first:
            self._first = piece.name
            self.place.pick((piece.name,))
        elif self.accept(pointer):
            self._first = ""

    def cancel(self) -> bool:
        """Forget the first line."""
        if super().cancel():
            return True
        begun, self._first = bool(self._first), ""
        self.forget()
        return begun
