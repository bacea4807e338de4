"""wet-route: where rain passes to the inside, once for each way in."""

import pytest

from enclosure_app.model.limits import Limits, Tolerances
from enclosure_app.model.place import Line, Point
from enclosure_app.model.product import Bond, Control, Kind, Product
from enclosure_app.model.report import RainRoute, RouteEnd
from enclosure_app.model.section import Piece, Section
from enclosure_app.network.network import Network
from enclosure_app.network.order import Order
from enclosure_app.network.rain.rain import Entry, Rain
from enclosure_app.rules.wet_route import RULE, check

SHEET = Product("sheet", "Wall sheet", frozenset({Control.WATER}), Bond.FASTENED, Kind.SHEET)
FLASHING = Product("metal", "Flashing", frozenset({Control.WATER}), Bond.RIGID, Kind.FLASHING)
SECTION = Section(
    "wall",
    ((-100, 0), (100, 0), (100, 1000), (-100, 1000)),
    (
        Piece("U", "sheet", Line(((0, 1000), (0, 450)))),
        Piece("F", "metal", Line(((5, 500), (5, 0)))),
    ),
    {"sheet": SHEET, "metal": FLASHING},
)
WAY = RainRoute(((0, 1000), (0, 450), (5, 0)), ("U", "F"), RouteEnd.INSIDE)


def network(*entries: Entry) -> Network:
    rain = Rain(routes=(WAY,), entries=entries)
    return Network(SECTION, Tolerances(), {}, rain, Order())


def entry(place: Point, into: str = "F") -> Entry:
    return Entry(place, "U", into, WAY)


@pytest.mark.parametrize(
    "quiet",
    [network(), Network(SECTION, Tolerances(), {}, None, Order())],
    ids=["nothing gets in", "a plan has no rain"],
)
def test_is_silent(quiet: Network) -> None:
    assert list(check(quiet, Limits({}))) == []


def test_the_finding_stands_where_the_drop_passes_to_the_inside() -> None:
    (finding,) = check(network(entry((0, 450))), Limits({}))
    assert (finding.rule, finding.key) == (RULE.name, "wet-route:U.low+F")
    assert (finding.at, finding.pieces) == ((0, 450), ("U", "F"))
    assert finding.extent == (WAY.points,)
    assert "wall sheet" in finding.message
    assert "behind the flashing" in finding.message


def test_several_drops_through_one_way_in_are_one_finding() -> None:
    found = list(check(network(entry((0, 450)), entry((0, 455))), Limits({})))
    assert [finding.at for finding in found] == [(0, 450)]


def test_two_ways_in_off_one_face_have_keys_of_their_own() -> None:
    found = list(check(network(entry((0, 700)), entry((0, 800))), Limits({})))
    assert [finding.key for finding in found] == ["wet-route:U.face+F", "wet-route:U.face+F#2"]


def test_a_drop_that_just_falls_in_names_one_piece() -> None:
    (finding,) = check(network(entry((0, 450), into="")), Limits({}))
    assert finding.key == "wet-route:U.low+inside"
    assert finding.pieces == ("U",)
    assert "to the inside" in finding.message
