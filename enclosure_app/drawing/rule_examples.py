"""For every rule two little sections: as a fault is drawn, and as it should be drawn.

They are true sections of the products that come with the program, so that the checker can judge
them: the first has the fault of its rule, and those that this fault `brings`; the second has none.
Lengths are mm; outside is on the left or above.
"""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from math import hypot
from types import MappingProxyType

from enclosure_app.model.place import Area, Line, Point
from enclosure_app.model.product import Control, Product
from enclosure_app.model.section import DOWN, Piece, Section

_HALF = 110.0  # half the height of a wall's picture
_FRAME = (-90.0, -_HALF, 90.0, _HALF)  # left, lower, right and upper edge
_PITCH = 0.5  # rise over run of the roofs
_FALL = 0.012  # of what counts as level


@dataclass(frozen=True, slots=True)
class Example:
    """What is drawn, as pieces of products that come with the program.

    Only `control` is judged, since a picture shows one thing. `frame` is its left, lower, right
    and upper edge. Without `gravity` it is a plan.
    """

    drawn: tuple[Piece, ...]
    mended: tuple[Piece, ...]
    control: Control = Control.WATER
    brings: frozenset[str] = frozenset()
    frame: tuple[float, float, float, float] = _FRAME
    outside: Point = (-65.0, 85.0)
    inside: Point = (65.0, -85.0)
    gravity: Point | None = DOWN


def example_sections(rule: str, products: Mapping[str, Product]) -> tuple[Section, Section] | None:
    """Return the two sections of a rule, as drawn and as it should be; None without an example."""
    example = EXAMPLES.get(rule)
    if example is None:
        return None
    return _section(example, example.drawn, products), _section(example, example.mended, products)


def _section(
    example: Example, pieces: tuple[Piece, ...], products: Mapping[str, Product]
) -> Section:
    left, low, right, high = example.frame
    used = {piece.product: products[piece.product] for piece in pieces}
    alone = {
        key: replace(product, controls=product.controls & {example.control})
        for key, product in used.items()
    }
    return Section(
        name="example",
        frame=((left, low), (right, low), (right, high), (left, high)),
        pieces=pieces,
        products=MappingProxyType(alone),
        inside=(example.inside,),
        outside=(example.outside,),
        gravity=example.gravity,
        frame_drawn=True,
    )


def _run(name: str, product: str, *points: Point) -> Piece:
    return Piece(name, product, Line(points))


def _box(name: str, product: str, low: Point, high: Point) -> Piece:
    (x, y), (u, v) = low, high
    return Piece(name, product, Area(((x, y), (u, y), (u, v), (x, v))))


_STUD = _box("stud", "framing", (18, -_HALF), (95, _HALF))
_BACKING = _box("backing", "plywood", (4, -_HALF), (20, _HALF))


def _boards(low: float, high: float) -> tuple[Piece, ...]:
    """Two boards of an air barrier on a stud: from the lower edge to `low`, from `high` up."""
    below = _box("lower board", "sealed-sheathing", (0, -_HALF), (18, low))
    return below, _box("upper board", "sealed-sheathing", (0, high), (18, _HALF)), _STUD


def _wall(product: str, top: float, bottom: float, apart: float = -4.0) -> tuple[Piece, ...]:
    """Two sheets on a board: the lower one up to `top`, the upper one `apart` down to `bottom`."""
    lower = _run("lower", product, (0, -_HALF), (0, top))
    return lower, _run("upper", product, (apart, bottom), (apart, _HALF)), _BACKING


def _duct(hole: float) -> tuple[Piece, ...]:
    """A duct through two boards, `hole` clear of each."""
    duct = _box("duct", "duct", (-70, -30), (110, 30))
    return (*_boards(-30 - hole, 30 + hole)[:2], duct)


def _level(x: float, off: float = 0.0) -> Point:
    return x, x * _FALL + off


_LEVEL = (
    _run("lower", "single-ply-roofing-fastened", _level(-120), _level(45)),
    _run("upper", "single-ply-roofing-fastened", _level(-45, 4), _level(120, 4)),
    _box("deck", "roof-deck", (-120, -30), (120, -8)),
)


def _sill(*pan: Point) -> tuple[Piece, ...]:
    """A window on a sill pan over the wall sheet."""
    window = _box("window", "window-frame", (20, 1.5), (70, _HALF))
    sheet = _run("sheet", "building-paper", (4, -_HALF), (4, -12))
    return (
        _run("pan", "sill-pan", *pan),
        sheet,
        window,
        _box("post", "framing", (8, -_HALF), (95, -34)),
    )


def _head(*metal: Point) -> tuple[Piece, ...]:
    """A window under a head flashing, the wall sheet over its leg."""
    window = _box("window", "window-frame", (-2, -_HALF), (60, -1))
    sheet = _run("sheet", "building-paper", (-7, 10), (-7, _HALF))
    return (
        _run("metal", "head-flashing", *metal),
        sheet,
        window,
        _box("lintel", "framing", (4, 8), (95, _HALF)),
    )


def _upturn(height: float) -> tuple[Piece, ...]:
    """A roof that turns up a wall, the wall's sheet over its leg."""
    return (
        _run("roof", "underlayment", (-120, -40), (0, 0), (0, height)),
        _run("sheet", "building-paper", (-4, height - 58), (-4, 190)),
        _box("wall", "plywood", (4, -70), (20, 190)),
    )


def _slope(x: float, off: float = 0.0) -> Point:
    return x, x * _PITCH + off


def _eave(length: float) -> tuple[Piece, ...]:
    """An eave whose membrane reaches `length` up the slope, the underlayment over its end."""
    top = length / hypot(1, _PITCH)
    return (
        _run("membrane", "eave-membrane", (0, -450), _slope(0), _slope(top)),
        _run("underlayment", "underlayment", _slope(top - 180, 6), _slope(1400, 6)),
        _box("wall", "framing", (250, -450), (390, 60)),
    )


_POST, _LAPPED = 90.0, 62.0  # half of a post's side; where a sheet ends on the next side


def _wrapped(*, turned: bool) -> tuple[Piece, ...]:
    """Four sheets round a post, seen from above: each covers a side and laps over the next sheet.

    With one lap `turned` round, the first sheet goes on first and the second one last.
    """
    corner, inner, outer = _POST + 8, 4.0, 8.0
    usual = ((_POST + inner, -_POST), (_POST + inner, _LAPPED + 6), (_POST + outer, _LAPPED + 12),
             (corner, corner), (-_LAPPED, corner))  # fmt: skip
    first = ((_POST + inner, -_POST), (_POST + inner, _POST + inner), (-_LAPPED, _POST + inner))
    last = ((_POST + outer, -_POST), (corner, corner), (-_LAPPED, corner))
    ways = (first, last, usual, usual) if turned else (usual,) * 4
    names = ("first", "second", "third", "fourth")
    sheets = (
        _run(name, "building-paper", *(_quarters(at, side) for at in way))
        for side, (name, way) in enumerate(zip(names, ways, strict=True))
    )
    return (*sheets, _box("post", "framing", (-_POST, -_POST), (_POST, _POST)))


def _quarters(at: Point, turns: int) -> Point:
    """Return a place after so many quarter turns to the left about the origin."""
    x, y = at
    return _quarters((-y, x), turns - 1) if turns else at


EXAMPLES: Mapping[str, Example] = MappingProxyType({
    "gap": Example(
        _boards(-10, 12),
        (*_boards(-10, 12), _box("bead", "spray-foam-bead", (0, -10), (18, 12))),
        Control.AIR,
    ),
    "stops-short": Example(
        (_boards(60, 62)[0], _STUD),
        (_boards(_HALF, _HALF)[0], _STUD),
        Control.AIR,
    ),
    "unsealed-joint": Example(
        _wall("housewrap", 55, -55),
        (
            *_wall("housewrap", 55, -55),
            _run("tape", "seam-tape", (-7, -15), (-7, -55), (-4, -60), (-4, -100)),
        ),
        Control.AIR,
    ),
    "open-penetration": Example(
        _duct(1.0),
        (
            *_duct(12.0),
            _box("seal above", "spray-foam-bead", (0, 30), (18, 42)),
            _box("seal below", "spray-foam-bead", (0, -42), (18, -30)),
        ),
        Control.AIR,
    ),
    "reverse-lap": Example(
        _wall("building-paper", 40, -40, 3.0)[::-1],
        _wall("building-paper", 40, -40),
        brings=frozenset({"wet-route"}),
    ),
    "short-lap": Example(
        _wall("building-paper", 12, -13),
        _wall("building-paper", 40, -40),
    ),
    "level-lap": Example(
        _LEVEL,
        (*_LEVEL, _run("tape", "flashing-tape", (8, 7), (-45, 6.5), (-47, 2.5), (-95, 2))),
        frame=(-120.0, -100.0, 120.0, 100.0), outside=(0.0, 75.0), inside=(0.0, -75.0),
    ),
    "wet-route": Example(
        _sill((92, -30), (90, -8), (0, 0), (0, -90)),
        _sill((90, 20), (90, 2), (0, -6), (0, -90)),
        frame=(-75.0, -_HALF, 120.0, _HALF), inside=(95.0, 80.0),
    ),
    "ponding": Example(
        (_run("roof", "single-ply-roofing", (-120, 30), (0, 0), (120, 40)),),
        (_run("roof", "single-ply-roofing", (-120, 0), (120, 40)),),
        frame=(-120.0, -100.0, 120.0, 100.0), outside=(0.0, 80.0), inside=(0.0, -60.0),
    ),
    "no-drip": Example(
        _head((-3, 70), (-3, 0), (-70, -8)),
        _head((-3, 70), (-3, 0), (-60, -8), (-68, -30)),
    ),
    "upturn-short": Example(
        _upturn(70),
        _upturn(120),
        frame=(-120.0, -70.0, 120.0, 190.0), outside=(-80.0, 130.0), inside=(70.0, -45.0),
    ),
    "edge-cover-short": Example(
        _eave(760),
        _eave(1200),
        frame=(-200.0, -450.0, 1400.0, 850.0), outside=(-60.0, 760.0), inside=(1000.0, -200.0),
    ),
    "lap-cycle": Example(
        _wrapped(turned=False),
        _wrapped(turned=True),
        frame=(-140.0, -140.0, 140.0, 140.0), outside=(-120.0, 125.0), inside=(0.0, 0.0),
        gravity=None,
    ),
})  # fmt: skip
"""By the name of the rule."""
