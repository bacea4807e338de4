"""Whether a process runs, and whether it is still the same one."""

import os
import subprocess
import sys
from pathlib import Path

import pytest

from enclosure_app.files.project.processes import runs, started


def test_this_process_runs_and_one_that_ended_does_not() -> None:
    process = subprocess.Popen([sys.executable, "-c", ""])
    process.wait()
    assert runs(os.getpid())
    assert not runs(process.pid)


@pytest.mark.parametrize("pid", [0, -1, 10**30])
def test_a_number_that_no_process_has_does_not_run(pid: int) -> None:
    """Zero and less would ask after whole groups of processes."""
    assert not runs(pid)


@pytest.mark.skipif(not Path("/proc/self/stat").exists(), reason="The system does not tell.")
def test_a_process_is_known_by_when_it_began() -> None:
    began = started(os.getpid())
    assert began
    assert began == started(os.getpid())
    assert runs(os.getpid(), began)
    assert not runs(os.getpid(), f"{began}0")


def test_where_windows_would_end_the_process_it_is_taken_to_run(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(os, "name", "nt")
    monkeypatch.setattr(os, "kill", None)
    assert runs(4)
