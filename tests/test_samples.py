"""What the checker says of every sample drawing, through the command as people type it.

The samples are drawn by a script that knows which faults it put in (samples/expected.toml), so
the checker is held to the drawings and not to itself.
"""

import json
import tomllib
from contextlib import redirect_stderr, redirect_stdout
from dataclasses import dataclass
from io import StringIO
from math import dist
from pathlib import Path
from typing import Any

import pytest

from enclosure_app.cli import FAULTS, NOTHING_WRONG, main

SAMPLES = Path(__file__).parent.parent / "samples"
TEXTS = Path(__file__).parent / "expected"
LOUD = ("fault", "doubt")

EXPECTED = {
    told["file"]: told
    for told in tomllib.loads((SAMPLES / "expected.toml").read_text(encoding="utf-8"))["drawing"]
}
each_sample = pytest.mark.parametrize("told", EXPECTED.values(), ids=EXPECTED)


@dataclass(frozen=True)
class Answer:
    """What one command gave: exit status, text, JSON."""

    status: int
    text: str
    report: dict[str, Any]


@pytest.fixture(scope="module")
def answers(tmp_path_factory: pytest.TempPathFactory) -> dict[str, Answer]:
    """Every sample checked once, from the samples' folder so that no report holds a path."""
    folder = tmp_path_factory.mktemp("reports")
    with pytest.MonkeyPatch.context() as patch:
        patch.chdir(SAMPLES)
        patch.setenv("COLUMNS", "100")
        return {name: _checked(told, folder / f"{name}.json") for name, told in EXPECTED.items()}


def _checked(told: dict[str, Any], path: Path) -> Answer:
    """Type the command, with units only where the file does not tell them."""
    units = [] if told["units_in_file"] else ["--units", told["units"]]
    command = ["check", told["file"], "--layers", told["layers"], *units, "--json", str(path)]
    with redirect_stdout(StringIO()) as out, redirect_stderr(StringIO()) as err:
        status = main(command)
    assert err.getvalue() == ""
    return Answer(status, out.getvalue(), json.loads(path.read_text(encoding="utf-8")))


@pytest.fixture
def answer(told: dict[str, Any], answers: dict[str, Answer]) -> Answer:
    """What was said of the sample in hand."""
    return answers[told["file"]]


@each_sample
def test_every_layer_of_every_section_runs_as_it_was_drawn(
    told: dict[str, Any], answer: Answer
) -> None:
    verdicts = {
        section["name"].casefold(): {
            control: layer["verdict"] for control, layer in section["controls"].items()
        }
        for section in answer.report["drawings"][0]["sections"]
    }
    assert verdicts == {
        section["title"].casefold(): section["verdicts"] for section in told["section"]
    }


@each_sample
def test_the_faults_that_were_drawn_are_found_and_nothing_else(
    told: dict[str, Any], answer: Answer
) -> None:
    left = [finding for finding in answer.report["findings"] if finding["severity"] in LOUD]
    missed = []
    for wanted in told.get("finding", []):
        match = next((found for found in left if is_it(found, wanted)), None)
        if match:
            left.remove(match)
        else:
            missed.append(wanted)
    assert missed == []
    assert [(f["rule"], f["control"], f["at"], f["message"]) for f in left] == []


def is_it(found: dict[str, Any], wanted: dict[str, Any]) -> bool:
    """Whether a finding is the one that was drawn: the same rule and control, near the place."""
    return (
        found["rule"] == wanted["rule"]
        and found["control"] == wanted["control"]
        and found["section"].casefold() == wanted["section"].casefold()
        and dist(found["at"], wanted["at_mm"]) <= wanted["within_mm"]
    )


@each_sample
def test_keys_are_unique_and_name_pieces_of_their_own_section(
    told: dict[str, Any], answer: Answer
) -> None:
    keys = [(finding["section"], finding["key"]) for finding in answer.report["findings"]]
    assert len(keys) == len(set(keys))
    for finding in answer.report["findings"]:
        assert finding["key"].startswith(finding["rule"])
        assert any(piece in finding["key"] for piece in finding["pieces"])


@each_sample
def test_the_status_tells_whether_there_are_faults(told: dict[str, Any], answer: Answer) -> None:
    loud = [found for found in answer.report["findings"] if found["severity"] == "fault"]
    assert answer.status == (FAULTS if loud else NOTHING_WRONG)


@each_sample
def test_the_text_report_reads_as_before(
    told: dict[str, Any], answer: Answer, update_expected: bool
) -> None:
    """Rewrite with ``pytest tests/test_samples.py --update-expected``, and read what changed."""
    kept = TEXTS / f"{Path(told['file']).stem}.txt"
    if update_expected:
        kept.parent.mkdir(exist_ok=True)
        kept.write_text(answer.text, encoding="utf-8")
    assert answer.text == kept.read_text(encoding="utf-8")


def test_no_text_is_kept_of_a_sample_that_is_gone() -> None:
    assert {path.stem for path in TEXTS.glob("*.txt")} == {Path(name).stem for name in EXPECTED}
