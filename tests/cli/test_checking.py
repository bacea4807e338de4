"""Checking drawings: what is reported, as text and as JSON, and what is refused."""

import json
from pathlib import Path

import pytest

from enclosure_app.cli import FAULTS, UNUSABLE, main
from tests.cli.stand_ins import Road


def test_the_good_files_are_reported_and_the_bad_one_named(
    road: Road, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["check", "doubt.dxf", "broken.dxf", "nameless.dxf", "fault.dxf"]) == UNUSABLE
    said = capsys.readouterr()
    assert said.err.splitlines() == [
        "broken.dxf is not a DXF drawing; export it again.",
        "nameless.dxf: The file is empty; export it again.",
    ]
    assert "doubt.dxf\n" in said.out
    assert "fault.dxf\n" in said.out
    assert "1 fault, 1 doubt and no remarks in 2 drawings." in said.out


def test_json_goes_to_a_file_beside_the_text(
    road: Road, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "report.json"
    assert main(["check", "fault.dxf", "--json", str(path)]) == FAULTS
    report = json.loads(path.read_text(encoding="utf-8"))
    assert report["findings"][0]["key"] == "gap:1.end"
    assert "Sheet stops." in capsys.readouterr().out


def test_json_on_standard_output_stands_alone(
    road: Road, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["check", "fault.dxf", "broken.dxf", "--json", "-"]) == UNUSABLE
    said = capsys.readouterr()
    assert [drawing["file"] for drawing in json.loads(said.out)["drawings"]] == ["fault.dxf"]
    assert said.err == "broken.dxf is not a DXF drawing; export it again.\n"


def test_a_fault_of_the_program_is_owned_up_to_and_stops_no_other_file(
    road: Road, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["check", "bug.dxf", "doubt.dxf"]) == UNUSABLE
    said = capsys.readouterr()
    assert said.err.startswith("bug.dxf: the program itself failed (KeyError: '2F')")
    assert "doubt.dxf\n" in said.out
