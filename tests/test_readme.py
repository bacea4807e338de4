"""What README.md shows is what the program does."""

import re
import shlex
from pathlib import Path

import pytest

from enclosure_app.cli import FAULTS, main

ROOT = Path(__file__).parent.parent
README = (ROOT / "README.md").read_text(encoding="utf-8")
COMMANDS = re.findall(r"^```bash\n(.*?)\n```$", README, re.MULTILINE | re.DOTALL)


def test_the_two_commands_are_one_line_each_and_set_everything_up() -> None:
    assert len(COMMANDS) == 2
    for command in COMMANDS:
        assert "\n" not in command
        assert "python3 -m venv .venv && .venv/bin/pip install" in command


def test_the_example_is_what_the_first_command_prints(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """The README leaves out the reader's notes and the cautions, and nothing else."""
    monkeypatch.chdir(ROOT)
    monkeypatch.setenv("COLUMNS", "80")
    found = re.search(r"enclosure-app (check .*?) \|\|", COMMANDS[0])
    assert found
    assert main(shlex.split(found[1])) == FAULTS
    (shown,) = re.findall(r"^```text\n(.*?)\n```$", README, re.MULTILINE | re.DOTALL)
    printed = capsys.readouterr().out
    head, _, rest = shown.partition("\n\n")
    assert printed.startswith(head)
    assert rest in printed
