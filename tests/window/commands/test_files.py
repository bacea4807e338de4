"""What File in the menu does."""

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QDesktopServices
from PySide6.QtWidgets import QFileDialog
from pytestqt.qtbot import QtBot

from enclosure_app.files.project.file import SUFFIX, load_project
from enclosure_app.model.edits import remove_pieces
from enclosure_app.resources import sample
from enclosure_app.window.filing.printing import Preview
from enclosure_app.window.main_window import MainWindow

Opened = Callable[..., MainWindow]


def cut(window: MainWindow) -> None:
    project = window.document.project
    name = project.sections[0].pieces[0].name
    window.document.apply("Delete", remove_pieces(project, 0, [name]))


def chosen(monkeypatch: pytest.MonkeyPatch, method: str, *names: Path) -> list[str]:
    """Answer a file dialog, and keep what it proposed."""
    proposed: list[str] = []

    def answer(_parent: object, _title: str, folder: str, kinds: str) -> tuple[object, str]:
        proposed.append(folder)
        told = [str(name) for name in names]
        return (told if method.endswith("s") else told[0]), kinds

    monkeypatch.setattr(QFileDialog, method, answer)
    return proposed


def test_several_drawings_are_opened_from_the_dialog(
    window: MainWindow, monkeypatch: pytest.MonkeyPatch
) -> None:
    chosen(monkeypatch, "getOpenFileNames", sample("ridge.dxf"), sample("parapet.dxf"))
    window.do("open_file")
    assert [s.name for s in window.document.project.sections] == ["ridge", "parapet"]


def test_saving_what_was_never_saved_asks_where_and_proposes_a_name(
    opened: Opened, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    window = opened()
    cut(window)
    proposed = chosen(monkeypatch, "getSaveFileName", tmp_path / "mine")
    window.do("save")
    assert proposed[0].endswith(f"eave-flush-faulty{SUFFIX}")
    kept = tmp_path / f"mine{SUFFIX}"
    assert load_project(kept).sections == window.document.project.sections
    assert window.document.path == kept
    assert not window.document.modified


def test_saving_first_goes_on_only_once_it_is_saved(
    opened: Opened, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    window = opened()
    cut(window)
    chosen(monkeypatch, "getSaveFileName", tmp_path / "no" / "such" / "folder")
    window.do("new_sheet")
    save = window.messages.answers.itemAt(0).widget()
    qtbot.mouseClick(save, Qt.MouseButton.LeftButton)
    assert window.document.project.source.endswith("eave-flush-faulty.dxf")
    assert "cannot be written" in window.messages.words.text()
    chosen(monkeypatch, "getSaveFileName", tmp_path / "there")
    window.do("new_sheet")
    qtbot.mouseClick(window.messages.answers.itemAt(0).widget(), Qt.MouseButton.LeftButton)
    assert window.document.project.source == ""
    assert (tmp_path / f"there{SUFFIX}").exists()


def test_a_sheet_that_cannot_be_written_is_told(opened: Opened, tmp_path: Path) -> None:
    window = opened()
    window.commands.files.write_pdf_to(tmp_path / "no" / "sheet.pdf")
    assert "cannot be written" in window.messages.words.text()


def test_an_empty_sheet_of_paper_has_nothing_to_write(window: MainWindow, tmp_path: Path) -> None:
    window.do("new_sheet")
    window.commands.files.write_pdf_to(tmp_path / "sheet.pdf")
    assert "no section to draw" in window.messages.words.text()
    assert list(tmp_path.glob("*.pdf")) == []


def test_the_preview_shows_the_sheets(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    window.do("preview")
    preview = window.findChild(Preview)
    assert preview is not None
    qtbot.waitUntil(preview.isVisible)
    picture = preview.grab().toImage()
    darks = [
        picture.pixelColor(x, y).lightness() < 80
        for x in range(60, picture.width() - 60, 2)
        for y in range(120, picture.height() - 40, 2)
    ]
    assert any(darks)
    preview.close()


def test_the_sheet_is_proposed_beside_what_is_open_and_ends_in_pdf(
    opened: Opened, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    window = opened()
    proposed = chosen(monkeypatch, "getSaveFileName", tmp_path / "sheet")
    window.do("write_pdf")
    assert proposed == [str(sample("eave-flush-faulty.dxf").with_suffix(".pdf"))]
    assert (tmp_path / "sheet.pdf").read_bytes().startswith(b"%PDF")
    chosen(monkeypatch, "getSaveFileName", tmp_path / f"mine{SUFFIX}")
    window.do("save_as")
    proposed = chosen(monkeypatch, "getSaveFileName", tmp_path / "other.pdf")
    window.do("write_pdf")
    assert proposed == [str(tmp_path / "mine.pdf")]


def test_a_sheet_that_was_written_can_be_opened_at_once(
    opened: Opened, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    seen: list[str] = []
    monkeypatch.setattr(QDesktopServices, "openUrl", lambda url: seen.append(url.toLocalFile()))
    window = opened()
    window.commands.files.write_pdf_to(tmp_path / "a sheet.pdf")
    assert window.messages.words.text() == f"The sheet is written: {tmp_path / 'a sheet.pdf'}"
    button = window.messages.answers.itemAt(0).widget()
    assert button.text() == "Open it"
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    assert seen == [str(tmp_path / "a sheet.pdf")]
    assert not window.messages.isVisible()


def test_the_form_of_the_sheets_is_about_what_is_open_now(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    window.do("set_up_sheets")
    form = window.commands.files.sheets
    assert form is not None
    qtbot.keyClicks(form.revision, "B")
    first = window.document.project.id
    assert window.settings.sheets(first).revision == "B"
    window.filing.open_sample("ridge.dxf", "layers-second-office.toml")
    assert form.revision.text() == ""
    qtbot.keyClicks(form.who, "Ida")
    assert window.settings.sheets(window.document.project.id).revision == ""
