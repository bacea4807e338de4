"""Lines of an open section become pieces."""

from dataclasses import replace

from enclosure_app.files.framing.repiecing import pieces_of
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.place import Area, Line
from enclosure_app.model.section import Piece, Section, Stroke

FRAME = ((0.0, 0.0), (1000.0, 0.0), (1000.0, 1000.0), (0.0, 1000.0))
BARE = Section("s", FRAME, (), load_products(), frame_drawn=True)
LINES = (
    Stroke(((100, 100), (200, 100)), "A", "1"),
    Stroke(((200, 100), (300, 100)), "A", "2"),
    Stroke(((800, 500), (1400, 500)), "A", "3"),
    Stroke(((100, 700), (200, 700)), "B", "4"),
)


def of_layer(stroke: Stroke) -> str:
    return {"A": "felt", "B": "housewrap"}[stroke.layer]


def test_only_what_is_wanted_becomes_a_piece_joined_and_cut_at_the_frame() -> None:
    there, made = pieces_of(LINES, of_layer, {"1", "2", "3"}, (), BARE)
    assert there == ()
    assert {(p.name, p.product, p.shape) for p in made} == {
        ("1", "felt", Line(((100, 100), (300, 100)))),
        ("3", "felt", Line(((800, 500), (1000, 500)))),
    }


def test_a_line_that_a_piece_is_made_of_already_is_not_made_into_another() -> None:
    there = (Piece("1", "felt", Line(((100, 100), (200, 150))), ("1",), "A"),)
    kept, made = pieces_of(LINES, of_layer, {"2", "3"}, there, BARE)
    assert kept == there
    assert {(piece.name, piece.handles) for piece in made} == {("2", ("2",)), ("3", ("3",))}


def test_an_outline_round_a_piece_of_its_product_belongs_to_that_piece() -> None:
    ring = ((100, 100), (400, 100), (400, 300), (100, 300), (100, 100))
    patch, outline = Stroke(ring, "C", "7", filled=True), Stroke(ring, "D", "8")
    board = Piece("7", "osb", Area(ring[:-1]), ("7",), "C")
    kept, made = pieces_of((patch, outline), lambda _: "osb", {"8"}, (board,), BARE)
    assert made == ()
    assert kept == (replace(board, handles=("7", "8")),)


def test_nothing_wanted_makes_nothing() -> None:
    assert pieces_of(LINES, of_layer, (), (), BARE) == ((), ())
