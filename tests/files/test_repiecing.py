"""Lines of an open section become pieces."""

from enclosure_app.files.catalogue import load_products
from enclosure_app.files.repiecing import pieces_of, renamed
from enclosure_app.model.place import Line
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
    made = pieces_of(LINES, of_layer, {"1", "2", "3"}, (), BARE)
    assert {(p.name, p.product, p.shape) for p in made} == {
        ("1", "felt", Line(((100, 100), (300, 100)))),
        ("3", "felt", Line(((800, 500), (1000, 500)))),
    }


def test_lines_that_a_piece_is_made_of_already_make_no_second_one() -> None:
    there = (Piece("1", "felt", Line(((100, 100), (300, 150))), ("1", "2"), "A"),)
    assert [p.name for p in pieces_of(LINES, of_layer, {"2", "3"}, there, BARE)] == ["3"]


def test_nothing_wanted_makes_nothing() -> None:
    assert pieces_of(LINES, of_layer, (), (), BARE) == ()


def test_names_that_are_taken_get_a_number() -> None:
    pieces = [Piece("1", "felt", Line(((0, 0), (1, 0)))) for _ in range(2)]
    assert [p.name for p in renamed(pieces, {"1"})] == ["1-2", "1-3"]
