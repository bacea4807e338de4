"""Results made by hand for the tests of what is drawn: a boathouse wall from footing to roof."""

from collections.abc import Mapping
from dataclasses import replace
from math import cos, radians, sin

from enclosure_app.model.drawing import Drawing, Units
from enclosure_app.model.finding import Finding, Severity
from enclosure_app.model.place import Area, Line, Point, Points
from enclosure_app.model.product import Bond, Control, Kind, Product
from enclosure_app.model.report import (
    Continuity,
    DrawingResult,
    Joint,
    JointKind,
    LayerResult,
    Lift,
    RainRoute,
    RouteEnd,
    Run,
    SectionResult,
)
from enclosure_app.model.section import Piece, Section, Stroke, Text

W, A, V, H = Control.WATER, Control.AIR, Control.VAPOUR, Control.HEAT
_C, _S = cos(radians(30)), sin(radians(30))


def roof(along: float, out: float = 0.0) -> Point:
    """Return a point `along` the deck uphill from the wall's outer corner, `out` above it."""
    return 158 - _C * along + _S * out, 2090 + _S * along + _C * out


def product(
    key: str, name: str, kind: Kind, controls: tuple[Control, ...] = (), bond: Bond = Bond.RIGID
) -> Product:
    return Product(key, name, frozenset(controls), bond, kind)


PRODUCTS: Mapping[str, Product] = {
    p.key: p
    for p in (
        product("concrete", "Concrete", Kind.CONCRETE),
        product("ground", "Ground", Kind.GROUND),
        product("timber", "Timber", Kind.FRAMING),
        product("board", "Board", Kind.BOARD),
        product("wool", "Mineral wool", Kind.INSULATION, (H,)),
        product("cladding", "Larch boards", Kind.CLADDING),
        product("cavity", "Air space", Kind.AIR_SPACE),
        product("coating", "Dampproof coating", Kind.FLUID, (W,), Bond.FLUID),
        product("flashing", "Base flashing", Kind.FLASHING, (W,), Bond.FASTENED),
        product("wall-sheet", "Wall sheet", Kind.SHEET, (W, A), Bond.ADHERED),
        product("floor-sheet", "Floor sheet", Kind.SHEET, (A, V), Bond.LOOSE),
        product("ceiling-sheet", "Ceiling sheet", Kind.SHEET, (A,), Bond.LOOSE),
        product("vapour-sheet", "Vapour sheet", Kind.SHEET, (V,), Bond.LOOSE),
        product("underlayment", "Roof underlayment", Kind.UNDERLAYMENT, (W,), Bond.FASTENED),
        product("drip", "Drip edge", Kind.DRIP_EDGE, (), Bond.FASTENED),
    )
}


def box(name: str, made_of: str, low: Point, high: Point) -> Piece:
    (a, b), (c, d) = low, high
    return Piece(name, made_of, Area(((a, b), (c, b), (c, d), (a, d))))


def slab(name: str, made_of: str, along: tuple[float, float], out: tuple[float, float]) -> Piece:
    (a, b), (c, d) = along, out
    return Piece(name, made_of, Area((roof(a, c), roof(b, c), roof(b, d), roof(a, d))))


def sheet(name: str, made_of: str, *points: Point) -> Piece:
    return Piece(name, made_of, Line(points))


AREAS = (
    box("ground", "ground", (200, -300), (900, -20)),
    box("footing", "concrete", (0, -300), (200, 90)),
    box("slab", "concrete", (-700, 50), (-1, 150)),
    box("fill", "ground", (-700, -300), (0, 40)),
    box("plate", "timber", (0, 92), (140, 188)),
    box("wool", "wool", (0, 188), (140, 1960)),
    box("top plate", "timber", (0, 1960), (140, 2036)),
    box("lining", "board", (-13, 150), (-3, 2036)),
    box("ceiling", "board", (-700, 2024), (-13, 2036)),
    box("loft", "wool", (-700, 2044), (120, 2150)),
    box("sheathing", "board", (140, 92), (153, 2075)),
    box("battens", "cavity", (162, 230), (182, 2020)),
    box("boards", "cladding", (182, 215), (202, 2030)),
    slab("rafter", "timber", (-60, 1000), (-150, -20)),
    slab("deck", "board", (-60, 1000), (-18, 0)),
    slab("roofing", "cladding", (-85, 1000), (30, 52)),
    box("fascia", "timber", (212, 1925), (236, 2050)),
)
LINES = (
    sheet("coat", "coating", (202, -300), (202, 92)),
    sheet("base", "flashing", (158, 180), (158, 98), (208, 92), (214, 84)),
    sheet("w1", "wall-sheet", (160, 120), (160, 1000)),
    sheet("w2", "wall-sheet", (163, 880), (163, 2000)),
    sheet("w3", "wall-sheet", (166, 1880), (166, 2092), roof(200, 3)),
    sheet("r1", "underlayment", roof(-70, 8), roof(560, 8)),
    sheet("r2", "underlayment", roof(480, 4), roof(990, 4)),
    sheet("floor", "floor-sheet", (-700, 45), (160, 45), (160, 90)),
    sheet("lid", "ceiling-sheet", (158, 2040), (-700, 2040)),
    sheet("vapour", "vapour-sheet", (-1.5, 150), (-1.5, 1900)),
    sheet("drip", "drip", roof(60, 4), roof(-75, 4), (226, 2010)),
)
OFFICE = (
    Stroke(((202, -20), (900, -20))),
    Stroke(((-700, 1000), (-620, 1000), (-600, 1040), (-580, 960), (-560, 1000), (-480, 1000))),
    Stroke(((236, 1990), (420, 1990), (470, 2040))),
    Stroke(((600, 2060), (470, 2040), (477, 2050))),
)
TEXTS = (
    Text("larch boards on battens", (300, 1260), 32),
    Text("140 stud wall", (-330, 1260), 32),
    Text("finished ground", (430, -10), 32),
    Text("INSIDE", (-420, 1500), 60),
    Text("OUTSIDE", (560, 1500), 60),
)
FRAME: Points = ((-700, -300), (900, -300), (900, 2640), (-700, 2640))


def section(name: str = "Boathouse, north wall at the slip") -> Section:
    return Section(
        name, FRAME, AREAS + LINES, PRODUCTS, inside=((-420, 1500),), outside=((560, 1500),),
        frame_drawn=True, strokes=OFFICE, texts=TEXTS,
    )  # fmt: skip


def lap(a: str, b: str, over: str, runs: tuple[Points, Points], sealed: bool = True) -> Joint:
    (x, y), (u, v) = runs[0][0], runs[0][-1]
    size = ((x - u) ** 2 + (y - v) ** 2) ** 0.5
    at = ((x + u) / 2, (y + v) / 2)
    return Joint(a, b, JointKind.LAP, at, sealed, size, *runs, over=over, upper=b, on_trace=True)


BASE_LAP = lap("base", "w1", "w1", (((158, 120), (158, 180)), ((160, 120), (160, 180))))
W12 = lap("w1", "w2", "w2", (((160, 880), (160, 1000)), ((163, 880), (163, 1000))))
W23 = lap("w2", "w3", "w3", (((163, 1880), (163, 2000)), ((166, 1880), (166, 2000))))
W3R = lap("w3", "r1", "r1", ((roof(0, 3), roof(200, 3)), (roof(0, 8), roof(200, 8))))
R12 = lap("r1", "r2", "r1", ((roof(480, 8), roof(560, 8)), (roof(480, 4), roof(560, 4))))

WATER = LayerResult(
    W, Continuity.CONTINUOUS,
    walk=(
        Run("coat", ((202, -300), (202, 92))),
        Run("base", ((202, 92), (158, 98), (158, 150))),
        Run("w1", ((160, 150), (160, 940))),
        Run("w2", ((163, 940), (163, 1940))),
        Run("w3", ((166, 1940), (166, 2092), roof(100, 3))),
        Run("r1", (roof(100, 8), roof(520, 8))),
        Run("r2", (roof(520, 4), roof(990, 4))),
    ),
    joints=(BASE_LAP, W12, W23, W3R, R12), bottleneck=0.0, opening=0.0,
)  # fmt: skip
AIR = LayerResult(
    A, Continuity.BROKEN,
    walk=(
        Run("floor", ((-700, 45), (160, 45), (160, 90))),
        Lift("floor", "w1", (160, 90), (160, 120)),
        Run("w1", ((160, 120), (160, 940))),
        Run("w2", ((163, 940), (163, 1940))),
        Run("w3", ((166, 1940), (166, 2040))),
        Run("lid", ((158, 2040), (-700, 2040))),
    ),
    joints=(W12, W23, Joint("w3", "lid", JointKind.TEE, (162, 2040), False, on_trace=True)),
    bottleneck=30.0, opening=30.0,
    way_in=((700, 700), (420, 160), (160, 105), (40, 130), (-120, 230), (-420, 700)),
)  # fmt: skip

SHORT = Finding(
    "short-lap:base+w1", "short-lap", W, Severity.FAULT, (159, 150), ("base", "w1"),
    "The wall sheet laps only 60 mm over the base flashing, 100 mm is required.",
    "Bring the wall sheet 40 mm further down over the flashing.",
    60.0, 100.0, "Rule book: wall sheets, vertical face (unconfirmed)",
    (BASE_LAP.run_b, BASE_LAP.run_a), along=480.0,
)  # fmt: skip
GAP = Finding(
    "gap:floor.end+w1.start", "gap", A, Severity.FAULT, (160, 105), ("floor", "w1"),
    "The floor sheet stops 30 mm below the wall sheet at the sill: air runs through.",
    "Carry the floor sheet up and seal it to the wall sheet, or tape the two together.",
    30.0, 0.0, "", (((160, 90),), ((160, 120),)), along=905.0,
)  # fmt: skip
UNSEALED = Finding(
    "unsealed-joint:w3+lid", "unsealed-joint", A, Severity.FAULT, (162, 2040), ("w3", "lid"),
    "The ceiling sheet meets the wall sheet at the top plate and nothing seals the joint.",
    "Draw a bead or a tape that touches both, or say that the joint is sealed.",
    None, None, "", (((158, 2020), (158, 2060)),), along=2900.0,
)  # fmt: skip
REVERSED = Finding(
    "reverse-lap:r1+r2", "reverse-lap", W, Severity.FAULT, roof(520, 6), ("r1", "r2"),
    "The upper underlayment laps under the lower one: water runs in behind.",
    "Put the upper sheet over the lower one, or add a strip over both.",
    80.0, 100.0, "Common practice, no source (unconfirmed)", (R12.run_a, R12.run_b), along=2950.0,
)  # fmt: skip
NO_DRIP = Finding(
    "no-drip:drip", "no-drip", W, Severity.REMARK, (226, 2010), ("drip",),
    "The drip edge ends 10 mm from the fascia: a drop can run back to the timber.",
    "Let the edge stand 20 mm clear and turn it outward.",
    10.0, 20.0, "Common practice, no source (unconfirmed)", (), along=2300.0,
)  # fmt: skip
STOPS = Finding(
    "stops-short:vapour.end", "stops-short", V, Severity.DOUBT, (-1.5, 1900), ("vapour",),
    "The vapour sheet ends below the top plate and does not go on along the ceiling.",
    "Carry it to the ceiling sheet and seal it there.",
    None, None, "", (((-1.5, 1890), (-1.5, 1900)),), along=1750.0,
)  # fmt: skip

RAIN = (
    RainRoute((roof(985, 8), roof(480, 6), roof(470, 3)), ("r2",), RouteEnd.INSIDE),
    RainRoute((roof(470, 10), roof(-75, 10), (228, 2000), (228, -20)), ("r1", "drip"), RouteEnd.OUTSIDE),
    RainRoute(((170, 1990), (166, 180), (214, 90), (216, -20)), ("w2", "w1", "base"), RouteEnd.OUTSIDE),
)  # fmt: skip


def result(**changes: object) -> SectionResult:
    """Return the boathouse wall as a check leaves it: faults of several kinds."""
    findings = (GAP, SHORT, STOPS, NO_DRIP, UNSEALED, REVERSED)
    vapour = LayerResult(V, Continuity.BROKEN, (Run("vapour", ((-1.5, 150), (-1.5, 1900))),))
    layers = {W: WATER, A: AIR, V: vapour}
    made = SectionResult(section(), layers, RAIN, (), findings)
    return replace(made, **changes)  # type: ignore[arg-type]


def unsure(*findings: Finding) -> SectionResult:
    """Return the wall with an air layer of which the two proofs say different things."""
    air = LayerResult(A, Continuity.UNSURE, why="The two proofs differ: look at it yourself.")
    return result(layers={W: WATER, A: air}, findings=findings)


def drawing(
    *sections: SectionResult, units: Units = Units.MM, file: str = "boathouse.dxf"
) -> DrawingResult:
    parts = sections or (result(),)
    return DrawingResult(Drawing(file, units, tuple(s.section for s in parts)), parts)


def crowded(count: int = 40) -> SectionResult:
    """Return the wall with `count` findings spread over it, of all severities."""
    kinds = tuple(Severity)[:3]
    walls = [(160.0, 130.0 + 1850.0 * k / count) for k in range(count)]
    findings = tuple(
        Finding(
            f"gap:{k}", "gap" if k % 2 else "unsealed-joint", A if k % 2 else W, kinds[k % 3], at,
            ("w1",), f"Place number {k + 1}: the sheet is open here and water can run in behind it.",
            "Seal it.", 5.0 + k, 0.0, "Common practice, no source (unconfirmed)",
        )
        for k, at in enumerate(walls)
    )  # fmt: skip
    return result(findings=findings)
