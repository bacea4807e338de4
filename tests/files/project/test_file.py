"""A project comes back from its file as it was, and a bad file is refused in clear sentences."""

import os
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given, settings

from enclosure_app.errors import EnclosureError
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.project.file import (
    load_project,
    project_bytes,
    project_of,
    save_project,
)
from enclosure_app.files.reading import ReadOptions, read_drawing
from enclosure_app.model.drawing import Units
from enclosure_app.model.place import Line
from enclosure_app.model.project import Project, drawing_of, project_from
from enclosure_app.model.said.decision import State
from enclosure_app.model.said.site_check import Seen
from enclosure_app.model.section import Piece, Section
from enclosure_app.model.standing.sign_offs import signed
from enclosure_app.model.standing.verdicts import history_of, verdicts_in
from enclosure_app.model.states import states
from enclosure_app.resources import sample
from tests.files.random_projects import projects

MANY = "ENCLOSURE_MANY" in os.environ
WALL = Piece("2F", "housewrap", Line(((10.0, 0.0), (10.0, 2400.0))))
FRAME = ((0.0, 0.0), (500.0, 0.0), (500.0, 2500.0), (0.0, 2500.0))
PROJECT = Project("House", Units.MM, (Section("Eave", FRAME, (WALL,), load_products()),))


@given(projects())
@settings(max_examples=1000 if MANY else 40, deadline=None)
def test_what_is_read_is_what_was_kept(project: Project) -> None:
    data = project_bytes(project, "p.enclosure.json")
    again = project_of(data, "p.enclosure.json")
    assert again == project
    assert project_bytes(again, "p.enclosure.json") == data


def test_each_section_knows_the_drawing_it_is_of() -> None:
    eave = replace(PROJECT.sections[0], file="drawings/eave.dxf")
    data = project_bytes(replace(PROJECT, sections=(eave,)), "p")
    assert [each.file for each in project_of(data, "p").sections] == ["drawings/eave.dxf"]


def test_a_sample_comes_back_with_its_linework_and_is_checked_as_the_drawing_was(
    tmp_path: Path,
) -> None:
    drawing = read_drawing(sample("eave-overhang.dxf"), ReadOptions(linework=True))
    path = tmp_path / "eave.enclosure.json"
    save_project(project_from(drawing), path)
    assert drawing_of(load_project(path)) == drawing
    assert any(section.strokes for section in drawing.sections)


def test_a_text_with_half_a_character_is_kept_too() -> None:
    project = replace(PROJECT, title="Gie\udcdfer", source="Дом.dxf")
    data = project_bytes(project, "p")
    assert "Дом.dxf".encode() in data
    assert project_of(data, "p") == project


def test_the_format_of_the_first_version_still_opens() -> None:
    """This file is never to be changed: what opened once opens for good."""
    path = Path(__file__).with_name("format-1.enclosure.json")
    project = load_project(path)
    assert project.title == "House by the lake"
    assert project.units is Units.IN
    eave = project.sections[0]
    assert [piece.name for piece in eave.pieces] == ["2F", "drawn-1", "drawn-2"]
    assert eave.by_name["drawn-1"].shape == Line(((0.0, 0.0), (0.0, 914.4)), 1.5)
    assert eave.products["office-sheet"].min_lap_mm == 150.0
    assert eave.sealed == {("2F", "drawn-1")}
    first, second = project.decisions
    assert (first.state, second.remark) == (State.TO_BE_MENDED, "Taped on site.")
    assert second.after == (first.id,)
    assert verdicts_in(project, "Eave") == {"gap:2F.end+drawn-1.start": second}
    assert project.underlays[0].data == b"\x89PNG"
    assert project_of(project_bytes(project, "p"), "p") == project


def test_the_format_of_the_second_version_still_opens() -> None:
    """This file is never to be changed: what opened once opens for good."""
    project = load_project(Path(__file__).with_name("format-2.enclosure.json"))
    gap, (eave,) = "gap:2F.high+drawn-1.low", project.sections
    told = history_of(project, gap, "Eave")
    assert [(each.who, each.remark) for each in told] == [
        ("Mara", "Behind the stair."),
        ("Nils", "Damp on the sill."),
    ]
    (name,) = told[0].photographs
    assert (project.photographs[name].name, project.photographs[name].key) == ("IMG_1.jpg", name)
    assert project.site_checks[0].seen is Seen.NOT_IN_ORDER
    assert [(each.sign_off.who, each.changed) for each in signed(project, eave)] == [
        ("Mara", False)
    ]
    assert project.revision == "B"
    assert project_of(project_bytes(project, "p"), "p") == project


def test_the_format_of_the_third_version_still_opens_and_knows_what_it_was() -> None:
    """This file is never to be changed; its sums neither, or copies would ask about everything."""
    project = load_project(Path(__file__).with_name("format-3.enclosure.json"))
    assert [section.file for section in project.sections] == ["boathouse.dxf"]
    assert states(project) <= set(project.past)
    assert project_of(project_bytes(project, "p"), "p") == project


@pytest.mark.parametrize(
    ("data", "sentence"),
    [
        (b"", "p: the file is empty; open the autosave or a copy."),
        (b'{"format": 1, "title": "Hou', "p, line 1: the file was cut short there; open"),
        (b'{"format": 1,\n"title":', "p, line 2: the file was cut short there; open"),
        (b'{"format": 1 "title": 2}', "p, line 1, column 14: this is not sound JSON"),
        (b"0\nSECTION\n2\nHEADER\n", "p, line 2, column 1: this is not sound JSON"),
        (b'{"format": 1,\n"title": "Gie\xdfer"}', "p, line 2: this is not UTF-8 text; open"),
        (b"[1]", 'p: this is JSON but no project (it has no "format"); open a file whose'),
        (b'{"schema": 1}', 'p: this is JSON but no project (it has no "format"); open a file'),
        (b'{"format": "1"}', 'p: "format" must be a whole number from 1 to 3.'),
        (b'{"format": true}', 'p: "format" must be a whole number from 1 to 3.'),
        (b'{"format": 0}', 'p: "format" must be a whole number from 1 to 3.'),
        (
            b'{"format": 4, "walls": []}',
            "p was saved by a newer version (format 4); this program reads up to 3: update it.",
        ),
        (b'{"format": 1, "format": 1}', 'p: the key "format" stands twice in one object; keep'),
        (b"[" * 100_000, "p: the brackets are nested too deeply for a project."),
        (b'{"format": ' + b"9" * 5000 + b"}", "p: a number in it is too long; open a copy."),
    ],
)
def test_what_is_no_project_is_refused_in_one_sentence(data: bytes, sentence: str) -> None:
    with pytest.raises(EnclosureError) as caught:
        project_of(data, "p")
    assert str(caught.value).startswith(sentence)
    assert "\n" not in str(caught.value)


def test_a_file_cut_short_anywhere_is_refused() -> None:
    data = project_bytes(PROJECT, "p").rstrip()
    for length in range(len(data)):
        with pytest.raises(EnclosureError, match=r"cut short|is empty|no project"):
            project_of(data[:length], "p")


def test_a_file_that_is_not_there_and_a_folder_are_refused(tmp_path: Path) -> None:
    with pytest.raises(EnclosureError, match=r"^no\.enclosure\.json: there is no such file in /"):
        load_project(tmp_path / "no.enclosure.json")
    with pytest.raises(EnclosureError, match="this is not a file; name a project file"):
        load_project(tmp_path)


@pytest.mark.parametrize(
    "bad",
    [
        replace(WALL, product="unheard-of"),
        replace(WALL, shape=Line(((0.0, 0.0), (float("nan"), 0.0)))),
        replace(WALL, shape=Line(((0.0, 0.0),))),
    ],
)
def test_a_project_that_would_not_open_again_never_replaces_the_file(
    tmp_path: Path, bad: Piece
) -> None:
    path = tmp_path / "house.enclosure.json"
    save_project(PROJECT, path)
    section = replace(PROJECT.sections[0], pieces=(bad,))
    with pytest.raises(EnclosureError, match=r"^house\.enclosure\.json"):
        save_project(replace(PROJECT, sections=(section,)), path)
    assert load_project(path) == PROJECT
    assert [each.name for each in tmp_path.iterdir()] == [path.name]
