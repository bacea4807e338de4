"""Two copies of a wall: Ida and Jon decided differently; what else differs is asked for by name."""

from enclosure_app.model import edits
from enclosure_app.model.project import Project
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.window.merging.joining import Joined, joined
from tests.planning.revision.walls import GAP, WALL, WIDE, line, project, wall

WHEN = "2026-03-02T10:15:00+02:00"
TAPE = line("drawn-1", (-1.0, 780.0), (-1.0, 850.0), product="seam-tape")
BEAD = line("drawn-1", (-2.0, 1690.0), (-2.0, 1770.0), product="seam-tape")
PLACE = ("Wall", GAP)


def said(before: Project, state: State, who: str, key: str = GAP) -> Project:
    return edits.set_decision(
        before, Decision(key, state, who, WHEN, f"By {who}.", "Wall", "A gap.")
    )


def contested() -> Joined:
    ours = said(project(WALL), State.MENDED, "Ida")
    theirs = said(project(WALL), State.ACCEPTED, "Jon")
    return joined(ours, said(theirs, State.TO_BE_MENDED, "Jon", WIDE))


def drawn() -> Joined:
    return joined(project(wall(TAPE)), project(wall(BEAD)))
