"""Everything that the rules may ask about one section."""

from collections.abc import Iterator, Mapping, Set
from dataclasses import dataclass, replace
from math import dist
from types import MappingProxyType

import numpy as np

from enclosure_app.geometry.runs.polyline import within
from enclosure_app.language import in_sentence, say
from enclosure_app.model.limits import Tolerances
from enclosure_app.model.place import Line, Point
from enclosure_app.model.product import Control, Kind, Product, is_glued_on
from enclosure_app.model.section import Piece, Section
from enclosure_app.network.airs import Air
from enclosure_app.network.fabric.bodies import Bodies, bodies_of
from enclosure_app.network.layer import Layer, same_layer, trace_layer
from enclosure_app.network.order import Order, building_order
from enclosure_app.network.rain.rain import Rain, find_routes, together
from enclosure_app.progress import part, tell

SPLASH = 5.0  # mm: how near to a gap a drop must pass to get into it
_TIGHT = frozenset({Kind.OPENING, Kind.GLASS, Kind.PENETRATION})  # no rain comes through these
_JOINTED = frozenset(
    {Kind.FLASHING, Kind.CLADDING}
)  # metal and the like, which leaks at its joints
_TRACED = 0.7  # share of a check after which the layers are traced and it begins to rain
NEAR_END = 20.0  # mm: a place this near to a sheet's end belongs to that end


@dataclass(frozen=True, slots=True)
class Network:
    """One section questioned: gravity acts along -y (or there is none), lengths are mm.

    `bodies` are the solids of its pieces, `laid` the laps (under, over) that tell the order, and
    `kinds` are all that its pieces are of.
    """

    section: Section
    tolerances: Tolerances
    layers: Mapping[Control, Layer]
    rain: Rain | None
    order: Order
    bodies: Bodies | None = None
    laid: tuple[tuple[str, str], ...] = ()
    kinds: frozenset[Kind] = frozenset()

    def product(self, name: str) -> Product:
        """Return what the piece called `name` is made of."""
        return self.section.product(self.section.by_name[name])

    def words(self, name: str) -> str:
        """Return a builder's words for a piece: its product's name, not capitalised."""
        if name not in self.section.by_name:
            return name or say("edge of the drawing")
        return in_sentence(self.product(name).name).split(",")[0]

    def both(self, a: str, b: str) -> str:
        """Return a builder's words for two pieces: "two pieces of felt" where they are alike."""
        first, second = self.words(a), self.words(b)
        if first == second:
            return say("two pieces of {sheet}", sheet=first)
        return say("{first} and {second}", first=first, second=second)

    def upper_and_lower(self, upper: str, lower: str) -> tuple[str, str]:
        """Return a builder's words for the two sheets of a lap, told apart where they are alike."""
        first, second = self.words(upper), self.words(lower)
        if first == second:
            return say("the upper {sheet}", sheet=first), say("the lower one")
        return first, second

    def rain_reaches(self, a: Point, b: Point) -> bool:
        """Whether a rain route passes through, or along the edge of, the way from a to b."""
        routes = self.rain.routes if self.rain else ()
        return bool(routes) and within((a, b), [r.points for r in routes], SPLASH)

    def part(self, name: str, at: Point) -> str:
        """Return a piece's name and which part of it lies at a place: low, high, or face.

        Ends are told apart by height, then from left to right, so that the part does not depend on
        the direction in which the piece was drawn.
        """
        piece = self.section.by_name.get(name)
        if piece is None:
            return name or "frame"
        shape = piece.shape
        if not isinstance(shape, Line) or shape.closed:
            return f"{name}.face"
        low, high = sorted((shape.points[0], shape.points[-1]), key=lambda p: (p[1], p[0]))
        if min(dist(at, low), dist(at, high)) > NEAR_END:
            return f"{name}.face"
        return f"{name}.low" if dist(at, low) <= dist(at, high) else f"{name}.high"

    def about(self, names: Set[str]) -> "Network":
        """Return the network with only those laps and joints that the named pieces are part of."""
        layers = {control: layer.about(names) for control, layer in self.layers.items()}
        return replace(self, layers=MappingProxyType(layers))

    def along(self, control: Control, at: Point) -> float:
        """Return how far along a layer's walk a place lies, mm."""
        return float(self.layers[control].along(np.array([at]))[0])


def question(section: Section, tolerances: Tolerances) -> Network:
    """Trace every control layer of a section, let it rain, and find the order of building.

    The section must stand with gravity along -y; near the origin it is judged most exactly.
    """
    bodies = bodies_of(section)
    with part(0.0, _TRACED):
        layers = _layers(section, tolerances, bodies)
    with part(_TRACED, 1.0):
        rain = rain_on(section, layers[Control.WATER], tolerances)
    laid = tuple(dict.fromkeys(pairs_laid(layers)))
    return Network(
        section=section,
        tolerances=tolerances,
        layers=MappingProxyType(layers),
        rain=rain,
        order=building_order(laid),
        bodies=bodies,
        laid=laid,
        kinds=frozenset(section.product(piece).kind for piece in section.pieces),
    )


def _layers(section: Section, tolerances: Tolerances, bodies: Bodies) -> dict[Control, Layer]:
    """Trace each control; one sheet often does for several, and is traced once."""
    layers: dict[Control, Layer] = {}
    traced: dict[tuple[str, ...], Layer] = {}
    for number, control in enumerate(Control):
        tell(number / len(Control))
        pieces = tuple(piece.name for piece in section.layer(control))
        known = traced.get(pieces)
        if known is None:
            traced[pieces] = layers[control] = trace_layer(section, control, tolerances, bodies)
        else:
            layers[control] = same_layer(known, control)
    return layers


def pairs_laid(layers: Mapping[Control, Layer]) -> Iterator[tuple[str, str]]:
    """Yield (under, over) for every lap that shows which sheet is outside."""
    for laps in {id(layer.laps): layer.laps for layer in layers.values()}.values():
        for lap in laps:
            if lap.outward is not None:
                yield lap.inner.name, lap.outer.name


def rain_on(section: Section, water: Layer, tolerances: Tolerances) -> Rain | None:
    """Let it rain on the water layer; None in a plan, and where the layer has no walk."""
    if section.gravity is None or water.walk is None:
        return None
    return together([_rain_in(air, section, water, tolerances) for air in water.airs])


def _rain_in(air: Air, section: Section, water: Layer, tolerances: Tolerances) -> Rain:
    pieces = water.fabric.pieces
    return find_routes(
        {piece.name: piece.shape for piece in pieces},
        air.holds,
        section.frame,
        tolerances,
        frozenset(p.name for p in pieces if section.product(p).kind is Kind.DRAIN),
        over=over_whom(water),
        glued=frozenset(p.name for p in pieces if is_glued_on(section.product(p))),
        walls={piece.name: piece.shape for piece in section.pieces if hides(section, piece)},
        cladding=frozenset(p.name for p in section.pieces if _leaks(section, p)),
        openings=frozenset(p.name for p in pieces if section.product(p).kind is Kind.OPENING),
        rained_on=air.is_first_to_hold if air.before else None,
    )


def over_whom(water: Layer) -> dict[tuple[str, str], str]:
    """Return the outer piece of each pair (in sorted order) of which a lap shows the order."""
    return {
        (min(outer, inner), max(outer, inner)): outer
        for inner, outer in pairs_laid({Control.WATER: water})
    }


def hides(section: Section, piece: Piece) -> bool:
    """Whether a piece that keeps no water out may stand close under a dripping edge."""
    product = section.product(piece)
    return Control.WATER not in product.controls and product.kind not in (
        Kind.AIR_SPACE,
        Kind.GROUND,
    )


def _leaks(section: Section, piece: Piece) -> bool:
    """Whether rain gets in behind a piece, as behind a cladding or a coping."""
    kind = section.product(piece).kind
    return kind in _JOINTED or (hides(section, piece) and kind not in _TIGHT)
