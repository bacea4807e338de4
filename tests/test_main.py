"""The program as a process of its own: status, streams, and what it loads to answer."""

import os
import subprocess
import sys

import pytest

from enclosure_app import __version__
from enclosure_app.cli import NOTHING_WRONG, UNUSABLE

HEAVY = (
    "PySide6", "ezdxf", "shapely", "networkx", "numpy", "pikepdf", "rich", "enclosure_app.checker"
)  # fmt: skip


def run(*arguments: str, code: str = "", **environment: str) -> subprocess.CompletedProcess[str]:
    start = [sys.executable, *(("-c", code) if code else ("-m", "enclosure_app"))]
    return subprocess.run(
        [*start, *arguments],
        env={**os.environ, **environment}, capture_output=True, text=True, check=False, timeout=60,
    )  # fmt: skip


@pytest.mark.parametrize(
    "arguments",
    ["--help", "check --help", "sheet --help", "explain -h", "mark -h", "table -h", "exchange -h"],
)
def test_help_loads_nothing_heavy(arguments: str) -> None:
    loaded = run(
        code=f"""
import sys
from enclosure_app.cli import main
main({arguments.split()!r})
print([name for name in {HEAVY!r} if name in sys.modules], file=sys.stderr)
"""
    )
    assert "Usage: enclosure-app" in loaded.stdout
    assert loaded.stderr == "[]\n"


def test_the_module_runs_as_a_program() -> None:
    ran = run("--version")
    assert (ran.returncode, ran.stdout, ran.stderr) == (0, f"enclosure-app {__version__}\n", "")


def test_the_program_ends_with_the_commands_status() -> None:
    ran = run("check", "--no-such-option")
    assert (ran.returncode, ran.stdout) == (UNUSABLE, "")
    assert ran.stderr.startswith("No such option '--no-such-option'")


def test_a_reader_that_has_seen_enough_is_no_error() -> None:
    """As in ``enclosure-app explain | head -1``, with the reader gone before a word is written."""
    with subprocess.Popen(
        [sys.executable, "-c", "import sys; sys.stdin.readline(); from enclosure_app.cli import "
         "main; sys.exit(main(['explain']))"],
        stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True,
    ) as process:  # fmt: skip
        assert process.stdout is not None
        process.stdout.close()
        process.stdout = None
        _, err = process.communicate("go\n", timeout=60)
    assert (process.returncode, err) == (NOTHING_WRONG, "")


def test_a_stream_of_plain_ascii_is_no_error() -> None:
    ran = run("explain", "gap", PYTHONIOENCODING="ascii", PYTHONUTF8="0", LC_ALL="C")
    assert (ran.returncode, ran.stderr) == (NOTHING_WRONG, "")
    assert ran.stdout.isascii()
