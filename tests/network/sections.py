"""Small sections in two words: ``section(sheet("a", (0, 0), (0, 100)), ...)``; lengths are mm."""

from collections.abc import Sequence
from dataclasses import replace

from enclosure_app.model.limits import Tolerances
from enclosure_app.model.place import Area, Line, Point, Points
from enclosure_app.model.product import Bond, Control, Kind, Product
from enclosure_app.model.section import DOWN, Break, Piece, Section
from enclosure_app.network.fabric.fabric import Fabric, weave
from enclosure_app.network.layer import Layer, trace_layer
from enclosure_app.network.network import Network, question

FRAME = ((-500.0, -500.0), (500.0, -500.0), (500.0, 500.0), (-500.0, 500.0))
BOTH = frozenset({Control.AIR, Control.WATER})
PLAIN = Tolerances()


def _product(key: str, bond: Bond, kind: Kind, controls: frozenset[Control] = BOTH) -> Product:
    return Product(key, f"{key.capitalize()} of the trial", controls, bond, kind)


PRODUCTS = {
    product.key: product
    for product in (
        _product("loose", Bond.LOOSE, Kind.SHEET),
        _product("fastened", Bond.FASTENED, Kind.SHEET),
        _product("adhered", Bond.ADHERED, Kind.SHEET),
        _product("coating", Bond.FLUID, Kind.FLUID),
        _product("tape", Bond.TAPE, Kind.TAPE),
        _product("bead", Bond.SEALANT, Kind.SEALANT),
        _product("gasket", Bond.RIGID, Kind.GASKET),
        _product("collar", Bond.RIGID, Kind.COLLAR),
        _product("concrete", Bond.RIGID, Kind.CONCRETE),
        _product("sheathing", Bond.RIGID, Kind.BOARD),
        _product("glass", Bond.RIGID, Kind.GLASS),
        _product("window", Bond.RIGID, Kind.OPENING),
        _product("underlayment", Bond.FASTENED, Kind.UNDERLAYMENT),
        _product("eave", Bond.ADHERED, Kind.EAVE_MEMBRANE),
        _product("roofing", Bond.ADHERED, Kind.ROOFING),
        _product("flashing", Bond.RIGID, Kind.FLASHING),
        _product("edge", Bond.RIGID, Kind.DRIP_EDGE),
        _product("board", Bond.RIGID, Kind.BOARD, frozenset()),
        _product("framing", Bond.RIGID, Kind.FRAMING, frozenset()),
        replace(_product("wide", Bond.FASTENED, Kind.SHEET), min_lap_mm=150.0, source="its maker"),
        replace(_product("curtain", Bond.LOOSE, Kind.SHEET), controls=frozenset({Control.AIR})),
        replace(_product("foil", Bond.LOOSE, Kind.SHEET), controls=frozenset({Control.VAPOUR})),
        _product("pipe", Bond.RIGID, Kind.PENETRATION, frozenset()),
    )
}


def sheet(name: str, *points: Point, of: str = "loose", width: float = 0.0) -> Piece:
    """Return a sheet that runs through `points`."""
    return Piece(name, of, Line(points, width))


def ring(name: str, *points: Point, of: str = "loose") -> Piece:
    """Return a sheet that closes on itself."""
    return Piece(name, of, Line(points, closed=True))


def area(name: str, *outer: Point, of: str = "board", holes: Sequence[Points] = ()) -> Piece:
    """Return a filled piece."""
    return Piece(name, of, Area(outer, tuple(holes)))


def box(name: str, low: Point, high: Point, of: str = "board") -> Piece:
    """Return a filled rectangle."""
    (x, y), (u, v) = low, high
    return area(name, (x, y), (u, y), (u, v), (x, v), of=of)


def section(  # noqa: PLR0913  # one argument for each thing that a test may set
    *pieces: Piece,
    outside: Sequence[Point] = ((-250.0, 0.0),),
    inside: Sequence[Point] = ((250.0, 0.0),),
    frame: Points = FRAME,
    gravity: Point | None = DOWN,
    breaks: Sequence[Break] = (),
    sealed: Sequence[tuple[str, str]] = (),
) -> Section:
    """Return a section with the outside on the left unless told otherwise."""
    return Section(
        name="trial",
        frame=frame,
        pieces=pieces,
        products=PRODUCTS,
        inside=tuple(inside),
        outside=tuple(outside),
        gravity=gravity,
        breaks=tuple(breaks),
        sealed=frozenset(sealed),
    )


def air(drawn: Section, tolerances: Tolerances = PLAIN) -> Layer:
    """Return the air layer of a section, traced."""
    return trace_layer(drawn, Control.AIR, tolerances)


def water(drawn: Section, tolerances: Tolerances = PLAIN) -> Layer:
    """Return the water layer of a section, traced."""
    return trace_layer(drawn, Control.WATER, tolerances)


def woven(*pieces: Piece, tolerances: Tolerances = PLAIN) -> Fabric:
    """Return the air layer's fabric, which needs no marks."""
    return weave(section(*pieces), Control.AIR, tolerances)


def asked(drawn: Section, tolerances: Tolerances = PLAIN) -> Network:
    """Return the network of a section."""
    return question(drawn, tolerances)
