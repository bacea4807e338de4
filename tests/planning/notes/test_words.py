"""What notes name, in the words of offices; expected products are common practice, no source."""

import tomllib

import pytest

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.planning.notes.words import named_in
from enclosure_app.resources import resource

NOTES = {
    "5/8 gyp board": "gypsum-board",
    '5/8" GYP. BD.': "gypsum-board",
    '(2) LAYERS 5/8" GYPSUM BOARD, TYP.': "gypsum-board",
    "self-adhered membrane": "self-adhered-sheet",
    "vapor barrier": "vapour-retarder",
    "AIR & VAPOUR BARRIER": "vapour-retarder",
    "2x6 studs @ 16\" o.c.": "framing",
    "R-21 batt insul.": "mineral-wool",
    "2x10 LEDGER ON STAND-OFF BRACKETS": "ledger",
    "Gipskartonplatte 12,5 mm": "gypsum-board",
    "Dampfsperre, sd > 100 m": "vapour-retarder",
    "pare-vapeur continu": "vapour-retarder",
    "lana di roccia 160": "mineral-wool",
    "płyta gipsowo-kartonowa": "gypsum-board",
    "ångspärr 0,2 mm": "vapour-retarder",
    "METAL DRIP EDGE UNDER MEMBRANE": "drip-edge",
    "(B) = 3\" FIBERGLASS BATT INSULATION": "glass-fibre",
}  # fmt: skip


@pytest.mark.parametrize(("text", "product"), NOTES.items())
def test_a_note_names_its_product(text: str, product: str) -> None:
    named = named_in(text, load_products())
    assert named is not None
    assert named.product == product


@pytest.mark.parametrize(
    "text",
    ["", "SCHEDULED WALL BASE", "SEE PLAN", "GYPSUM BOARD SCREW", "UNDERSIDE OF STRUCTURE ABOVE"],
)
def test_a_note_about_something_else_names_no_product(text: str) -> None:
    assert named_in(text, load_products()) is None


def test_what_a_thing_lies_on_is_less_sure_than_what_it_is() -> None:
    thing = named_in("SEALANT ON PLYWOOD", load_products())
    place = named_in("GROOVE IN PLYWOOD", load_products())
    assert thing is not None
    assert place is not None
    assert (thing.product, place.product) == ("sealant", "plywood")
    assert place.confidence < thing.confidence


def test_only_products_that_may_be_proposed_are() -> None:
    products = {k: v for k, v in load_products().items() if k != "gypsum-board"}
    assert named_in("gypsum board", products) is None


def test_every_product_of_the_word_table_is_in_the_catalogue() -> None:
    with resource("note_words.toml").open("rb") as file:
        table = tomllib.load(file)
    assert set(table["products"]) <= set(load_products())
