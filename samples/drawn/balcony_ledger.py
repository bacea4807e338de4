"""Balcony ledger held off the wall, outside the insulation, with a flashing over it."""

from drawn.flashing_nest import SHELF, flashing_nest, on_shelf
from drawn.office import FIRST
from drawn.outside_wall import (
    PLY,
    ROOM_FACE,
    STRAP_OUT,
    WOOL_IN,
    WOOL_OUT,
    inner_parts,
    plate,
    siding,
)
from drawn.shapes import INCH, Points, box
from drawn.sheet import Sheet

LEFT, RIGHT, BOTTOM, TOP = -760.0, 620.0, -620.0, 620.0
SCALE = '1 1/2" = 1\'-0"'
LEDGER_OUT = WOOL_OUT - 1.5 * INCH


def draw(faulty: bool) -> Sheet:
    """Draw the sheet; in the faulty one the sheet runs behind the flashing, which has no drip."""
    s = Sheet(FIRST, "Balcony ledger", version="R2010", unit_mm=25.4, scale=8)
    s.frame("Balcony ledger", box(LEFT, BOTTOM, RIGHT, TOP), SCALE)
    s.marks((380, 330), (-680, 380))
    _floor(s)
    _wall(s)
    _balcony(s)
    if faulty:
        _wrong_sheets(s)
    else:
        lower = [(-0.8, BOTTOM), (-0.8, 200)]
        flashing_nest(s, lower, [*SHELF, (-212, 11.1), (-212, -26), (-222, -38)], TOP)
    _words(s)
    return s


def _floor(s: Sheet) -> None:
    under, joist = -30.0, 9.25 * INCH
    s.area("plywood", box(PLY, under, RIGHT, under + 0.75 * INCH))
    s.member(box(PLY, under - joist, PLY + 1.5 * INCH, under))
    s.beyond(box(PLY + 1.5 * INCH, under - joist, RIGHT, under), close=True)
    s.area("gypsum-board", box(ROOM_FACE, under - joist - 13, RIGHT, under - joist))
    plate(s, under + 0.75 * INCH)
    plate(s, under - joist - 1.5 * INCH)
    plate(s, under - joist - 3 * INCH)


def _wall(s: Sheet) -> None:
    inner_parts(s, BOTTOM, -30 - 9.25 * INCH - 13)
    s.area("plywood", box(0, -30 - 9.25 * INCH - 13, PLY, -10))
    inner_parts(s, -10, TOP)
    s.area(
        "mineral-wool",
        [on_shelf(WOOL_OUT, 0.45), on_shelf(WOOL_IN, 0.45), (WOOL_IN, TOP), (WOOL_OUT, TOP)],
    )
    s.area(
        "mineral-wool",
        [
            (WOOL_OUT, BOTTOM),
            (WOOL_IN, BOTTOM),
            on_shelf(WOOL_IN, -0.45),
            on_shelf(WOOL_OUT, -0.45),
        ],
    )
    for low, high in ((BOTTOM, -260.0), (70.0, TOP)):
        s.area("vented-air-space", box(STRAP_OUT, low, WOOL_OUT, high), hatch=False)
        siding(s, low, high)


def _balcony(s: Sheet) -> None:
    top = on_shelf(LEDGER_OUT, -3)[1]
    s.member(box(LEDGER_OUT, top - 9.25 * INCH, WOOL_OUT, top), "ledger")
    joist: Points = [
        (LEFT, top - 200),
        (LEDGER_OUT, top - 9.25 * INCH),
        (LEDGER_OUT, top),
        (LEFT, top),
    ]
    s.beyond(joist, close=True)
    for left in range(int(LEFT) + 8, -380, 146):
        s.area("trim", box(left, top + 1, left + 140, top + 29))
    for level in (top - 60, top - 180):
        s.beyond([(LEDGER_OUT - 12, level), (PLY + 40, level)])
        s.beyond([(LEDGER_OUT - 12, level - 12), (PLY + 40, level - 12)])


def _wrong_sheets(s: Sheet) -> None:
    """Draw the upper sheet behind the leg, and the metal ending on the ledger without a drip."""
    end = on_shelf(LEDGER_OUT + 2, 0)
    s.line("self-adhered-sheet", [(-0.8, BOTTOM), (-0.8, 0)])
    s.line("self-adhered-sheet", [(-0.8, TOP), (-0.8, 252), (-4.8, 238), (-4.8, -160)])
    s.line("base-flashing", [(-8.8, 200), (-8.8, on_shelf(-8.8, 0)[1]), end])
    s.fault(
        "reverse-lap",
        "water",
        (-7, 120),
        "the wall sheet runs down behind the leg of the flashing",
        within=130,
    )
    s.fault(
        "no-drip",
        "water",
        end,
        "the flashing ends on top of the ledger and sheds into the end grain",
        within=30,
    )


def _words(s: Sheet) -> None:
    notes = [
        ("UPPER SHEET LAPPED OVER FLASHING LEG", (-1, 450)),
        ('6" MINERAL WOOL, RUNS ON BEHIND LEDGER', (-80, 560)),
        ("FLASHING THROUGH INSULATION OVER LEDGER,\nFALL 1:7, HEMMED DRIP", (-120, 25)),
        ("LOWER SHEET UP BEHIND LEG", (-1, 60)),
        ("2x10 LEDGER ON STAND-OFF BRACKETS\nAT EACH SECOND STUD (BEYOND)", (-185, -90)),
        ("DECK BOARDS, FIRST BOARD LEFT OUT FOR CLEANING", (-500, 15)),
        ("RIM JOIST", (30, -150)),
        ("LAP SIDING ON STRAPS", (-215, -420)),
    ]
    s.notes(RIGHT + 60, (BOTTOM + 272, TOP - 20), notes)
    s.dimension((0, BOTTOM), (ROOM_FACE, BOTTOM), (0, BOTTOM - 60))
    s.dimension((LEDGER_OUT, -245), (LEDGER_OUT, on_shelf(LEDGER_OUT, -3)[1]), (-520, 0), 90)
    s.title_block((RIGHT + 60, BOTTOM), "6", SCALE)
