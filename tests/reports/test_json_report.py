"""The JSON report keeps its contract: names, units, nulls, order, and files written whole."""

import json
import math
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from jsonschema import Draft202012Validator

from enclosure_app.errors import EnclosureError
from enclosure_app.model.drawing import Drawing, Units
from enclosure_app.model.finding import Finding, Severity
from enclosure_app.model.product import Control
from enclosure_app.model.report import (
    Continuity,
    DrawingResult,
    LayerResult,
    Lift,
    Report,
    Run,
    SectionResult,
)
from enclosure_app.model.section import Section
from enclosure_app.reports.json_report import json_text, to_json, write_json
from enclosure_app.resources import resource
from tests.reports.reported import FRAME, reported

GAP = Finding(
    key="gap:2F.end+31.start",
    rule="gap",
    control=Control.AIR,
    severity=Severity.FAULT,
    at=(120.0, 340.5),
    pieces=("2F", "31"),
    message="The air layer stops at the sill: 30 mm are open.",
    advice="Carry the sheet down and tape it.",
    measured=30.0,
    required=0.0,
    basis="A rule book, 2021 (unconfirmed)",
    along=812.0,
)
BROKEN = LayerResult(
    Control.AIR,
    Continuity.BROKEN,
    walk=(
        Run("2F", ((0.0, 0.0), (0.0, 100.0))),
        Lift("2F", "31", (0.0, 100.0), (0.0, 130.0)),
        Run("31", ((0.0, 130.0), (0.0, 300.0))),
        Lift("31", "", (0.0, 300.0), (0.0, 310.0)),
    ),
    bottleneck=30.0,
    opening=30.0,
)
ABSENT = LayerResult(Control.HEAT, Continuity.ABSENT)


def one_drawing(
    layers: tuple[LayerResult, ...] = (BROKEN,), findings: tuple[Finding, ...] = (GAP,)
) -> Report:
    return reported(layers, findings)


def validator() -> Draft202012Validator:
    schema = json.loads(resource("report.schema.json").read_text(encoding="utf-8"))
    Draft202012Validator.check_schema(schema)
    return Draft202012Validator(schema)


def test_a_drawing_is_told_in_the_contracts_own_names() -> None:
    drawing = to_json(one_drawing())["drawings"][0]
    assert drawing == {
        "file": "eave.dxf",
        "units": "in",
        "notes": [{"level": "guessed", "text": "Layer MEMB taken for a wall sheet."}],
        "sections": [
            {
                "name": "Eave",
                "controls": {
                    "air": {
                        "verdict": "broken",
                        "lifts": 2,
                        "total_lift_mm": 40.0,
                        "largest_lift_mm": 30.0,
                        "bottleneck_mm": 30.0,
                        "opening_mm": 30.0,
                        "trace": ["2F", "31"],
                    }
                },
            }
        ],
    }


def test_a_finding_is_told_in_the_contracts_own_names() -> None:
    assert to_json(one_drawing())["findings"] == [
        {
            "key": "gap:2F.end+31.start",
            "rule": "gap",
            "control": "air",
            "severity": "fault",
            "drawing": "eave.dxf",
            "section": "Eave",
            "at": [120.0, 340.5],
            "pieces": ["2F", "31"],
            "measured_mm": 30.0,
            "required_mm": 0.0,
            "message": "The air layer stops at the sill: 30 mm are open.",
            "advice": "Carry the sheet down and tape it.",
            "basis": "A rule book, 2021 (unconfirmed)",
        }
    ]


def test_an_absent_layer_has_nulls_instead_of_made_up_zeros() -> None:
    heat = to_json(one_drawing((ABSENT,)))["drawings"][0]["sections"][0]["controls"]["heat"]
    assert heat["verdict"] == "absent"
    assert heat["trace"] == []
    for name in ("lifts", "total_lift_mm", "largest_lift_mm", "bottleneck_mm", "opening_mm"):
        assert heat[name] is None


@pytest.mark.parametrize("nothing", [math.nan, math.inf, -math.inf, None])
def test_a_number_that_does_not_exist_is_null(nothing: float | None) -> None:
    finding = Finding(
        "ponding:1", "ponding", None, Severity.DOUBT, (0, 0), (), "Water stands.", "Slope it.",
        measured=nothing,
    )  # fmt: skip
    written = json.loads(json_text(one_drawing(findings=(finding,))))["findings"][0]
    assert written["measured_mm"] is None
    assert written["required_mm"] is None
    assert written["control"] is None
    assert list(validator().iter_errors(json.loads(json_text(one_drawing())))) == []


def test_the_noise_of_binary_fractions_is_not_written() -> None:
    finding = Finding(
        "gap:1+2", "gap", Control.AIR, Severity.FAULT, (0.1 + 0.2, -0.0), (), "Open.", "Close it.",
        measured=29.999999999999996,
    )  # fmt: skip
    written = to_json(one_drawing(findings=(finding,)))["findings"][0]
    assert written["measured_mm"] == 30.0
    assert json.dumps(written["at"]) == "[0.3, 0.0]"


def test_controls_come_in_one_order_whatever_the_mapping() -> None:
    water = LayerResult(Control.WATER, Continuity.CONTINUOUS)
    there = to_json(one_drawing((BROKEN, water)))["drawings"][0]["sections"][0]["controls"]
    back = to_json(one_drawing((water, BROKEN)))["drawings"][0]["sections"][0]["controls"]
    assert list(there) == list(back) == ["water", "air"]


def test_a_damaged_layer_name_does_not_stop_the_report() -> None:
    """A lone surrogate, as damaged drawings hold them, may not stand in JSON."""
    section = Section("A\udce9B", FRAME, (), {})
    drawing = Drawing("a.dxf", Units.MM, (section,))
    report = Report((DrawingResult(drawing, (SectionResult(section, {}),)),))
    name = json.loads(json_text(report))["drawings"][0]["sections"][0]["name"]
    assert name == "A\ufffdB"


def test_a_place_that_is_no_place_is_a_fault_of_the_program() -> None:
    lost = Finding("gap:1+2", "gap", None, Severity.FAULT, (math.nan, 0), (), "Open.", "Close it.")
    with pytest.raises(ValueError, match="not JSON compliant"):
        json_text(one_drawing(findings=(lost,)))


@pytest.mark.parametrize(
    ("path", "value"),
    [
        (("schema",), 2),
        (("findings", 0, "severity"), "loud"),
        (("findings", 0, "at"), [1.0]),
        (("findings", 0, "measured_mm"), "30 mm"),
        (("drawings", 0, "units"), "furlong"),
        (("drawings", 0, "sections", 0, "controls", "air", "verdict"), "fine"),
        (("drawings", 0, "sections", 0, "controls", "air", "lifts"), 1.5),
        (("drawings", 0, "sections", 0, "controls", "air", "opening_mm"), -1.0),
    ],
)
def test_the_schema_refuses_what_breaks_the_contract(
    path: tuple[str | int, ...], value: object
) -> None:
    report: Any = json.loads(json_text(one_drawing()))
    spot = report
    for step in path[:-1]:
        spot = spot[step]
    spot[path[-1]] = value
    errors = list(validator().iter_errors(report))
    assert [tuple(error.absolute_path) for error in errors] == [path]


@pytest.mark.parametrize("missing", ["key", "basis", "advice", "measured_mm"])
def test_the_schema_misses_every_field_of_a_finding(missing: str) -> None:
    report = to_json(one_drawing())
    del report["findings"][0][missing]
    assert [error.validator for error in validator().iter_errors(report)] == ["required"]


def test_a_report_is_written_whole_over_an_older_one(tmp_path: Path) -> None:
    path = tmp_path / "report.json"
    path.write_text("old", encoding="utf-8")
    write_json(path, json_text(one_drawing()))
    assert path.read_text(encoding="utf-8") == json_text(one_drawing())
    assert [file.name for file in tmp_path.iterdir()] == ["report.json"]


def test_a_report_that_cannot_be_made_leaves_the_older_one(tmp_path: Path) -> None:
    path = tmp_path / "report.json"
    path.write_text("old", encoding="utf-8")
    lost = Finding("gap:1+2", "gap", None, Severity.FAULT, (math.nan, 0), (), "Open.", "Close it.")
    with pytest.raises(ValueError, match="not JSON compliant"):
        write_json(path, json_text(one_drawing(findings=(lost,))))
    assert path.read_text(encoding="utf-8") == "old"


@pytest.mark.parametrize("where", ["nowhere/report.json", "."])
def test_a_place_that_cannot_be_written_is_said_in_one_sentence(
    tmp_path: Path, where: str
) -> None:
    with pytest.raises(EnclosureError, match="cannot be written") as caught:
        write_json(tmp_path / where, json_text(one_drawing()))
    place = tmp_path / where
    assert all(part in str(caught.value) for part in (place.name, str(place.parent)))
    assert list(tmp_path.iterdir()) == []


lengths = st.floats(0, 1e7) | st.just(math.inf) | st.none()
coordinates = st.tuples(st.floats(-1e7, 1e7), st.floats(-1e7, 1e7))
steps = st.builds(Run, st.text(), st.just(((0.0, 0.0), (1.0, 0.0)))) | st.builds(
    Lift, st.text(), st.text(), coordinates, coordinates
)
layers = st.builds(
    LayerResult,
    st.sampled_from(Control),
    st.sampled_from(Continuity),
    walk=st.lists(steps, max_size=4).map(tuple),
    bottleneck=lengths,
    opening=lengths,
    why=st.text(max_size=8),
)
findings = st.builds(
    Finding,
    key=st.text(min_size=1),
    rule=st.sampled_from(["gap", "reverse-lap", "no-drip"]),
    control=st.sampled_from(Control) | st.none(),
    severity=st.sampled_from([Severity.FAULT, Severity.DOUBT, Severity.REMARK]),
    at=coordinates,
    pieces=st.lists(st.text(), max_size=2).map(tuple),
    message=st.text(min_size=1),
    advice=st.text(),
    measured=st.floats() | st.none(),
    required=st.floats() | st.none(),
    basis=st.text(),
)


@given(
    st.lists(layers, max_size=4).map(tuple),
    st.lists(findings, max_size=3).map(tuple),
    st.sampled_from(Units),
)
def test_every_report_keeps_the_schema(
    some_layers: tuple[LayerResult, ...], some_findings: tuple[Finding, ...], units: Units
) -> None:
    """Whatever the checker says, the JSON keeps the schema and comes out the same twice."""
    section = Section("S", FRAME, (), {})
    result = SectionResult(
        section, {layer.control: layer for layer in some_layers}, findings=some_findings
    )
    report = Report((DrawingResult(Drawing("a.dxf", units, (section,)), (result,)),))
    text = json_text(report)
    assert list(validator().iter_errors(json.loads(text))) == []
    assert json_text(report) == text
    assert [f["rule"] for f in json.loads(text)["findings"]] == [f.rule for f in some_findings]
