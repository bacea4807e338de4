"""What README.md shows is what the program does."""

import re
import shlex
from dataclasses import fields
from pathlib import Path

import pytest

from enclosure_app.cli import FAULTS, main
from enclosure_app.files.project.migrations import FORMAT
from enclosure_app.model.drawing import Note
from enclosure_app.model.layer import LayerRow
from enclosure_app.model.product import Product
from enclosure_app.model.project import Project
from enclosure_app.model.said.carried import Carried
from enclosure_app.model.said.decision import Decision
from enclosure_app.model.said.photograph import Photograph
from enclosure_app.model.said.question import Question
from enclosure_app.model.said.sign_off import SignOff
from enclosure_app.model.said.site_check import SiteCheck
from enclosure_app.model.section import Break, Piece, Section, Stroke, Text
from enclosure_app.model.underlay import Underlay

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


ROWS = dict(re.findall(r"^\| `(\w+)(?:\[\])?`[^|]* \| (.*) \|$", README, re.MULTILINE))
"""What is said of each key of a project file, by the first key of its row."""


def test_the_format_of_project_files_is_the_one_that_is_written() -> None:
    assert ROWS["format"].startswith(f"{FORMAT}. ")


@pytest.mark.parametrize(
    ("row", "held"),
    [
        ("title", Note),
        ("layers", LayerRow),
        ("decisions", Decision),
        ("sign_offs", SignOff),
        ("revision", Carried),
        ("questions", Question),
        ("products", Product),
        ("sections", Section),
        ("sections", Break),
        ("pieces", Piece),
        ("texts", Text),
        ("strokes", Stroke),
        ("underlays", Underlay),
        ("photographs", Photograph),
    ],
)
def test_every_key_of_a_project_file_is_in_its_table(row: str, held: type) -> None:
    names = {each.name for each in fields(held) if each.init} - {"key"}
    assert names <= {*re.findall(r"`(\w+)`", ROWS[row])}


def test_every_part_of_a_project_has_a_row() -> None:
    table = README.partition("## The project file")[2].partition("\n## ")[0]
    names = {each.name for each in fields(Project)} | {"format", "about", "products"}
    heads = " ".join(re.findall(r"^\| ([^|]*) \|", table, re.MULTILINE))
    assert names <= {*re.findall(r"`(\w+)(?:\[\])?`", heads)}


def test_looks_differ_from_verdicts_only_in_what_was_seen() -> None:
    """So their row needs to name no other key."""
    verdict, look = ({each.name for each in fields(held)} for held in (Decision, SiteCheck))
    assert verdict ^ look == {"state", "seen"}
