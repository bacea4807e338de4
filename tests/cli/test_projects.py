"""A project file is known by its name, and judged with its own figures and layers."""

from dataclasses import replace
from pathlib import Path

import pytest

from enclosure_app.cli.projects import judged
from enclosure_app.errors import EnclosureError
from enclosure_app.files.project.file import save_project
from enclosure_app.model.section import Section
from enclosure_app.resources import sample
from enclosure_app.window.apart.orders import Order, read_order


def test_what_is_found_is_found_in_the_project_as_it_was_saved(tmp_path: Path) -> None:
    order = Order((sample("ridge-faulty.dxf"),), layers=sample("layers-second-office.toml"))
    project = read_order(order)
    empty = Section("Not begun", ((0.0, 0.0), (9.0, 0.0), (9.0, 9.0)), (), {})
    path = tmp_path / "ridge.enclosure.json"
    save_project(replace(project, sections=(*project.sections, empty)), path)
    now = judged(path)
    assert [each.section.name for each in now.result.sections] == ["RIDGE"]
    assert {f.rule for f in now.result.sections[0].findings} == {"short-lap", "gap"}
    assert now.project.sections[1].name == "Not begun"


def test_a_file_that_is_no_project_is_refused(tmp_path: Path) -> None:
    (tmp_path / "a.json").write_text("{}", encoding="utf-8")
    with pytest.raises(EnclosureError):
        judged(tmp_path / "a.json")
