"""Edits of sections: frame, marks, gravity, breaks, sealed joints, products, the list itself."""

from collections.abc import Callable
from dataclasses import replace

import pytest

from enclosure_app.errors import EnclosureError
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model import edits
from enclosure_app.model.drawing import Units
from enclosure_app.model.edits import Side
from enclosure_app.model.place import Line
from enclosure_app.model.project import Project
from enclosure_app.model.section import DOWN, Break

House = Callable[..., Project]

SHEET = Line(((0.0, 0.0), (0.0, 100.0)))
RING = ((0.0, 0.0), (9.0, 0.0), (9.0, 9.0))
CUT = Break(((0.0, 5.0), (9.0, 5.0)), ((0.0, 7.0), (9.0, 7.0)))


def test_a_frame_that_a_person_draws_is_drawn(house: House) -> None:
    before = house(a=SHEET)
    after = edits.set_frame(before, "Eave", RING)
    assert (after.sections[0].frame, after.sections[0].frame_drawn) == (RING, True)
    assert after.sections[0].pieces is before.sections[0].pieces
    assert after.sections[1] is before.sections[1]
    for bad in (RING[:2], ((0.0, 0.0), (9.0, 9.0), (9.0, 0.0), (0.0, 9.0))):
        with pytest.raises(EnclosureError, match="A frame needs three corners or more and must"):
            edits.set_frame(before, "Eave", bad)


def test_marks_are_added_moved_and_removed_on_their_own_side(house: House) -> None:
    project = house()
    for place in ((1.0, 1.0), (2.0, 2.0)):
        project = edits.add_mark(project, 0, Side.OUTSIDE, place)
    project = edits.add_mark(project, 0, Side.INSIDE, (5.0, 5.0))
    moved = edits.move_mark(project, 0, Side.OUTSIDE, 0, (3.0, 3.0))
    assert moved.sections[0].outside == ((3.0, 3.0), (2.0, 2.0))
    assert moved.sections[0].inside == ((5.0, 5.0),)
    removed = edits.remove_mark(moved, 0, Side.OUTSIDE, 1)
    assert removed.sections[0].outside == ((3.0, 3.0),)
    for index in (-1, 1):
        with pytest.raises(EnclosureError, match='"Eave" has no such inside mark: pick one'):
            edits.remove_mark(project, 0, Side.INSIDE, index)


def test_gravity_is_one_long_and_a_plan_has_none(house: House) -> None:
    turned = edits.set_gravity(house(), 0, (3.0, -4.0))
    assert turned.sections[0].gravity == pytest.approx((0.6, -0.8))
    plan = edits.set_gravity(turned, 0, None)
    assert plan.sections[0].gravity is None
    assert edits.set_gravity(plan, 0, (0.0, -2.0)).sections[0].gravity == DOWN
    with pytest.raises(EnclosureError, match="Two different places are needed to say which way"):
        edits.set_gravity(plan, 0, (0.0, 0.0))


def test_breaks_are_added_and_removed(house: House) -> None:
    project = edits.add_break(house(), 0, CUT)
    assert project.sections[0].breaks == (CUT,)
    assert edits.remove_break(project, 0, 0).sections[0].breaks == ()
    with pytest.raises(EnclosureError, match='"Eave" has no such break'):
        edits.remove_break(project, 0, 1)
    with pytest.raises(EnclosureError, match="A break line needs two places that are apart"):
        edits.add_break(project, 0, Break(CUT.near, (CUT.far[0], CUT.far[0])))


def test_a_product_comes_into_the_list_of_every_section_and_they_go_on_sharing_it(
    house: House,
) -> None:
    ours = replace(load_products()["osb"], key="ours", name="Our board")
    before = house(a=SHEET)
    after = edits.add_product(before, ours)
    first, second = after.sections
    assert first.products["ours"] is second.products["ours"] is ours
    assert first.products is second.products
    assert first.pieces[0] is before.sections[0].pieces[0]
    assert "ours" not in before.sections[0].products
    again = edits.add_product(after, replace(ours, name="Renamed"))
    assert again.sections[1].products["ours"].name == "Renamed"


def test_sections_are_added_replaced_renamed_and_removed(house: House) -> None:
    project = house(a=SHEET)
    eave, ridge = project.sections
    more = edits.add_section(project, replace(eave, name="Parapet"))
    assert [section.name for section in more.sections] == ["Eave", "Ridge", "Parapet"]
    renamed = edits.rename_section(more, "Parapet", " Rake ")
    assert [section.name for section in renamed.sections] == ["Eave", "Ridge", "Rake"]
    replaced = edits.replace_section(renamed, "Rake", replace(ridge, name="Rake", pieces=()))
    assert replaced.sections[2].pieces == ()
    removed = edits.remove_section(replaced, 0)
    assert [section.name for section in removed.sections] == ["Ridge", "Rake"]
    assert removed.sections[0] is ridge


@pytest.mark.parametrize(
    ("edit", "sentence"),
    [
        (
            lambda p: edits.add_section(p, p.sections[0]),
            'There is a section "Eave" already: give it another name.',
        ),
        (lambda p: edits.rename_section(p, "Eave", "Ridge"), 'There is a section "Ridge" already'),
        (lambda p: edits.rename_section(p, "Eave", " "), "A section needs a name: type one."),
        (lambda p: edits.remove_section(p, "Attic"), 'There is no section "Attic"; the sections'),
        (lambda p: edits.remove_section(p, -1), 'There is no section "-1"; the sections are'),
        (
            lambda p: edits.add_mark(p, 0, Side.INSIDE, (float("nan"), 0.0)),
            "A coordinate is not a finite number: give the place again.",
        ),
    ],
)
def test_what_cannot_be_done_is_said(
    house: House, edit: Callable[[Project], Project], sentence: str
) -> None:
    with pytest.raises(EnclosureError) as caught:
        edit(house(a=SHEET))
    assert str(caught.value).startswith(sentence)


def test_a_project_without_sections_says_so() -> None:
    with pytest.raises(EnclosureError, match="the sections are: none yet"):
        edits.remove_section(Project("", Units.MM, ()), 0)
