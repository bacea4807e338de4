"""What several test files share."""

import os
from collections.abc import Callable
from pathlib import Path

import pytest
from ezdxf.document import Drawing as DxfDrawing

from enclosure_app.files.dxf.content import Content, content
from enclosure_app.files.dxf.document import open_document

_ROOT = Path(__file__).resolve().parents[1]


@pytest.fixture(scope="session")
def office_drawings() -> Path:
    """Return the folder of real drawings, or skip: they are no part of the project."""
    default = _ROOT.parent / "shared" / "drawings"
    folder = Path(os.environ.get("ENCLOSURE_DRAWINGS", default))
    if not folder.is_dir():
        pytest.skip("The folder of real drawings is not here (see ENCLOSURE_DRAWINGS).")
    return folder


@pytest.fixture
def reread(tmp_path: Path) -> Callable[..., Content]:
    """Return a function that saves a DXF drawing, opens it anew and reads its content."""

    def read(drawing: DxfDrawing, **how: object) -> Content:
        path = tmp_path / "drawing.dxf"
        drawing.saveas(path)
        return content(open_document(path), **how)

    return read


def pytest_addoption(parser: pytest.Parser) -> None:
    """Add what rewrites the texts that the reports on the samples are held to."""
    parser.addoption(
        "--update-expected",
        action="store_true",
        help="Rewrite tests/expected with what the program says now; read the difference.",
    )


@pytest.fixture
def update_expected(request: pytest.FixtureRequest) -> bool:
    """Whether the kept texts are to be rewritten instead of only compared."""
    return bool(request.config.getoption("--update-expected"))
