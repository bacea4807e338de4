"""The make-up that all parts share, and the sketch that they draw it on.

Wall, from the room outwards: lining, studs, board, one self-adhered sheet (water, air and vapour),
insulation, vented space, cladding. The outer face of the board stands at x = 0, the room at x > 0.
Roof, upwards: rafters, deck, self-adhered sheet, insulation, nail base, underlayment, roofing; the
deck's top is the roof's zero. Sheets that lap are drawn 4 mm apart, so that one sees which is over.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from math import hypot
from types import MappingProxyType

from enclosure_app.model.place import Area, Line, Point, Points
from enclosure_app.model.product import Product
from enclosure_app.model.section import Piece, Section
from enclosure_app.planning.parts.parameters import DeckSizes, WallSizes

ON = 0.8  # mm: a sheet off what it lies on
OVER = 4.0  # mm: a sheet off the one under it
ROOM = 12.0  # mm between board and insulation, in which sheets lap
LINING = 12.5
CLADDING = 20.0
DECK = 16.0
NAIL_BASE = 16.0
PLATE = 38.0
STEEP = 4 / 12  # from this pitch on underlayment lies in one layer
NARROW, WIDE = 170.0, 520.0  # mm of lap along the slope, in one layer and in two (19 in)


def box(left: float, bottom: float, right: float, top: float) -> Points:
    """Return the corners of an upright rectangle, anticlockwise."""
    return ((left, bottom), (right, bottom), (right, top), (left, top))


@dataclass(slots=True)
class Sketch:
    """A section in the making; `own` are products of its own beside the catalogue's."""

    name: str
    frame: Points
    inside: Point
    outside: Point
    pieces: list[Piece] = field(default_factory=list)
    own: dict[str, Product] = field(default_factory=dict)

    def area(self, product: str, points: Sequence[Point]) -> None:
        """Draw a filled region."""
        self._add(product, Area(tuple(points)))

    def line(self, product: str, points: Sequence[Point], width: float = 0.0) -> None:
        """Draw the run of a sheet."""
        self._add(product, Line(tuple(points), width))

    def _add(self, product: str, shape: Area | Line) -> None:
        number = 1 + sum(piece.product == product for piece in self.pieces)
        self.pieces.append(Piece(f"{product}-{number}", product, shape))

    def section(self, products: Mapping[str, Product]) -> Section:
        """Return what was drawn as a section with its frame and marks."""
        return Section(
            self.name,
            self.frame,
            tuple(self.pieces),
            MappingProxyType({**products, **self.own}),
            inside=(self.inside,),
            outside=(self.outside,),
            frame_drawn=True,
        )


@dataclass(frozen=True, slots=True)
class Wall:
    """Where the leaves of the wall stand, x in mm."""

    sizes: WallSizes

    @property
    def board(self) -> float:
        """The inner face of the board, where the studs begin."""
        return self.sizes.board

    @property
    def studs(self) -> float:
        """The inner face of the studs."""
        return self.board + self.sizes.studs

    @property
    def room(self) -> float:
        """The face of the lining towards the room."""
        return self.studs + LINING

    @property
    def outer(self) -> float:
        """The outer face of the insulation."""
        return -ROOM - self.sizes.insulation

    @property
    def vent(self) -> float:
        """The outer face of the vented space."""
        return self.outer - self.sizes.cavity

    @property
    def face(self) -> float:
        """The outer face of the cladding."""
        return self.vent - CLADDING

    def inner_leaves(self, sketch: Sketch, bottom: float, top: float) -> None:
        """Draw board and lining."""
        sketch.area("plywood", box(0, bottom, self.board, top))
        sketch.area("gypsum-board", box(self.studs, bottom, self.room, top))

    def plate(self, sketch: Sketch, bottom: float) -> None:
        """Draw one plate across the studs."""
        sketch.area("framing", box(self.board, bottom, self.studs, bottom + PLATE))

    def screen(self, sketch: Sketch, bottom: float, top: float) -> None:
        """Draw vented space and cladding."""
        sketch.area("vented-air-space", box(self.vent, bottom, self.outer, top))
        sketch.area("lap-siding", box(self.face, bottom, self.vent, top))


@dataclass(frozen=True, slots=True)
class Roof:
    """A roof plane whose deck's top goes through the origin and rises towards the right."""

    sizes: DeckSizes
    pitch: float

    def at(self, x: float, out: float = 0.0) -> Point:
        """Return the place at `x`, `out` mm square off the top of the deck."""
        return (x, self.pitch * x + out * hypot(1, self.pitch))

    def slab(self, left: float, right: float, low: float, high: float) -> Points:
        """Return the outline between two heights off the deck, cut plumb at both ends."""
        return (
            self.at(left, low),
            self.at(right, low),
            self.at(right, high),
            self.at(left, high),
        )

    @property
    def insulation(self) -> tuple[float, float]:
        """The underside and the top of the insulation, off the deck."""
        return ROOM, ROOM + self.sizes.roof_insulation

    @property
    def top(self) -> float:
        """The top of the nail base, off the deck."""
        return self.insulation[1] + ON + NAIL_BASE

    @property
    def lap(self) -> float:
        """How far underlayment laps, level measure."""
        return (NARROW if self.pitch >= STEEP else WIDE) / hypot(1, self.pitch)

    def structure(self, sketch: Sketch, left: float, right: float) -> None:
        """Draw deck, rafter and ceiling lining."""
        under = -DECK - self.sizes.rafters
        sketch.area("plywood", self.slab(left, right, -DECK, 0))
        sketch.area("framing", self.slab(left, right, under, -DECK))
        sketch.area("gypsum-board", self.slab(left, right, under - LINING, under))

    def nail_base(self, sketch: Sketch, left: float, right: float) -> None:
        """Draw the boards that carry the roofing."""
        sketch.area("plywood", self.slab(left, right, self.top - NAIL_BASE, self.top))

    def roofing(self, sketch: Sketch, left: float, right: float) -> None:
        """Draw the roofing on its clips."""
        sketch.area("metal-roofing", self.slab(left, right, self.top + 16, self.top + 22))
