"""The second office's envelope: a vapour sheet on the structure, a water sheet on the insulation.

Wall, from the room outwards: plasterboard, 150 mm studs, board, bituminous vapour sheet, 160 mm
wood fibre, vapour-open wall sheet, vented space, boards. The outer face of the wood fibre stands
at x = 0, the room at x > 0. Roof, upwards: rafters, board, vapour sheet, 160 mm roof board,
18 mm plywood, self-adhered roof sheet, sheeting; its plywood's top is the roof's zero.
"""

from dataclasses import dataclass
from math import hypot

from drawn.shapes import Point, Points, box
from drawn.sheet import Sheet

FIBRE = 160.0
BOARD_AT = 172.0
VAPOUR_AT = BOARD_AT - 0.8
STUD_AT = BOARD_AT + 15
STUD_IN = STUD_AT + 150
ROOM_FACE = STUD_IN + 12.5
VENT = (-41.0, -16.0)
CLAD_OUT = -62.0

PLY = 18.0
ROOF_BOARD = PLY + 160.0
DECK_AT = ROOF_BOARD + 12.0
VAPOUR_UP = -DECK_AT + 0.8
DECK_UNDER = DECK_AT + 18.0
RAFTER_UNDER = DECK_UNDER + 200.0


@dataclass(frozen=True)
class Roof:
    """A roof plane through `through` that rises `rise` in one towards the right."""

    rise: float
    through: Point = (0.0, 0.0)

    def at(self, x: float, out: float = 0.0) -> Point:
        """Return the place at `x`, `out` mm square off the top of the plywood."""
        x0, y0 = self.through
        return (x, y0 + self.rise * (x - x0) + out * hypot(1, self.rise))

    def slab(self, left: float, right: float, low: float, high: float) -> Points:
        """Return the outline between two offsets, cut plumb at both ends."""
        return [self.at(left, low), self.at(right, low), self.at(right, high), self.at(left, high)]


def wall_parts(s: Sheet, bottom: float, top: float) -> None:
    """Draw board, studs beyond and plasterboard."""
    s.area("osb", box(BOARD_AT, bottom, STUD_AT, top))
    s.area("gypsum-board", box(STUD_IN, bottom, ROOM_FACE, top))
    for x in (STUD_AT + 3, STUD_IN - 3):
        s.beyond([(x, bottom), (x, top)])


def cladding(s: Sheet, bottom: float, top: float) -> None:
    """Draw the vented space and the upright boards."""
    s.area("vented-air-space", box(VENT[0], bottom, VENT[1], top), hatch=False)
    s.area("lap-siding", box(CLAD_OUT, bottom, VENT[0] - 0.5, top), hatch=False)


def plate(s: Sheet, bottom: float) -> None:
    """Draw one 45 mm plate."""
    s.member(box(STUD_AT, bottom, STUD_IN, bottom + 45))


def roof_parts(s: Sheet, roof: Roof, left: float, right: float, *, ceiling: bool = True) -> None:
    """Draw deck board, rafter and ceiling of a roof."""
    s.area("osb", roof.slab(left, right, -DECK_UNDER, -DECK_AT))
    rafter = roof.slab(left, right, -RAFTER_UNDER, -DECK_UNDER)
    s.area("framing", rafter, hatch=False)
    if ceiling:
        s.area("gypsum-board", roof.slab(left, right, -RAFTER_UNDER - 12.5, -RAFTER_UNDER))


def outer_board(s: Sheet, roof: Roof, left: float, right: float) -> None:
    """Draw the plywood that carries the roof sheet."""
    s.area("plywood", roof.slab(left, right, -PLY, 0))
