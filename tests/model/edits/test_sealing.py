"""Joints that a person declared sealed go with the pieces: renamed, split, removed."""

from collections.abc import Callable

import pytest

from enclosure_app.errors import EnclosureError
from enclosure_app.model import edits
from enclosure_app.model.edits import sealing
from enclosure_app.model.place import Line
from enclosure_app.model.project import Project

House = Callable[..., Project]

SHEET = Line(((0.0, 0.0), (0.0, 100.0)))


@pytest.fixture
def sealed(house: House) -> Project:
    project = edits.declare_sealed(house(a=SHEET, b=SHEET, c=SHEET), 0, "b", "a")
    return edits.declare_sealed(project, 0, "b", "c")


def test_a_joint_is_declared_sealed_and_that_is_taken_back(sealed: Project) -> None:
    assert sealed.sections[0].sealed == {("a", "b"), ("b", "c")}
    back = edits.declare_sealed(sealed, 0, "c", "b", sealed=False)
    assert back.sections[0].sealed == {("a", "b")}


def test_a_joint_needs_two_pieces_that_are_there(sealed: Project) -> None:
    with pytest.raises(EnclosureError, match='"a" has no joint with itself: pick two pieces'):
        edits.declare_sealed(sealed, 0, "a", "a")
    with pytest.raises(EnclosureError, match='There is no piece "d"'):
        edits.declare_sealed(sealed, 0, "a", "d")


def test_a_joint_goes_over_to_the_new_name_and_is_dropped_with_itself(sealed: Project) -> None:
    after = sealing.renamed(sealed, 0, {"b": "a"})
    assert after.sections[0].sealed == {("a", "c")}


def test_what_was_said_of_a_piece_holds_for_its_parts(sealed: Project) -> None:
    after = sealing.also_sealed(sealed, 0, "a", ["a-2"])
    assert after.sections[0].sealed == {("a", "b"), ("a-2", "b"), ("b", "c")}


def test_joints_of_pieces_that_are_gone_are_forgotten(sealed: Project) -> None:
    assert sealing.forgotten(sealed, 0, ["a"]).sections[0].sealed == {("b", "c")}
    assert sealing.forgotten(sealed, 0, ["b"]).sections[0].sealed == set()


def test_nothing_changes_where_nothing_was_declared(house: House) -> None:
    project = house(a=SHEET)
    assert sealing.forgotten(project, 0, ["a"]) is project
    assert sealing.also_sealed(project, 0, "a", ["b"]) is project
