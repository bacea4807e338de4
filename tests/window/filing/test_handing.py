"""What is handed over of an open project, without the window."""

from pathlib import Path

from enclosure_app.checker import check_drawing
from enclosure_app.files.maps.layer_map import load_layer_map
from enclosure_app.files.opening import Wish, limits_of, read_project
from enclosure_app.model.project import drawing_of
from enclosure_app.resources import sample
from enclosure_app.rules import RULES
from enclosure_app.window.filing.handing import Open, exchange, mark, tabulate


def opened() -> Open:
    layers = load_layer_map(sample("layers.toml"), [rule.name for rule in RULES])
    project = read_project(sample("wall-base-faulty.dxf"), Wish(layers))
    return Open(project, check_drawing(drawing_of(project), limits_of(project)).sections)


def test_marks_lead_to_the_sheet_that_lies_beside_them(tmp_path: Path) -> None:
    wall = opened()
    assert mark(tmp_path / "a.dxf", sample("wall-base-faulty.dxf"), wall) == ()
    (tmp_path / "b.pdf").touch()
    mark(tmp_path / "b.dxf", sample("wall-base-faulty.dxf"), wall)
    assert b"urn:uuid:" in (tmp_path / "a.dxf").read_bytes()
    assert b"b.pdf" in (tmp_path / "b.dxf").read_bytes()
    assert b"urn:uuid:" not in (tmp_path / "b.dxf").read_bytes()


def test_a_project_without_photographs_makes_no_folder(tmp_path: Path) -> None:
    assert tabulate(tmp_path / "a.csv", opened()) is None
    assert [each.name for each in tmp_path.iterdir()] == ["a.csv"]


def test_the_scope_is_the_projects_own_in_every_copy(tmp_path: Path, qapp: object) -> None:
    wall = opened()
    assert wall.handed.scope == wall.project.id
    exchange(tmp_path / "a.bcf", wall)
    assert (tmp_path / "a.bcf").read_bytes()[:2] == b"PK"
