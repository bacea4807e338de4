"""A project is known by its name."""

from pathlib import Path

import pytest

from enclosure_app.files.project.file import SUFFIX
from enclosure_app.files.project.named import is_project


@pytest.mark.parametrize("name", [f"House{SUFFIX}", "House.ENCLOSURE.JSON", "house.json"])
def test_a_project_is_known_by_how_its_name_ends(name: str) -> None:
    assert is_project(Path("some folder") / name)


@pytest.mark.parametrize("name", ["house.dxf", "json", "house.json.dxf"])
def test_everything_else_is_a_drawing(name: str) -> None:
    assert not is_project(Path(name))
