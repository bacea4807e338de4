"""Frames and breaks follow what their lines are said to be."""

from dataclasses import replace

import pytest

from enclosure_app.errors import EnclosureError
from enclosure_app.files.framing.reframing import reframed
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.layer import Role
from enclosure_app.model.place import Line, Points
from enclosure_app.model.section import Break, Piece, Section, Stroke, Text


def box(x: float, y: float, side: float) -> Points:
    return ((x, y), (x + side, y), (x + side, y + side), (x, y + side))


def closed(ring: Points) -> Points:
    return (*ring, ring[0])


LEFT = Stroke(closed(box(0, 0, 1000)), "CROP", "F1")
RIGHT = Stroke(closed(box(2000, 0, 1000)), "CROP", "F2")
SHEET = Piece("1", "felt", Line(((-100, 500), (2500, 500))), ("1",), "A")
WHOLE = Section(
    "whole",
    box(-200, -200, 3400),
    (SHEET,),
    load_products(),
    inside=((500, 100),),
    outside=((500, 900), (2500, 900)),
    strokes=(LEFT, RIGHT),
    texts=(Text("SILL", (100, -50), 40.0), Text("INSIDE", (2500, 100), 20.0)),
    gravity=(1.0, 0.0),
)


def meaning(role: str) -> object:
    return lambda stroke: role if stroke.layer == "CROP" else Role.LINEWORK


def becoming(section: Section, was: str, now: str) -> tuple[Section, ...]:
    lines = (*section.strokes, *section.taken)
    return reframed(section, lines, meaning(was), meaning(now))  # type: ignore[arg-type]


def test_outlines_that_are_frames_make_a_section_each_with_what_the_person_said() -> None:
    sill, other = becoming(WHOLE, Role.LINEWORK, Role.FRAME)
    assert (sill.name, sill.frame, sill.frame_drawn) == ("SILL", box(0, 0, 1000), True)
    assert other.frame == box(2000, 0, 1000)
    assert sill.pieces[0].shape == Line(((0, 500), (1000, 500)))
    assert other.pieces[0].shape == Line(((2000, 500), (2500, 500)))
    assert (sill.inside, sill.outside) == (((500, 100),), ((500, 900),))
    assert (other.inside, other.outside) == (((2500, 100),), ((2500, 900),))
    assert sill.gravity == other.gravity == (1.0, 0.0)


def test_a_single_frame_leaves_the_section_its_name() -> None:
    (only,) = becoming(replace(WHOLE, strokes=(LEFT,)), Role.LINEWORK, Role.FRAME)
    assert (only.name, only.frame) == ("whole", box(0, 0, 1000))


def test_a_layer_without_a_closed_outline_cannot_be_a_frame() -> None:
    lone = Stroke(((0, 0), (100, 0)), "CROP", "F3")
    with pytest.raises(EnclosureError, match="No outline on layer “CROP” closes"):
        becoming(replace(WHOLE, strokes=(lone,)), Role.LINEWORK, Role.FRAME)


def test_without_a_drawn_frame_the_frame_grows_about_the_pieces() -> None:
    section = replace(WHOLE, frame=box(0, 0, 10), strokes=(), outside=(), inside=())
    (grown,) = becoming(section, Role.LINEWORK, Role.LINEWORK)
    assert min(x for x, _ in grown.frame) == -100  # cut where the sheet stops
    assert max(x for x, _ in grown.frame) == 2500


def test_a_frame_that_is_none_any_more_gives_way_to_the_extent_of_the_pieces() -> None:
    (framed,) = becoming(replace(WHOLE, strokes=(LEFT,)), Role.LINEWORK, Role.FRAME)
    (after,) = becoming(replace(framed, taken=(LEFT,)), Role.FRAME, Role.LINEWORK)
    assert not after.frame_drawn


def test_a_frame_drawn_by_hand_stays_whatever_a_layer_is() -> None:
    by_hand = replace(WHOLE, frame=box(-50, -50, 3000), frame_drawn=True)
    (after,) = becoming(by_hand, Role.FRAME, Role.LINEWORK)
    assert (after.frame, after.frame_drawn) == (by_hand.frame, True)


def test_two_lines_are_a_break_and_are_none_again() -> None:
    lines = tuple(Stroke(((x, 0), (x, 1000)), "CROP", f"B{x}") for x in (400, 600))
    parts = tuple(
        replace(SHEET, name=f"{n}", shape=Line(run))
        for n, run in enumerate((((0, 500), (400, 500)), ((600, 500), (1000, 500))))
    )
    section = replace(WHOLE, strokes=lines, pieces=parts, frame=box(0, 0, 1000), frame_drawn=True)
    (cut,) = becoming(section, Role.LINEWORK, Role.BREAK)
    assert cut.breaks == (Break(((400, 0), (400, 1000)), ((600, 0), (600, 1000))),)
    (whole,) = becoming(cut, Role.BREAK, Role.LINEWORK)
    assert whole.breaks == ()
