"""Roof that falls away from a higher wall: upturn, apron, and the wall sheet over both."""

from drawn.office import SECOND
from drawn.shapes import box
from drawn.sheet import Sheet
from drawn.wrapped_wall import (
    BOARD_AT,
    DECK_UNDER,
    FIBRE,
    PLY,
    ROOF_BOARD,
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

LEFT, RIGHT, BOTTOM, TOP = -820.0, 720.0, -820.0, 620.0
ROOF = Roof(1 / 3)
SCALE = "1:10"
TITLE = "Roof to higher wall"


def draw(faulty: bool) -> Sheet:
    """Draw the sheet; in the faulty one the roofers came last and lapped over the wall sheet."""
    s = Sheet(SECOND, TITLE, version="R12", unit_mm=1.0, scale=10)
    section(s, roof_over_wall=faulty)
    words(s, apron=not faulty)
    s.title_block((RIGHT + 60, BOTTOM), "13", SCALE)
    return s


def section(s: Sheet, *, roof_over_wall: bool = False) -> None:
    """Draw the section without its notes."""
    s.frame(TITLE, box(LEFT, BOTTOM, RIGHT, TOP), SCALE)
    s.marks((470, 300), (-700, 260))
    _structure(s)
    _insulation(s)
    _vapour(s)
    if roof_over_wall:
        _roof_sheet_last(s)
    else:
        _roof_sheet_first(s)


def _structure(s: Sheet) -> None:
    roof_parts(s, ROOF, LEFT, BOARD_AT - 0.5)
    wall_parts(s, BOTTOM, TOP)
    top = ROOF.at(BOARD_AT, -DECK_UNDER)[1]
    s.member(box(STUD_AT, top - 230, STUD_IN, top - 10))
    plate(s, top - 5)
    s.area("metal-roofing", ROOF.slab(LEFT, -30, 8, 16), hatch=False)
    cladding(s, 80, TOP)


def _insulation(s: Sheet) -> None:
    s.area("pir", ROOF.slab(LEFT, -0.5, -ROOF_BOARD, -PLY))
    foot = [ROOF.at(0, -ROOF_BOARD), ROOF.at(FIBRE, -ROOF_BOARD)]
    s.area("wood-fibre", [*foot, (FIBRE, TOP), (0, TOP)])
    outer_board(s, ROOF, LEFT, -0.5)


def _vapour(s: Sheet) -> None:
    corner = ROOF.at(VAPOUR_AT, VAPOUR_UP)
    up = corner[1] + 220
    s.line("bituminous-vapour-control", [ROOF.at(LEFT, VAPOUR_UP), corner, (VAPOUR_AT, up)])
    over = VAPOUR_AT - 4
    s.line(
        "bituminous-vapour-control",
        [(VAPOUR_AT, TOP), (VAPOUR_AT, up + 30), (over, up + 16), (over, up - 170)],
    )


def _roof_sheet_first(s: Sheet) -> None:
    s.line("self-adhered-underlayment", [ROOF.at(LEFT, 0.8), ROOF.at(-0.8, 0.8), (-0.8, 200)])
    low = ROOF.at(-4.6, 28)
    end = ROOF.at(-240, 28)
    s.line("base-flashing", [(-4.6, 232), low, end, (end[0] - 9, end[1] - 11)])
    s.segments("self-adhered-permeable", [(-0.8, TOP), (-0.8, 252), (-8.4, 238), (-8.4, 62)])


def _roof_sheet_last(s: Sheet) -> None:
    s.line("self-adhered-permeable", [(-0.8, TOP), (-0.8, 18)])
    sheet = [ROOF.at(LEFT, 0.8), ROOF.at(-4.8, 0.8), (-4.8, 200)]
    s.line("self-adhered-underlayment", sheet)
    told = "the upturn of the roof sheet laps over the wall sheet from outside"
    s.fault("reverse-lap", "water", (-3, 110), told, within=110)
    told = "water that runs down the wall sheet ends behind that upturn, on the plywood"
    s.fault("wet-route", "water", (-0.8, 18), told)


def words(s: Sheet, *, apron: bool) -> None:
    """Write notes and dimensions."""
    notes = [
        ("WALL SHEET ON WOOD FIBRE", (-2, 330)),
        ("ROOF SHEET TURNED UP 200", (-1, 120)),
        ("WOOD FIBRE 160, DOWN TO ROOF BOARD", (80, 420)),
        ("VAPOUR SHEET TURNED UP AND LAPPED 170", (VAPOUR_AT, -20)),
        ("ROOF BOARD 160", ROOF.at(-300, -100)),
        ("RAFTERS 200 ON HEADER", ROOF.at(-200, -320)),
        ("STUDS RUN THROUGH", (260, -560)),
    ]
    if apron:
        notes.append(("METAL APRON, LEG BEHIND WALL SHEET", ROOF.at(-120, 28)))
    s.notes(RIGHT + 60, (BOTTOM + 340, TOP - 20), notes)
    s.dimension((-0.8, 0), (-0.8, 200), (-300, 0), 90)
    s.dimension((0, TOP), (FIBRE, TOP), (0, TOP + 60))
