"""A project holds a drawing, gives it back, and knows which decision counts."""

from types import MappingProxyType

from enclosure_app.files.reading import ReadOptions, read_drawing
from enclosure_app.model.drawing import Drawing, Note, NoteLevel, Units
from enclosure_app.model.project import Decision, Project, State, drawing_of, project_from
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


def test_the_last_decision_about_a_finding_counts() -> None:
    decisions = (
        Decision("gap:a", State.TO_BE_MENDED, who="Ida"),
        Decision("gap:b", State.ACCEPTED),
        Decision("gap:a", State.MENDED, who="Jon"),
    )
    project = Project("House", Units.MM, (), decisions=decisions)
    assert project.decided == {"gap:a": decisions[2], "gap:b": decisions[1]}
    assert isinstance(project.decided, MappingProxyType)
