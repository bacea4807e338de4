"""A signature outlives an export that changes nothing but numbers and names, and nothing else."""

from dataclasses import replace
from pathlib import Path

import ezdxf
import pytest
from ezdxf.addons.importer import Importer
from ezdxf.filemanagement import readfile

from enclosure_app.checker import check_section
from enclosure_app.files.maps.layer_map import load_layer_map
from enclosure_app.files.maps.rule_book import load_limits
from enclosure_app.files.reading import ReadOptions, read_drawing
from enclosure_app.model import edits
from enclosure_app.model.drawing import Drawing
from enclosure_app.model.place import Line
from enclosure_app.model.project import Project
from enclosure_app.model.section import Section
from enclosure_app.model.standing.sign_offs import signed
from enclosure_app.planning.revision.bringing import brought_over
from enclosure_app.planning.revision.comparing import compared
from enclosure_app.resources import sample

LIMITS = load_limits()
WHEN = "2026-11-26T10:00:00+00:00"


@pytest.fixture(scope="module")
def options() -> ReadOptions:
    return ReadOptions(layer_map=load_layer_map(sample("layers-second-office.toml")))


@pytest.fixture(scope="module")
def project(options: ReadOptions) -> Project:
    """Return four sections, each of them signed."""
    drawing = read_drawing(sample("four-sections.dxf"), options)
    signing = Project("House", drawing.units, drawing.sections, id="p")
    for at in range(len(drawing.sections)):
        signing = edits.sign(signing, at, "Ida", WHEN)
    return signing


@pytest.fixture(scope="module")
def exported(options: ReadOptions, tmp_path_factory: pytest.TempPathFactory) -> Drawing:
    """Return the drawing as another program writes it: every handle is another one."""
    path: Path = tmp_path_factory.mktemp("export") / "again.dxf"
    old = readfile(sample("four-sections.dxf"))
    new = ezdxf.new(old.dxfversion, setup=True)  # type: ignore[attr-defined]
    new.header["$INSUNITS"] = old.header["$INSUNITS"]
    importer = Importer(old, new)
    importer.import_modelspace()
    importer.finalize()
    new.saveas(path)
    return read_drawing(path, options)


def changed(project: Project, drawing: Drawing) -> list[list[bool]]:
    """Return of each section of a revised drawing whether its signatures say it was changed."""
    after = brought_over(project, drawing)
    found, anew = (
        [check_section(section, LIMITS) for section in each.sections] for each in (project, after)
    )
    later = compared(project, found, after, anew).project
    return [[each.changed for each in signed(later, section)] for section in later.sections]


def test_other_handles_are_no_change(project: Project, exported: Drawing) -> None:
    names = [{p.name for p in section.pieces} for section in project.sections]
    assert all(
        {p.name for p in section.pieces} != old
        for section, old in zip(exported.sections, names, strict=True)
    )
    assert changed(project, exported) == [[False]] * 4


def test_sections_that_are_numbered_anew_are_no_change(
    project: Project, exported: Drawing
) -> None:
    turned = [
        replace(section, name=f"Section {n}")
        for n, section in enumerate(reversed(exported.sections), 1)
    ]
    assert changed(project, replace(exported, sections=tuple(turned))) == [[False]] * 4


def test_a_sheet_that_moved_by_five_millimetres_is_one(
    project: Project, exported: Drawing
) -> None:
    first, *others = exported.sections
    moved = replace(exported, sections=(_with_a_moved_end(first), *others))
    assert changed(project, moved) == [[True], [False], [False], [False]]


def _with_a_moved_end(section: Section) -> Section:
    sheet = next(piece for piece in section.pieces if isinstance(piece.shape, Line))
    assert isinstance(sheet.shape, Line)
    (x, y), *rest = sheet.shape.points
    bent = replace(sheet, shape=replace(sheet.shape, points=((x + 5.0, y), *rest)))
    pieces = tuple(bent if piece is sheet else piece for piece in section.pieces)
    return replace(section, pieces=pieces)
