"""Picked lines become pieces of a product."""

from types import MappingProxyType

import pytest

from enclosure_app.errors import EnclosureError
from enclosure_app.files.catalogue import load_products
from enclosure_app.model.drawing import Units
from enclosure_app.model.place import Area, Line
from enclosure_app.model.project import Project
from enclosure_app.model.section import Piece, Section, Stroke
from enclosure_app.window.giving import given_product

FRAME = ((0.0, 0.0), (100.0, 0.0), (100.0, 100.0), (0.0, 100.0))


def project(*strokes: Stroke, pieces: tuple[Piece, ...] = ()) -> Project:
    products = MappingProxyType(dict(load_products()))
    return Project("", Units.MM, (Section("s", FRAME, pieces, products, strokes=strokes),))


def test_lines_that_meet_end_to_end_become_one_sheet_and_leave_the_linework() -> None:
    given = project(
        Stroke(((0, 0), (10, 0)), "A", "1"),
        Stroke(((20, 5), (10, 0)), "A", "2"),
        Stroke(((50, 50), (60, 50)), "A", "3"),
    )
    section = given_product(given, 0, ((), ("1", "2")), "housewrap").sections[0]
    (piece,) = section.pieces
    assert piece.shape == Line(((0, 0), (10, 0), (20, 5)))
    assert (piece.name, piece.handles, piece.layer) == ("1", ("1", "2"), "A")
    assert [stroke.handle for stroke in section.strokes] == ["3"]


def test_a_closed_outline_of_a_board_becomes_an_area_and_of_a_sheet_a_closed_line() -> None:
    ring = ((0, 0), (10, 0), (10, 5), (0, 5), (0, 0))
    given = project(Stroke(ring, "A", "1"))
    board = given_product(given, 0, ((), ("1",)), "plywood").sections[0].pieces[0]
    assert board.shape == Area(ring[:-1])
    sheet = given_product(given, 0, ((), ("1",)), "housewrap").sections[0].pieces[0]
    assert sheet.shape == Line(ring[:-1], closed=True)


def test_pieces_change_their_product_and_others_stay_the_same_objects() -> None:
    pieces = (
        Piece("a", "housewrap", Line(((0, 0), (10, 0)))),
        Piece("b", "housewrap", Line(((0, 5), (10, 5)))),
    )
    after = given_product(project(pieces=pieces), 0, (("a",), ()), "felt").sections[0]
    assert after.by_name["a"].product == "felt"
    assert after.by_name["b"] is pieces[1]


def test_a_product_that_there_is_none_of_is_refused() -> None:
    pieces = (Piece("a", "housewrap", Line(((0, 0), (10, 0)))),)
    with pytest.raises(EnclosureError):
        given_product(project(pieces=pieces), 0, (("a",), ()), "no-such")
