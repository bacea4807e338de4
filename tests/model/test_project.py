"""A project holds a drawing, gives it back, and has a name of its own."""

from enclosure_app.files.reading import ReadOptions, read_drawing
from enclosure_app.model.drawing import Drawing, Note, NoteLevel, Units
from enclosure_app.model.project import drawing_of, project_from
from enclosure_app.resources import sample

DRAWING = Drawing(
    "eave.dxf", Units.IN, (), (Note(NoteLevel.READ, "Read."),), ("Model", "A1"), "Eave"
)


def test_the_drawing_that_is_judged_is_the_one_that_was_read() -> None:
    assert drawing_of(project_from(DRAWING)) == DRAWING
    drawing = read_drawing(sample("parapet.dxf"), ReadOptions())
    project = project_from(drawing)
    assert project.sections is drawing.sections
    assert drawing_of(project) == drawing


def test_a_project_of_a_drawing_has_nothing_of_a_person_yet() -> None:
    project = project_from(DRAWING)
    assert (project.title, project.source, project.units) == ("Eave", "eave.dxf", Units.IN)
    assert (project.book, project.decisions, project.underlays) == ("", (), ())
    assert project.figures == project.severities == {}


def test_a_project_has_a_name_of_its_own_that_does_not_tell_it_from_an_equal_one() -> None:
    one, other = project_from(DRAWING), project_from(DRAWING)
    assert one == other
    assert one.id != other.id
    assert (one.revision, one.carried, one.photographs) == ("", (), {})
