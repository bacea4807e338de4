"""Reads and checks a project file, with its own layers, figures and what was decided in it."""

from dataclasses import dataclass, replace
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from enclosure_app.model.project import Project
    from enclosure_app.model.report import DrawingResult


@dataclass(frozen=True, slots=True)
class Judged:
    """A project, and what is found in it now."""

    project: "Project"
    result: "DrawingResult"


def judged(file: Path) -> Judged:
    """Return a project with what is found in it now.

    Raises:
        EnclosureError: it cannot be read, or its rule book is not there.
    """
    from enclosure_app.checker import check_drawing
    from enclosure_app.files.project.file import load_project
    from enclosure_app.files.projects import limits_of
    from enclosure_app.model.project import drawing_of

    project = load_project(file)
    drawn = tuple(s for s in project.sections if s.can_be_judged)
    result = check_drawing(drawing_of(replace(project, sections=drawn)), limits_of(project))
    return Judged(project, result)
