"""Where a project's drawing is, and which sections lie in it."""

from dataclasses import replace
from pathlib import Path

from enclosure_app.files.dxf.raw import RawPath, RawText, Tag
from enclosure_app.model.place import Line
from enclosure_app.model.section import Piece
from enclosure_app.reports.dxf.source import (
    drawing_of_project,
    is_drawn_in,
    lines_by_handle,
    sheet_beside,
)
from tests.drawing import eave

ITEMS = {"2F": ((0.0, 0.0), (0.0, 900.0)), "31": ((3.0, 800.0), (3.0, 2000.0))}


def section(*pieces: Piece) -> bool:
    drawn = replace(eave.section(), pieces=pieces)
    return is_drawn_in(eave.result(section=drawn), ITEMS)


def piece(handle: str, *points: tuple[float, float]) -> Piece:
    return Piece(handle or "sketched", "wall-sheet", Line(points), (handle,) if handle else ())


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


def test_a_section_is_drawn_where_its_lines_stand() -> None:
    stands = piece("2F", (0.4, 900.3), (50.0, 900.0))
    elsewhere = piece("31", (5000.0, 0.0), (5000.0, 900.0))
    assert section(stands)
    assert not section(elsewhere)
    assert section(stands, elsewhere), "one of two may have been moved by hand"
    assert not section(stands, elsewhere, piece("99", (1.0, 1.0), (2.0, 2.0)))
    assert section(piece("", (7.0, 7.0), (8.0, 8.0))), "sketched by hand"


def test_lines_are_taken_in_mm() -> None:
    items = [
        RawPath(Tag("LINE", "2F", "a"), ((0, 0), (1, 2))),
        RawText(Tag("TEXT", "3", "a"), "x", (0, 0)),
    ]
    assert lines_by_handle(items, 25.4) == {"2F": ((0, 0), (25.4, 50.8))}


def test_a_sheet_of_either_name_beside_the_marked_drawing_is_found(tmp_path: Path) -> None:
    output, source = tmp_path / "marked.dxf", Path("office/eave.dxf")
    assert sheet_beside(output, source) == ""
    (tmp_path / "eave.pdf").touch()
    assert sheet_beside(output, source) == "eave.pdf"
    (tmp_path / "marked.pdf").touch()
    assert sheet_beside(output, source) == "marked.pdf"
