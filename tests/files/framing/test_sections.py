"""Pieces, marks, breaks and linework go to the frames that they lie in."""

from collections.abc import Sequence
from dataclasses import replace
from time import process_time

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from enclosure_app.errors import EnclosureError
from enclosure_app.files.dxf.raw import RawPath, RawText, Tag
from enclosure_app.files.framing.marks import Marks
from enclosure_app.files.framing.sections import Material, sections_of
from enclosure_app.files.maps.guesses import mark_of
from enclosure_app.model.place import Area, Line, Point, Points
from enclosure_app.model.product import Bond, Kind, Product
from enclosure_app.model.section import DOWN, Break, Piece, Stroke

PRODUCTS = {
    "sheet": Product("sheet", "Sheet", frozenset(), Bond.ADHERED, Kind.SHEET),
    "board": Product("board", "Board", frozenset(), Bond.RIGID, Kind.BOARD, drawn="area"),
}


def box(x0: float, y0: float, x1: float, y1: float) -> Points:
    return ((x0, y0), (x1, y0), (x1, y1), (x0, y1))


def sheet(name: str, *points: Point, closed: bool = False) -> Piece:
    return Piece(name, "sheet", Line(points, closed=closed), (name,), "MEMB")


def path(points: Points, *, closed: bool = True) -> RawPath:
    return RawPath(Tag("LWPOLYLINE", f"F{points[0][0]:.0f}", "CROP"), points, closed)


def text(words: str, at: Point, height: float = 30) -> RawText:
    return RawText(Tag("TEXT", "T", "TEXT"), words, at, height)


def material(pieces: Sequence[Piece], *frames: Points, texts: Sequence[RawText] = ()) -> Material:
    return Material(tuple(pieces), PRODUCTS, frames=tuple(map(path, frames)), texts=tuple(texts))


LEFT, RIGHT = box(0, 0, 1000, 1000), box(2000, 0, 3000, 1000)
ZIGZAG: Points = ((400, 500), (490, 500), (495, 512), (505, 488), (510, 500), (600, 500))


def test_each_frame_gets_its_own_pieces_marks_and_title() -> None:
    texts = [
        text("INSIDE", (200, 500)),
        text("OUTSIDE", (800, 500)),
        text("INSIDE", (2200, 500)),
        text("INSIDE", (2300, 500)),
        text("EAVE", (100, -80)),
    ]
    pieces = [sheet("1", (500, 0), (500, 1000)), sheet("2", (2500, 0), (2500, 1000))]
    (left, right), notes = sections_of(material(pieces, LEFT, RIGHT, texts=texts), mark_of)
    assert (left.name, right.name) == ("EAVE", "Section 2")
    assert [p.name for p in left.pieces] == ["1"]
    assert [p.name for p in right.pieces] == ["2"]
    assert (left.inside, left.outside) == (((200, 500),), ((800, 500),))
    assert (right.inside, right.outside) == (((2200, 500), (2300, 500)), ())
    assert left.gravity == right.gravity == DOWN
    assert notes == ()


def test_what_crosses_a_frame_is_cut_and_its_second_part_renamed() -> None:
    arch = sheet("1", (200, 500), (200, 1200), (600, 1200), (600, 500))
    board = Piece("2", "board", Area(box(900, 900, 1100, 1100)), ("2",), "BOARD")
    (section,), _ = sections_of(material([arch, board], LEFT), mark_of)
    assert {p.name: p.shape for p in section.pieces} == {
        "1": Line(((200, 500), (200, 1000))),
        "1-2": Line(((600, 1000), (600, 500))),
        "2": Area(box(900, 900, 1000, 1000)),
    }
    assert {p.handles for p in section.pieces} == {("1",), ("2",)}


def test_an_area_that_holds_the_frame_fills_it() -> None:
    ground = Piece("1", "board", Area(box(-500, -500, 1500, 1500)))
    (section,), _ = sections_of(material([ground], LEFT), mark_of)
    shape = section.pieces[0].shape
    assert isinstance(shape, Area)
    assert set(shape.outer) == set(LEFT)


def test_pieces_outside_every_frame_are_named() -> None:
    pieces = [sheet("1", (500, 0), (500, 1000)), sheet("2", (1500, 0), (1500, 1000))]
    (section,), notes = sections_of(material(pieces, LEFT), mark_of)
    assert [p.name for p in section.pieces] == ["1"]
    assert [n.text for n in notes] == [
        "1 piece lies outside every frame and is left out (on “MEMB”)."
    ]


def test_told_marks_go_to_the_frame_that_holds_them_and_replace_its_own() -> None:
    texts = [text("INSIDE", (200, 500)), text("INSIDE", (2200, 500))]
    pieces = [sheet("1", (500, 0), (500, 1000)), sheet("2", (2500, 0), (2500, 1000))]
    told = replace(
        material(pieces, LEFT, RIGHT, texts=texts), told=Marks(inside=((300, 300), (310, 300)))
    )
    (left, right), _ = sections_of(told, mark_of)
    assert left.inside == ((300, 300), (310, 300))
    assert right.inside == ((2200, 500),)


def test_a_told_mark_in_no_frame_is_refused() -> None:
    told = replace(
        material([sheet("1", (500, 0), (500, 1000))], LEFT), told=Marks(outside=((-5, 0),))
    )
    with pytest.raises(EnclosureError, match=r"--outside -5,0 \(mm\) lies in no frame"):
        sections_of(told, mark_of)


@pytest.mark.parametrize(("title", "said"), [("JAMB PLAN DETAIL", False), ("JAMB", True)])
def test_a_plan_has_no_gravity_and_says_so(title: str, *, said: bool) -> None:
    own = material([sheet("1", (500, 0), (500, 900))], LEFT, texts=[text(title, (9, -80))])
    (section,), notes = sections_of(replace(own, plan=said), mark_of)
    assert section.gravity is None
    assert [n.text for n in notes] == [f"{title} is read as a plan: nothing runs down in it."]


def test_found_break_lines_count_in_pairs_only() -> None:
    up = tuple((x, y + 40) for x, y in ZIGZAG)
    pieces = [sheet("1", (450, 0), (450, 500)), sheet("2", (450, 540), (450, 1000))]
    own = material(pieces, LEFT)
    (section,), _ = sections_of(replace(own, found_breaks=(ZIGZAG, up)), mark_of)
    assert section.breaks == (Break(((400, 500), (600, 500)), ((400, 540), (600, 540))),)
    (section,), _ = sections_of(replace(own, found_breaks=(ZIGZAG,)), mark_of)
    assert section.breaks == ()
    assert section.frame == LEFT


def test_the_frame_ends_at_a_single_line_that_the_map_calls_a_break() -> None:
    own = material([sheet("1", (450, 0), (450, 507))], LEFT)
    (section,), _ = sections_of(replace(own, breaks=(path(ZIGZAG, closed=False),)), mark_of)
    assert (400, 500) in section.frame
    assert (400, 1000) in section.frame
    assert section.pieces[0].shape == Line(((450, 0), (450, 500)))


def test_strokes_are_cut_along_a_drawn_frame_and_texts_sorted() -> None:
    own = material(
        [sheet("1", (500, 0), (500, 900))], LEFT, texts=[text("a", (9, 9)), text("b", (-9, 9))]
    )
    strokes = (Stroke(((-100, 50), (100, 50)), "X", "7"), Stroke(((-9, 0), (-9, 90)), "X", "8"))
    (section,), _ = sections_of(replace(own, strokes=strokes, linework=True), mark_of)
    assert section.strokes == (Stroke(((0, 50), (100, 50)), "X", "7"),)
    assert [each.text for each in section.texts] == ["a"]


def test_without_a_frame_all_linework_is_context() -> None:
    own = material([sheet("1", (500, 0), (500, 900))], texts=[text("a", (9000, 9))])
    strokes = (Stroke(((-900, 50), (-800, 50))),)
    (section,), _ = sections_of(replace(own, strokes=strokes, linework=True), mark_of)
    assert section.strokes == strokes
    assert [each.text for each in section.texts] == ["a"]
    assert not section.frame_drawn


def test_a_loop_inside_the_frame_stays_closed() -> None:
    loop = sheet("1", *box(100, 100, 900, 900), closed=True)
    (section,), _ = sections_of(material([loop], LEFT), mark_of)
    assert section.pieces == (loop,)


PLACES = st.tuples(st.integers(-300, 1300).map(float), st.integers(-300, 1300).map(float))


@settings(max_examples=100, deadline=None)
@given(st.lists(st.lists(PLACES, min_size=3, max_size=6, unique=True), min_size=1, max_size=5))
def test_nothing_leaves_its_frame(runs: list[list[Point]]) -> None:
    """Runs and areas of any form, also such as cross themselves, are cut along the frame."""
    pieces = [sheet(f"{i}", *run) for i, run in enumerate(runs)]
    pieces += [Piece(f"A{i}", "board", Area(tuple(run))) for i, run in enumerate(runs)]
    (section,), _ = sections_of(material(pieces, LEFT), mark_of)
    assert len(section.by_name) == len(section.pieces)
    for piece in section.pieces:
        shape = piece.shape
        for x, y in shape.points if isinstance(shape, Line) else shape.outer:
            assert -0.01 <= x <= 1000.01
            assert -0.01 <= y <= 1000.01


def test_five_thousand_pieces_in_twenty_frames_are_quick() -> None:
    frames = [box(k * 1000, 0, k * 1000 + 900, 900) for k in range(20)]
    pieces = [
        sheet(f"{k}", (k % 20 * 1000 + k / 20, 10), (k % 20 * 1000 + k / 20, 400 + k / 9))
        for k in range(5000)
    ]
    start = process_time()
    sections, _ = sections_of(material(pieces, *frames), mark_of)
    assert process_time() - start < 1.0
    assert sum(len(section.pieces) for section in sections) == 5000
