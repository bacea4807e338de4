"""The first office's wall: everything outside the studs.

From the room outwards: gypsum board, 2x6 studs with an empty cavity, plywood, one vapour-tight
self-adhered sheet, 6 in of mineral wool, straps with a vented space, lap siding. The outer face
of the plywood stands at x = 0, the room at x > 0.
"""

from drawn.shapes import INCH, Points, box
from drawn.sheet import Sheet

PLY = 0.5 * INCH
STUD = 5.5 * INCH
ROOM_FACE = PLY + STUD + 0.5 * INCH
SHEET_AT = -0.8
WOOL_IN = -12.0
WOOL_OUT = WOOL_IN - 6 * INCH
STRAP_OUT = WOOL_OUT - 0.75 * INCH
SIDING_OUT = STRAP_OUT - 1.0 * INCH
LIFT = 4.0
"""How far apart lapping sheets are drawn."""


def inner_parts(s: Sheet, bottom: float, top: float) -> None:
    """Draw plywood, cavity and gypsum board between two levels."""
    s.area("plywood", box(0, bottom, PLY, top))
    s.area("gypsum-board", box(PLY + STUD, bottom, ROOM_FACE, top))
    for x in (PLY + 2, PLY + STUD - 2):
        s.beyond([(x, bottom), (x, top)])


def siding(s: Sheet, bottom: float, top: float) -> None:
    """Draw lap boards with 6 in to the weather, from `bottom` up, the last one cut at `top`."""
    exposure = 6 * INCH
    level = bottom
    while level < top - 20:
        head = min(level + exposure + INCH, top)
        s.area("lap-siding", _board(level, head), hatch=False)
        level += exposure


def plate(s: Sheet, bottom: float) -> None:
    """Draw one 2x6 plate with its top 1 1/2 in over `bottom`."""
    s.member(box(PLY, bottom, PLY + STUD, bottom + 1.5 * INCH))


def _board(level: float, head: float) -> Points:
    butt = STRAP_OUT - 0.75 * INCH
    thin = STRAP_OUT - 0.2 * INCH
    return [(STRAP_OUT - 2, level), (butt, level), (thin, head), (STRAP_OUT - 2, head)]
