"""Sheets of several drawings as one file, by the command line and the whole road behind it."""

from pathlib import Path

import pypdf
import pytest

from enclosure_app.cli import FAULTS, NOTHING_WRONG, UNUSABLE, main
from enclosure_app.drawing.sheet.job import SheetJob
from enclosure_app.files.replies.names import named
from enclosure_app.resources import sample
from tests.cli.stand_ins import Road
from tests.files.pdf_reviewer import Reviewer
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


def test_what_a_reviewer_answers_is_told_and_nothing_is_taken_over(
    out: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    main(["sheet", WALL, "-o", str(out), *LAYERS])
    reviewer = Reviewer(out)
    first = reviewer.writer.pages[0]["/Annots"][0].get_object()
    about = named(first["/NM"])
    assert about is not None
    reviewer.state(about.about.key, "Zoë", "Completed")
    back = reviewer.saved(tmp_path / "back.pdf")
    capsys.readouterr()
    assert main(["replies", str(back)]) == NOTHING_WRONG
    told = capsys.readouterr().out
    assert told.startswith("WALL BASE AT RAFT EDGE (wall-base-faulty.dxf)\n")
    assert "Mended by Zoë, 2026-12-01 09:30 (UTC+01:00)" in told
    assert told.endswith("1 answer: 1 with a verdict, 0 not sure. Nothing was taken over.\n")


def test_a_file_that_holds_no_answers_of_ours_is_refused(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "text.pdf").write_text("no PDF", encoding="utf-8")
    assert main(["replies", str(tmp_path / "text.pdf")]) == UNUSABLE
    assert "text.pdf is not a PDF that can be read" in capsys.readouterr().err


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
