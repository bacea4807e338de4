"""What holds for the whole house, whoever writes in it."""

import ast
import re
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parent.parent
PACKAGE = ROOT / "enclosure_app"
TOP_LEVEL = {
    ".ci",
    ".gitignore",
    "DEVELOPERS.md",
    "README.md",
    "enclosure_app",
    "pyproject.toml",
    "resources",
    "samples",
    "tests",
}
MODULES = sorted(PACKAGE.rglob("*.py"))
PYTHON = (
    MODULES + sorted((ROOT / "tests").rglob("*.py")) + sorted((ROOT / "samples").rglob("*.py"))
)
DRAWN = ("drawing", "reports", "window")  # the only places where a colour may stand

# Modules without a test file of their own, each with the one that tries it.
TESTED_ELSEWHERE = {
    "__main__": "test_main.py",
    "files.dxf.raw": "files/dxf/test_content.py",
    "model.finding": "reports/test_json_report.py",
    "model.place": "model/test_section.py",
}

guard = """
from PySide6.QtCore import QObject, Signal

class Bell(QObject):
    rung = Signal(bool)

heard = []
bell = Bell()
bell.rung.connect(heard.append)
for _ in range(5000):
    bell.rung.emit(True)
print(len(heard))
"""


def of_the_package(path: Path) -> str:
    return ".".join(path.relative_to(PACKAGE).with_suffix("").parts)


def tracked() -> list[str]:
    """Every file that git keeps; without git (an unpacked archive) there is nothing to ask."""
    try:
        listed = subprocess.run(
            ["git", "ls-files", "-z"],  # noqa: S607  whichever git the person uses
            cwd=ROOT, capture_output=True, text=True, check=True,
        )  # fmt: skip
    except (OSError, subprocess.CalledProcessError):
        pytest.skip("this is no git checkout")
    return listed.stdout.split("\0")[:-1]


def test_nothing_strange_stands_at_the_top_level() -> None:
    assert {name.split("/")[0] for name in tracked()} <= TOP_LEVEL


def test_no_file_outgrows_four_hundred_lines() -> None:
    lines = {path: len(path.read_text(encoding="utf-8").splitlines()) for path in PYTHON}
    assert {str(path.relative_to(ROOT)): n for path, n in lines.items() if n > 400} == {}


def test_no_module_is_a_drawer_for_odds_and_ends() -> None:
    drawers = {"util", "utils", "common", "core", "helper", "helpers", "misc"}
    names = [path.relative_to(ROOT).with_suffix("") for path in PYTHON]
    assert [name for name in names if drawers & set(name.parts)] == []


def test_nothing_leads_to_one_machine_or_one_registry() -> None:
    """A path or a host that only one person has breaks the program for everybody else."""
    private = re.compile("/" "work/|/" "home/|/" "root/|/" "Users/|pypi" r"\.org|python" "hosted")
    texts = [
        name for name in tracked() if not name.endswith((".ttf", ".dxf", ".pdf", ".png", ".qm"))
    ]
    assert [
        name for name in texts if private.search((ROOT / name).read_text(encoding="utf-8"))
    ] == []


@pytest.mark.parametrize("path", MODULES, ids=of_the_package)
def test_every_module_says_what_it_is_for(path: Path) -> None:
    told = ast.get_docstring(ast.parse(path.read_text(encoding="utf-8"))) or ""
    assert len(told.split()) >= 3, f"{path.name} needs a docstring that says what it is for"


def test_no_colour_stands_below_the_drawing() -> None:
    """Rules, network and model know severities and controls, never what these look like."""
    colour = re.compile(r"""["']#(?:[0-9a-fA-F]{3}|[0-9a-fA-F]{6}|[0-9a-fA-F]{8})["']""")
    below = [path for path in MODULES if path.relative_to(PACKAGE).parts[0] not in DRAWN]
    assert [path for path in below if colour.search(path.read_text(encoding="utf-8"))] == []


@pytest.mark.parametrize(
    "path", [path for path in MODULES if path.stem != "__init__"], ids=of_the_package
)
def test_every_module_has_its_test_file(path: Path) -> None:
    own = path.relative_to(PACKAGE).with_name(f"test_{path.name}").as_posix()
    name = TESTED_ELSEWHERE.get(of_the_package(path), own)
    assert (ROOT / "tests" / name).is_file(), f"{of_the_package(path)} is tried by no tests/{name}"


def test_the_exceptions_name_only_what_exists_and_has_no_test_file() -> None:
    names = {of_the_package(path): path.relative_to(PACKAGE) for path in MODULES}
    assert set(TESTED_ELSEWHERE) <= set(names)
    own = [names[name].with_name(f"test_{names[name].name}") for name in TESTED_ELSEWHERE]
    assert [path for path in own if (ROOT / "tests" / path).is_file()] == []


def test_five_thousand_signals_do_not_kill_the_interpreter() -> None:
    """PySide6 6.12.0 aborts Python 3.11 after some 560; guards the pin in pyproject.toml."""
    ran = subprocess.run(
        [sys.executable, "-c", guard], capture_output=True, text=True, check=False, timeout=60
    )
    assert (ran.returncode, ran.stdout, ran.stderr) == (0, "5000\n", "")
