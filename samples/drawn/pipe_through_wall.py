"""Overflow pipe through the wall, with a collar on each side of it in the section."""

from drawn.office import FIRST
from drawn.outside_wall import ROOM_FACE, STRAP_OUT, WOOL_IN, WOOL_OUT, inner_parts, siding
from drawn.shapes import Point, box
from drawn.sheet import Sheet

LEFT, RIGHT, BOTTOM, TOP = -560.0, 520.0, -460.0, 460.0
SCALE = '3" = 1\'-0"'
RADIUS = 57.0
FALL = 0.05
END_OUT, END_IN, SLEEVE = -430.0, 320.0, -62.0


def above(x: float, gap: float) -> Point:
    """Return the place at `x`, `gap` over the top of the pipe."""
    return (x, FALL * x + RADIUS + gap)


def below(x: float, gap: float) -> Point:
    """Return the place at `x`, `gap` under the bottom of the pipe."""
    return (x, FALL * x - RADIUS - gap)


def draw(faulty: bool) -> Sheet:
    """Draw the sheet; the faulty one has no collars."""
    s = Sheet(FIRST, "Pipe through wall", version="R2013", unit_mm=25.4, scale=4)
    s.frame("Pipe through wall", box(LEFT, BOTTOM, RIGHT, TOP), SCALE)
    s.marks((360, 260), (-520, 280))
    _wall(s)
    s.area(
        "pre-insulated-pipe",
        [below(END_OUT, 0), below(END_IN, 0), above(END_IN, 0), above(END_OUT, 0)],
        hatch=False,
    )
    s.beyond([above(END_OUT, -20), above(END_IN, -20)])
    s.beyond([below(END_OUT, -20), below(END_IN, -20)])
    if faulty:
        _cut_sheets(s)
    else:
        _collared_sheets(s)
    _words(s)
    return s


def _wall(s: Sheet) -> None:
    for low, high in ((BOTTOM, -RADIUS - 14), (RADIUS + 14, TOP)):
        inner_parts(s, low, high)
    low, high = FALL * WOOL_OUT - RADIUS - 8, FALL * WOOL_OUT + RADIUS + 12
    s.area("vented-air-space", box(STRAP_OUT, BOTTOM, WOOL_OUT, low), hatch=False)
    s.area("vented-air-space", box(STRAP_OUT, high, WOOL_OUT, TOP), hatch=False)
    siding(s, BOTTOM, low)
    siding(s, high, TOP)
    over = [above(WOOL_OUT, 0.5), above(SLEEVE, 0.5), above(SLEEVE, 4), above(WOOL_IN, 4)]
    s.area("mineral-wool", [*over, (WOOL_IN, TOP), (WOOL_OUT, TOP)])
    under = [below(WOOL_IN, 4), below(SLEEVE, 4), below(SLEEVE, 0.5), below(WOOL_OUT, 0.5)]
    s.area("mineral-wool", [(WOOL_OUT, BOTTOM), (WOOL_IN, BOTTOM), *under])


def _collared_sheets(s: Sheet) -> None:
    s.line("self-adhered-sheet", [(-0.8, BOTTOM), below(-0.8, 6)])
    s.line("pipe-collar", [below(-60, 0.8), below(-4.6, 0.8), below(-4.6, 128)])
    s.line("pipe-collar", [above(-60, 0.8), above(-0.8, 0.8), above(-0.8, 126)])
    s.line(
        "self-adhered-sheet", [(-0.8, TOP), above(-0.8, 156), above(-4.6, 142), above(-4.6, 24)]
    )


def _cut_sheets(s: Sheet) -> None:
    """Draw the sheet cut tight round the pipe, with nothing that seals it."""
    s.line("self-adhered-sheet", [(-0.8, BOTTOM), below(-0.8, 0.6)])
    s.line("self-adhered-sheet", [(-0.8, TOP), above(-0.8, 0.6)])
    told = "the sheet is cut round the pipe and has no collar, {} it"
    s.fault("open-penetration", "air", below(-0.8, 0), told.format("below"))
    s.fault("open-penetration", "air", above(-0.8, 0), told.format("above"))


def _words(s: Sheet) -> None:
    notes = [
        ("SELF-ADHERED SHEET, LAPPED\nOVER COLLAR FLANGE", (-2, 330)),
        ("PIPE COLLAR UNDER UPPER SHEET,\nOVER LOWER SHEET", above(-1, 60)),
        ('4" PIPE IN INSULATING SLEEVE,\nFALL 5% TO OUTSIDE', (200, 5)),
        ("MINERAL WOOL SCRIBED TO SLEEVE", (-120, -130)),
        ("LAP SIDING ON STRAPS", (-195, -330)),
    ]
    s.notes(RIGHT + 30, (BOTTOM + 34 * 4, TOP - 20), notes)
    s.dimension((0, TOP), (ROOM_FACE, TOP), (0, TOP + 40))
    s.dimension(below(260, 0), above(260, 0), (400, 0), 90)
    s.title_block((RIGHT + 30, BOTTOM), "7", SCALE)
