"""Edits of underlays: laid in, moved, turned, brought to scale by two places and a length."""

from collections.abc import Callable
from dataclasses import replace
from math import cos, dist, radians, sin

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from enclosure_app.errors import EnclosureError
from enclosure_app.model import edits
from enclosure_app.model.drawing import Units
from enclosure_app.model.place import Line, Point
from enclosure_app.model.product import Bond, Kind, Product
from enclosure_app.model.project import Project
from enclosure_app.model.section import Piece, Section, Stroke, Text
from enclosure_app.model.underlay import Underlay

POINT = 25.4 / 72  # mm
OSB = Product("osb", "OSB", frozenset(), Bond.FASTENED, Kind.BOARD)

SCAN = Underlay("scan.png", "png", b"...")
PROJECT = edits.add_underlay(Project("House", Units.MM, ()), SCAN)

places = st.tuples(st.floats(-1e4, 1e4), st.floats(-1e4, 1e4))


def _where(underlay: Underlay, pixel: Point) -> Point:
    """Return where a pixel (from the lower left corner) lies on the drawing."""
    turn, (x, y) = radians(underlay.angle), pixel
    x, y = x * underlay.mm_per_pixel, y * underlay.mm_per_pixel
    return (
        underlay.at[0] + cos(turn) * x - sin(turn) * y,
        underlay.at[1] + sin(turn) * x + cos(turn) * y,
    )


@given(places, st.floats(-180, 180), st.floats(0.01, 10), st.floats(1, 1e4))
def test_two_places_are_as_far_apart_as_was_said_and_the_first_stays(
    at: Point, angle: float, scale: float, length: float
) -> None:
    underlay = replace(SCAN, at=at, angle=angle, mm_per_pixel=scale)
    project = edits.add_underlay(PROJECT, underlay)
    pixels = ((120.0, 30.0), (740.0, 410.0))
    before = (_where(underlay, pixels[0]), _where(underlay, pixels[1]))
    assume(dist(*before) > 1e-3)
    after = edits.scale_underlay(project, 1, before, length)
    first, second = (_where(after.underlays[1], pixel) for pixel in pixels)
    assert dist(first, second) == pytest.approx(length, rel=1e-6)
    assert first == pytest.approx(before[0], abs=1e-4, rel=1e-6)
    assert after.underlays[0] is project.underlays[0]
    assert after.underlays[1].to_scale


def test_an_underlay_is_moved_turned_and_removed() -> None:
    moved = edits.move_underlay(edits.move_underlay(PROJECT, 0, (5.0, 6.0)), 0, (1.0, -6.0))
    assert moved.underlays[0].at == (6.0, 0.0)
    turned = edits.turn_underlay(edits.turn_underlay(moved, 0, 30.0), 0, 15.0)
    assert turned.underlays[0].angle == pytest.approx(45.0)
    assert edits.remove_underlay(turned, 0).underlays == ()


def page(**known: object) -> Underlay:
    """An A4 page in points, lying in section "Eave"."""
    known = {"size": (595.0, 842.0), "mm_per_pixel": POINT, "paper_mm": POINT, **known}
    return Underlay("eave.pdf", "pdf", b"%PDF", section="Eave", **known)  # type: ignore[arg-type]


def section(*pieces: Piece, **more: object) -> Section:
    frame = ((0.0, 0.0), (100.0, 0.0), (100.0, 100.0), (0.0, 100.0))
    return Section("Eave", frame, pieces, {"osb": OSB}, **more)  # type: ignore[arg-type]


def project(*pieces: Piece, **more: object) -> Project:
    return Project("House", Units.MM, (section(*pieces, **more),))


RUN = Stroke(((10.0, 20.0), (60.0, 20.0)), "0.5 mm")
NOTE = Text("OSB", (5.0, 5.0), 2.5)
LINES = edits.PageLines((RUN,), (NOTE,))


def test_an_empty_section_takes_the_page_as_its_frame_and_its_lines() -> None:
    laid = edits.add_underlay(project(), page(), LINES)
    (there,) = laid.sections
    assert there.frame == laid.underlays[0].outline
    assert there.frame[2] == pytest.approx((209.9, 297.0), abs=0.1)
    assert there.strokes == (replace(RUN, handle="page-1:1"),)
    assert there.texts == (replace(NOTE, handle="page-1:2"),)


def test_an_empty_section_takes_the_marks_of_the_page_and_another_keeps_its_own() -> None:
    lines = edits.PageLines((RUN,), (), ((20.0, 20.0),), ((90.0, 90.0),))
    laid = edits.set_paper_scale(edits.add_underlay(project(), page(), lines), 0, 10.0)
    (there,) = laid.sections
    assert (there.inside, there.outside) == (
        (pytest.approx((200, 200)),),
        (pytest.approx((900, 900)),),
    )
    own = edits.add_underlay(project(inside=((1.0, 1.0),)), page(), lines)
    assert (own.sections[0].inside, own.sections[0].outside) == (((1.0, 1.0),), ())


def test_lines_are_laid_where_the_page_lies_at_its_scale() -> None:
    where = page(at=(1000.0, 0.0), mm_per_pixel=10 * POINT, angle=90.0)
    laid = edits.add_underlay(project(Piece("a", "osb", Line(((0, 0), (1, 1))))), where, LINES)
    (there,) = laid.sections
    assert there.frame == section().frame
    a, b = there.strokes[0].points
    assert a == pytest.approx((800.0, 100.0))
    assert b == pytest.approx((800.0, 600.0))
    (text,) = there.texts
    assert (text.height, text.angle) == pytest.approx((25.0, 90.0))


def test_the_scale_of_the_paper_takes_the_lines_and_the_frame_along() -> None:
    scaled = edits.set_paper_scale(edits.add_underlay(project(), page(), LINES), 0, 10.0)
    (there,), (under,) = scaled.sections, scaled.underlays
    assert under.to_scale
    assert under.mm_per_pixel == pytest.approx(10 * POINT)
    assert there.strokes[0].points == (pytest.approx((100, 200)), pytest.approx((600, 200)))
    assert there.texts[0].height == pytest.approx(25.0)
    assert there.frame == tuple(pytest.approx(corner) for corner in under.outline)


def test_pieces_made_of_its_lines_go_along_and_others_keep_their_size() -> None:
    made = Piece("page-1:1", "osb", Line(RUN.points), ("page-1:1",), "0.5 mm")
    by_hand = Piece("drawn-1", "osb", Line(((0.0, 0.0), (7.0, 0.0))))
    laid = edits.add_underlay(project(), page(), LINES)
    there = replace(laid.sections[0], pieces=(made, by_hand), strokes=())
    laid = replace(laid, sections=(there,))
    similar = edits.scaling(((0.0, 0.0), (50.0, 0.0)), 500.0)
    scaled = edits.lay_underlay(laid, 0, similar, to_scale=True)
    of_page, other = scaled.sections[0].pieces
    assert of_page.shape == Line((pytest.approx((100, 200)), pytest.approx((600, 200))))
    assert other is by_hand
    assert scaled.sections[0].frame == there.frame
    assert edits.drawn_over(scaled, 0) == ("drawn-1",)
    after = edits.lay_drawn_too(scaled, 0, similar).sections[0]
    assert after.pieces[0] == of_page
    assert after.pieces[1].shape == Line(((0.0, 0.0), (70.0, 0.0)))
    assert after.frame[2] == pytest.approx((2099, 2970), abs=1)


def test_what_another_drawing_brought_is_never_offered_to_go_along() -> None:
    laid = edits.add_underlay(project(strokes=(Stroke(((0, 0), (9, 9)), "A-WALL", "2F"),)), page())
    drawn = edits.add_piece(laid, 0, "osb", Line(((0.0, 0.0), (7.0, 0.0))))
    assert edits.drawn_over(drawn, 0) == ()
    scaled = edits.set_paper_scale(drawn, 0, 10.0)
    assert scaled.sections[0] is drawn.sections[0]


def test_a_typed_direction_turns_as_well() -> None:
    similar = edits.scaling(((10.0, 10.0), (10.0, 60.0)), 200.0, 0.0)
    assert similar.places(((10, 10), (10, 60))) == (
        pytest.approx((10, 10)),
        pytest.approx((210, 10)),
    )
    laid = edits.lay_underlay(PROJECT, 0, similar)
    assert laid.underlays[0].angle == pytest.approx(-90.0)
    assert not laid.underlays[0].to_scale


def test_with_an_underlay_go_its_lines_but_not_the_pieces_made_of_them() -> None:
    laid = edits.add_underlay(project(), page(), LINES)
    made = Piece("page-1:9", "osb", Line(RUN.points), ("page-1:9",))
    laid = replace(laid, sections=(replace(laid.sections[0], pieces=(made,)),))
    rest = edits.remove_underlay(laid, 0)
    assert rest.underlays == ()
    assert (rest.sections[0].strokes, rest.sections[0].texts) == ((), ())
    assert rest.sections[0].pieces == (made,)


def test_two_underlays_have_keys_of_their_own() -> None:
    laid = edits.add_underlay(edits.add_underlay(project(), page(), LINES), page(), LINES)
    laid = edits.remove_underlay(laid, 0)
    assert [stroke.handle for stroke in laid.sections[0].strokes] == ["page-2:1"]
    again = edits.add_underlay(laid, page(), LINES)
    assert [under.key for under in again.underlays] == ["page-2", "page-1"]


def test_it_stays_under_its_section_when_that_is_renamed_and_goes_with_it() -> None:
    laid = edits.add_underlay(project(), page())
    renamed = edits.rename_section(laid, 0, "Rake")
    assert renamed.underlays[0].section == "Rake"
    assert edits.remove_section(renamed, 0).underlays == ()


def test_a_locked_one_is_hidden_and_shown_but_stays_where_it_is() -> None:
    locked = edits.show_underlay(PROJECT, 0, locked=True)
    hidden = edits.show_underlay(locked, 0, shown=False, strength=0.5).underlays[0]
    assert (hidden.shown, hidden.locked, hidden.strength) == (False, True, 0.5)
    for change in (
        lambda: edits.move_underlay(locked, 0, (1, 1)),
        lambda: edits.remove_underlay(locked, 0),
    ):
        with pytest.raises(EnclosureError, match="locked where it lies: unlock it first"):
            change()


@pytest.mark.parametrize(
    ("edit", "sentence"),
    [
        (lambda p: edits.move_underlay(p, 1, (0, 0)), "There is no such underlay: pick one that"),
        (lambda p: edits.remove_underlay(p, -1), "There is no such underlay"),
        (
            lambda p: edits.scale_underlay(p, 0, ((1, 1), (1, 1)), 5.0),
            "The two places are the same: click two that are far apart.",
        ),
        (
            lambda p: edits.scale_underlay(p, 0, ((1, 1), (2, 1)), 0.0),
            "A length cannot be 0 mm: type one that is more than 0.",
        ),
        (lambda p: edits.set_paper_scale(p, 0, 10), 'How large the paper of "scan.png" is stands'),
        (
            lambda p: edits.show_underlay(p, 0, strength=2.0),
            "How strong a picture is painted goes",
        ),
        (lambda p: edits.move_underlay(p, 0, (float("inf"), 0)), "A coordinate is not a finite"),
        (
            lambda p: edits.add_underlay(p, replace(SCAN, mm_per_pixel=0.0)),
            'The scale of "scan.png" must be more than 0: set it again.',
        ),
    ],
)
def test_what_cannot_be_done_is_said(edit: Callable[[Project], Project], sentence: str) -> None:
    with pytest.raises(EnclosureError) as caught:
        edit(PROJECT)
    assert str(caught.value).startswith(sentence)
