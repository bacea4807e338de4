"""The whole road: every sample is checked, marked, read again by the library and checked again."""

import json
import tomllib
from contextlib import suppress
from dataclasses import replace
from pathlib import Path

import ezdxf
import pytest

from enclosure_app.checker import check_drawing
from enclosure_app.errors import EnclosureError
from enclosure_app.files.maps.layer_map import load_layer_map
from enclosure_app.files.maps.rule_book import load_limits
from enclosure_app.files.reading import ReadOptions, read_drawing
from enclosure_app.model.drawing import Units
from enclosure_app.model.report import DrawingResult, Report
from enclosure_app.reports.dxf.layers import FLAGS
from enclosure_app.reports.dxf.marks import MarkJob, marked, write_dxf
from enclosure_app.reports.dxf.places import Placed, Space
from enclosure_app.reports.dxf.splice import MODEL
from enclosure_app.reports.json_report import to_json
from enclosure_app.rules import RULES
from tests.drawing import eave
from tests.reports.dxf_drawings import inventory

ROOT = Path(__file__).parents[3]
SAMPLES = ROOT / "samples"
OFFICE = ROOT / "tests" / "office"
RULES_NAMED = [rule.name for rule in RULES]
MAPS = [load_layer_map(layers, RULES_NAMED) for layers in sorted(SAMPLES.glob("layers*.toml"))]


def checked(path: Path) -> DrawingResult:
    """Check a sample with the layer map of its office, whichever of the two that is."""
    for layer_map in MAPS:
        with suppress(EnclosureError):
            return check_drawing(read_drawing(path, ReadOptions(layer_map)), load_limits())
    raise AssertionError(f"no layer map of the samples is for {path.name}")


def said(result: DrawingResult) -> str:
    """Return all that the report says, but for the file's name."""
    return json.dumps(to_json(Report((result,)))).replace(json.dumps(result.drawing.file), '""')


@pytest.mark.parametrize("path", sorted(SAMPLES.glob("*.dxf")), ids=lambda path: path.stem)
def test_a_marked_sample_says_the_same_and_is_marked_once(path: Path, tmp_path: Path) -> None:
    result = checked(path)
    once, twice = tmp_path / "once.dxf", tmp_path / "twice.dxf"
    write_dxf(once, path, result, MarkJob("sheet.pdf"))
    again = checked(once)
    assert said(again) == said(result)
    write_dxf(twice, once, again, MarkJob("sheet.pdf"))
    assert twice.read_bytes() == once.read_bytes()
    assert inventory(once) == inventory(path)
    doc = ezdxf.readfile(once)
    assert len(doc.audit().errors) == len(ezdxf.readfile(path).audit().errors)
    rings = [each for each in doc.modelspace().query("CIRCLE") if each.dxf.layer == FLAGS]
    found = [finding for section in result.sections for finding in section.findings]
    factor = result.drawing.units.in_mm
    for ring, finding in zip(rings, found, strict=True):
        assert ring.dxf.center.isclose([c / factor for c in finding.at], abs_tol=1e-6)
        assert ring.get_hyperlink()[0] == "sheet.pdf"
        assert [t.value for t in ring.get_xdata("ENCLOSURE_CHECK")] == [finding.key]


def test_the_house_of_the_office_is_marked_and_says_the_same(
    office_drawings: Path, tmp_path: Path
) -> None:
    """The office drew no membranes, so its insulation is what is followed here."""
    drawn = tomllib.loads((OFFICE / "house_membranes.toml").read_text(encoding="utf-8"))
    sides = {
        side: tuple(tuple(t["at"]) for t in drawn["texts"] if t["text"] == side.upper())
        for side in ("inside", "outside")
    }
    layer_map = load_layer_map(OFFICE / "house_layers.toml", RULES_NAMED)
    options = ReadOptions(layer_map, **sides)

    def house(path: Path) -> DrawingResult:
        return check_drawing(read_drawing(path, options), load_limits())

    path, once = office_drawings / "sections" / "house_section.dxf", tmp_path / "once.dxf"
    result = house(path)
    write_dxf(once, path, result)
    assert said(house(once)) == said(result)
    assert inventory(once) == inventory(path)
    found = {finding.key for section in result.sections for finding in section.findings}
    marks = [each for each in ezdxf.readfile(once).modelspace() if each.dxf.layer == FLAGS]
    assert found
    assert {mark.get_xdata("ENCLOSURE_CHECK")[0].value for mark in marks} == found


def test_a_drawing_that_is_gone_is_refused_and_nothing_is_written(tmp_path: Path) -> None:
    with pytest.raises(EnclosureError, match=r"There is no file .*boathouse\.dxf"):
        write_dxf(tmp_path / "out.dxf", tmp_path / "boathouse.dxf", eave.drawing())
    assert list(tmp_path.iterdir()) == []


def test_without_a_sheet_links_name_the_finding() -> None:
    wall = Placed(Space(MODEL), Units.MM, (eave.result(),))
    data = marked((SAMPLES / "ridge.dxf").read_bytes(), [wall])
    assert b"urn:uuid:" in data
    assert data.count(eave.GAP.key.encode()) > 4


def test_another_drawing_than_the_one_that_was_checked_is_refused(tmp_path: Path) -> None:
    """Both have lines of the same handles, as every drawing counts them from 1."""
    result, other = checked(SAMPLES / "ridge.dxf"), SAMPLES / "parapet.dxf"
    with pytest.raises(EnclosureError, match=r"parapet\.dxf is not the drawing that was checked"):
        write_dxf(tmp_path / "out.dxf", other, result)
    assert list(tmp_path.iterdir()) == []


def test_a_section_of_another_drawing_is_left_out_and_told(tmp_path: Path) -> None:
    ridge, parapet = checked(SAMPLES / "ridge-faulty.dxf"), checked(SAMPLES / "parapet-faulty.dxf")
    both = replace(ridge, sections=(*ridge.sections, *parapet.sections))
    out = tmp_path / "out.dxf"
    left_out = write_dxf(out, SAMPLES / "ridge-faulty.dxf", both)
    assert left_out == tuple(each.section.name for each in parapet.sections)
    alone = tmp_path / "alone.dxf"
    assert write_dxf(alone, SAMPLES / "ridge-faulty.dxf", ridge) == ()
    assert out.read_bytes() == alone.read_bytes()


def test_the_drawing_itself_is_never_written_over(tmp_path: Path) -> None:
    path = tmp_path / "ridge.dxf"
    path.write_bytes((SAMPLES / "ridge.dxf").read_bytes())
    (tmp_path / "sub").mkdir()
    with pytest.raises(EnclosureError, match="is the drawing itself"):
        write_dxf(tmp_path / "sub" / ".." / "ridge.dxf", path, checked(path))
    assert path.read_bytes() == (SAMPLES / "ridge.dxf").read_bytes()
