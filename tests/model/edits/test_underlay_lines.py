"""What of a section belongs to the page under it."""

import pytest

from enclosure_app.geometry.similarity import Similarity
from enclosure_app.model.edits.underlay_lines import (
    goes_along,
    is_alone,
    is_blank,
    is_of,
    moved_section,
    with_frame_moved,
    without_page,
)
from enclosure_app.model.place import Area, Line
from enclosure_app.model.section import Break, Piece, Section, Stroke, Text

FRAME = ((0.0, 0.0), (10.0, 0.0), (10.0, 10.0))
HOLED = Area(((0.0, 0.0), (9.0, 0.0), (9.0, 9.0)), (((5.0, 1.0), (6.0, 1.0), (6.0, 2.0)),))
OF_PAGE = Piece("a", "osb", HOLED, ("page-1:3", "page-1:4"))
MIXED = Piece("b", "osb", Line(((0.0, 0.0), (1.0, 0.0)), 2.0), ("page-1:5", "2F"))
DOUBLED = Similarity.about((0.0, 0.0), 2.0)


def section(*pieces: Piece, **more: object) -> Section:
    return Section("Eave", FRAME, pieces, {}, **more)  # type: ignore[arg-type]


def test_a_handle_tells_its_page() -> None:
    assert is_of("page-1:7", "page-1")
    assert not is_of("page-11:7", "page-1")
    assert not is_of(":7", "")


def test_only_what_is_all_of_the_page_goes_along() -> None:
    assert goes_along(section(OF_PAGE, MIXED, Piece("c", "osb", HOLED)), "page-1") == {"a"}


def test_a_page_is_alone_until_something_else_is_drawn() -> None:
    stroke = Stroke(((0, 0), (1, 1)), "", "page-1:1")
    assert is_alone(section(OF_PAGE, strokes=(stroke,)), "page-1")
    assert not is_alone(section(OF_PAGE, MIXED, strokes=(stroke,)), "page-1")
    assert not is_alone(section(texts=(Text("A", (0, 0), handle="7"),)), "page-1")


def test_a_mark_is_something_drawn() -> None:
    assert is_blank(section())
    assert not is_blank(section(inside=((1.0, 1.0),)))


def test_a_section_without_lines_of_the_page_stays_the_same_object() -> None:
    there = section(MIXED, strokes=(Stroke(((0, 0), (1, 1)), "", "2F"),))
    assert without_page(there, "page-1") is there
    assert moved_section(there, DOUBLED, "page-1", frozenset()) is there


def test_lines_that_became_pieces_go_along_and_go_away() -> None:
    there = section(taken=(Stroke(((0, 0), (1, 1)), "", "page-1:1"), Stroke(((0, 0), (1, 1)))))
    moved = moved_section(there, DOUBLED, "page-1", frozenset())
    assert [stroke.points[1] for stroke in moved.taken] == [(2, 2), (1, 1)]
    assert without_page(there, "page-1").taken == there.taken[1:]
    assert not is_alone(there, "page-1")
    assert not is_blank(there)


def test_areas_with_holes_widths_and_breaks_are_scaled() -> None:
    cut = Break(((0.0, 0.0), (1.0, 0.0)), ((0.0, 3.0), (1.0, 3.0)))
    there = moved_section(section(OF_PAGE, MIXED, breaks=(cut,)), DOUBLED, "page-1", None)
    assert there.pieces[0].shape == Area(
        ((0, 0), (18, 0), (18, 18)), (((10, 2), (12, 2), (12, 4)),)
    )
    assert there.pieces[1].shape == Line(((0, 0), (2, 0)), 4.0)
    assert there.breaks == (Break(((0, 0), (2, 0)), ((0, 6), (2, 6))),)
    assert there.frame == ((0, 0), (20, 0), (20, 20))


def test_marks_go_with_the_frame() -> None:
    there = with_frame_moved(section(inside=((1.0, 2.0),), outside=((3.0, 4.0),)), DOUBLED)
    assert (there.inside, there.outside) == (((2, 4),), ((6, 8),))
    assert there.frame[1] == pytest.approx((20, 0))
