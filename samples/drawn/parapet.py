"""Low-slope roof that falls away from a parapet: upturn, membrane over the top, coping."""

from drawn.office import SECOND
from drawn.shapes import Point, Points, box
from drawn.sheet import Sheet
from drawn.wrapped_wall import BOARD_AT, FIBRE, STUD_AT, STUD_IN, VAPOUR_AT, cladding, wall_parts

LEFT, RIGHT, BOTTOM, TOP = -260.0, 1080.0, -820.0, 580.0
INNER = 175.0
FALL = 1 / 40
DECK = -230.0
HEIGHT = 400.0
MEMBRANE = "single-ply-roofing-fastened"
SCALE = "1:10"
TITLE = "Parapet"


def draw(faulty: bool) -> Sheet:
    """Draw the sheet; the faulty one has too low an upturn and a dip in the roof."""
    s = Sheet(SECOND, TITLE, version="R2018", unit_mm=1.0, scale=10)
    section(s, upturn=150.0 if faulty else 250.0, dip=faulty)
    words(s)
    s.title_block((RIGHT + 60, BOTTOM), "15", SCALE)
    return s


def section(s: Sheet, *, upturn: float = 250.0, dip: bool = False, flat_top: bool = False) -> None:
    """Draw the section without its notes."""
    s.frame(TITLE, box(LEFT, BOTTOM, RIGHT, TOP), SCALE)
    s.marks((600, -620), (600, 300))
    surface = _surface(dip=dip)
    _structure(s)
    _roof(s, surface)
    _parapet(s, flat=flat_top)
    _vapour(s)
    if flat_top:
        _lap_on_top(s, surface)
    else:
        _lap_at_upturn(s, surface, upturn)
    if upturn < 200:
        told = f"the roof membrane is turned up only {upturn:.0f} mm"
        s.fault("upturn-short", "water", (INNER + 0.8, upturn), told, within=upturn)
    if dip:
        told = "the roof dips by 12 mm and holds water"
        s.fault("ponding", "water", surface[1], told, within=60)


def _surface(*, dip: bool) -> Points:
    """Return the top of the cover board from the parapet to the frame."""
    if dip:
        return [(INNER, 0.0), (560.0, -14.0), (RIGHT, -2.0)]
    return [(INNER, 0.0), (RIGHT, -(RIGHT - INNER) * FALL)]


def _structure(s: Sheet) -> None:
    s.area("osb", box(BOARD_AT, DECK - 18, RIGHT, DECK))
    s.beyond(box(STUD_IN, DECK - 238, RIGHT, DECK - 18), close=True)
    s.member(box(STUD_AT, DECK - 238, STUD_AT + 45, DECK - 18))
    wall_parts(s, BOTTOM, DECK - 240)
    s.area("osb", box(BOARD_AT, DECK - 240, STUD_AT - 0.5, DECK - 18.5))
    s.area("gypsum-board", box(STUD_IN + 12.5, DECK - 251, RIGHT, DECK - 238.5))
    for bottom in (DECK - 285, DECK - 330):
        s.member(box(STUD_AT, bottom, STUD_IN, bottom + 45))


def _lowered(points: Points, by: float) -> Points:
    return [(x, y - by) for x, y in points]


def _roof(s: Sheet, surface: Points) -> None:
    under = _lowered(surface, 12)
    s.area("plywood", [*surface, *reversed(under)])
    board = _lowered(surface, 12.4)
    s.area("pir", [(160.5, DECK + 12), (RIGHT, DECK + 12), *reversed(board), (160.5, board[0][1])])


def _parapet(s: Sheet, *, flat: bool) -> None:
    s.area("wood-fibre", box(0, BOTTOM, FIBRE, HEIGHT - 45.5))
    s.area("plywood", box(FIBRE + 0.5, -12, INNER, HEIGHT - 45.5))
    s.member(box(0, HEIGHT - 45, INNER, HEIGHT))
    if not flat:
        s.area("framing", [(0, HEIGHT), (INNER, HEIGHT), (0, HEIGHT + 18)])
    cladding(s, BOTTOM, HEIGHT - 4)
    outer, inner = _over(-72), _over(193)
    drip = [(-80, outer[1] - 92), (-72, outer[1] - 80), outer]
    s.line("coping", [*drip, inner, (193, inner[1] - 62), (201, inner[1] - 74)])


def _over(x: float) -> Point:
    return (x, HEIGHT + 42 - 18 / INNER * x)


def _vapour(s: Sheet) -> None:
    level = DECK + 0.8
    s.line("bituminous-vapour-control", [(VAPOUR_AT, BOTTOM), (VAPOUR_AT, level - 140)])
    over = VAPOUR_AT - 4
    down = [(VAPOUR_AT, level - 110), (over, level - 124), (over, level - 310)]
    s.line("bituminous-vapour-control", [(RIGHT, level), (VAPOUR_AT, level), *down])


def _roof_run(surface: Points) -> Points:
    """Return the run of the roof membrane from the frame to the foot of the upturn."""
    first = surface[0]
    return [(x, y + 0.8) for x, y in reversed(surface[1:])] + [(INNER + 0.8, first[1] + 0.8)]


def _outer_leg(s: Sheet) -> Points:
    """Draw the wall sheet; return the membrane's leg over it, from its foot to the fold."""
    s.line("self-adhered-permeable", [(-0.8, BOTTOM), (-0.8, HEIGHT - 30)])
    return [(-4.8, HEIGHT - 180), (-4.8, HEIGHT - 18), (-0.8, HEIGHT - 5)]


def _lap_at_upturn(s: Sheet, surface: Points, upturn: float) -> None:
    s.line(MEMBRANE, [*_roof_run(surface), (INNER + 0.8, upturn)])
    out = INNER + 5.2
    inner = [
        (INNER + 0.8, HEIGHT + 0.8),
        (INNER + 0.8, upturn + 26),
        (out, upturn + 12),
        (out, upturn - min(130.0, upturn - 40)),
    ]
    s.line(MEMBRANE, [*_outer_leg(s), (-0.8, HEIGHT + 18.9), *inner])


def _lap_on_top(s: Sheet, surface: Points) -> None:
    top = HEIGHT + 0.8
    s.line(MEMBRANE, [*_roof_run(surface), (INNER + 0.8, top), (56, top)])
    over = [(-0.8, top), (42, top), (50, top + 4), (140, top + 4)]
    s.line(MEMBRANE, [*_outer_leg(s), *over])
    told = "the membranes lap on the level top of the parapet and are not joined"
    s.fault("level-lap", "water", (98, top + 2), told, within=60)
    told = "water on the level top creeps through that lap and drops off the inner end"
    s.fault("wet-route", "water", (56, top), told, within=100)


def words(s: Sheet) -> None:
    """Write notes and dimensions."""
    notes = [
        ("METAL COPING, FALL TO ROOF, DRIPS BOTH SIDES", (150, 426)),
        ("MEMBRANE OVER TOP, LAPPED OVER UPTURN\nAND 150 OVER WALL SHEET", (60, 412)),
        ("ROOF MEMBRANE TURNED UP 250 MIN.", (176, 30)),
        ("COVER BOARD ON TAPERED ROOF BOARD, FALL 1:40", (700, -20)),
        ("VAPOUR SHEET ON DECK, TURNED DOWN\nOVER THAT OF THE WALL", (500, DECK)),
        ("WOOD FIBRE RUNS UP THROUGH PARAPET", (90, 100)),
        ("UPRIGHT BOARDS ON VENTED SPACE", (-50, -500)),
    ]
    s.notes(RIGHT + 60, (BOTTOM + 340, TOP - 20), notes)
    s.dimension((INNER, 0), (INNER, HEIGHT), (330, 0), 90)
    s.dimension((0, BOTTOM), (FIBRE, BOTTOM), (0, BOTTOM + 50))
