"""Passages: what goes through a control layer, and whether a collar or bead seals it there."""

from collections.abc import Iterator
from dataclasses import dataclass

from enclosure_app.geometry.outlines.clipping import clip_run
from enclosure_app.geometry.rims.solids import Solid
from enclosure_app.geometry.rims.touching import touching_pairs
from enclosure_app.model.place import Area, Line, Point
from enclosure_app.model.product import Control, Kind
from enclosure_app.model.section import Piece
from enclosure_app.network.fabric.bodies import solid_of
from enclosure_app.network.network import Network

SEALS = frozenset({Kind.COLLAR, Kind.GASKET})
STUB = 0.01  # mm: a line this short stands for a place


@dataclass(frozen=True, slots=True)
class Passage:
    """A piece of a layer that something passes through or ends against."""

    passing: str
    layer: str
    at: Point
    sealed: bool


def passages(network: Network, control: Control) -> Iterator[Passage]:
    """Yield each place where a penetration meets a piece of the layer."""
    if Kind.PENETRATION not in network.kinds:
        return
    section, touch = network.section, network.tolerances.touch
    passing = [p for p in section.pieces if section.product(p).kind is Kind.PENETRATION]
    met = [p for p in section.layer(control) if section.product(p).kind is not Kind.PENETRATION]
    if not passing or not met:
        return
    solids = [solid_of(piece.shape) for piece in met]
    seals = [n for n, piece in enumerate(met) if _seals(network, piece)]
    held = [(n, met[n].name) for n in seals]
    pairs = touching_pairs([solid_of(piece.shape) for piece in passing], solids, touch)
    on_passing = {(a, met[b].name) for a, b, _ in pairs}
    joined = touching_pairs([solids[n] for n, _ in held], solids, touch)
    on_layer = {(held[a][1], met[b].name) for a, b, _ in joined}
    for number, other, at in pairs:
        name = met[other].name
        if other not in seals:
            both = [
                n for n, seal in held if (number, seal) in on_passing and (seal, name) in on_layer
            ]
            cut = _cut_at(passing[number], met[other])
            bare = _far_from(cut, [solids[n] for n in both], network.tolerances.lap_reach)
            place = bare[0] if bare else at
            yield Passage(passing[number].name, name, place, bool(both) and not bare)


def _cut_at(passing: Piece, layer: Piece) -> list[Point]:
    """Return where a sheet that is drawn right through what passes it meets its two sides."""
    through, sheet = passing.shape, layer.shape
    if not isinstance(through, Area) or not isinstance(sheet, Line):
        return []
    own = {sheet.points[0], sheet.points[-1]} if not sheet.closed else set()
    inside = clip_run(sheet.points, through.outer, closed=sheet.closed)
    return [
        stretch[n] for stretch in inside for n in (0, -1) if not own & {stretch[0], stretch[-1]}
    ]


def _far_from(places: list[Point], seals: list[Solid], reach: float) -> list[Point]:
    """Return the places that no seal comes near to."""
    stubs = [solid_of(Line(((x, y), (x + STUB, y)))) for x, y in places]
    near = {n for n, _, _ in touching_pairs(stubs, seals, reach)}
    return [place for n, place in enumerate(places) if n not in near]


def _seals(network: Network, piece: Piece) -> bool:
    product = network.section.product(piece)
    return product.bond.seals_edges or product.kind in SEALS
