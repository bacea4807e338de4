"""no-drip: edges that do not turn down or drip too near to the wall."""

from math import inf

import pytest

from enclosure_app.model.limits import Limit, Limits, Tolerances
from enclosure_app.model.place import Line
from enclosure_app.model.product import Bond, Control, Kind, Product
from enclosure_app.model.section import Piece, Section
from enclosure_app.network.network import Network
from enclosure_app.network.order import Order
from enclosure_app.network.rain.rain import Drip, Rain
from enclosure_app.rules.no_drip import RULE, check

LIMITS = Limits({"drip-clear": Limit("drip-clear", 6.35, "rule book", confirmed=True)})
PRODUCTS = {
    kind: Product(kind, f"Piece of {kind}", frozenset({Control.WATER}), Bond.RIGID, kind)
    for kind in (Kind.FLASHING, Kind.DRIP_EDGE, Kind.SILL_PAN, Kind.SHEET)
}
SECTION = Section(
    "wall",
    ((-100, 0), (100, 0), (100, 1000), (-100, 1000)),
    tuple(Piece(kind, kind, Line(((0, 500), (60, 490), (60, 470)))) for kind in PRODUCTS),
    PRODUCTS,
)


def network(*drips: Drip) -> Network:
    return Network(SECTION, Tolerances(), {}, Rain(drips=drips), Order())


def drip(kind: Kind, *, clear: float = 60.0, down: bool = True) -> Drip:
    return Drip((60, 470), kind, (0, -1) if down else (1, 0), clear, down)


@pytest.mark.parametrize(
    "quiet",
    [
        network(),
        network(drip(Kind.FLASHING)),
        network(drip(Kind.DRIP_EDGE, clear=6.35)),
        network(drip(Kind.SILL_PAN, clear=inf)),
        network(drip(Kind.SHEET, clear=0, down=False)),
        Network(SECTION, Tolerances(), {}, None, Order()),
    ],
    ids=["no edge", "clear", "just clear", "nothing beneath", "a sheet is no edge", "a plan"],
)
def test_is_silent(quiet: Network) -> None:
    assert list(check(quiet, LIMITS)) == []


@pytest.mark.parametrize("kind", [Kind.FLASHING, Kind.DRIP_EDGE, Kind.SILL_PAN])
def test_an_edge_that_drips_too_near_is_measured_against_the_rule_book(kind: Kind) -> None:
    (finding,) = check(network(drip(kind, clear=5.0)), LIMITS)
    assert (finding.rule, finding.key) == (RULE.name, f"no-drip:{kind}.low")
    assert (finding.at, finding.pieces) == ((60, 470), (kind,))
    assert (finding.measured, finding.required, finding.basis) == (5, 6.35, "rule book")
    assert "too near to the wall" in finding.message


def test_an_edge_that_does_not_turn_down_is_reported_however_clear_it_is() -> None:
    (finding,) = check(network(drip(Kind.FLASHING, clear=inf, down=False)), LIMITS)
    assert finding.measured is None
    assert "does not turn down" in finding.message


def test_two_edges_of_one_piece_have_keys_of_their_own() -> None:
    near = drip(Kind.FLASHING, clear=5.0)
    found = list(check(network(near, near), LIMITS))
    assert [finding.key for finding in found] == ["no-drip:flashing.low", "no-drip:flashing.low#2"]
