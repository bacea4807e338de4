"""What is drawn in a section, whole, and as the paths of the drawing."""

from enclosure_app.files.framing.drawn_lines import drawn_of, outlines, paths_of
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.place import Area, Line
from enclosure_app.model.section import Piece, Section, Stroke

FRAME = ((0.0, 0.0), (100.0, 0.0), (100.0, 100.0), (0.0, 100.0))
RING = ((10.0, 10.0), (50.0, 10.0), (50.0, 50.0), (10.0, 10.0))
HOLE = ((40.0, 20.0), (45.0, 20.0), (45.0, 25.0), (40.0, 20.0))


def section(*pieces: Piece, strokes: tuple[Stroke, ...] = (), taken: tuple[Stroke, ...] = ()):  # noqa: ANN201
    return Section("s", FRAME, pieces, load_products(), strokes=strokes, taken=taken)


def test_a_line_that_the_frame_cuts_is_there_once_and_whole() -> None:
    part = Stroke(((0, 5), (50, 5)), "A", "1")
    whole = Stroke(((-50, 5), (50, 5)), "A", "1")
    other = Stroke(((0, 9), (50, 9)), "A", "2")
    assert drawn_of(section(strokes=(part, other), taken=(whole,))) == (whole, other)


def test_a_piece_whose_lines_were_not_kept_stands_for_them() -> None:
    kept = Piece("1", "felt", Line(((0, 5), (50, 5))), ("1",), "A")
    bare = Piece("2", "plywood", Area(RING[:-1], (HOLE[:-1],)), ("2", "3"), "B")
    by_hand = Piece("drawn-1", "felt", Line(((0, 7), (50, 7))))
    line = Stroke(((0, 5), (50, 5)), "A", "1")
    assert drawn_of(section(kept, bare, by_hand, taken=(line,))) == (
        line,
        Stroke(RING, "B", "2", filled=True),
        Stroke(HOLE, "B", "2", filled=True),
    )


def test_strokes_are_paths_again_with_all_that_a_map_may_ask_for() -> None:
    like = ("A", "1", "DASHED", 3, "DOOR", 2.0)
    (path,) = paths_of([Stroke(((0, 5), (50, 5)), *like)])
    tag = path.tag
    assert (tag.layer, tag.handle, tag.linetype, tag.color, tag.block) == like[:5]
    assert (path.points, path.width, path.closed) == (((0, 5), (50, 5)), 2.0, False)


def test_rings_close_and_a_patch_has_its_holes() -> None:
    ring = Stroke(RING, "A", "1")
    patch = [Stroke(each, "A", "2", filled=True) for each in (RING, HOLE)]
    single, filled = paths_of([ring, *patch])
    assert (single.points, single.closed, single.holes) == (RING[:-1], True, ())
    assert (filled.points, filled.filled, filled.holes) == (RING[:-1], True, (HOLE[:-1],))


def test_a_line_there_and_back_is_no_ring() -> None:
    (path,) = paths_of([Stroke(((0, 0), (5, 0), (0, 0)), "A", "1")])
    assert not path.closed


def test_a_closed_sheet_comes_back_to_its_start() -> None:
    piece = Piece("1", "felt", Line(RING[:-1], 2.0, closed=True), ("1",), "A")
    assert [*outlines(piece)] == [Stroke(RING, "A", "1", width=2.0)]
