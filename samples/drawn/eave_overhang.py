"""Eave with an overhang outside the insulation: the wall sheet runs on over the roof deck."""

from math import hypot

from drawn.office import FIRST
from drawn.outside_wall import PLY, ROOM_FACE, STRAP_OUT, STUD, WOOL_IN, WOOL_OUT, plate, siding
from drawn.shapes import INCH, Point, Points, box
from drawn.sheet import Sheet

LEFT, RIGHT, BOTTOM, TOP = -640.0, 1250.0, -760.0, 960.0
RISE = 6 / 12
SCALE = '1" = 1\'-0"'
DECK = 5 / 8 * INCH
BOARD_IN, BOARD_OUT = 12.0, 12.0 + 6 * INCH
NAIL_IN, NAIL_OUT = BOARD_OUT + 0.8, BOARD_OUT + 0.8 + DECK
EDGE = -480.0


def roof(x: float, out: float) -> Point:
    """Return the place at `x`, `out` mm square off the top of the structural deck."""
    return (x, RISE * x + out * hypot(1, RISE))


def draw(faulty: bool) -> Sheet:
    """Draw the sheet; the faulty one has too short an eave membrane and a drip edge without drip."""
    s = Sheet(FIRST, "Overhanging eave", version="R2004", unit_mm=25.4, scale=12)
    s.frame("Overhanging eave", box(LEFT, BOTTOM, RIGHT, TOP), SCALE)
    s.marks((300, -660), (-560, 420))
    _structure(s)
    _insulation(s)
    _overhang(s)
    _control_sheets(s)
    _roof_sheets(s, faulty=faulty)
    _words(s)
    if faulty:
        _faults(s)
    return s


def _slab(left: float, right: float, low: float, high: float) -> Points:
    return [roof(left, low), roof(right, low), roof(right, high), roof(left, high)]


def _structure(s: Sheet) -> None:
    under = -DECK
    s.area("plywood", _slab(0, RIGHT, under, 0))
    s.area("plywood", [(0, BOTTOM), (PLY, BOTTOM), roof(PLY, under - 0.3), roof(0, under - 0.3)])
    seat = -204.0
    s.area(
        "framing",
        [
            (PLY, seat),
            (PLY + STUD, seat),
            roof(RIGHT, under - 235),
            roof(RIGHT, under),
            roof(PLY, under),
        ],
        hatch=False,
    )
    plate(s, seat - 1.5 * INCH)
    plate(s, seat - 3 * INCH)
    ceiling = [
        roof(ROOM_FACE, under - 235),
        roof(RIGHT, under - 235),
        roof(RIGHT, under - 248),
        roof(ROOM_FACE, under - 248),
    ]
    s.area("gypsum-board", ceiling)
    s.area("gypsum-board", box(PLY + STUD, BOTTOM, ROOM_FACE, roof(ROOM_FACE, under - 249)[1]))
    for x in (PLY + 2, PLY + STUD - 2):
        s.beyond([(x, BOTTOM), (x, seat - 3 * INCH)])


def _insulation(s: Sheet) -> None:
    s.area("pir", _slab(WOOL_OUT, RIGHT, BOARD_IN, BOARD_OUT))
    s.area(
        "mineral-wool",
        [
            (WOOL_OUT, BOTTOM),
            (WOOL_IN, BOTTOM),
            roof(WOOL_IN, BOARD_IN - 0.5),
            roof(WOOL_OUT, BOARD_IN - 0.5),
        ],
    )
    s.area("plywood", _slab(EDGE, RIGHT, NAIL_IN, NAIL_OUT))
    s.area("vented-air-space", box(STRAP_OUT, BOTTOM, WOOL_OUT, -226), hatch=False)
    siding(s, BOTTOM, -226)


def _overhang(s: Sheet) -> None:
    s.area("framing", _slab(EDGE + 20, WOOL_OUT - 1, BOARD_OUT - 90, BOARD_OUT))
    top = [roof(EDGE, NAIL_IN - 0.5), roof(EDGE + 19, NAIL_IN - 0.5)]
    s.area("fascia-board", [(EDGE, -236), (EDGE + 19, -236), top[1], top[0]])
    s.area("soffit", box(EDGE + 20, -222, STRAP_OUT, -212), hatch=False)
    s.area("metal-roofing", _slab(EDGE - 28, RIGHT, NAIL_OUT + 14, NAIL_OUT + 22), hatch=False)


def _control_sheets(s: Sheet) -> None:
    s.line("self-adhered-sheet", [(-0.8, BOTTOM), (-0.8, -150)])
    s.line(
        "self-adhered-underlayment",
        [roof(RIGHT, 0.8), roof(-0.8, 0.8), (-0.8, -120), (-5, -134), (-5, -330)],
    )


def _roof_sheets(s: Sheet, *, faulty: bool) -> None:
    face = EDGE - 1.5 if faulty else EDGE - 6
    flange = NAIL_OUT + 0.9
    corner = roof(face, flange)
    kick = [] if faulty else [(face - 12, corner[1] - 88)]
    s.line("drip-edge", [roof(EDGE + 115, flange), corner, (face, corner[1] - 76), *kick])
    low, high = (EDGE + 3, 420) if faulty else (EDGE - 11, 900)
    s.strip("eave-membrane", [roof(low, NAIL_OUT + 5), roof(high, NAIL_OUT + 5)], 1.2)
    s.line("underlayment", [roof(high - 150, NAIL_OUT + 9.5), roof(RIGHT, NAIL_OUT + 9.5)])


def _words(s: Sheet) -> None:
    notes = [
        ("STANDING SEAM ROOFING ON CLIPS", roof(300, NAIL_OUT + 20)),
        ('UNDERLAYMENT, LAPPED 6" OVER EAVE MEMBRANE', roof(1100, NAIL_OUT + 9.5)),
        (
            'EAVE MEMBRANE OVER DRIP EDGE, UP TO 24" MIN.\nINSIDE ROOM FACE OF WALL',
            roof(-150, NAIL_OUT + 5),
        ),
        ('DRIP EDGE UNDER MEMBRANE, 5" FLANGE', (EDGE - 7, roof(EDGE, NAIL_OUT)[1] - 50)),
        ('5/8" NAIL BASE OVER 6" ROOF BOARD', roof(700, NAIL_OUT - 8)),
        ('SELF-ADHERED UNDERLAYMENT ON DECK, TURNED DOWN\nOVER WALL SHEET 7"', roof(250, 1)),
        ("OUTRIGGERS OUTSIDE THE INSULATION,\nSCREWED THROUGH NAIL BASE", roof(-350, 120)),
        ("SELF-ADHERED SHEET ON PLYWOOD", (-1, -520)),
        ("FASCIA AND SOFFIT, NOT VENTED", (EDGE + 10, -200)),
        ("2x10 RAFTERS", roof(700, -120)),
    ]
    s.notes(RIGHT + 80, (BOTTOM + 408, TOP - 20), notes)
    s.dimension((EDGE, -236), (STRAP_OUT, -236), (EDGE, -330))
    s.dimension((ROOM_FACE, -200), (900, -200), (ROOM_FACE, -260))
    s.title_block((RIGHT + 80, BOTTOM), "3", SCALE)


def _faults(s: Sheet) -> None:
    s.fault(
        "edge-cover-short",
        "water",
        roof(420, NAIL_OUT + 5),
        "the eave membrane ends 255 mm (10 in) inside the wall's room face",
        within=60,
    )
    corner = roof(EDGE - 1.5, NAIL_OUT + 0.9)
    s.fault(
        "no-drip",
        "water",
        (corner[0], corner[1] - 76),
        "the drip edge hangs straight down against the fascia without a kick",
        within=30,
    )
