"""Files as an office sends them again: mended, written anew by another program, in other units."""

from dataclasses import replace
from functools import cache
from pathlib import Path

import ezdxf
import pytest
from ezdxf.addons.importer import Importer
from ezdxf.document import Drawing as DxfDrawing
from ezdxf.math import Matrix44

from enclosure_app.checker import check_drawing
from enclosure_app.files.maps.layer_map import load_layer_map
from enclosure_app.files.maps.rule_book import load_limits
from enclosure_app.files.reading import ReadOptions, read_drawing
from enclosure_app.model import edits
from enclosure_app.model.drawing import Drawing, Units
from enclosure_app.model.finding import Finding
from enclosure_app.model.project import Project, drawing_of, project_from
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.model.standing.verdicts import verdicts_in
from enclosure_app.model.standing.whereabouts import homeless
from enclosure_app.planning.revision import Fate, Revision, brought_over, compared
from enclosure_app.resources import sample

FIRST_OFFICE = ("eave-overhang-faulty", "floor-line-faulty", "window-faulty")
SECOND_OFFICE = ("four-sections-faulty", "parapet-faulty", "roof-to-wall-faulty")
LAYERS = dict.fromkeys(FIRST_OFFICE, "layers.toml") | dict.fromkeys(
    SECOND_OFFICE, "layers-second-office.toml"
)
LIMITS = load_limits()


@cache
def drawing(name: str, layers: str) -> Drawing:
    return read(sample(f"{name}.dxf"), layers)


def read(path: Path, layers: str, units: Units | None = None) -> Drawing:
    return read_drawing(path, ReadOptions(layer_map=load_layer_map(sample(layers)), units=units))


@cache
def decided(name: str) -> Project:
    """The sample's project with a verdict on everything that is found in it."""
    project = project_from(drawing(name, LAYERS[name]))
    for finding in found(project):
        said = Decision(
            finding.key, State.ACCEPTED, "Ida", "2026-03-02T10:15:00+02:00",
            f"{finding.message} {finding.measured}", finding.section, finding.message,
        )  # fmt: skip
        project = edits.set_decision(project, said)
    return project


def found(project: Project) -> list[Finding]:
    return [f for s in check_drawing(drawing_of(project), LIMITS).sections for f in s.findings]


def revised(before: Project, later: Drawing) -> Revision:
    after = brought_over(before, later)
    old, new = (check_drawing(drawing_of(each), LIMITS).sections for each in (before, after))
    return compared(before, old, after, new)


def written_anew(name: str, scale: float, units: int) -> DxfDrawing:
    """The sample copied into a new file: every handle is another one, and the units may be."""
    old = ezdxf.readfile(sample(f"{name}.dxf"))
    new = ezdxf.new(old.dxfversion)
    new.blocks.new("NOT-USED").add_circle((0, 0), 1)  # so that handles are not the same by chance
    importer = Importer(old, new)
    importer.import_modelspace()
    importer.finalize()
    for entity in new.modelspace():
        entity.transform(Matrix44.scale(scale))
    new.header["$INSUNITS"] = units
    return new


@pytest.mark.parametrize("name", LAYERS)
def test_a_file_written_anew_keeps_every_verdict_with_its_finding(
    name: str, tmp_path: Path
) -> None:
    """In inches: every handle, every coordinate, and the order are other ones."""
    path = tmp_path / "again.dxf"
    before = decided(name)
    inches = before.units.in_mm / 25.4
    written_anew(name, inches, 1).saveas(path)
    after = revised(before, read(path, LAYERS[name]))
    pieces = [match for section in after.sections for match in section.pieces.matches]
    assert all(match.old.name != match.new.name for match in pieces)
    fates = [m.fate for section in after.sections for m in section.findings]
    assert fates == [Fate.STILL_THERE] * len(found(before))
    assert homeless(after.project) == {}
    for section in check_drawing(drawing_of(after.project), LIMITS).sections:
        held = verdicts_in(after.project, section.section.name)
        assert {*held} == {f.key for f in section.findings}
        for finding in section.findings:
            said = held[finding.key]
            assert said.about == finding.message
            measured = float(said.remark.split()[-1]) if finding.measured is not None else None
            assert finding.measured == (measured and pytest.approx(measured, abs=0.1))


@pytest.mark.parametrize("name", ["eave-overhang", "floor-line", "window", "parapet"])
def test_the_mended_drawing_says_that_the_faults_are_gone(name: str) -> None:
    """The sound sample is laid over the faulty one: its verdicts stay listed, as no longer found."""
    before = decided(f"{name}-faulty")
    after = revised(before, drawing(name, LAYERS[f"{name}-faulty"]))
    assert found(after.project) == []
    assert len(after.of(Fate.GONE)) == len(found(before)) > 0
    assert homeless(after.project) == {}
    held = [verdicts_in(after.project, section.name) for section in after.project.sections]
    assert {said.about for each in held for said in each.values()} == {
        finding.message for finding in found(before)
    }


def test_layers_may_be_called_otherwise(tmp_path: Path) -> None:
    name = "eave-overhang-faulty"
    document = ezdxf.readfile(sample(f"{name}.dxf"))
    for layer in list(document.layers):
        if layer.dxf.name not in ("0", "Defpoints"):
            layer.rename(f"X-{layer.dxf.name}")
    path, layers = tmp_path / "b.dxf", tmp_path / "b.toml"
    document.saveas(path)
    text = sample("layers.toml").read_text(encoding="utf-8")
    layers.write_text(text.replace('match = "', 'match = "X-'), encoding="utf-8")
    later = read_drawing(path, ReadOptions(layer_map=load_layer_map(layers)))
    before = decided(name)
    after = revised(before, later)
    assert len(after.of(Fate.STILL_THERE)) == len(found(before))
    assert replace(after.project, sections=()).decisions == before.decisions
