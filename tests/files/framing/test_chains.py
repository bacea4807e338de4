"""Drawn paths become pieces: joined, named after their handles, in the right shape."""

from dataclasses import replace
from random import Random
from time import process_time

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from enclosure_app.files.dxf.raw import RawPath, Tag
from enclosure_app.files.framing.chains import Drawn, handle_order, pieces_from
from enclosure_app.model.drawing import NoteLevel
from enclosure_app.model.place import Area, Line, Points
from enclosure_app.model.product import Bond, Control, Kind, Product

AIR = frozenset({Control.AIR})
PRODUCTS = {
    "sheet": Product("sheet", "Sheet", AIR, Bond.ADHERED, Kind.SHEET),
    "tape": Product("tape", "Tape", AIR, Bond.TAPE, Kind.TAPE),
    "board": Product("board", "Board", AIR, Bond.RIGID, Kind.BOARD, drawn="area"),
    "bead": Product("bead", "Bead", AIR, Bond.SEALANT, Kind.SEALANT, drawn="either"),
}


def drawn(
    handle: str, *points: tuple[float, float], product: str = "sheet", layer: str = "L"
) -> Drawn:
    return Drawn(RawPath(Tag("LINE", handle, layer), points), product)


def ring(
    handle: str, *points: tuple[float, float], product: str = "sheet", filled: bool = False
) -> Drawn:
    path = RawPath(Tag("LWPOLYLINE", handle, "L"), points, closed=True, filled=filled)
    return Drawn(path, product)


def test_segments_that_meet_are_one_piece_named_after_the_first_handle() -> None:
    pieces, notes = pieces_from(
        [drawn("1F", (0, 0), (10, 0)), drawn("A", (20, 5), (10, 0.4))], PRODUCTS
    )
    (piece,) = pieces
    assert piece.name == "A"
    assert set(piece.handles) == {"1F", "A"}
    assert piece.shape == Line(((0, 0), (10, 0.2), (20, 5)))
    assert notes == ()


def test_different_products_and_layers_are_not_joined() -> None:
    pieces, _ = pieces_from(
        [
            drawn("1", (0, 0), (10, 0)),
            drawn("2", (10, 0), (20, 0), product="tape"),
            drawn("3", (10, 0), (30, 9), layer="M"),
        ],
        PRODUCTS,
    )
    assert [(p.name, p.product, p.layer) for p in pieces] == [
        ("1", "sheet", "L"),
        ("2", "tape", "L"),
        ("3", "sheet", "M"),
    ]


def test_lines_of_another_width_are_another_piece() -> None:
    wide = Drawn(RawPath(Tag("LWPOLYLINE", "2", "L"), ((10, 0), (20, 0)), width=3), "sheet")
    pieces, _ = pieces_from([drawn("1", (0, 0), (10, 0)), wide], PRODUCTS)
    assert [p.shape for p in pieces] == [
        Line(((0, 0), (10, 0))),
        Line(((10, 0), (20, 0)), width=3),
    ]


def test_loose_lines_that_close_are_an_area_of_an_area_product() -> None:
    sides = [(0, 0), (100, 0), (100, 80), (0, 80), (0, 0)]
    pieces, notes = pieces_from(
        [drawn(f"{i}", sides[i], sides[i + 1], product="board") for i in range(4)], PRODUCTS
    )
    assert [p.shape for p in pieces] == [Area(((0, 0), (100, 0), (100, 80), (0, 80)))]
    assert notes == ()


def test_an_outline_exploded_to_lines_is_still_a_sheet_with_its_thickness() -> None:
    sides = [(0, 0), (300, 0), (300, 3), (0, 3), (0, 0)]
    pieces, _ = pieces_from([drawn(f"{i}", sides[i], sides[i + 1]) for i in range(4)], PRODUCTS)
    assert [p.shape for p in pieces] == [Line(((0, 1.5), (300, 1.5)), width=3)]


def test_an_outline_that_does_not_close_is_a_line_and_says_so() -> None:
    pieces, notes = pieces_from(
        [drawn("1", (0, 0), (100, 0), (100, 50), product="board")], PRODUCTS
    )
    assert isinstance(pieces[0].shape, Line)
    assert [(n.level, n.text) for n in notes] == [
        (NoteLevel.GUESSED, "One outline of Board does not close and is read as a line: 1.")
    ]


def test_a_wide_loop_of_a_sheet_is_a_closed_line() -> None:
    pieces, notes = pieces_from([ring("1", (0, 0), (900, 0), (900, 700), (0, 700))], PRODUCTS)
    assert pieces[0].shape == Line(((0, 0), (900, 0), (900, 700), (0, 700)), closed=True)
    assert notes == ()


def test_a_lump_of_a_sheet_is_an_area_and_says_so() -> None:
    lump = ((0, 0), (300, 0), (300, 30), (0, 2))
    pieces, notes = pieces_from([ring("1B", *lump)], PRODUCTS)
    assert isinstance(pieces[0].shape, Area)
    assert notes[0].text == (
        "One outline of Sheet is of no even thickness and is read as an area: 1B."
    )


@pytest.mark.parametrize("product", ["sheet", "board"])
def test_a_hatch_and_its_boundary_are_one_piece(product: str) -> None:
    outline = ((0, 0), (300, 0), (300, 4), (0, 4))
    hatch = ring("8", *((x + 0.2, y) for x, y in outline[::-1]), product=product, filled=True)
    pieces, _ = pieces_from([hatch, ring("9", *outline, product=product)], PRODUCTS)
    assert [(p.name, set(p.handles)) for p in pieces] == [("8", {"8", "9"})]


def test_a_hatch_of_another_product_is_another_piece() -> None:
    outline = ((0, 0), (300, 0), (300, 200), (0, 200))
    pieces, _ = pieces_from(
        [ring("8", *outline, product="board", filled=True), ring("9", *outline, product="bead")],
        PRODUCTS,
    )
    assert [p.name for p in pieces] == ["8", "9"]


def test_holes_of_a_hatch_stay() -> None:
    hole = ((40, 40), (60, 40), (60, 60), (40, 60))
    path = RawPath(
        Tag("HATCH", "5", "L"),
        ((0, 0), (100, 0), (100, 100), (0, 100)),
        closed=True,
        filled=True,
        holes=(hole,),
    )
    pieces, _ = pieces_from([Drawn(path, "board")], PRODUCTS)
    assert pieces[0].shape == Area(path.points, (hole,))


def test_handles_count_in_base_sixteen_block_by_block() -> None:
    handles = ["10", "9", "A", "2F/3A#2", "2F/3A", "2F/4"]
    assert sorted(handles, key=handle_order) == ["9", "A", "10", "2F/4", "2F/3A", "2F/3A#2"]


BENT: Points = ((0, 0), (100, 0), (100, 60), (180, 60), (240, 110))


@settings(max_examples=40, deadline=None)
@given(st.randoms(use_true_random=False), st.lists(st.booleans(), min_size=4, max_size=4))
def test_pieces_do_not_depend_on_order_or_direction(random: Random, back: list[bool]) -> None:
    parts = [
        drawn(f"{i + 1}", *(BENT[i : i + 2][::-1] if turned else BENT[i : i + 2]))
        for i, turned in enumerate(back)
    ]
    random.shuffle(parts)
    pieces, _ = pieces_from(parts, PRODUCTS)
    assert [(p.name, p.shape) for p in pieces] == [("1", Line(BENT))]


def test_five_thousand_pieces_take_less_than_half_a_second() -> None:
    many = [
        drawn(f"{k:X}", (k % 100 * 50, k // 100 * 90), (k % 100 * 50 + 40, k // 100 * 90 + 30))
        for k in range(5000)
    ]
    start = process_time()
    pieces, _ = pieces_from(many, PRODUCTS)
    assert process_time() - start < 0.5
    assert len({p.name for p in pieces}) == 5000


def test_a_closed_line_there_and_back_is_a_line() -> None:
    pieces, _ = pieces_from([ring("1", (0, 0), (100, 0))], PRODUCTS)
    assert [p.shape for p in pieces] == [Line(((0, 0), (100, 0)))]


COORDINATES = st.one_of(st.integers(-5, 5).map(float), st.floats(-1000, 1000))
PATHS = st.builds(
    lambda points, closed, filled, width, product: (
        RawPath(Tag("X", "", "L"), tuple(points), closed, width, filled),
        product,
    ),
    st.lists(st.tuples(COORDINATES, COORDINATES), min_size=1, max_size=7),
    st.booleans(),
    st.booleans(),
    st.sampled_from([0.0, 3.0]),
    st.sampled_from(sorted(PRODUCTS)),
)


@settings(max_examples=150, deadline=None)
@given(st.lists(PATHS, max_size=8))
def test_whatever_is_drawn_becomes_sound_pieces(paths: list[tuple[RawPath, str]]) -> None:
    """Degenerate, crossing and repeated paths: every piece has a shape, and no name twice."""
    drawn_paths = [
        Drawn(replace(path, tag=replace(path.tag, handle=f"{i + 1:X}")), product)
        for i, (path, product) in enumerate(paths)
    ]
    pieces, _ = pieces_from(drawn_paths, PRODUCTS)
    assert len({p.name for p in pieces}) == len(pieces)
    for piece in pieces:
        shape = piece.shape
        points = shape.points if isinstance(shape, Line) else shape.outer
        assert len(set(points)) >= (2 if isinstance(shape, Line) else 3)
