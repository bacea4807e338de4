"""Checking drawings: what is reported, as text and as JSON, and what is refused."""

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest
from jsonschema import Draft202012Validator

from enclosure_app.cli import FAULTS, NOTHING_WRONG, UNUSABLE, main
from enclosure_app.files.project.file import save_project
from enclosure_app.files.projects import new_project
from enclosure_app.model.drawing import Units
from enclosure_app.resources import resource, sample
from enclosure_app.window.apart.orders import Order, read_order
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


def test_a_project_is_checked_as_it_was_drawn_and_set_up(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    drawings = (sample("wall-base-faulty.dxf"), sample("window.dxf"))
    path = tmp_path / "House, south.enclosure.json"
    save_project(read_order(Order(drawings, layers=sample("layers.toml"))), path)
    assert main(["check", str(path), "--json", "-"]) == FAULTS
    report = json.loads(capsys.readouterr().out)
    schema = json.loads(resource("report.schema.json").read_text(encoding="utf-8"))
    Draft202012Validator(schema).validate(report)
    names = [Path(drawing["file"]).name for drawing in report["drawings"]]
    assert names == ["wall-base-faulty.dxf", "window.dxf"]
    assert [f["key"].partition(":")[0] for f in report["findings"]] == ["stops-short", "short-lap"]


def test_a_project_that_was_sketched_is_told_by_its_own_name(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "sketch.enclosure.json"
    save_project(new_project(Units.MM, "Sketch"), path)
    assert main(["check", str(path)]) == NOTHING_WRONG
    assert capsys.readouterr().out.startswith(str(path))


def test_where_there_is_no_home_nothing_is_said_of_it() -> None:
    typed = ["check", str(sample("wall-base.dxf")), "--layers", str(sample("layers.toml"))]
    away = {**os.environ, "HOME": os.devnull, "XDG_CACHE_HOME": f"{os.devnull}/cache"}
    run = [sys.executable, "-m", "enclosure_app", *typed]
    done = subprocess.run(run, env=away, capture_output=True, text=True, check=False)
    assert done.returncode == NOTHING_WRONG
    assert done.stderr == ""


def test_a_drawing_that_may_not_be_read_stops_no_other(
    road: Road, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """Whether a file may be read is for whoever reads it to say: it is asked for one by one."""
    Path("broken.dxf").touch()
    monkeypatch.setattr(os, "access", lambda *_: False)
    assert main(["check", "fault.dxf", "broken.dxf"]) == UNUSABLE
    said = capsys.readouterr()
    assert said.err == "broken.dxf is not a DXF drawing; export it again.\n"
    assert "1 fault" in said.out
