"""Wall on the thickened edge of a raft slab: strip, base flashing and waterproofing."""

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
from drawn.shapes import band, box, offset
from drawn.sheet import Sheet

LEFT, RIGHT, BOTTOM, TOP = -480.0, 920.0, -620.0, 560.0
UNDERSIDE = [(0.0, -400.0), (300.0, -400.0), (600.0, -100.0), (RIGHT, -100.0)]
SCALE = '1 1/2" = 1\'-0"'


def draw(faulty: bool) -> Sheet:
    """Draw the sheet; the faulty one lacks the board under the slab and shortens the strip."""
    s = Sheet(FIRST, "Wall base at raft edge", version="R2000", unit_mm=25.4, scale=8)
    s.frame("Wall base at raft edge", box(LEFT, BOTTOM, RIGHT, TOP), SCALE)
    s.marks((420, 330), (-450, 60))
    _ground(s)
    _slab(s, faulty=faulty)
    _wall(s)
    _control_sheets(s, faulty=faulty)
    _words(s)
    if faulty:
        _faults(s)
    return s


def _ground(s: Sheet) -> None:
    s.area("soil", [(LEFT, BOTTOM), (-166, BOTTOM), (-166, -134), (LEFT, -150)])
    under = [(RIGHT, -204.0), (643.0, -204.0), (343.0, -506.0), (-165.0, -506.0)]
    s.area("gravel", [(-165, BOTTOM), (RIGHT, BOTTOM), *under])


def _slab(s: Sheet, *, faulty: bool) -> None:
    s.area("concrete", [(0, 0), *UNDERSIDE, (RIGHT, 0)])
    foot = -505.0
    s.area(
        "xps",
        [(WOOL_OUT, foot), (WOOL_IN, foot), on_shelf(WOOL_IN, -0.45), on_shelf(WOOL_OUT, -0.45)],
    )
    if not faulty:
        s.area("xps", band([(-11.6, -400.0), *UNDERSIDE[1:]], -1.7, -103.0))
    s.line("sill-gasket", [(PLY, 1.0), (PLY + STUD, 1.0)], width=1.5)


def _wall(s: Sheet) -> None:
    inner_parts(s, 2, TOP)
    plate(s, 2)
    s.area(
        "mineral-wool",
        [on_shelf(WOOL_OUT, 0.45), on_shelf(WOOL_IN, 0.45), (WOOL_IN, TOP), (WOOL_OUT, TOP)],
    )
    s.area("vented-air-space", box(STRAP_OUT, 46, WOOL_OUT, TOP), hatch=False)
    siding(s, 46, TOP)


def _control_sheets(s: Sheet, *, faulty: bool) -> None:
    under = [(RIGHT, -100.0), (600.0, -100.0), (300.0, -400.0), (0.0, -400.0), (0.0, -160.0)]
    s.line("waterproofing-sheet", offset(under, 0.8))
    low = -196.0 if faulty else -338.0
    lower = [(-0.8, 200), (-0.8, -140), (-5, -152), (-5, low)]
    flashing_nest(s, lower, [*SHELF, (-206, -24), (-216, -36)], TOP)


def _words(s: Sheet) -> None:
    notes = [
        ("SELF-ADHERED SHEET ON PLYWOOD,\nLAPPED OVER FLASHING LEG", (-1, 420)),
        ("BASE FLASHING, BENT METAL, HEMMED DRIP", (-100, 28)),
        ("STRIP OF SELF-ADHERED SHEET,\nPLYWOOD TO CONCRETE", (-1, 20)),
        ("WATERPROOFING SHEET UNDER SLAB,\nTURNED UP AT SLAB EDGE", (450, -251)),
        ('RIGID BOARD, 4" UNDER SLAB, 6" AT EDGE', (700, -160)),
        ("TREATED 2x6 PLATE ON SILL GASKET", (90, 12)),
        ('6" MINERAL WOOL IN TWO LAYERS, STRAPS\nSCREWED THROUGH TO STUDS', (-60, 500)),
        ("RAFT SLAB, EDGE THICKENED AS FOOTING", (500, -50)),
        ("COMPACTED GRAVEL", (500, -560)),
    ]
    s.notes(RIGHT + 60, (BOTTOM + 272, TOP - 20), notes)
    s.text("GRADE FALLS AWAY 5%", (LEFT + 20, -120), height=2)
    s.dimension((300, 0), (300, -400), (200, -400), 90)
    s.dimension((WOOL_OUT, TOP), (WOOL_IN, TOP), (WOOL_IN, TOP + 70))
    s.dimension((0, TOP), (ROOM_FACE, TOP), (0, TOP + 70))
    s.title_block((RIGHT + 60, BOTTOM), "1", SCALE)


def _faults(s: Sheet) -> None:
    s.fault(
        "stops-short",
        "heat",
        (-88, -505),
        "no board under the slab: the insulation ends at the foot of the edge board",
        within=90,
    )
    s.fault(
        "short-lap",
        "water",
        (-3, -178),
        "the strip laps only 36 mm (1 3/8 in) over the upturned waterproofing",
    )
