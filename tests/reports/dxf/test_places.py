"""In which layout and units sections stand, and which are not of the drawing at all."""

from dataclasses import replace
from pathlib import Path

import ezdxf
import pytest

from enclosure_app.files.dxf.document import open_document
from enclosure_app.files.dxf.raw import RawPath, RawText, Tag
from enclosure_app.model.drawing import Units
from enclosure_app.model.place import Line
from enclosure_app.model.report import SectionResult
from enclosure_app.model.section import Piece
from enclosure_app.reports.dxf.places import Space, is_drawn_in, placed, spaces_of
from tests.drawing import eave

LINES = {"2F": ((0.0, 0.0), (0.0, 900.0)), "31": ((3.0, 800.0), (3.0, 2000.0))}


def space(block: str, **lines: tuple[tuple[float, float], ...]) -> Space:
    items = [RawPath(Tag("LINE", f"{handle}", "a"), points) for handle, points in lines.items()]
    return Space(block, (*items, RawText(Tag("TEXT", "3", "a"), "x", (0, 0))))


def section(*pieces: Piece) -> SectionResult:
    return eave.result(section=replace(eave.section(), pieces=pieces))


def piece(handle: str, *points: tuple[float, float]) -> Piece:
    return Piece(handle or "sketched", "wall-sheet", Line(points), (handle,) if handle else ())


MODEL = space("*Model_Space", **LINES)
SHEET = space("*Paper_Space0", A1=((0.0, 0.0), (10.0, 20.0)))
WALL = section(piece("2F", (0.0, 0.0), (0.0, 900.0)))
SKETCH = section(piece("", (7.0, 7.0), (8.0, 8.0)))
DETAIL = section(piece("A1", (0.0, 0.0), (254.0, 508.0)))
FOREIGN = section(piece("2F", (9.0, 70.0), (9.0, 90.0)))


def test_a_section_is_drawn_where_its_lines_stand() -> None:
    stands = piece("2F", (0.4, 900.3), (50.0, 900.0))
    elsewhere = piece("31", (5000.0, 0.0), (5000.0, 900.0))
    assert is_drawn_in(section(stands), LINES, 1.0)
    assert not is_drawn_in(section(elsewhere), LINES, 1.0)
    assert not is_drawn_in(section(stands), LINES, 25.4)
    assert is_drawn_in(section(stands, elsewhere), LINES, 1.0), "one may have been moved by hand"
    nowhere = piece("99", (1.0, 1.0), (2.0, 2.0))
    assert not is_drawn_in(section(stands, elsewhere, nowhere), LINES, 1.0)


def test_each_section_is_found_in_its_layout_in_the_units_of_the_drawing() -> None:
    there = placed([WALL, DETAIL, FOREIGN], [MODEL, SHEET], Units.MM)
    assert [(p.space.block, p.units, p.sections) for p in there] == [
        ("*Model_Space", Units.MM, (WALL,)),
        ("*Paper_Space0", Units.IN, (DETAIL,)),
    ]


@pytest.mark.parametrize(
    ("sections", "block"),
    [
        ((SKETCH, DETAIL), "*Paper_Space0"),
        ((WALL, SKETCH), "*Model_Space"),
        ((SKETCH,), "*Model_Space"),
    ],
)
def test_what_was_sketched_goes_with_the_others(
    sections: tuple[SectionResult, ...], block: str
) -> None:
    (there,) = placed(sections, [MODEL, SHEET], Units.MM)
    assert (there.space.block, there.sections) == (block, sections)


@pytest.mark.parametrize("sections", [(FOREIGN,), (FOREIGN, SKETCH), ()])
def test_what_is_of_another_drawing_stands_nowhere(sections: tuple[SectionResult, ...]) -> None:
    assert placed(sections, [MODEL, SHEET], Units.MM) == ()


def test_layouts_on_paper_are_read_only_where_the_model_does_not_hold_all() -> None:
    spaces = iter([MODEL, SHEET])
    assert placed([WALL], spaces, Units.MM)
    assert next(spaces) is SHEET


def test_layouts_are_called_as_in_the_file(tmp_path: Path) -> None:
    doc = ezdxf.new("R2010")
    doc.modelspace().add_line((0, 0), (1, 1))
    doc.layouts.new("Details").add_line((5, 5), (6, 6))
    named = doc.rootdict["ACAD_LAYOUT"]
    model = named["Model"]
    named.discard("Model")
    named.add("Model", model)  # behind the others, as CAD programs sort them
    doc.saveas(tmp_path / "a.dxf")
    document = open_document(tmp_path / "a.dxf")
    assert next(iter(document.drawing.layouts)).name != "Model"
    spaces = list(spaces_of(document))
    assert next(each.block for each in spaces) == "*Model_Space"
    lines = {each.block: [*each.lines().values()] for each in spaces}
    assert lines[doc.layout("Details").block_record_name] == [((5, 5), (6, 6))]
