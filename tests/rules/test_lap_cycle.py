"""lap-cycle: sheets that cannot go on in any order."""

from types import SimpleNamespace

from enclosure_app.model.limits import Limits, Tolerances
from enclosure_app.model.place import Line, Point
from enclosure_app.model.product import Bond, Control, Kind, Product
from enclosure_app.model.section import Piece, Section
from enclosure_app.network.network import Network
from enclosure_app.network.order import Order, building_order
from enclosure_app.rules.lap_cycle import RULE, check

NAMES = {"S": "Wall sheet", "F": "Flashing", "P": "Sill pan"}
PRODUCTS = {
    name: Product(name, words, frozenset({Control.WATER}), Bond.LOOSE, Kind.SHEET)
    for name, words in NAMES.items()
}
SECTION = Section(
    "wall",
    ((0, 0), (100, 0), (100, 100), (0, 100)),
    tuple(Piece(name, name, Line(((0, 0), (0, 100)))) for name in NAMES),
    PRODUCTS,
)


def lap(under: str, over: str, at: Point) -> SimpleNamespace:
    return SimpleNamespace(
        inner=SimpleNamespace(name=under), outer=SimpleNamespace(name=over), at=at
    )


RING = [("P", "S", (1.0, 10.0)), ("S", "F", (2.0, 20.0)), ("F", "P", (3.0, 30.0))]


def network(order: Order) -> Network:
    layer = SimpleNamespace(laps=tuple(lap(*told) for told in RING))
    built = Network(SECTION, Tolerances(), {}, None, order)
    object.__setattr__(built, "layers", {Control.WATER: layer})
    return built


def test_sheets_that_go_on_one_after_the_other_are_silent() -> None:
    assert list(check(network(Order(("P", "S", "F"))), Limits({}))) == []


def test_a_ring_is_reported_at_its_first_lap_with_every_sheet_named() -> None:
    order = building_order((under, over) for under, over, _ in RING)
    (finding,) = check(network(order), Limits({}))
    assert (finding.rule, finding.at) == (RULE.name, (1, 10))
    assert finding.pieces == ("P", "S", "F")
    assert "the wall sheet over the sill pan" in finding.message
    assert "the flashing over the wall sheet" in finding.message
    assert "the sill pan over the flashing" in finding.message


def test_the_key_does_not_depend_on_which_lap_was_seen_first() -> None:
    keys = {
        finding.key
        for turn in range(3)
        for finding in check(
            network(building_order((u, o) for u, o, _ in RING[turn:] + RING[:turn])), Limits({})
        )
    }
    assert keys == {"lap-cycle:F+P+S"}
