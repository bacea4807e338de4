"""Handing over from the window: dialogs, what is written, what is told."""

from collections.abc import Callable
from dataclasses import replace
from io import BytesIO
from pathlib import Path

import ezdxf
import openpyxl
import pytest
from bcf_api_xml import to_json
from PySide6.QtWidgets import QFileDialog
from pytestqt.qtbot import QtBot

from enclosure_app.files.project.file import save_project
from enclosure_app.model.edits import set_decision
from enclosure_app.model.said.decision import State
from enclosure_app.model.standing.verdicts import verdict_on
from enclosure_app.reports.dxf.layers import FLAGS
from enclosure_app.resources import sample
from enclosure_app.window.main_window import MainWindow
from tests.reports.decided import SILL

Opened = Callable[..., MainWindow]


def chosen(
    monkeypatch: pytest.MonkeyPatch,
    name: Path | str,
    kind: str = "",
    method: str = "getSaveFileName",
) -> list[str]:
    """Answer a file dialog, and keep what it proposed."""
    proposed: list[str] = []

    def answer(_parent: object, _title: str, folder: str, kinds: str) -> tuple[str, str]:
        proposed.append(folder)
        return str(name), kind or kinds

    monkeypatch.setattr(QFileDialog, method, answer)
    return proposed


def files(folder: Path) -> list[str]:
    """Return what was written into a folder, besides the window's own settings."""
    return sorted(each.name for each in folder.iterdir() if each.suffix != ".ini")


def flags(path: Path) -> list[str]:
    return [e.dxf.text for e in ezdxf.readfile(path).modelspace().query(f'TEXT[layer=="{FLAGS}"]')]


def test_the_offices_drawing_is_marked_beside_it(
    opened: Opened, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    window = opened()
    proposed = chosen(monkeypatch, tmp_path / "marked")
    window.do("mark_drawing")
    assert Path(proposed[0]).name == "eave-flush-faulty-marked.dxf"
    found = len(window.checking.results[0].findings)
    assert flags(tmp_path / "marked.dxf") == [str(n) for n in range(1, found + 1)]
    assert f"written: {tmp_path / 'marked.dxf'}" in window.messages.words.text()


def test_the_drawing_itself_is_not_written_over(
    opened: Opened, monkeypatch: pytest.MonkeyPatch
) -> None:
    window = opened()
    source = Path(window.document.project.source)
    before = source.read_bytes()
    chosen(monkeypatch, source)
    window.do("mark_drawing")
    assert "is the drawing itself" in window.messages.words.text()
    assert source.read_bytes() == before


def test_a_drawing_that_has_moved_is_asked_for(
    opened: Opened, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    window = opened()
    drawing = sample("eave-flush-faulty.dxf")
    project = tmp_path / "eave.enclosure.json"
    save_project(replace(window.document.project, source="gone/eave.dxf"), project)
    window.filing.open(project)
    chosen(monkeypatch, tmp_path / "marked.dxf")
    chosen(monkeypatch, "", method="getOpenFileName")
    window.do("mark_drawing")
    assert not (tmp_path / "marked.dxf").exists()
    chosen(monkeypatch, sample("ridge.dxf"), method="getOpenFileName")
    window.do("mark_drawing")
    assert "is not the drawing that was checked" in window.messages.words.text()
    chosen(monkeypatch, drawing, method="getOpenFileName")
    window.do("mark_drawing")
    assert flags(tmp_path / "marked.dxf")


@pytest.fixture
def house(opened: Opened, tmp_path: Path) -> MainWindow:
    """Return a window with two drawings open as one project, copies of samples."""
    window = opened()
    paths = [
        tmp_path / "drawings" / name for name in ("eave-flush-faulty.dxf", "ridge-faulty.dxf")
    ]
    paths[0].parent.mkdir()
    for path in paths:
        path.write_bytes(sample(path.name).read_bytes())
    window.filing.open_all([*paths, sample("layers-second-office.toml")])
    return window


def test_every_drawing_of_a_project_is_marked_in_a_folder(
    house: MainWindow, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    folder = tmp_path / "marked"
    folder.mkdir()
    asked: list[str] = []

    def answer(_parent: object, _title: str, begin: str) -> str:
        asked.append(begin)
        return str(folder)

    monkeypatch.setattr(QFileDialog, "getExistingDirectory", answer)
    house.do("mark_drawing")
    assert asked == [str(tmp_path / "drawings")]
    assert files(folder) == ["eave-flush-faulty-marked.dxf", "ridge-faulty-marked.dxf"]
    for result, name in zip(house.checking.results, files(folder), strict=True):
        assert flags(folder / name) == [str(n) for n in range(1, len(result.findings) + 1)]
    told = house.messages.words.text()
    assert "eave-flush-faulty-marked.dxf, ridge-faulty-marked.dxf" in told
    monkeypatch.setattr(QFileDialog, "getExistingDirectory", lambda *_: "")
    (folder / "ridge-faulty-marked.dxf").unlink()
    house.do("mark_drawing")
    assert files(folder) == ["eave-flush-faulty-marked.dxf"]


def test_the_one_of_several_that_has_moved_is_asked_for_by_its_name(
    house: MainWindow, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    moved = tmp_path / "ridge.dxf"
    (tmp_path / "drawings" / "ridge-faulty.dxf").rename(moved)
    titles: list[str] = []

    def answer(_parent: object, title: str, *_: str) -> tuple[str, str]:
        titles.append(title)
        return str(moved), ""

    monkeypatch.setattr(QFileDialog, "getOpenFileName", answer)
    monkeypatch.setattr(QFileDialog, "getExistingDirectory", lambda *_: str(tmp_path))
    house.do("mark_drawing")
    assert titles == ["Where is ridge-faulty.dxf, which is to be marked?"]
    assert flags(tmp_path / "ridge-marked.dxf")


@pytest.mark.parametrize(
    ("typed", "kind", "written"),
    [
        ("found", "", "found.xlsx"),
        ("found", "The findings alone (*.csv)", "found.csv"),
        ("a.csv", "", "a.csv"),
    ],
)
def test_a_table_is_a_workbook_or_csv_as_was_chosen(
    asking: Callable[[str, str, str], MainWindow],
    tmp_path: Path,
    typed: str,
    kind: str,
    written: str,
) -> None:
    window = asking("write_table", typed, kind)
    assert files(tmp_path) == [written]
    assert written in window.messages.words.text()


@pytest.fixture
def asking(
    opened: Opened, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> Callable[[str, str, str], MainWindow]:
    """Return a function that does an action and answers its dialog."""

    def do(action: str, typed: str, kind: str) -> MainWindow:
        window = opened()
        chosen(monkeypatch, tmp_path / typed, kind)
        window.do(action)
        return window

    return do


def test_verdicts_and_photographs_go_with_the_table(opened: Opened, tmp_path: Path) -> None:
    window = opened()
    finding = window.checking.results[0].findings[0]
    project = replace(window.document.project, photographs={SILL.key: SILL})
    verdict = verdict_on(finding, State.MENDED, "Ida", "2026-03-02T10:15:00+02:00", "done")
    project = set_decision(project, replace(verdict, photographs=(SILL.key,)))
    window.document.apply("Decide", project)
    window.commands.handing_over.write_table_to(tmp_path / "found.xlsx")
    head, first, *_ = openpyxl.load_workbook(tmp_path / "found.xlsx")["Findings"].iter_rows(
        values_only=True
    )
    row = dict(zip(head, first, strict=True))
    assert (row["Verdict"], row["By whom"], row["Photographs"]) == (
        "Mended",
        "Ida",
        "IMG_0042.jpg",
    )
    assert (tmp_path / "found-photographs" / "IMG_0042.jpg").read_bytes() == SILL.data
    assert "found-photographs" in window.messages.words.text()


def test_the_coordinators_file_holds_every_finding(
    opened: Opened, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    window = opened()
    chosen(monkeypatch, tmp_path / "found")
    window.do("write_bcf")
    topics = to_json(BytesIO((tmp_path / "found.bcf").read_bytes()))
    assert [t["description"].split(".")[0] for t in topics] == [
        f.message.split(".")[0] for f in window.checking.results[0].findings
    ]


@pytest.mark.parametrize("action", ["mark_drawing", "write_table", "write_bcf"])
def test_a_dialog_that_is_left_writes_nothing(
    opened: Opened, monkeypatch: pytest.MonkeyPatch, tmp_path: Path, action: str
) -> None:
    window = opened()
    monkeypatch.chdir(tmp_path)
    chosen(monkeypatch, "")
    window.do(action)
    assert files(tmp_path) == []


@pytest.mark.parametrize("write", ["write_table_to", "write_bcf_to"])
def test_what_cannot_be_written_is_told(opened: Opened, tmp_path: Path, write: str) -> None:
    window = opened()
    getattr(window.commands.handing_over, write)(tmp_path / "no" / "out.xlsx")
    assert "cannot be written" in window.messages.words.text()


def test_writing_goes_on_in_a_thread_of_its_own(
    opened: Opened, qtbot: QtBot, tmp_path: Path
) -> None:
    window = opened()
    window.working.apart = True
    window.commands.handing_over.write_bcf_to(tmp_path / "found.bcf")
    assert [job.words for job in window.working.jobs] == ["Writing found.bcf"]
    qtbot.waitUntil((tmp_path / "found.bcf").exists, timeout=20_000)
    qtbot.waitUntil(lambda: "found.bcf" in window.messages.words.text(), timeout=5_000)
