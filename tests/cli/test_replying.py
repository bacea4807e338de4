"""What reviewers answered is told, and held against a project where one is named."""

import json
from pathlib import Path
from typing import Any

import jsonschema
import pytest
from pypdf.generic import FloatObject, NameObject

from enclosure_app.cli import FAULTS, NOTHING_WRONG, UNUSABLE, main
from enclosure_app.files.project.file import load_project, save_project
from enclosure_app.files.replies.answers import taken_over
from enclosure_app.files.replies.names import named
from enclosure_app.files.replies.replies import read_replies
from enclosure_app.resources import resource, sample
from enclosure_app.window.apart.orders import Order, read_order
from tests.files.pdf_reviewer import Reviewer

pytestmark = pytest.mark.usefixtures("qapp")

SCHEMA = json.loads(resource("replies.schema.json").read_text(encoding="utf-8"))


@pytest.fixture(scope="module")
def issued(qapp: object, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with a project and the sheet that was issued of it."""
    folder = tmp_path_factory.mktemp("issued")
    order = Order((sample("eave-flush-faulty.dxf"),), layers=sample("layers-second-office.toml"))
    save_project(read_order(order), folder / "eave.enclosure.json")
    done = main(["sheet", str(folder / "eave.enclosure.json"), "-o", str(folder / "eave.pdf")])
    assert done == FAULTS
    return folder


@pytest.fixture
def back(issued: Path, tmp_path: Path) -> Path:
    """The sheet as it comes back: one finding mended, one let stand with a reason, one remark."""
    reviewer = Reviewer(issued / "eave.pdf")
    first, second, third = keys(reviewer)
    reviewer.state(first, "Zoë", "Completed")
    reviewer.reply(second, "Zoë", "Not a fault: it goes on behind.")
    reviewer.reply(third, "Per", "Which membrane?")
    return reviewer.saved(tmp_path / "back.pdf")


def listed(reviewer: Reviewer) -> Any:  # noqa: ANN401  pypdf's own values
    return reviewer.writer.pages[0]["/PieceInfo"]["/EnclosureCheck"]["/Private"]["/Notes"]


def keys(reviewer: Reviewer) -> list[str]:
    names = [named(each["/NM"]) for each in listed(reviewer)]
    return [name.about.key for name in names if name]


def told(capsys: pytest.CaptureFixture[str], *arguments: object) -> dict[str, Any]:
    """The answers as JSON, by the outcome; the contract is kept."""
    capsys.readouterr()
    main(["replies", *map(str, arguments), "--json", "-"])
    read = json.loads(capsys.readouterr().out)
    jsonschema.validate(read, SCHEMA)
    return read


def test_without_a_project_it_is_told_what_was_said(
    back: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["replies", str(back)]) == NOTHING_WRONG
    text = capsys.readouterr().out
    assert "In the project" not in text
    assert text.endswith("3 answers: 2 with a verdict, 0 not sure. Nothing was taken over.\n")
    assert {each["outcome"] for each in told(capsys, back)["answers"]} == {None}


def test_against_a_project_each_answer_says_what_it_would_do(
    back: Path, issued: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    project = load_project(issued / "eave.enclosure.json")
    (first, *_) = read_replies(back)
    path = tmp_path / "eave.enclosure.json"
    save_project(taken_over(project, (first,)), path)
    before = path.read_bytes()
    assert main(["replies", str(back), "--against", str(path)]) == FAULTS  # as it has for check
    text = " ".join(capsys.readouterr().out.split())
    assert "In the project: already said; nothing would change." in text
    assert "In the project: it matches, and can be taken over as it is." in text
    assert text.endswith("Held against the project: 2 can be taken over, 1 already said.")
    outcomes = [each["outcome"] for each in told(capsys, back, "--against", path)["answers"]]
    assert outcomes == ["already said", "matches", "matches"]
    assert path.read_bytes() == before


def test_what_was_measured_otherwise_since_is_told_as_changed(
    back: Path, issued: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """The drawing that the answers are held against is another one than was issued."""
    reviewer = Reviewer(back)
    listed(reviewer)[1][NameObject("/Measured")] = FloatObject(7)
    other = reviewer.saved(tmp_path / "other.pdf")
    main(["replies", str(other), "--against", str(issued / "eave.enclosure.json")])
    text = " ".join(capsys.readouterr().out.split())
    assert "Not sure: It was measured otherwise then" in text
    assert "In the project: changed since; look before it is taken over." in text
    assert "2 can be taken over, 1 changed since." in text


def test_json_is_written_beside_the_text_and_never_over_an_input(
    back: Path, issued: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    project = issued / "eave.enclosure.json"
    out = tmp_path / "answers.json"
    main(["replies", str(back), "--against", str(project), "--json", str(out)])
    assert "Held against the project" in capsys.readouterr().out
    read = json.loads(out.read_text(encoding="utf-8"))
    assert (read["pdf"], read["project"]) == (str(back), str(project))
    assert main(["replies", str(back), "--against", str(project), "--json", str(back)]) == UNUSABLE
    assert "is a file to be read" in capsys.readouterr().err


def test_a_project_that_cannot_be_used_is_refused_in_one_sentence(
    back: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["replies", str(back), "--against", str(tmp_path / "none.json")]) == UNUSABLE
    error = capsys.readouterr().err
    assert "none.json" in error
    assert error.count("\n") == 1


@pytest.mark.parametrize("name", [".", "wall.dxf"])
def test_what_is_no_project_is_not_taken_for_one(
    back: Path, name: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["replies", str(back), "--against", name]) == UNUSABLE
    assert capsys.readouterr().err.startswith(f"{name} is no project: name the file")
