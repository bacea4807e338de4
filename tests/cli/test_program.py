"""The program as a whole: statuses, sentences, and what is left behind."""

from pathlib import Path

import pytest

from enclosure_app.cli import FAULTS, NOTHING_WRONG, STOPPED, UNUSABLE, main
from tests.cli.stand_ins import Road


@pytest.mark.parametrize(
    ("arguments", "status"),
    [
        (["--help"], NOTHING_WRONG),
        (["-h"], NOTHING_WRONG),
        (["--version"], NOTHING_WRONG),
        (["check", "--help"], NOTHING_WRONG),
        (["sheet", "--help"], NOTHING_WRONG),
        (["explain", "--help"], NOTHING_WRONG),
        (["explain"], NOTHING_WRONG),
        (["explain", "gap"], NOTHING_WRONG),
        (["explain", "gaps"], UNUSABLE),
        ([], UNUSABLE),
        (["eave.dxf"], UNUSABLE),
        (["chek", "eave.dxf"], UNUSABLE),
        (["--no-such-option"], UNUSABLE),
        (["check"], UNUSABLE),
        (["check", "doubt.dxf"], NOTHING_WRONG),
        (["check", "fault.dxf"], FAULTS),
        (["check", "doubt.dxf", "fault.dxf"], FAULTS),
        (["check", "broken.dxf"], UNUSABLE),
        (["check", "fault.dxf", "broken.dxf"], UNUSABLE),
        (["check", "bug.dxf"], UNUSABLE),
        (["check", "stop.dxf"], STOPPED),
        (["check", "far.dxf"], UNUSABLE),
        (["check", "doubt.dxf", "--units", "in"], NOTHING_WRONG),
        (["check", "doubt.dxf", "--units", "furlong"], UNUSABLE),
        (["check", "doubt.dxf", "--inside", "1,2", "--inside", "-3.5,4e2"], NOTHING_WRONG),
        (["check", "doubt.dxf", "--inside", "1"], UNUSABLE),
        (["check", "doubt.dxf", "--inside", "nan,1"], UNUSABLE),
        (["check", "doubt.dxf", "--severity", "gap=off"], NOTHING_WRONG),
        (["check", "doubt.dxf", "--severity", "gap=loud"], UNUSABLE),
        (["check", "doubt.dxf", "--severity", "gaap=off"], UNUSABLE),
        (["check", "doubt.dxf", "--book", "practice"], NOTHING_WRONG),
        (["check", "doubt.dxf", "--book", "no-such-book"], UNUSABLE),
        (["check", "doubt.dxf", "--layers", "no-such-map.toml"], UNUSABLE),
        (["sheet", "fault.dxf"], UNUSABLE),
        (["sheet", "fault.dxf", "-o", "out.pdf"], FAULTS),
        (["sheet", "doubt.dxf", "-o", "out.pdf", "--date", "2026-02-03"], NOTHING_WRONG),
        (["sheet", "doubt.dxf", "-o", "out.pdf", "--date", "soon"], UNUSABLE),
        (["sheet", "broken.dxf", "-o", "out.pdf"], UNUSABLE),
    ],
    ids=lambda value: " ".join(value) if isinstance(value, list) else None,
)
def test_status(
    arguments: list[str], status: int, road: Road, capsys: pytest.CaptureFixture[str]
) -> None:
    """Every way out has its status; an error is one sentence on standard error alone."""
    assert main(arguments) == status
    said = capsys.readouterr()
    if status in (NOTHING_WRONG, FAULTS):
        assert (bool(said.out), said.err) == (True, "")
    else:
        assert len(said.err.strip().splitlines()) == 1
        assert said.err.rstrip().endswith((".", "?"))
        assert "Traceback" not in said.err


def test_a_list_of_errors_is_a_list_of_sentences(
    road: Road, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["check", "listed.dxf"]) == UNUSABLE
    assert capsys.readouterr().err == "listed.dxf: the first.\nlisted.dxf: the second.\n"


def test_developers_can_have_the_traceback(road: Road, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("ENCLOSURE_TRACEBACK", "1")
    with pytest.raises(KeyError, match="2F"):
        main(["check", "bug.dxf"])


@pytest.mark.parametrize(
    "arguments",
    [
        ["check", "broken.dxf", "--json", "out"],
        ["check", "bug.dxf", "--json", "out"],
        ["check", "doubt.dxf", "--json", "nowhere/out"],
        ["sheet", "broken.dxf", "-o", "out"],
        ["sheet", "doubt.dxf", "-o", "out", "--units", "furlong"],
    ],
    ids=" ".join,
)
def test_what_cannot_be_used_leaves_nothing_behind(
    arguments: list[str], road: Road, tmp_path: Path
) -> None:
    assert main(arguments) == UNUSABLE
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize(
    ("arguments", "sentence"),
    [
        (
            ["check", "a.dxf", "--inside", "12"],
            "Invalid value for '--inside': 12 is not a point; type two numbers as in 120,35.5. "
            "Type `enclosure-app check --help` to see what can be typed.",
        ),
        (
            ["check", "a.dxf", "--severity", "gap"],
            "Invalid value for '--severity': gap sets no level; type it as in gap=doubt, with one "
            "of fault, doubt, remark, off. Type `enclosure-app check --help` to see what can be "
            "typed.",
        ),
        (
            ["check", "a.dxf", "--severity", "gaap=off"],
            "No rule is called gaap; did you mean gap?",
        ),
        (
            ["check", "far.dxf"],
            "far.dxf: the system refuses ([Errno 110] Connection timed out); mend that and try again.",
        ),
        (["explain", "gaap"], "No rule is called gaap; did you mean gap?"),
        (
            ["chek", "a.dxf"],
            "chek is neither a file nor a command (check, exchange, explain, mark, replies, sheet, table). "
            "Type `enclosure-app --help` to see what can be typed.",
        ),
        (
            ["."],
            "There is no screen to open the window on: check a drawing with `enclosure-app check "
            "FILE`, or write its marked-up sheet with `enclosure-app sheet FILE -o OUT.pdf`.",
        ),
        (
            ["nowhere.dxf"],
            "nowhere.dxf: there is no such file; name a drawing or a project.",
        ),
    ],
    ids=lambda value: value if isinstance(value, str) else " ".join(value),
)
def test_the_sentence_says_how_to_mend_it(
    arguments: list[str],
    sentence: str,
    road: Road,
    capsys: pytest.CaptureFixture[str],
) -> None:
    assert main(arguments) == UNUSABLE
    assert capsys.readouterr().err == sentence + "\n"
