"""A wall whose one gap became wider, which nobody can be sure of, laid over the earlier one."""

from dataclasses import replace

from enclosure_app.model import edits
from enclosure_app.model.project import Project
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.window.revising.laying import Laid, laid_over
from tests.planning.revision.walls import GAP, WALL, line, project, wall

WIDER = line("11", (0.0, 860.0), (0.0, 1700.0))
WHEN = "2026-03-02T10:15:00+02:00"


def decided() -> Project:
    said = Decision(GAP, State.TO_BE_MENDED, "Ida", WHEN, "", "Wall", "A gap.")
    return edits.set_decision(replace(project(WALL), source="wall.dxf"), said)


def laid() -> Laid:
    return laid_over(decided(), replace(project(wall(WIDER)), source="/office/wall-B.dxf"))
