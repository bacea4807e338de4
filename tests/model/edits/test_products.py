"""The office's own products."""

from dataclasses import replace
from types import MappingProxyType

import pytest

from enclosure_app.errors import EnclosureError
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.drawing import Units
from enclosure_app.model.edits import add_product
from enclosure_app.model.edits.products import new_key, remove_product
from enclosure_app.model.layer import LayerRow
from enclosure_app.model.place import Line
from enclosure_app.model.product import Bond, Kind, Product
from enclosure_app.model.project import Project
from enclosure_app.model.section import Piece, Section

FRAME = ((0.0, 0.0), (9.0, 0.0), (9.0, 9.0))
OWN = Product("own", "Blue wrap", frozenset(), Bond.LOOSE, Kind.SHEET)
SECTIONS = tuple(
    Section(name, FRAME, (), MappingProxyType(dict(load_products()))) for name in "ab"
)
PROJECT = add_product(Project("", Units.MM, SECTIONS), OWN)


def test_an_own_product_that_nothing_is_made_of_is_removed_everywhere() -> None:
    after = remove_product(PROJECT, "own")
    assert all(dict(s.products) == dict(load_products()) for s in after.sections)
    assert [s.products["own"] for s in PROJECT.sections] == [OWN, OWN]


def test_one_that_pieces_are_made_of_stays_and_says_how_many() -> None:
    piece = Piece("1", "own", Line(((0, 0), (1, 0))))
    used = replace(PROJECT, sections=(replace(PROJECT.sections[0], pieces=(piece,)),))
    with pytest.raises(EnclosureError, match="One piece is made of “Blue wrap”"):
        remove_product(used, "own")


def test_one_that_a_layer_is_said_to_be_stays_and_names_the_layer() -> None:
    said = replace(PROJECT, layers=(LayerRow("A-WRAP", product="own"),))
    with pytest.raises(EnclosureError, match="Layer “A-WRAP” is said to be “Blue wrap”"):
        remove_product(said, "own")


def test_a_changed_product_of_the_program_is_put_back_in_its_place_even_while_in_use() -> None:
    usual = load_products()["felt"]
    changed = add_product(PROJECT, replace(usual, min_lap_mm=100.0))
    piece = Piece("1", "felt", Line(((0, 0), (1, 0))))
    used = replace(changed, sections=(replace(changed.sections[0], pieces=(piece,)),))
    after = remove_product(used, "felt", usual).sections[0].products
    assert after["felt"] == usual
    assert [*after][: len(load_products())] == [*load_products()]


@pytest.mark.parametrize(
    ("name", "key"),
    [
        ("Blue wrap, 2 m", "blue-wrap-2-m"),
        ("Dampfbremse grün", "dampfbremse-gru-n"),
        ("…", "product"),
    ],
)
def test_a_key_is_made_of_the_name(name: str, key: str) -> None:
    assert new_key(name, ()) == key
    assert new_key(name, (key, f"{key}-2")) == f"{key}-3"
