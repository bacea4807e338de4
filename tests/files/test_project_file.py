"""A project comes back from its file as it was, and a bad file is refused in clear sentences."""

import json
import os
from collections.abc import Callable
from dataclasses import fields, replace
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings
from random_projects import projects

from enclosure_app.errors import EnclosureError, ListedError
from enclosure_app.files import project_json
from enclosure_app.files.catalogue import load_products
from enclosure_app.files.project_file import (
    load_project,
    project_bytes,
    project_of,
    save_project,
)
from enclosure_app.files.project_migrations import FORMAT, STEPS, migrated
from enclosure_app.files.reading import ReadOptions, read_drawing
from enclosure_app.model.drawing import Units
from enclosure_app.model.place import Line
from enclosure_app.model.project import Project, drawing_of, project_from
from enclosure_app.model.section import Piece, Section
from enclosure_app.resources import sample

MANY = "ENCLOSURE_MANY" in os.environ
WALL = Piece("2F", "housewrap", Line(((10.0, 0.0), (10.0, 2400.0))))
FRAME = ((0.0, 0.0), (500.0, 0.0), (500.0, 2500.0), (0.0, 2500.0))
PROJECT = Project("House", Units.MM, (Section("Eave", FRAME, (WALL,), load_products()),))
OFFICE = {
    "name": "Office sheet",
    "controls": ["air", "water"],
    "bond": "adhered",
    "kind": "sheet",
}


@given(projects())
@settings(max_examples=1000 if MANY else 40, deadline=None)
def test_what_is_read_is_what_was_kept(project: Project) -> None:
    data = project_bytes(project, "p.enclosure.json")
    again = project_of(data, "p.enclosure.json")
    assert again == project
    assert project_bytes(again, "p.enclosure.json") == data


def test_a_sample_comes_back_with_its_linework_and_is_checked_as_the_drawing_was(
    tmp_path: Path,
) -> None:
    drawing = read_drawing(sample("eave-overhang.dxf"), ReadOptions(linework=True))
    path = tmp_path / "eave.enclosure.json"
    save_project(project_from(drawing), path)
    assert drawing_of(load_project(path)) == drawing
    assert any(section.strokes for section in drawing.sections)


def test_every_field_of_the_model_stands_in_the_file() -> None:
    """Whoever adds a field to one of these is told here that it would be lost in the file."""
    table = project_json.written(_rich())
    section = table["sections"][0]
    parts = {
        Project: {*table} - {"about", "products"},
        Section: {*section},
        Piece: {*section["pieces"][0]},
    }
    for kind, held in parts.items():
        assert held == {each.name for each in fields(kind) if each.init}
    product = next(iter(table["products"].values()))
    assert {*product, "key"} == {each.name for each in fields(load_products()["osb"])}


def test_only_the_products_in_use_and_the_offices_own_stand_in_the_file() -> None:
    table = project_json.written(_rich())
    assert [*table["products"]] == ["housewrap", "ours"]
    assert table["sections"][0]["products"] == {}


def test_a_product_in_use_stays_as_it_was_kept_when_the_programs_list_changes() -> None:
    table = _table()
    table["products"]["housewrap"]["sd_m"] = 0.35
    project = _read(table)
    assert project.sections[0].products["housewrap"].sd_m == 0.35
    assert project.sections[0].products["osb"] is load_products()["osb"]


def test_two_sections_may_know_one_key_for_different_products() -> None:
    other = replace(load_products()["housewrap"], name="Other", sd_m=0.1)
    second = replace(
        PROJECT.sections[0], name="Ridge", products={**load_products(), "housewrap": other}
    )
    project = replace(PROJECT, sections=(*PROJECT.sections, second))
    again = project_of(project_bytes(project, "p"), "p")
    assert [s.products["housewrap"].name for s in again.sections] == [
        "Housewrap, fastened",
        "Other",
    ]


def test_a_piece_stands_on_a_line_of_its_own_in_plain_words() -> None:
    text = project_bytes(PROJECT, "p").decode()
    (line,) = [line for line in text.splitlines() if '"2F"' in line]
    assert json.loads(line) == {
        "name": "2F",
        "product": "housewrap",
        "shape": {"line": [[10.0, 0.0], [10.0, 2400.0]], "width": 0.0, "closed": False},
        "handles": [],
        "layer": "",
    }


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
    assert project.decided["gap:2F.end+drawn-1.start"].remark == "Taped on site."
    assert project.underlays[0].data == b"\x89PNG"
    assert project_of(project_bytes(project, "p"), "p") == project


def test_older_formats_are_brought_up_step_by_step() -> None:
    steps = {
        1: lambda table: {**table, "colour": table["color"]},
        2: lambda table: {k: v for k, v in table.items() if k != "color"},
    }
    assert migrated({"color": "red"}, 1, 3, steps) == {"colour": "red"}
    assert migrated({"colour": "red", "color": ""}, 2, 3, steps) == {"colour": "red"}
    assert {*STEPS} == {*range(1, FORMAT)}


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
        (b'{"format": "1"}', 'p: "format" must be a whole number from 1 to 1.'),
        (b'{"format": true}', 'p: "format" must be a whole number from 1 to 1.'),
        (b'{"format": 0}', 'p: "format" must be a whole number from 1 to 1.'),
        (
            b'{"format": 3, "walls": []}',
            "p was saved by a newer version (format 3); this program reads up to 1: update it.",
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


def _set(*steps: str | int, to: object) -> Callable[[dict[str, Any]], None]:
    def change(table: dict[Any, Any]) -> None:
        for step in steps[:-1]:
            table = table[step]
        table[steps[-1]] = to

    return change


EAVE = ("sections", 0)


@pytest.mark.parametrize(
    ("change", "sentence"),
    [
        (_set("title", to=5), "title must be a text in quotes, not 5."),
        (_set("units", to="yard"), "units cannot be 'yard'; use one of mm, cm, m, in, ft."),
        (_set("colour", to=1), "colour is not known here; use one of title, units, source"),
        (_set("titel", to="x"), "titel is not known here; did you mean 'title'?"),
        (_set(*EAVE, "name", to=None), "sections[0].name must be a text in quotes, not null."),
        (_set(*EAVE, "frame", to=[[0, 0], [1, 1]]), "sections[0].frame must hold 3 points or"),
        (_set(*EAVE, "frame", 2, to=[0]), "sections[0].frame[2] must be a point [x, y], not a"),
        (
            _set(*EAVE, "frame", 2, 1, to=float("nan")),
            "sections[0].frame[2][1] is nan: write a finite number.",
        ),
        (
            _set(*EAVE, "inside", to=[[10**400, 0]]),
            "sections[0].inside[0][0] is too large: write a finite number.",
        ),
        (_set(*EAVE, "inside", to=[[True, 0]]), "sections[0].inside[0][0] must be a number, not"),
        (_set(*EAVE, "inside", to=[["1", 0]]), "sections[0].inside[0][0] must be a number, not"),
        (_set(*EAVE, "inside", to="5,5"), "sections[0].inside must be a list of points"),
        (_set(*EAVE, "gravity", to=[0, -2]), "sections[0].gravity must be one long, such as"),
        (_set(*EAVE, "sealed", to=[["a"]]), "sections[0].sealed[0] must name two pieces."),
        (_set(*EAVE, "sealed", to=[["a", 1]]), "sections[0].sealed[0][1] must be a text in"),
        (
            _set(*EAVE, "pieces", 0, "product", to="housewarp"),
            'sections[0].pieces[0].product is "housewarp", which is no product of this file or '
            "the program; did you mean 'housewrap'?",
        ),
        (
            _set(*EAVE, "pieces", 0, "shape", to={"line": [[0, 0]]}),
            "sections[0].pieces[0].shape.line must hold 2 points or more, not 1.",
        ),
        (
            _set(*EAVE, "pieces", 0, "shape", to={}),
            "sections[0].pieces[0].shape lacks 'line': add it.",
        ),
        (
            _set(*EAVE, "pieces", 0, to=[]),
            "sections[0].pieces[0] must be an object {...}, not a list of 0.",
        ),
        (_set(*EAVE, "pieces", to={}), "sections[0].pieces must be a list, not an object."),
        (_set(*EAVE, to={"name": "x"}), "sections[0] lacks 'frame' and 'pieces' and 'products'"),
        (_set("products", "x", to={**OFFICE, "bond": "glued"}), "products.x.bond cannot be"),
        (_set("products", "x", to={**OFFICE, "sd_m": "1"}), "products.x.sd_m must be a number"),
        (_set("products", "x", to={**OFFICE, "key": "y"}), "products.x.key is not known here"),
        (
            _set("products", "x", to={**OFFICE, "confirmed": 1}),
            "products.x.confirmed must be true or false, not 1.",
        ),
        (_set("severities", to={"gap": "loud"}), "severities.gap cannot be 'loud'; use one of"),
        (
            _set("figures", to={"side-lap": 5}),
            "figures.side-lap is no figure of the rule books",
        ),
        (_set("book", to="irc-2012"), "book names a rule book that is not there. There is no"),
        (
            _set("underlays", to=[{"name": "a", "kind": "png", "data": "@@"}]),
            "underlays[0].data is not sound base64: lay the underlay in again.",
        ),
        (
            _set("underlays", to=[{"name": "a", "kind": "png", "data": "", "page": 1.5}]),
            "underlays[0].page must be a whole number, not 1.5.",
        ),
    ],
)
def test_what_is_wrong_is_said_with_its_place(
    change: Callable[[dict[str, Any]], None], sentence: str
) -> None:
    table = _table()
    change(table)
    with pytest.raises(ListedError) as caught:
        _read(table)
    assert len(caught.value.sentences) == 1
    assert caught.value.sentences[0].startswith(f"p: {sentence}")


def test_every_mistake_is_told_at_once() -> None:
    table = _table()
    table["units"] = "yard"
    table["products"]["housewrap"]["bond"] = 5
    table["sections"][0]["frame"][1] = "here"
    table["sections"][0]["pieces"] += [{"name": 5}, {"product": "osb", "shape": {"arc": 1}}]
    with pytest.raises(ListedError) as caught:
        _read(table)
    places = [sentence.split()[1] for sentence in caught.value.sentences]
    assert places == [
        "products.housewrap.bond",
        "units",
        "sections[0].frame[1]",
        "sections[0].pieces[1]",
        "sections[0].pieces[2]",
    ]


def test_of_very_many_mistakes_only_the_first_are_told() -> None:
    table = _table()
    table["sections"][0]["inside"] = [[None, 0]] * 500
    with pytest.raises(ListedError) as caught:
        _read(table)
    assert len(caught.value.sentences) == 21
    assert caught.value.sentences[-1] == "p: 480 more places are wrong; mend these first."


def test_two_pieces_of_one_name_are_refused() -> None:
    table = _table()
    table["sections"][0]["pieces"] *= 2
    with pytest.raises(ListedError, match=r'pieces\[1\]\.name is "2F", as that of a piece before'):
        _read(table)


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


def _rich() -> Project:
    own = replace(load_products()["osb"], key="ours", name="Our board")
    section = replace(PROJECT.sections[0], products={**load_products(), "ours": own})
    return replace(PROJECT, sections=(section,))


def _table() -> dict[str, Any]:
    table: dict[str, Any] = json.loads(project_bytes(PROJECT, "p"))
    return table


def _read(table: dict[str, Any]) -> Project:
    return project_of(json.dumps(table).encode(), "p")
