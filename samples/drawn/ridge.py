"""Ridge: the sheet of one slope goes over the ridge and laps over that of the other."""

from drawn.office import SECOND
from drawn.shapes import Points, box, mirrored
from drawn.sheet import Sheet
from drawn.wrapped_wall import (
    DECK_AT,
    DECK_UNDER,
    PLY,
    RAFTER_UNDER,
    ROOF_BOARD,
    VAPOUR_UP,
    Roof,
)

REACH, BOTTOM, TOP = 760.0, -880.0, 160.0
ROOF = Roof(0.5)
SCALE = "1:10"
TITLE = "Ridge"


def draw(faulty: bool) -> Sheet:
    """Draw the sheet; the faulty one has a short lap and leaves the roof boards apart."""
    s = Sheet(SECOND, TITLE, version="R2018", unit_mm=1.0, scale=10)
    section(s, lap=42.0 if faulty else 210.0, apart=46.0 if faulty else 0.0)
    words(s)
    s.title_block((REACH + 60, BOTTOM), "12", SCALE)
    return s


def section(s: Sheet, *, lap: float = 210.0, apart: float = 0.0) -> None:
    """Draw the section without its notes; `lap` is measured level, `apart` between boards."""
    s.frame(TITLE, box(-REACH, BOTTOM, REACH, TOP), SCALE)
    s.marks((-60, -720), (-600, 60))
    _structure(s, apart)
    _sheets(s, lap)
    if lap < 100:
        s.fault(
            "short-lap",
            "water",
            (lap / 2, -lap / 4),
            "the sheet of the left slope laps only 47 mm over that of the right",
            within=60,
        )
    if apart:
        s.fault("gap", "heat", (0, -110), "the roof boards stop 46 mm apart", within=110)


def _both(s: Sheet, product: str, outline: Points, *, hatch: bool = True) -> None:
    s.area(product, outline, hatch=hatch)
    s.area(product, mirrored(outline, 0.0), hatch=hatch)


def _structure(s: Sheet, apart: float) -> None:
    half = max(apart / 2, 0.25)
    _both(s, "plywood", ROOF.slab(-REACH, -0.25, -PLY, 0))
    _both(s, "pir", ROOF.slab(-REACH, -half, -ROOF_BOARD, -PLY))
    _both(s, "osb", ROOF.slab(-REACH, -0.25, -DECK_UNDER, -DECK_AT))
    _both(s, "framing", ROOF.slab(-REACH, -45, -RAFTER_UNDER, -DECK_UNDER), hatch=False)
    _both(s, "gypsum-board", ROOF.slab(-REACH, -46, -RAFTER_UNDER - 12.5, -RAFTER_UNDER))
    top = ROOF.at(-45, -DECK_UNDER)[1]
    s.member(box(-45, top - 360, 45, top))
    _both(s, "metal-roofing", ROOF.slab(-REACH, -70, 22, 28), hatch=False)
    _both(s, "trim", ROOF.slab(-190, -0.2, 36, 40), hatch=False)


def _sheets(s: Sheet, lap: float) -> None:
    """Draw the sheets: the right one ends at the ridge, the left one runs on over it."""
    other = Roof(-0.5)
    s.line("self-adhered-underlayment", [other.at(REACH, 0.8), other.at(4, 0.8)])
    run = [ROOF.at(-REACH, 0.8), ROOF.at(-14, 0.8), ROOF.at(-0.2, 4.6), other.at(lap + 4, 4.6)]
    s.line("self-adhered-underlayment", run)
    s.line("bituminous-vapour-control", [other.at(REACH, VAPOUR_UP), other.at(4, VAPOUR_UP)])
    up = VAPOUR_UP + 4
    under = [ROOF.at(-REACH, VAPOUR_UP), ROOF.at(-14, VAPOUR_UP), ROOF.at(-0.2, up)]
    s.line("bituminous-vapour-control", [*under, other.at(170, up)])


def words(s: Sheet) -> None:
    """Write notes and dimensions."""
    other = Roof(-0.5)
    notes = [
        ("RIDGE CAP, SCREENED", other.at(120, 38)),
        ("LEFT SHEET OVER RIDGE, LAPPED 235\nOVER RIGHT SHEET", other.at(60, 4.6)),
        ("ROOF SHEETING ON CLIPS", other.at(560, 25)),
        ("ROOF BOARDS 160, TIGHT AT RIDGE", other.at(300, -90)),
        ("VAPOUR SHEET, LAPPED 190 AT RIDGE", other.at(90, VAPOUR_UP)),
        ("RAFTERS 200", other.at(500, -300)),
        ("RIDGE BEAM 90 x 360", (20, -400)),
    ]
    s.notes(REACH + 60, (BOTTOM + 340, TOP - 20), notes)
    s.dimension(ROOF.at(-500, -ROOF_BOARD), ROOF.at(-500, -PLY), (-820, 0), 90)
