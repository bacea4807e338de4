"""Names of two issues of one drawing."""

import pytest

from enclosure_app.planning.revision.names import issue_name


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
