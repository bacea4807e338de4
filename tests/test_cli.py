"""The command line by itself: statuses, what goes where, what is loaded.

The reader and the checker are stood in for by small ones that tell faults by the file's name, so
that every way through a command can be walked; test_cli_bad_input.py walks the real road.
"""

import json
import sys
from dataclasses import dataclass, field
from pathlib import Path
from types import ModuleType
from typing import Any

import pytest

from enclosure_app.cli import FAULTS, NOTHING_WRONG, STOPPED, UNUSABLE, main
from enclosure_app.drawing.job import SheetJob
from enclosure_app.errors import EnclosureError, ListedError
from enclosure_app.model.drawing import Drawing, Units
from enclosure_app.model.finding import Finding, Severity
from enclosure_app.model.limits import Limits
from enclosure_app.model.product import Control
from enclosure_app.model.report import DrawingResult, LayerResult, SectionResult, Verdict
from enclosure_app.model.section import Section

FRAME = ((0.0, 0.0), (500.0, 0.0), (500.0, 900.0), (0.0, 900.0))


@dataclass(frozen=True)
class Options:
    """What the command line may ask of the reader."""

    layer_map: Any = None
    units: Units | None = None
    inside: tuple[tuple[float, float], ...] = ()
    outside: tuple[tuple[float, float], ...] = ()
    all_layers: bool = False
    layout: str = "Model"
    plan: bool = False
    linework: bool = False


@dataclass
class Road:
    """What the stand-ins were asked for."""

    options: list[Options] = field(default_factory=list)
    limits: list[Limits] = field(default_factory=list)
    jobs: list[SheetJob] = field(default_factory=list)


def section_result(severity: Severity) -> SectionResult:
    gap = Finding(
        "gap:1.end", "gap", Control.AIR, severity, (10, 20), ("1",), "Sheet stops.", "Carry it on."
    )
    layers = {Control.AIR: LayerResult(Control.AIR, Verdict.BROKEN)}
    return SectionResult(Section("Eave", FRAME, (), {}), layers, findings=(gap,))


FAILURES = {
    "broken": EnclosureError("broken.dxf is not a DXF drawing; export it again."),
    "nameless": EnclosureError("The file is empty; export it again."),
    "listed": ListedError(("listed.dxf: the first.", "listed.dxf: the second.")),
    "bug": KeyError("2F"),
    "stop": KeyboardInterrupt(),
    "far": TimeoutError(110, "Connection timed out"),
}


@pytest.fixture
def road(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> Road:
    """Stand in for the reader, the checker and the PDF, in an empty folder, without a screen."""
    seen = Road()

    def read_drawing(path: Path, options: Options) -> Drawing:
        seen.options.append(options)
        if path.stem in FAILURES:
            raise FAILURES[path.stem]
        drawn_in = Units.IN if "inches" in path.stem else Units.MM
        return Drawing(str(path), options.units or drawn_in, ())

    def check_drawing(drawing: Drawing, limits: Limits) -> DrawingResult:
        seen.limits.append(limits)
        severity = Severity.FAULT if "fault" in drawing.file else Severity.DOUBT
        return DrawingResult(drawing, (section_result(severity),))

    def write_sheets(path: Path, results: tuple[DrawingResult, ...], job: SheetJob) -> None:
        seen.jobs.append(job)
        path.write_text(f"a sheet of {results[0].drawing.file}", encoding="utf-8")

    stand_in(monkeypatch, "files.reading", read_drawing=read_drawing, ReadOptions=Options)
    stand_in(monkeypatch, "checker", check_drawing=check_drawing)
    stand_in(monkeypatch, "reports.pdf_report", write_sheets=write_sheets)
    for name in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"):
        monkeypatch.delenv(name, raising=False)  # there is no screen to open a window on
    monkeypatch.chdir(tmp_path)
    return seen


def stand_in(monkeypatch: pytest.MonkeyPatch, name: str, **names: object) -> None:
    module = ModuleType(f"enclosure_app.{name}")
    vars(module).update(names)
    monkeypatch.setitem(sys.modules, module.__name__, module)


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


def test_the_good_files_are_reported_and_the_bad_one_named(
    road: Road, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["check", "doubt.dxf", "broken.dxf", "nameless.dxf", "fault.dxf"]) == UNUSABLE
    said = capsys.readouterr()
    assert said.err.splitlines() == [
        "broken.dxf is not a DXF drawing; export it again.",
        "nameless.dxf: The file is empty; export it again.",
    ]
    assert "doubt.dxf\n" in said.out
    assert "fault.dxf\n" in said.out
    assert "1 fault, 1 doubt and no remarks in 2 drawings." in said.out


def test_a_list_of_errors_is_a_list_of_sentences(
    road: Road, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["check", "listed.dxf"]) == UNUSABLE
    assert capsys.readouterr().err == "listed.dxf: the first.\nlisted.dxf: the second.\n"


def test_a_fault_of_the_program_is_owned_up_to_and_stops_no_other_file(
    road: Road, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["check", "bug.dxf", "doubt.dxf"]) == UNUSABLE
    said = capsys.readouterr()
    assert said.err.startswith("bug.dxf: the program itself failed (KeyError: '2F')")
    assert "doubt.dxf\n" in said.out


def test_developers_can_have_the_traceback(road: Road, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("ENCLOSURE_TRACEBACK", "1")
    with pytest.raises(KeyError, match="2F"):
        main(["check", "bug.dxf"])


def test_json_goes_to_a_file_beside_the_text(
    road: Road, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "report.json"
    assert main(["check", "fault.dxf", "--json", str(path)]) == FAULTS
    report = json.loads(path.read_text(encoding="utf-8"))
    assert report["findings"][0]["key"] == "gap:1.end"
    assert "Sheet stops." in capsys.readouterr().out


def test_json_on_standard_output_stands_alone(
    road: Road, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["check", "fault.dxf", "broken.dxf", "--json", "-"]) == UNUSABLE
    said = capsys.readouterr()
    assert [drawing["file"] for drawing in json.loads(said.out)["drawings"]] == ["fault.dxf"]
    assert said.err == "broken.dxf is not a DXF drawing; export it again.\n"


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


@pytest.mark.parametrize("command", ["check --json", "sheet -o"])
@pytest.mark.parametrize("kept", ["doubt.dxf", "map.toml"])
def test_what_is_read_is_never_written_over(
    command: str, kept: str, road: Road, capsys: pytest.CaptureFixture[str]
) -> None:
    Path(kept).write_text("# to be kept", encoding="utf-8")
    Path("sub").mkdir()
    name, option = command.split()
    spelled_otherwise = f"sub/../{kept}"
    arguments = [name, "doubt.dxf", "--layers", "map.toml", option, spelled_otherwise]
    assert main(arguments) == UNUSABLE
    assert f"{spelled_otherwise} is a file to be read" in capsys.readouterr().err
    assert Path(kept).read_text(encoding="utf-8") == "# to be kept"


def test_the_options_reach_the_reader(road: Road) -> None:
    main(["check", "doubt.dxf", "--units", "in", "--all-layers", "--layout", "Sheet 1", "--plan"])
    assert road.options == [
        Options(units=Units.IN, all_layers=True, layout="Sheet 1", plan=True),
    ]


def test_nothing_typed_leaves_every_choice_to_the_drawing(road: Road) -> None:
    main(["check", "doubt.dxf"])
    assert road.options == [Options()]


def test_marks_go_to_the_reader_as_typed(road: Road) -> None:
    """The reader takes them in the drawing's own units, which only it can tell."""
    sides = ["--inside", "1,2", "--inside", "3,-4.5", "--outside", "0,9e3"]
    main(["check", "inches.dxf", *sides])
    assert road.options[-1].inside == ((1.0, 2.0), (3.0, -4.5))
    assert road.options[-1].outside == ((0.0, 9000.0),)


def test_only_a_sheet_asks_for_the_offices_own_lines(road: Road) -> None:
    main(["check", "doubt.dxf"])
    assert not road.options[-1].linework
    main(["sheet", "doubt.dxf", "-o", "out.pdf"])
    assert road.options[-1].linework


def test_what_is_typed_goes_over_the_map_and_the_map_over_the_book(
    road: Road, tmp_path: Path
) -> None:
    path = tmp_path / "map.toml"
    path.write_text(
        'book = "nbc-2020"\n[limits]\nwall-lap = 123\n'
        '[severity]\ngap = "remark"\nshort-lap = "remark"\n',
        encoding="utf-8",
    )
    main(["check", "doubt.dxf", "--layers", str(path), "--severity", "gap=off"])
    (limits,) = road.limits
    assert limits.book == "nbc-2020"
    assert limits.figure("wall-lap").value == 123
    assert limits.figure("wall-lap").basis == f"layer map {path}"
    assert limits.severities["gap"] is Severity.OFF
    assert limits.severities["short-lap"] is Severity.REMARK


def test_a_book_that_is_typed_goes_over_the_maps(road: Road, tmp_path: Path) -> None:
    path = tmp_path / "map.toml"
    path.write_text('book = "nbc-2020"\n', encoding="utf-8")
    main(["check", "doubt.dxf", "--layers", str(path), "--book", "practice"])
    assert road.limits[0].book == "practice"


def test_the_map_is_read_once_for_many_drawings(road: Road, tmp_path: Path) -> None:
    path = tmp_path / "map.toml"
    path.write_text('[[layers]]\nmatch = "X"\nrole = "note"\n', encoding="utf-8")
    main(["check", "doubt.dxf", "doubt2.dxf", "--layers", str(path)])
    first, second = road.options
    assert first.layer_map.rows[0].match == "X"
    assert first.layer_map is second.layer_map


def test_the_title_block_reaches_the_sheet(road: Road, tmp_path: Path) -> None:
    path = tmp_path / "out.pdf"
    paper = ["--paper", "A4", "--scale", "1:20"]
    block = ["--project", "Boathouse", "--revision", "C", "--who", "M. Orre"]
    main(["sheet", "doubt.dxf", "-o", str(path), *paper, *block, "--date", "2026-02-03"])
    assert road.jobs == [SheetJob("A4", "1:20", "Boathouse", "C", "M. Orre", "2026-02-03")]
    assert path.read_text(encoding="utf-8") == "a sheet of doubt.dxf"


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
            "chek is neither a file nor a command (check, explain, replies, sheet). Type `enclosure-app "
            "--help` to see what can be typed.",
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


def test_the_list_of_rules_has_each_with_its_one_sentence(
    capsys: pytest.CaptureFixture[str],
) -> None:
    from enclosure_app.rules import RULES  # noqa: PLC0415  the commands without it need no rules

    assert main(["explain"]) == NOTHING_WRONG
    told = dict(line.split(maxsplit=1) for line in capsys.readouterr().out.splitlines())
    assert list(told) == [rule.name for rule in RULES]
    assert told["gap"] == "the layer stops and starts again."


def test_a_sheet_is_told_of_with_what_is_on_it(
    road: Road, capsys: pytest.CaptureFixture[str]
) -> None:
    main(["sheet", "fault.dxf", "-o", "out.pdf"])
    said = "out.pdf is written: 1 fault, no doubts and no remarks in 1 drawing.\n"
    assert capsys.readouterr().out == said


def test_a_rule_is_explained_by_its_own_page(capsys: pytest.CaptureFixture[str]) -> None:
    main(["explain", "gap"])
    page = capsys.readouterr().out
    assert page.startswith("gap: ")
    assert "\nWhat to draw instead\n" in page
