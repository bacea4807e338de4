"""Sheets of several drawings as one file, by the command line and the whole road behind it."""

from pathlib import Path

import pypdf
import pytest

from enclosure_app.cli import FAULTS, UNUSABLE, main
from enclosure_app.drawing.sheet.job import SheetJob
from enclosure_app.files.project.file import save_project
from enclosure_app.files.projects import limits_of
from enclosure_app.model.edits import set_decision, sign
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.resources import sample
from enclosure_app.window.apart.orders import Order, read_order
from enclosure_app.window.judging import judge
from tests.cli.stand_ins import Road
from tests.reports.rendering import complaints

LAYERS = ["--layers", str(sample("layers.toml"))]
WALL, WINDOW = str(sample("wall-base-faulty.dxf")), str(sample("window-faulty.dxf"))


@pytest.fixture
def out(tmp_path: Path, qapp: object) -> Path:
    return tmp_path / "set.pdf"


def pages(path: Path) -> list[str]:
    assert complaints(path) == ""
    return [" ".join(page.extract_text().split()) for page in pypdf.PdfReader(path).pages]


def test_several_drawings_are_one_set_with_a_cover(
    out: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["sheet", WALL, WINDOW, "-o", str(out), "--project", "Mill", *LAYERS]) == FAULTS
    cover, *sheets = pages(out)
    assert len(sheets) == 3  # the window is drawn at its sill and at its head
    assert all(part in cover for part in ("Mill", "WALL BASE AT RAFT EDGE", "not signed"))
    assert "1 of 3" in sheets[0]
    assert "3 of 3" in sheets[2]
    assert f"{out} is written: " in capsys.readouterr().out


@pytest.mark.parametrize(
    ("typed", "count"), [([WALL], 1), ([WALL, "--cover"], 2), ([WALL, WINDOW, "--no-cover"], 3)]
)
def test_a_cover_is_there_when_it_is_asked_for(out: Path, typed: list[str], count: int) -> None:
    main(["sheet", *typed, "-o", str(out), *LAYERS])
    first, *more = pages(out)
    assert 1 + len(more) == count
    assert ("What was signed" in first) is ("--cover" in typed)


def test_a_set_with_a_drawing_that_cannot_be_used_is_not_written(
    out: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    broken = tmp_path / "broken.dxf"
    broken.write_text("no drawing", encoding="utf-8")
    assert main(["sheet", WALL, str(broken), "-o", str(out), *LAYERS]) == UNUSABLE
    assert not out.exists()
    assert "broken.dxf" in capsys.readouterr().err


def test_a_file_that_holds_no_answers_of_ours_is_refused(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "text.pdf").write_text("no PDF", encoding="utf-8")
    assert main(["replies", str(tmp_path / "text.pdf")]) == UNUSABLE
    assert "text.pdf is not a PDF that can be read" in capsys.readouterr().err


def test_a_project_is_issued_with_its_verdicts_and_who_signed(
    out: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    order = Order(
        (sample("four-sections-faulty.dxf"),), layers=sample("layers-second-office.toml")
    )
    project = read_order(order)
    project = sign(project, 1, "Ida", "2026-03-02T10:00:00+01:00")
    (found, *_) = judge(project, limits_of(project)).results[0].findings
    decided = Decision(
        found.key, State.MENDED, "Per", "2026-03-03T10:00:00+01:00", "Taped.", found.section
    )
    path = tmp_path / "four.enclosure.json"
    save_project(set_decision(project, decided), path)
    typed = ["--revision", "C", "--who", "M. Orre", "--paper", "A4", "--date", "2026-03-04"]
    assert main(["sheet", str(path), "-o", str(out), *typed]) == FAULTS
    cover, *sheets = pages(out)
    assert len(sheets) == 4
    assert "Revision C · issued by M. Orre · 2026-03-04" in cover
    assert "Mended by Per, 2026-03-03: Taped." in sheets[0]
    assert ["Ida, 2026-03-02" in sheet for sheet in sheets] == [False, True, False, False]
    main(["sheet", str(path), "-o", str(out), "--no-cover", "--project", "Mill"])
    first, *more = pages(out)
    assert len(more) == 3
    assert "Mill" in first
    capsys.readouterr()
    assert main(["sheet", str(path), WALL, "-o", str(out)]) == UNUSABLE
    assert "a project is issued alone" in capsys.readouterr().err


@pytest.mark.parametrize(
    ("typed", "inches"), [([], (17.0, 11.0)), (["--paper", "A3"], (16.5, 11.7))]
)
def test_a_project_has_the_paper_that_is_usual_for_its_units(
    out: Path, tmp_path: Path, typed: list[str], inches: tuple[float, float]
) -> None:
    path = tmp_path / "wall.enclosure.json"
    save_project(read_order(Order((Path(WALL),), layers=sample("layers.toml"))), path)
    main(["sheet", str(path), "-o", str(out), *typed])
    box = pypdf.PdfReader(out).pages[0].mediabox
    assert (float(box.width) / 72, float(box.height) / 72) == pytest.approx(inches, abs=0.05)


def test_only_a_sheet_asks_for_the_offices_own_lines(road: Road) -> None:
    main(["check", "doubt.dxf"])
    assert not road.options[-1].linework
    main(["sheet", "doubt.dxf", "-o", "out.pdf"])
    assert road.options[-1].linework


def test_the_title_block_reaches_the_sheet(road: Road, tmp_path: Path) -> None:
    path = tmp_path / "out.pdf"
    paper = ["--paper", "A4", "--scale", "1:20"]
    block = ["--project", "Boathouse", "--revision", "C", "--who", "M. Orre"]
    main(["sheet", "doubt.dxf", "-o", str(path), *paper, *block, "--date", "2026-02-03"])
    assert road.jobs == [SheetJob("A4", "1:20", "Boathouse", "C", "M. Orre", "2026-02-03")]
    assert path.read_text(encoding="utf-8") == "a sheet of doubt.dxf"


def test_a_sheet_is_told_of_with_what_is_on_it(
    road: Road, capsys: pytest.CaptureFixture[str]
) -> None:
    main(["sheet", "fault.dxf", "-o", "out.pdf"])
    said = "out.pdf is written: 1 fault, no doubts and no remarks in 1 drawing.\n"
    assert capsys.readouterr().out == said
