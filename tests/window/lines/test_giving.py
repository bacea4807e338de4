"""Picked lines become pieces of a product."""

from dataclasses import replace
from types import MappingProxyType

import pytest

from enclosure_app.errors import EnclosureError
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.drawing import Units
from enclosure_app.model.place import Area, Line
from enclosure_app.model.project import Project
from enclosure_app.model.section import Piece, Section, Stroke
from enclosure_app.window.lines.giving import given_product

FRAME = ((0.0, 0.0), (100.0, 0.0), (100.0, 100.0), (0.0, 100.0))
BOX = ((10.0, 10.0), (60.0, 10.0), (60.0, 60.0), (10.0, 60.0), (10.0, 10.0))


def project(*strokes: Stroke, pieces: tuple[Piece, ...] = ()) -> Project:
    products = MappingProxyType(dict(load_products()))
    return Project(
        "", Units.MM, (Section("s", FRAME, pieces, products, strokes=strokes, frame_drawn=True),)
    )


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
    ring = ((0, 0), (100, 0), (100, 50), (0, 50), (0, 0))
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


def test_lines_that_meet_are_one_sheet_though_they_are_on_two_layers() -> None:
    given = project(Stroke(((0, 0), (10, 0)), "A", "1"), Stroke(((10.4, 0), (20, 0)), "B", "2"))
    (piece,) = given_product(given, 0, ((), ("1", "2")), "housewrap").sections[0].pieces
    assert (piece.handles, piece.layer) == (("1", "2"), "A")
    assert isinstance(piece.shape, Line)
    assert (piece.shape.points[0], piece.shape.points[-1]) == ((0, 0), (20, 0))


def test_a_hatch_with_a_hole_is_one_area() -> None:
    hole = ((30.0, 30.0), (50.0, 30.0), (50.0, 50.0), (30.0, 50.0), (30.0, 30.0))
    given = project(*(Stroke(ring, "A", "1", filled=True) for ring in (BOX, hole)))
    (piece,) = given_product(given, 0, ((), ("1",)), "xps").sections[0].pieces
    assert piece.shape == Area(BOX[:-1], (hole[:-1],))


def test_a_patch_and_the_outline_round_it_are_one_board() -> None:
    given = project(Stroke(BOX, "A", "1", filled=True), Stroke(BOX, "B", "2"))
    (piece,) = given_product(given, 0, ((), ("1", "2")), "osb").sections[0].pieces
    assert piece.handles == ("1", "2")


def test_what_became_a_piece_is_kept_and_what_only_crosses_it_stays_linework() -> None:
    box = Stroke(BOX, "A", "1")
    across = tuple(
        Stroke(run, "A", handle)
        for run, handle in ((((10, 10), (60, 60)), "2"), (((10, 60), (60, 10)), "3"))
    )
    given = project(box, *across)
    section = given_product(given, 0, ((), ("1", "2", "3")), "framing").sections[0]
    assert [piece.name for piece in section.pieces] == ["1"]
    assert section.strokes == across
    assert section.taken == (box,)


def test_a_line_that_the_frame_cuts_is_made_of_the_whole_line() -> None:
    whole = Stroke(((-50, 20), (50, 20)), "A", "1")
    cut = replace(whole, points=((0, 20), (50, 20)))
    given = project(cut)
    section = replace(given.sections[0], taken=(whole,))
    after = given_product(replace(given, sections=(section,)), 0, ((), ("1",)), "felt").sections[0]
    assert after.pieces[0].shape == Line(((0, 20), (50, 20)))
    assert (after.strokes, after.taken) == ((), (whole,))


def test_without_a_drawn_frame_the_frame_is_about_what_is_judged() -> None:
    given = project(Stroke(((10, 20), (50, 20)), "A", "1"), Stroke(((10, 90), (50, 90)), "A", "2"))
    section = replace(given.sections[0], frame_drawn=False)
    after = given_product(replace(given, sections=(section,)), 0, ((), ("1",)), "felt").sections[0]
    assert (min(x for x, _ in after.frame), max(x for x, _ in after.frame)) == (10, 50)
