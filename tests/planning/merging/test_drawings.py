"""Whose drawing is taken, section by section or as a whole."""

from dataclasses import replace

from enclosure_app.model.project import Project
from enclosure_app.model.said.carried import Carried, Subject
from enclosure_app.model.states import states
from enclosure_app.planning.merging.differences import Part, Side, Weighing
from enclosure_app.planning.merging.drawings import (
    Copies,
    named_alike,
    sections_weighed,
    whole_drawing,
)
from tests.planning.revision.walls import WALL, line, project, wall

TAPE = line("30", (-1.0, 780.0), (-1.0, 850.0), product="seam-tape")
LATER = replace(
    project(wall(TAPE), revision="B"),
    source="b.dxf",
    carried=(Carried(Subject("", "Wall", "a"), Subject("B", "Wall", "a"), id="1"),),
)


def weighing(drawing: Side | None = None, base: Project | None = None) -> Weighing:
    """Two copies that both began from a base, if there is one."""
    past = states(base) if base else frozenset[str]()
    return Weighing({(Part.DRAWING, ""): drawing} if drawing else {}, [], (past, past))


def test_the_later_revision_is_taken_and_asked_about_only_if_the_earlier_was_drawn_on() -> None:
    base = project(WALL)
    quiet = weighing(base=base)
    assert whole_drawing(quiet, Copies(base, LATER)) is LATER
    assert whole_drawing(quiet, Copies(LATER, base)) is LATER
    assert quiet.differences == []
    drawn_on = project(wall(line("31", (9.0, 0.0), (9.0, 99.0))))
    asking = weighing(base=base)
    assert whole_drawing(asking, Copies(drawn_on, LATER)) is LATER
    assert [(each.ours, each.theirs, each.taken) for each in asking.differences] == [
        ("", "b.dxf", Side.THEIRS)
    ]
    assert whole_drawing(weighing(drawing=Side.OURS), Copies(drawn_on, LATER)) is drawn_on


def test_of_two_revisions_that_know_nothing_of_each_other_a_person_chooses() -> None:
    other = replace(LATER, revision="C", carried=())
    asking = weighing()
    assert whole_drawing(asking, Copies(other, replace(LATER, carried=()))) is other
    assert asking.differences[0].asked


def test_sections_that_differ_are_told_with_who_drew_what() -> None:
    copies = Copies(project(WALL), project(wall(TAPE)))
    asking = Weighing({}, [])
    sections, (version,) = sections_weighed(asking, copies)
    assert sections == (WALL,)
    assert (version.taken, version.left) == (WALL, wall(TAPE))
    assert (version.by, version.other) == (copies.theirs, copies.ours)
    quiet = weighing(base=copies.ours)
    assert sections_weighed(quiet, copies)[0] == (wall(TAPE),)
    assert quiet.differences == []


def test_a_product_that_nobody_uses_makes_no_difference() -> None:
    fewer = {key: each for key, each in WALL.products.items() if key != "geotextile"}
    asking = Weighing({}, [])
    copies = Copies(project(WALL), project(replace(WALL, products=fewer)))
    assert sections_weighed(asking, copies)[1] == ()
    assert asking.differences == []


def test_a_new_name_of_either_copy_is_given_to_both() -> None:
    base, renamed = project(WALL), project(replace(WALL, name="North wall"))
    for copies in (Copies(base, renamed), Copies(renamed, base)):
        alike = named_alike(copies, weighing(base=base))
        assert alike.ours.sections[0].name == alike.theirs.sections[0].name == "North wall"
    unknown = named_alike(Copies(base, renamed), weighing())
    assert unknown.theirs.sections[0].name == "Wall"


def test_a_section_taken_away_goes_unless_the_other_drew_on_in_it() -> None:
    base, none = project(WALL), project()
    quiet = weighing(base=base)
    assert sections_weighed(quiet, Copies(base, none))[0] == ()
    assert sections_weighed(quiet, Copies(none, base))[0] == ()
    assert sections_weighed(quiet, Copies(none, project(WALL, replace(WALL, name="New"))))[0] == (
        replace(WALL, name="New"),
    )
    assert quiet.differences == []
    asking = weighing(base=base)
    assert sections_weighed(asking, Copies(none, project(wall(TAPE))))[0] == ()
    assert sections_weighed(asking, Copies(project(wall(TAPE)), none))[0] == (wall(TAPE),)
    assert [(each.ours is None, each.theirs is None) for each in asking.differences] == [
        (True, False),
        (False, True),
    ]
