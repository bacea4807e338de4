"""Where a project's drawing is, and the sheet that goes with it."""

from pathlib import Path

from enclosure_app.reports.dxf.source import (
    drawing_of_project,
    file_name,
    marked_names,
    sheet_beside,
)


def test_a_drawing_is_found_as_it_was_named_or_beside_its_project(tmp_path: Path) -> None:
    project = tmp_path / "office" / "eave.enclosure.json"
    project.parent.mkdir()
    beside = project.parent / "eave.dxf"
    assert drawing_of_project("eave.dxf", project) is None
    beside.touch()
    assert drawing_of_project("eave.dxf", project) == beside
    assert drawing_of_project(str(tmp_path / "gone" / "eave.dxf"), project) == beside
    assert drawing_of_project("D:\\jobs\\eave.dxf", project) == beside
    assert drawing_of_project(str(beside), None) == beside
    assert drawing_of_project("eave.dxf", None) is None
    assert drawing_of_project("", project) is None


def test_a_sheet_of_either_name_beside_the_marked_drawing_is_found(tmp_path: Path) -> None:
    output, source = tmp_path / "marked.dxf", Path("office/eave.dxf")
    assert sheet_beside(output, source) == ""
    (tmp_path / "eave.pdf").touch()
    assert sheet_beside(output, source) == "eave.pdf"
    (tmp_path / "marked.pdf").touch()
    assert sheet_beside(output, source) == "marked.pdf"


def test_marked_drawings_of_one_folder_have_names_of_their_own() -> None:
    sources = [Path("a/eave.dxf"), Path("b/Eave.DXF"), Path("b/ridge.dxf")]
    names = [path.name for path in marked_names(sources, Path("out"))]
    assert names == ["eave-marked.dxf", "Eave-marked-2.dxf", "ridge-marked.dxf"]


def test_a_drawing_has_its_name_on_any_system() -> None:
    assert file_name("D:\\jobs\\eave.dxf") == file_name("jobs/eave.dxf") == "eave.dxf"
