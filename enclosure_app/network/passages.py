"""Passages: what goes through a control layer, and whether a collar or bead seals it there."""

from collections.abc import Iterator
from dataclasses import dataclass

from enclosure_app.geometry.touching import touching_pairs
from enclosure_app.model.place import Point
from enclosure_app.model.product import Control, Kind
from enclosure_app.model.section import Piece
from enclosure_app.network.bodies import solid_of
from enclosure_app.network.network import Network

SEALS = frozenset({Kind.COLLAR, Kind.GASKET})


@dataclass(frozen=True, slots=True)
class Passage:
    """A piece of a layer that something passes through or ends against."""

    passing: str
    layer: str
    at: Point
    sealed: bool


def passages(network: Network, control: Control) -> Iterator[Passage]:
    """Yield each place where a penetration meets a piece of the layer."""
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
            sealed = any(
                (number, seal) in on_passing and (seal, name) in on_layer for _, seal in held
            )
            yield Passage(passing[number].name, name, at, sealed)


def _seals(network: Network, piece: Piece) -> bool:
    product = network.section.product(piece)
    return product.bond.seals_edges or product.kind in SEALS
