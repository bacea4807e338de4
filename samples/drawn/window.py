"""Window at the plane of the sheathing: sill and head, each in its frame."""

from drawn.flashing_nest import SHELF, flashing_nest, on_shelf
from drawn.office import FIRST
from drawn.outside_wall import (
    PLY,
    ROOM_FACE,
    STRAP_OUT,
    STUD,
    WOOL_IN,
    WOOL_OUT,
    inner_parts,
    plate,
    siding,
)
from drawn.shapes import INCH, Point, Points, box
from drawn.sheet import Sheet

LEFT, RIGHT = -380.0, 460.0
SILL = (-430.0, 330.0)
HEAD = (-330.0, 430.0)
HEAD_UP = 900.0
SCALE = '3" = 1\'-0"'
GLASS = (-14.0, 22.0)
METAL: Points = [(-40.5, 41.0), (-216.0, 12.0), (-216.0, -24.0), (-226.0, -36.0)]


def draw(faulty: bool) -> Sheet:
    """Draw the sheet; the faulty one has a sill that falls inwards and a head flashing over the sheet."""
    s = Sheet(FIRST, "Window sill and head", version="R12", unit_mm=25.4, scale=4)
    _sill(s, faulty=faulty)
    s.origin = (0.0, HEAD_UP)
    _head(s, faulty=faulty)
    s.origin = (0.0, 0.0)
    s.title_block((RIGHT + 30, SILL[0]), "2", SCALE)
    return s


def _sill(s: Sheet, *, faulty: bool) -> None:
    low, high = SILL
    s.frame("Window sill", box(LEFT, low, RIGHT, high), SCALE)
    s.marks((330, 200), (-350, 200))
    inner_parts(s, low, -0.2)
    plate(s, -1.5 * INCH)
    plate(s, -3 * INCH)
    s.area("vented-air-space", box(STRAP_OUT, low, WOOL_OUT, 6), hatch=False)
    siding(s, low, 2)
    s.area("mineral-wool", [(WOOL_OUT, low), (WOOL_IN, low), (WOOL_IN, 37.5), (-39.5, 37.5),
                            _under_metal(-42), _under_metal(WOOL_OUT)])  # fmt: skip
    s.line("self-adhered-sheet", [(-0.8, low), (-0.8, -8)])
    s.line("base-flashing", METAL)
    s.area("trim", box(52, 58, 210, 76))
    _unit(s, [(-40, 38), (50, 38)], high)
    if faulty:
        _sill_falls_in(s)
    else:
        _sill_falls_out(s)
    _sill_words(s)


def _under_metal(x: float) -> Point:
    (x0, y0), (x1, y1) = METAL[0], METAL[1]
    return (x, y0 + (x - x0) * (y1 - y0) / (x1 - x0) - 0.9)


def _sill_falls_out(s: Sheet) -> None:
    s.area("framing", [(0, 0), (75, 0), (75, 12), (0, 2)])
    s.area("framing", box(75, 0, 101, 51))
    s.line("flashing-tape", [(-4.8, -162), (-4.8, 2.6), (74.2, 12.8), (74.2, 51)])
    s.area("closed-cell-foam", box(50.4, 24, 73.8, 43.8))
    s.area("sealant", box(50.2, 44, 74, 51))


def _sill_falls_in(s: Sheet) -> None:
    s.area("framing", [(0, 0), (75, 0), (75, 1), (0, 14)])
    s.area("framing", box(75, 0, 101, 51))
    s.line("flashing-tape", [(-4.8, -162), (-4.8, 15.6), (74.2, 2), (74.2, 51)])
    s.area("closed-cell-foam", box(50.4, 24, 73.8, 43.8))
    s.area("sealant", box(50.2, 44, 74, 51))
    told = "the sill falls inwards, so that water stands against the back dam"
    s.fault("ponding", "water", (74.2, 2), told)


def _unit(s: Sheet, edge: Points, cut: float) -> None:
    """Draw the window unit as one outline, from its rail at `edge` to where the glass is `cut`.

    The rail falls away from the glass on both sides; at the head its nose hangs lower.
    """
    (left, y0), (right, y1) = edge
    up = 1 if cut > y0 else -1
    seat = y0 + 82 * up
    inner, outer = GLASS[1], GLASS[0]
    s.area(
        "window-frame",
        [(left, y0), (right, y1), (right, seat - 5 * up), (inner, seat), (inner, cut),
         (outer, cut), (outer, seat), (left, seat - 5)],
    )  # fmt: skip
    s.beyond([(left + 4, seat), (right - 4, seat)])
    for x in (outer + 6, inner - 6):
        s.beyond([(x, seat), (x, cut)])


def _head(s: Sheet, *, faulty: bool) -> None:
    low, high = HEAD
    s.frame("Window head", box(LEFT, low, RIGHT, high), SCALE)
    s.marks((330, -160), (-350, -160))
    inner_parts(s, 0.2, high)
    s.area("gypsum-board", box(76, -13, ROOM_FACE, -0.6))
    s.member(box(PLY, 0.2, PLY + 1.5 * INCH, 140))
    s.member(box(PLY + STUD - 1.5 * INCH, 0.2, PLY + STUD, 140))
    plate(s, 140)
    strip = [(-0.8, 200), (-0.8, -0.4), (74, -0.4)]
    metal = [*SHELF, (-212, 11), (-212, -26), (-222, -38)]
    if faulty:
        _metal_last(s, strip, metal)
    else:
        flashing_nest(s, strip, metal, high)
    s.area("mineral-wool", [on_shelf(WOOL_OUT, 0.45), on_shelf(WOOL_IN, 0.45), (WOOL_IN, high),
                            (WOOL_OUT, high)])  # fmt: skip
    s.area("xps", [(-150, -19.4), (-40, -19.4), (-12, -17.6), on_shelf(-12, -0.45),
                   on_shelf(-150, -0.45)])  # fmt: skip
    s.area("vented-air-space", box(STRAP_OUT, 64, WOOL_OUT, high), hatch=False)
    siding(s, 64, high)
    _unit(s, [(-40, -20), (50, -14)], low)
    s.area("closed-cell-foam", [(26, -15.2), (49.6, -13.6), (49.6, -0.8), (26, -0.8)])
    s.line("sealant", [(13, -16), (13, -0.8)], width=12)
    _head_words(s)


def _metal_last(s: Sheet, strip: Points, metal: Points) -> None:
    """Draw the metal on top of a wall sheet that came before it and runs down behind it."""
    s.line("self-adhered-sheet", [(-0.8, 150), *strip[1:]])
    s.line("self-adhered-sheet", [(-0.8, HEAD[1]), (-0.8, 222), (-4.8, 208), (-4.8, 22)])
    s.line("base-flashing", [(-8.8, 190), (-8.8, on_shelf(-8.8, 0)[1]), *metal[1:]])
    told = "the head flashing was put on over the wall sheet"
    s.fault("reverse-lap", "water", (-7, 115), told, within=100)


def _sill_words(s: Sheet) -> None:
    notes = [
        ("WINDOW UNIT BY MAKER, IN OUTLINE:\nINSULATING GLASS, THERMAL BREAK", (20, 260)),
        ("SEALANT OVER FOAM AT BACK DAM", (66, 46)),
        ('SILL MEMBRANE OVER BEVELLED SILL,\nLAPPED OVER WALL SHEET 6"', (30, 8)),
        ("METAL SILL, HEMMED DRIP", (-120, 28)),
        ("SELF-ADHERED SHEET ON PLYWOOD", (-1, -240)),
        ('6" MINERAL WOOL TO UNDERSIDE OF FRAME', (-80, -150)),
    ]
    s.notes(RIGHT + 30, (SILL[0] + 34 * 4, SILL[1] - 20), notes)
    s.dimension((-40, 330), (50, 330), (0, 350))


def _head_words(s: Sheet) -> None:
    notes = [
        ("WALL SHEET LAPPED OVER FLASHING LEG", (-2, 300)),
        ("HEAD FLASHING, FALL 1:7, HEMMED DRIP", (-130, 23)),
        ("STRIP OF SELF-ADHERED SHEET\nTURNED INTO OPENING", (-1, 20)),
        ("RIGID BOARD OVER FRAME", (-90, 0)),
        ("SEALANT AND FOAM", (36, -8)),
        ("2x HEADER", (130, 90)),
    ]
    s.notes(RIGHT + 30, (HEAD[0], HEAD[1] - 20), notes)
    s.dimension((0, 430), (ROOM_FACE, 430), (0, 470))
