"""Sheets to change: two upright ones that a level one crosses, and a board."""

from collections.abc import Callable

import pytest

from enclosure_app.model.edits import add_piece
from enclosure_app.model.place import Area, Line, Points
from enclosure_app.model.section import Section
from enclosure_app.window.main_window import MainWindow

BOARD = ((1400.0, 300.0), (1412.0, 300.0), (1412.0, 1500.0), (1400.0, 1500.0))


@pytest.fixture
def crossed(sheet: MainWindow) -> MainWindow:
    """Return a sheet with drawn-1 at x = 400, drawn-2 at x = 900, level drawn-3, board drawn-4."""
    project = sheet.document.project
    for run in (
        ((400.0, 300.0), (400.0, 1500.0)),
        ((900.0, 300.0), (900.0, 1500.0)),
        ((200.0, 800.0), (1100.0, 800.0)),
    ):
        project = add_piece(project, 0, "felt", Line(run))
    project = add_piece(project, 0, "plywood", Area(BOARD))
    sheet.document.apply("Draw", project)
    sheet.checking.check_now()
    return sheet


@pytest.fixture
def section(window: MainWindow) -> Callable[[], Section]:
    """Return a function that gives the section as it is now."""
    return lambda: window.document.project.sections[0]


@pytest.fixture
def run(window: MainWindow) -> Callable[[str], Points]:
    """Return a function that gives the points of a piece."""

    def points(name: str) -> Points:
        shape = window.document.project.sections[0].by_name[name].shape
        return shape.points if isinstance(shape, Line) else shape.outer

    return points
