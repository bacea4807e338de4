"""What several test files share."""

import os
from pathlib import Path

import pytest

_ROOT = Path(__file__).resolve().parents[1]


@pytest.fixture(scope="session")
def office_drawings() -> Path:
    """Return the folder of real drawings, or skip: they are no part of the project."""
    default = _ROOT.parent / "shared" / "drawings"
    folder = Path(os.environ.get("ENCLOSURE_DRAWINGS", default))
    if not folder.is_dir():
        pytest.skip("The folder of real drawings is not here (see ENCLOSURE_DRAWINGS).")
    return folder
