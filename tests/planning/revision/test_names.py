"""Names of sections that no two share, and of two issues of one drawing."""

from dataclasses import replace

import pytest

from enclosure_app.planning.revision.names import free_name, issue_name, named_apart
from tests.planning.revision.walls import WALL


@pytest.mark.parametrize(
    "file",
    ["roof.dxf", "ROOF.DXF", "roof-rev2.dxf", "C:\\office\\roof_Rev-B.dxf", "/a/roof_b.dxf",
     "roof 2026-04-01.dxf", "roof_20260401.dxf"],
)  # fmt: skip
def test_issues_of_one_drawing_have_one_name(file: str) -> None:
    assert issue_name(file) == "roof"


@pytest.mark.parametrize("file", ["roof-2.dxf", "wall.dxf", "roof-base.dxf"])
def test_other_drawings_have_another(file: str) -> None:
    assert issue_name(file) != "roof"


def test_a_name_that_is_taken_gets_the_first_free_number() -> None:
    assert free_name("Eave", {"Wall"}) == "Eave"
    assert free_name("Wall", {"Wall", "Wall-2"}) == "Wall-3"


def test_sections_are_named_apart_from_each_other_and_from_those_that_are_there() -> None:
    new = [WALL, WALL, replace(WALL, name="Eave")]
    assert [e.name for e in named_apart(new, [WALL])] == ["Wall-2", "Wall-3", "Eave"]
    assert [*named_apart([WALL], [])] == [WALL]
