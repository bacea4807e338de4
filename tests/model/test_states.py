"""Each copy knows the states that it was in, whichever way it came to be what it is."""

from dataclasses import replace

from enclosure_app.files.project.file import project_bytes, project_of
from enclosure_app.model.finding import Severity
from enclosure_app.model.layer import LayerRow
from enclosure_app.model.project import Project
from enclosure_app.model.states import drawn_as, past_of, pictures, state_of, states
from enclosure_app.model.underlay import Underlay
from tests.planning.revision.walls import WALL, project, wall

SCAN = Underlay("scan.png", "png", b"1", (1.0, 2.0), 0.1 + 0.2, section="Wall")
FULL = replace(
    project(WALL), figures={"wall-lap": 1 / 3}, severities={"gap": Severity.DOUBT},
    layers=(LayerRow("A-*", "osb"),), underlays=(SCAN, SCAN),
)  # fmt: skip


def again(before: Project) -> Project:
    return project_of(project_bytes(before, "p"), "p")


def test_everything_that_two_copies_can_differ_in_has_a_state() -> None:
    changed = (
        replace(FULL, title="Other"),
        replace(FULL, book="irc-2021"),
        replace(FULL, layers=()),
        replace(FULL, figures={"wall-lap": 0.5}),
        replace(FULL, severities={"gap": Severity.FAULT}),
        replace(FULL, sections=(wall(without=("10",)),)),
        replace(FULL, sections=(replace(WALL, sealed=frozenset({("10", "11")})),)),
        replace(FULL, underlays=(replace(SCAN, strength=0.5), SCAN)),
        replace(FULL, underlays=(replace(SCAN, data=b"2"), SCAN)),
    )
    for other in changed:
        assert states(other) != states(FULL)
    assert states(replace(FULL)) == states(FULL)
    assert state_of("section", "Wall") in states(FULL)
    assert state_of("section", "Wall", WALL) in states(FULL)
    assert state_of("section", "Eave") not in states(FULL)


def test_a_section_that_was_numbered_anew_or_moved_is_in_another_state() -> None:
    names = tuple(replace(p, name=f"x{p.name}") for p in WALL.pieces)
    moved = replace(WALL, inside=((201.0, 1500.0),))
    assert len({drawn_as(each) for each in (WALL, replace(WALL, pieces=names), moved)}) == 3
    assert drawn_as(replace(WALL, name="Other")) == drawn_as(WALL)


def test_a_file_remembers_them_and_keeping_it_again_adds_nothing() -> None:
    kept = again(FULL)
    assert kept == FULL
    assert {*kept.past} == past_of(kept) >= states(FULL)
    assert project_bytes(kept, "p") == project_bytes(FULL, "p")
    later = again(replace(kept, title="Later"))
    assert states(FULL) < {*later.past}


def test_pictures_of_one_name_are_told_apart() -> None:
    assert [*pictures(FULL)] == ["scan.png · Wall", "scan.png · Wall (2)"]
