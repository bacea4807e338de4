"""The document: one way to change the project, and the way back."""

from dataclasses import replace
from pathlib import Path

import pytest

from enclosure_app.model.drawing import Units
from enclosure_app.model.project import Project
from enclosure_app.window.document import Document, new_gesture


@pytest.fixture
def document(qapp: object) -> Document:
    return Document(Project("eave", Units.MM, ()))


def test_undo_gives_back_the_very_same_project(document: Document) -> None:
    before = document.project
    document.apply("Rename", replace(before, title="ridge"))
    assert document.project.title == "ridge"
    document.undo_stack.undo()
    assert document.project is before


def test_a_change_that_changes_nothing_is_no_step(document: Document) -> None:
    document.apply("Nothing", document.project)
    assert document.undo_stack.count() == 0


def test_one_drag_is_one_step_and_two_drags_are_two(document: Document) -> None:
    for gesture in (new_gesture(), new_gesture()):
        for k in range(19):
            after = replace(document.project, title=f"{gesture} {k}")
            document.apply("Move", after, gesture=gesture)
    assert document.undo_stack.count() == 2
    document.undo_stack.undo()
    assert document.project.title.endswith(" 18")
    document.undo_stack.undo()
    assert document.project.title == "eave"


def test_the_step_is_named_for_the_menu(document: Document) -> None:
    document.apply("Draw Housewrap", replace(document.project, title="x"))
    assert document.undo_stack.undoText() == "Draw Housewrap"


def test_saving_makes_it_unmodified_and_undo_modified_again(document: Document) -> None:
    document.apply("Rename", replace(document.project, title="x"))
    assert document.modified
    document.saved(Path("x.enclosure.json"))
    assert not document.modified
    document.undo_stack.undo()
    assert document.modified


def test_opening_another_project_leaves_no_way_back_to_the_last(document: Document) -> None:
    document.apply("Rename", replace(document.project, title="x"))
    document.open(Project("other", Units.IN, ()))
    assert not document.undo_stack.canUndo()
    assert document.project.title == "other"


def test_every_change_is_told_once(document: Document) -> None:
    told = []
    document.changed.connect(lambda: told.append(document.project.title))
    document.apply("a", replace(document.project, title="a"))
    document.undo_stack.undo()
    document.undo_stack.redo()
    assert told == ["a", "eave", "a"]


def test_a_gesture_that_ends_where_it_began_leaves_no_step(document: Document) -> None:
    before, gesture = document.project, new_gesture()
    document.apply("Move", replace(before, title="x"), gesture=gesture)
    document.apply("Move", before, gesture=gesture)
    assert document.project is before
    assert document.undo_stack.count() == 0
