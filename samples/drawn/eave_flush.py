"""Flush eave: a strip of roof sheet is folded over the sub-fascia onto the wall sheet."""

from drawn.office import SECOND
from drawn.shapes import box
from drawn.sheet import Sheet
from drawn.wrapped_wall import (
    BOARD_AT,
    DECK_AT,
    DECK_UNDER,
    FIBRE,
    PLY,
    ROOF_BOARD,
    ROOM_FACE,
    STUD_AT,
    STUD_IN,
    VAPOUR_AT,
    VAPOUR_UP,
    Roof,
    cladding,
    outer_board,
    plate,
    roof_parts,
    wall_parts,
)

LEFT, RIGHT, BOTTOM, TOP = -260.0, 1480.0, -900.0, 860.0
ROOF = Roof(0.5)
SCALE = "1:10"
TITLE = "Flush eave"


def draw(faulty: bool) -> Sheet:
    """Draw the sheet; in the faulty one the fold goes behind and the eave sheet is short."""
    s = Sheet(SECOND, TITLE, version="R2007", unit_mm=1.0, scale=10)
    section(s, reversed_fold=faulty, short_cover=faulty)
    words(s)
    s.title_block((RIGHT + 60, BOTTOM), "11", SCALE)
    return s


def section(s: Sheet, *, reversed_fold: bool = False, short_cover: bool = False) -> None:
    """Draw the section without its notes."""
    s.frame(TITLE, box(LEFT, BOTTOM, RIGHT, TOP), SCALE)
    s.marks((850, -420), (-220, 330))
    _structure(s)
    _insulation(s)
    _vapour(s)
    _folded(s, behind=reversed_fold)
    _roof_sheets(s, top=480.0 if short_cover else 1230.0)
    s.area("metal-roofing", ROOF.slab(-74, RIGHT, 22, 28), hatch=False)
    if reversed_fold:
        s.fault(
            "reverse-lap",
            "water",
            (-3, -160),
            "the fold of the roof sheet runs down behind the wall sheet",
            within=80,
        )
        told = "water that runs down the fold ends behind the wall sheet"
        s.fault("wet-route", "water", (-0.8, -226), told)
    if short_cover:
        s.fault(
            "edge-cover-short",
            "water",
            ROOF.at(480, 9),
            "the eave sheet ends 130 mm inside the wall's room face",
            within=60,
        )


def _structure(s: Sheet) -> None:
    deck = ROOF.at(STUD_AT, -DECK_UNDER)[1]
    seat = ROOF.at(STUD_IN, -DECK_UNDER - 200)[1]
    roof_parts(s, ROOF, STUD_IN, RIGHT)
    s.area("osb", ROOF.slab(BOARD_AT, STUD_IN - 0.5, -DECK_UNDER, -DECK_AT))
    s.area(
        "framing",
        [(STUD_AT, seat), (STUD_IN, seat), ROOF.at(STUD_IN, -DECK_UNDER), (STUD_AT, deck)],
        hatch=False,
    )
    plate(s, seat - 45)
    plate(s, seat - 90)
    wall_parts(s, BOTTOM, seat)
    s.area("osb", box(BOARD_AT, seat + 0.5, STUD_AT - 0.5, ROOF.at(BOARD_AT, -DECK_UNDER)[1] - 1))


def _insulation(s: Sheet) -> None:
    foot = -236.0
    s.filled("wood-fibre", box(0, BOTTOM, FIBRE, foot - 0.5))
    under, over = -ROOF_BOARD, -PLY
    s.area(
        "pir",
        [
            (38.5, foot),
            (FIBRE, foot),
            ROOF.at(FIBRE, under),
            ROOF.at(RIGHT, under),
            ROOF.at(RIGHT, over),
            ROOF.at(38.5, over),
        ],
    )
    s.area("framing", [(0, foot), (38, foot), ROOF.at(38, over), ROOF.at(0, over)])
    outer_board(s, ROOF, 0, RIGHT)
    cladding(s, BOTTOM, -40)
    s.area("fascia-board", box(-61, -150, -42, -34))


def _vapour(s: Sheet) -> None:
    corner = ROOF.at(VAPOUR_AT, VAPOUR_UP)
    low = corner[1] - 330
    s.line("bituminous-vapour-control", [(VAPOUR_AT, BOTTOM), (VAPOUR_AT, low + 170)])
    s.line(
        "bituminous-vapour-control",
        [
            ROOF.at(RIGHT, VAPOUR_UP),
            corner,
            (VAPOUR_AT, low + 200),
            (VAPOUR_AT - 4, low + 186),
            (VAPOUR_AT - 4, low),
        ],
    )


def _folded(s: Sheet, *, behind: bool) -> None:
    """Draw wall sheet and folded strip, the strip outside unless it goes behind."""
    wall = [(-0.8, BOTTOM), (-0.8, -96)]
    fold = [ROOF.at(132, 0.8), ROOF.at(-0.8, 0.8), (-0.8, -70), (-4.8, -84), (-4.8, -226)]
    if behind:
        wall = [(-0.8, BOTTOM), (-0.8, -250), (-4.8, -236), (-4.8, -96)]
        fold = [ROOF.at(132, 0.8), ROOF.at(-0.8, 0.8), (-0.8, -226)]
    s.line("self-adhered-permeable", wall)
    s.line("self-adhered-underlayment", fold)


def _roof_sheets(s: Sheet, *, top: float) -> None:
    nose = ROOF.at(-76, 5)
    s.line(
        "drip-edge",
        [ROOF.at(152, 5), nose, (-76, nose[1] - 44), (-84, nose[1] - 56)],
    )
    s.line("eave-membrane", [ROOF.at(-30, 9), ROOF.at(top, 9)], width=1.0)
    s.line("underlayment", [ROOF.at(top - 140, 13), ROOF.at(RIGHT, 13)])


def words(s: Sheet) -> None:
    """Write notes and dimensions."""
    notes = [
        ("ROOF SHEETING ON CLIPS", ROOF.at(900, 25)),
        ("UNDERLAY, LAPPED 150 OVER EAVE SHEET", ROOF.at(1350, 13)),
        ("EAVE SHEET OVER METAL FLANGE, TO 610 MIN.\nINSIDE ROOM FACE OF WALL", ROOF.at(260, 9)),
        ("STRIP OF ROOF SHEET FOLDED OVER SUB-FASCIA,\nLAPPED 130 OVER WALL SHEET", (-5, -180)),
        ("METAL DRIP EDGE, FLANGE OVER STRIP,\nUNDER EAVE SHEET", ROOF.at(-60, 5)),
        ("SUB-FASCIA 38", (20, -120)),
        ("VAPOUR SHEET ON BOARD, WALL AND ROOF LAPPED 170", (VAPOUR_AT, -330)),
        ("ROOF BOARD 160 BETWEEN PLYWOOD AND DECK", ROOF.at(600, -100)),
        ("WOOD FIBRE 160, WALL SHEET OUTSIDE", (60, -600)),
        ("RAFTERS 200", ROOF.at(700, -320)),
    ]
    s.notes(RIGHT + 60, (BOTTOM + 340, TOP - 20), notes)
    s.dimension((0, BOTTOM), (FIBRE, BOTTOM), (0, BOTTOM + 50))
    s.dimension((ROOM_FACE, -300), (1230, -300), (ROOM_FACE, -360))
