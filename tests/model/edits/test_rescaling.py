"""A drawing that was read in the wrong units is corrected, with all that was done on it."""

from dataclasses import fields, replace

import pytest

from enclosure_app.files.projects import Wish, read_project
from enclosure_app.model.drawing import Units
from enclosure_app.model.edits.rescaling import correct_units
from enclosure_app.model.place import Area, Line
from enclosure_app.model.project import Project
from enclosure_app.model.section import Break, Piece, Section, Stroke, Text
from enclosure_app.model.underlay import Underlay
from enclosure_app.resources import sample

RING = ((0.0, 0.0), (10.0, 0.0), (10.0, 20.0))
BIG = ((0.0, 0.0), (254.0, 0.0), (254.0, 508.0))
SECTION = Section(
    "s",
    RING,
    (
        Piece("1", "felt", Line(((0.0, 1.0), (10.0, 1.0)), width=2.0)),
        Piece("2", "osb", Area(RING, (RING,))),
    ),
    {},
    ((1.0, 1.0),),
    ((9.0, 2.0),),
    breaks=(Break(((0.0, 5.0), (10.0, 5.0)), ((0.0, 6.0), (10.0, 6.0))),),
    strokes=(Stroke(RING, "A", "1", width=1.0),),
    taken=(Stroke(RING, "A", "2"),),
    texts=(Text("note", (5.0, 5.0), 3.0),),
)
PROJECT = Project(
    "", Units.MM, (SECTION,), underlays=(Underlay("u", "png", b"", (10.0, 0.0), 0.5),)
)


def test_everything_grows_by_the_same_factor() -> None:
    after = correct_units(PROJECT, Units.IN)
    section = after.sections[0]
    assert after.units is Units.IN
    assert section.frame == BIG
    assert section.pieces[0].shape == Line(((0.0, 25.4), (254.0, 25.4)), width=pytest.approx(50.8))
    assert section.pieces[1].shape == Area(BIG, (BIG,))
    assert (section.inside, section.outside[0][1]) == (((25.4, 25.4),), 50.8)
    assert section.breaks[0].near == ((0.0, 127.0), (254.0, 127.0))
    assert (section.strokes[0].points, section.strokes[0].width) == (BIG, 25.4)
    assert section.taken[0].points == BIG
    assert (section.texts[0].at, section.texts[0].height) == ((127.0, 127.0), pytest.approx(76.2))
    assert (after.underlays[0].at, after.underlays[0].mm_per_pixel) == ((254.0, 0.0), 12.7)


def test_no_field_of_a_section_is_forgotten() -> None:
    """Whoever adds a place or a length to a section is told here that units may be corrected."""
    known = {
        "name", "frame", "pieces", "products", "inside", "outside", "gravity", "frame_drawn",
        "breaks", "sealed", "strokes", "texts", "taken", "by_name", "file",
    }  # fmt: skip
    assert {field.name for field in fields(Section)} == known


def test_a_corrected_drawing_is_as_if_it_had_been_read_in_the_right_units() -> None:
    path = sample("parapet.dxf")
    wrong = read_project(path, Wish(units=Units.CM))
    right = read_project(path, Wish(units=Units.MM))
    after = correct_units(wrong, Units.MM)
    for there, wanted in zip(after.sections[0].strokes, right.sections[0].strokes, strict=True):
        if len(there.points) == len(wanted.points):  # curves are flattened to 0.1 mm as read
            flat = [c for point in there.points for c in point]
            assert flat == pytest.approx([c for point in wanted.points for c in point])
    assert after.units is Units.MM


def test_the_same_units_change_nothing_but_the_name() -> None:
    named = replace(PROJECT, units=Units.MM)
    assert correct_units(named, Units.MM).sections[0] is SECTION
