"""A section finds its pieces by name and by control."""

from dataclasses import FrozenInstanceError, replace

import pytest

from enclosure_app.model.place import Line
from enclosure_app.model.product import Bond, Control, Kind, Product
from enclosure_app.model.section import Piece, Section

SHEET = Product(
    "sheet", "Sheet", frozenset({Control.AIR, Control.WATER}), Bond.ADHERED, Kind.SHEET
)
BOARD = Product("board", "Board", frozenset({Control.HEAT}), Bond.RIGID, Kind.INSULATION)
PIECES = tuple(
    Piece(name, product, Line(((0, 0), (0, 9))))
    for name, product in (("2F", "sheet"), ("30", "board"), ("31", "sheet"))
)
SECTION = Section("S", ((0, 0), (9, 0), (9, 9)), PIECES, {"sheet": SHEET, "board": BOARD})


def test_a_layer_is_the_pieces_whose_product_has_the_control() -> None:
    assert [piece.name for piece in SECTION.layer(Control.AIR)] == ["2F", "31"]
    assert [piece.name for piece in SECTION.layer(Control.HEAT)] == ["30"]
    assert SECTION.layer(Control.VAPOUR) == ()


def test_a_piece_is_found_by_its_name_and_knows_its_product() -> None:
    assert SECTION.product(SECTION.by_name["30"]) is BOARD


def test_a_changed_section_finds_the_pieces_that_it_has_now() -> None:
    shorter = replace(SECTION, pieces=PIECES[:1])
    assert list(shorter.by_name) == ["2F"]
    assert list(SECTION.by_name) == ["2F", "30", "31"]


def test_nothing_in_a_section_can_be_changed_in_place() -> None:
    with pytest.raises(FrozenInstanceError):
        SECTION.name = "other"
    with pytest.raises(TypeError):
        SECTION.by_name["40"] = PIECES[0]
