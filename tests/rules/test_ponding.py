"""ponding: how deep water stands, and where."""

import pytest

from enclosure_app.model.limits import Limits, Tolerances
from enclosure_app.model.place import Line
from enclosure_app.model.product import Bond, Control, Kind, Product
from enclosure_app.model.section import Piece, Section
from enclosure_app.network.network import Network
from enclosure_app.network.order import Order
from enclosure_app.network.rain.ponds import Pond
from enclosure_app.network.rain.rain import Rain
from enclosure_app.rules.ponding import RULE, check

ROOFING = Product("roofing", "Roofing", frozenset({Control.WATER}), Bond.ADHERED, Kind.ROOFING)
SECTION = Section(
    "roof",
    ((-500, 0), (500, 0), (500, 900), (-500, 900)),
    (
        Piece("V", "roofing", Line(((-400, 600), (0, 500)))),
        Piece("W", "roofing", Line(((0, 500), (400, 700)))),
    ),
    {"roofing": ROOFING},
)
POND = Pond((0, 500), 100.0, ("V", "W"), ((-400, 600), (200, 600)))


def network(*ponds: Pond) -> Network:
    return Network(SECTION, Tolerances(), {}, Rain(ponds=ponds), Order())


@pytest.mark.parametrize(
    "quiet",
    [
        network(),
        network(Pond((0, 500), 1.9, ("V", "W"), ((-1, 502), (1, 502)))),
        Network(SECTION, Tolerances(), {}, None, Order()),
    ],
    ids=["all drains", "drafting slop", "a plan"],
)
def test_is_silent(quiet: Network) -> None:
    assert list(check(quiet, Limits({}))) == []


def test_the_depth_is_measured_and_none_is_allowed() -> None:
    (finding,) = check(network(POND), Limits({}))
    assert (finding.rule, finding.at) == (RULE.name, (0, 500))
    assert (finding.measured, finding.required) == (100, 0)
    assert finding.extent == (((-400, 600), (200, 600)),)
    assert finding.pieces == ("V", "W")
    assert "Water stands on the roofing" in finding.message


def test_a_pond_that_the_drawing_cuts_off_says_so() -> None:
    (finding,) = check(network(Pond((0, 500), 80, ("V",), POND.extent, bounded=False)), Limits({}))
    assert "It may stand deeper" in finding.message


def test_keys_are_made_of_names_and_differ() -> None:
    found = list(check(network(POND, Pond((1, 500), 50.0, ("V", "W"), POND.extent)), Limits({})))
    assert [finding.key for finding in found] == [
        "ponding:V.face+V.high+V.low+W.face+W.low",
        "ponding:V.face+V.high+V.low+W.face+W.low#2",
    ]
