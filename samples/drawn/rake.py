"""Rake at a gable, cut across the slope: the roof is level here, the metal goes over the sheet."""

from drawn.office import SECOND
from drawn.shapes import box
from drawn.sheet import Sheet
from drawn.wrapped_wall import (
    BOARD_AT,
    DECK_AT,
    DECK_UNDER,
    FIBRE,
    PLY,
    RAFTER_UNDER,
    ROOF_BOARD,
    STUD_AT,
    STUD_IN,
    VAPOUR_AT,
    VAPOUR_UP,
    cladding,
    plate,
    wall_parts,
)

LEFT, RIGHT, BOTTOM, TOP = -280.0, 900.0, -880.0, 240.0
SCALE = "1:5"
TITLE = "Rake"
CORNER = VAPOUR_UP


def draw(faulty: bool) -> Sheet:
    """Draw the sheet; the faulty one has metal without a drip and a break in the vapour sheet."""
    s = Sheet(SECOND, TITLE, version="R2010", unit_mm=1.0, scale=5)
    s.frame(TITLE, box(LEFT, BOTTOM, RIGHT, TOP), SCALE)
    s.marks((600, -600), (-250, 150))
    _structure(s)
    _insulation(s)
    _vapour(s, apart=40.0 if faulty else 0.0)
    _water(s)
    _metal(s, drip=not faulty)
    words(s)
    s.title_block((RIGHT + 40, BOTTOM), "14", SCALE)
    return s


def _structure(s: Sheet) -> None:
    s.area("osb", box(BOARD_AT, -DECK_UNDER, RIGHT, -DECK_AT))
    for left in (STUD_AT, STUD_AT + 400):
        s.member(box(left, -RAFTER_UNDER, left + 45, -DECK_UNDER))
    s.area("gypsum-board", box(STUD_IN, -RAFTER_UNDER - 12.5, RIGHT, -RAFTER_UNDER))
    for low in (-RAFTER_UNDER - 45, -RAFTER_UNDER - 90):
        plate(s, low)
    wall_parts(s, BOTTOM, -RAFTER_UNDER - 13)
    s.area("osb", box(BOARD_AT, -RAFTER_UNDER - 13, STUD_AT - 0.5, -DECK_UNDER - 0.5))


def _insulation(s: Sheet) -> None:
    foot = -240.0
    s.area("wood-fibre", box(0, BOTTOM, FIBRE, foot - 0.5))
    low, high = -ROOF_BOARD, -PLY
    corners = [(38.5, foot), (FIBRE, foot), (FIBRE, low), (RIGHT, low), (RIGHT, high)]
    s.area("pir", [*corners, (38.5, high)])
    s.area("framing", box(0, foot, 38, high))
    s.area("plywood", box(0, -PLY, RIGHT, 0))
    cladding(s, BOTTOM, -30)
    s.area("fascia-board", box(-61, -150, -42, -10))
    s.area("metal-roofing", box(-68, 24, RIGHT, 30), hatch=False)


def _vapour(s: Sheet, *, apart: float) -> None:
    if apart:
        end = CORNER - 60
        s.line("bituminous-vapour-control", [(VAPOUR_AT, BOTTOM), (VAPOUR_AT, end - apart)])
        s.line(
            "bituminous-vapour-control", [(RIGHT, CORNER), (VAPOUR_AT, CORNER), (VAPOUR_AT, end)]
        )
        told = "the vapour sheet of the roof ends 40 mm above that of the wall"
        s.fault("gap", "vapour", (VAPOUR_AT, end - apart / 2), told)
        return
    s.line("bituminous-vapour-control", [(VAPOUR_AT, BOTTOM), (VAPOUR_AT, CORNER - 140)])
    over = VAPOUR_AT - 4
    turned_down = [(VAPOUR_AT, CORNER - 110), (over, CORNER - 124), (over, CORNER - 310)]
    s.line("bituminous-vapour-control", [(RIGHT, CORNER), (VAPOUR_AT, CORNER), *turned_down])


def _water(s: Sheet) -> None:
    s.line("self-adhered-permeable", [(-0.8, BOTTOM), (-0.8, -96)])
    fold = [(RIGHT, 0.8), (-0.8, 0.8), (-0.8, -70), (-4.8, -84), (-4.8, -236)]
    s.strip("self-adhered-underlayment", fold, 1.2)


def _metal(s: Sheet, *, drip: bool) -> None:
    s.line("flashing-tape", [(46, 5.4), (110.8, 5.4), (114.6, 1.6), (190, 1.6)])
    if drip:
        s.line("drip-edge", [(110, 4.6), (-76, 4.6), (-76, -52), (-84, -64)])
        return
    s.line("drip-edge", [(110, 4.6), (-62, 4.6), (-62, -52)])
    told = "the rake metal hangs straight down against the barge board without a kick"
    s.fault("no-drip", "water", (-62, -52), told, within=30)


def words(s: Sheet) -> None:
    """Write notes and dimensions."""
    notes = [
        ("RAKE METAL OVER ROOF SHEET,\nINNER EDGE TAPED", (80, 5)),
        ("ROOF SHEETING ON CLIPS", (400, 28)),
        ("ROOF SHEET FOLDED OVER SUB-FASCIA,\nLAPPED 140 OVER WALL SHEET", (-5, -180)),
        ("BARGE BOARD, VENT GAP SCREENED", (-50, -120)),
        ("VAPOUR SHEET, WALL AND ROOF LAPPED 170", (VAPOUR_AT, -340)),
        ("ROOF BOARD 160", (500, -100)),
        ("WOOD FIBRE 160", (60, -560)),
        ("RAFTERS 200, SLOPE INTO THE SHEET", (210, -330)),
    ]
    s.notes(RIGHT + 40, (BOTTOM + 170, TOP - 10), notes)
    s.dimension((0, BOTTOM), (FIBRE, BOTTOM), (0, BOTTOM + 40))
