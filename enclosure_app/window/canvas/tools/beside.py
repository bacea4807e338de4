"""Beside: a sheet beside what is drawn, at a distance that can be typed, on the side of the mouse.

Of a board the face under the mouse is followed, with Shift its whole outline; of a sheet, or of a
line of the office's drawing, all of it.
"""

from enclosure_app.drawing.lengths import format_length
from enclosure_app.model.edits import Beside as Off
from enclosure_app.model.edits import offset
from enclosure_app.model.place import Line, Points
from enclosure_app.model.section import Section
from enclosure_app.window.canvas.catching.picking import line_at, piece_at, segment_at
from enclosure_app.window.canvas.tools.proposing import ProposingTool, Wish
from enclosure_app.window.canvas.tools.tool import Pointer, say
from enclosure_app.window.typed.typed_length import read_length

_REACH = 14.0  # dots


class Beside(ProposingTool):
    """Draws a sheet of the product that is chosen beside what is under the mouse."""

    catches = False

    @property
    def next_step(self) -> str:
        """Return what to do next."""
        return say(
            "Point beside a board, a sheet or a line, and click: the sheet is drawn {} off it. "
            "Type another distance; Shift goes all round a board."
        ).format(self._distance)

    @property
    def told(self) -> str:
        """Return how far off it is drawn."""
        return self._distance if self.preview else ""

    def wish(self, pointer: Pointer) -> Wish | None:
        """Draw the sheet beside what is there."""
        section, product = self.place.section, self.place.product
        if section is None or product not in section.products:
            self.why = say("Choose a product in the list first: what is to be drawn?")
            return None
        of = _followed(section, pointer)
        if not of:
            return None
        off = Off(self.place.aids.beside, pointer.bare, product)
        text = say("Draw {} beside").format(section.products[product].name)
        return text, lambda p, i: offset(p, i, of, off)

    def read(self, text: str) -> None:
        """Take another distance, or a place."""
        if ";" in text:
            super().read(text)
            return
        self.place.aid(beside=read_length(text, self.place.document.project.units))
        if self.pointer is not None:
            self.look(self.pointer)

    @property
    def _distance(self) -> str:
        return format_length(self.place.aids.beside, self.place.document.project.units)


def _followed(section: Section, pointer: Pointer) -> str | Points:
    """Return what is followed at a pointer: a piece by its name, or the points of a run."""
    reach = pointer.reach(_REACH)
    name = piece_at(section, pointer.bare, reach)
    if name:
        shape = section.by_name[name].shape
        if isinstance(shape, Line) or pointer.adds:
            return name
        rings = (shape.outer, *shape.holes)
        return next(filter(None, (_face((*ring, ring[0]), pointer) for ring in rings)), ())
    handle = line_at(section, pointer.bare, reach)
    run = next((stroke.points for stroke in section.strokes if stroke.handle == handle), ())
    closed = len(run) > 2 and run[0] == run[-1]
    return _face(run, pointer) if closed and not pointer.adds else run


def _face(ring: Points, pointer: Pointer) -> Points:
    """Return the stretch of a ring that is within reach of the pointer, () if none is."""
    segment = segment_at(ring, pointer.bare, pointer.reach(_REACH))
    return () if segment is None else ring[segment : segment + 2]
