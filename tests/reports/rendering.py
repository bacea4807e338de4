"""What poppler and qpdf, which know nothing of this program, make of a PDF; skips without them."""

import shutil
import subprocess
from pathlib import Path

import numpy as np
import pytest
from numpy.typing import NDArray
from PIL import Image


def _run(tool: str, *arguments: str) -> subprocess.CompletedProcess[str]:
    found = shutil.which(tool)
    if found is None:
        pytest.skip(f"{tool} is not installed; .ci/system-packages asks for it")
    return subprocess.run(
        [found, *arguments], capture_output=True, text=True, check=False, timeout=120
    )


def pictures(path: Path, dpi: int = 100) -> list[NDArray[np.uint8]]:
    """Each page as poppler shows it, of the shape (height, width, 3)."""
    stem = path.with_name(f"{path.stem}-seen")
    done = _run("pdftoppm", "-r", str(dpi), str(path), str(stem))
    assert (done.returncode, done.stderr) == (0, "")
    made = sorted(path.parent.glob(f"{stem.name}-*.ppm"))
    seen = [np.asarray(Image.open(each)).copy() for each in made]
    for each in made:
        each.unlink()
    return seen


def text_of(path: Path) -> str:
    """All that poppler reads on the pages, white space as one blank."""
    return " ".join(_run("pdftotext", str(path), "-").stdout.split())


def information(path: Path) -> dict[str, str]:
    """What poppler says about the file."""
    lines = _run("pdfinfo", "-isodates", str(path)).stdout.splitlines()
    return {name: value.strip() for name, _, value in (line.partition(":") for line in lines)}


def complaints(path: Path) -> str:
    """What qpdf finds wrong with the file; nothing where it is clean."""
    done = _run("qpdf", "--check", str(path))
    return "" if done.returncode == 0 and not done.stderr else done.stdout + done.stderr
