"""Floor line with a lap of fastened housewrap, sealed with tape; the wall above is cut short."""

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
from drawn.shapes import INCH, box
from drawn.sheet import Sheet

LEFT, RIGHT, BOTTOM, TOP = -480.0, 620.0, -680.0, 640.0
CUT_LOW, CUT_HIGH = 330.0, 372.0
SCALE = '1 1/2" = 1\'-0"'
JOIST = 9.25 * INCH
UNDER = -0.75 * INCH


def draw(faulty: bool) -> Sheet:
    """Draw the sheet; the faulty one lacks the tape and leaves the insulation apart."""
    s = Sheet(FIRST, "Floor line", version="R2018", unit_mm=304.8, scale=8)
    s.frame("Floor line", box(LEFT, BOTTOM, RIGHT, TOP), SCALE)
    s.expected.sections[-1].verdicts["vapour"] = "absent"
    s.marks((400, 200), (-440, 200))
    _floor(s)
    _wall(s, apart=34.0 if faulty else 0.6)
    _wrap(s, taped=not faulty)
    _words(s)
    if faulty:
        _faults(s)
    return s


def _floor(s: Sheet) -> None:
    s.area("plywood", box(PLY, UNDER, RIGHT, 0))
    s.member(box(PLY, UNDER - JOIST, PLY + 1.5 * INCH, UNDER))
    s.beyond(box(PLY + 1.5 * INCH, UNDER - JOIST, RIGHT, UNDER), close=True)
    s.area("gypsum-board", box(ROOM_FACE, UNDER - JOIST - 13, RIGHT, UNDER - JOIST))
    plate(s, 0)
    plate(s, UNDER - JOIST - 1.5 * INCH)
    plate(s, UNDER - JOIST - 3 * INCH)


def _wall(s: Sheet, *, apart: float) -> None:
    inner_parts(s, BOTTOM, UNDER - JOIST - 13)
    s.area("plywood", box(0, UNDER - JOIST - 13, PLY, 0))
    seam = -120.0
    for low, high in ((BOTTOM, seam - apart / 2), (seam + apart / 2, CUT_LOW), (CUT_HIGH, TOP)):
        s.area("mineral-wool", box(WOOL_OUT, low, WOOL_IN, high))
    for low, high in ((BOTTOM, -150.0), (-110.0, CUT_LOW), (CUT_HIGH, TOP)):
        s.area("vented-air-space", box(STRAP_OUT, low, WOOL_OUT, high), hatch=False)
        siding(s, low, high)
    inner_parts(s, 0, CUT_LOW)
    inner_parts(s, CUT_HIGH, TOP)
    for level in (CUT_LOW, CUT_HIGH):
        s.break_line((-260, level), (220, level))


def _wrap(s: Sheet, *, taped: bool) -> None:
    s.line("housewrap", [(-0.8, BOTTOM), (-0.8, -90)])
    s.line("housewrap", [(-0.8, CUT_LOW), (-0.8, -70), (-4.6, -84), (-4.6, -250)])
    s.line("housewrap", [(-0.8, TOP), (-0.8, CUT_HIGH)])
    if taped:
        s.line("seam-tape", [(-5.4, -190), (-5.4, -250.8), (-1.6, -254.6), (-1.6, -310)])


def _words(s: Sheet) -> None:
    notes = [
        ("HOUSEWRAP ON PLYWOOD", (-1, 250)),
        ('UPPER WRAP LAPPED 6" OVER LOWER,\nEDGE TAPED', (-3, -170)),
        ('6" MINERAL WOOL, JOINTS TIGHT', (-90, -121)),
        ("RIM JOIST", (30, -200)),
        ("VAPOUR-OPEN WALL: NO RETARDER,\nINSULATION ALL OUTSIDE", (140, -450)),
        ("LAP SIDING, JOINT WITH BUG SCREEN", (-210, -155)),
        ("WALL CUT SHORT", (180, 345)),
    ]
    s.notes(RIGHT + 60, (BOTTOM + 34 * 8, TOP - 20), notes)
    s.dimension((WOOL_OUT, BOTTOM), (WOOL_IN, BOTTOM), (0, BOTTOM - 60))
    s.dimension((300, UNDER - JOIST), (300, 0), (480, 0), 90)
    s.title_block((RIGHT + 60, BOTTOM), "8", SCALE)


def _faults(s: Sheet) -> None:
    s.fault(
        "unsealed-joint", "air", (-2.7, -170), "the lap of the housewrap is not taped", within=100
    )
    s.fault(
        "gap",
        "heat",
        (-90, -120),
        "the mineral wool stops 34 mm (1 3/8 in) short of the wool above",
        within=90,
    )
