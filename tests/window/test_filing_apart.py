"""Opening and saving as they really are: beside the window, which goes on meanwhile."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QPushButton
from pytestqt.qtbot import QtBot

from enclosure_app.files.project.file import SUFFIX, load_project
from enclosure_app.model.edits import remove_pieces
from enclosure_app.resources import sample
from enclosure_app.window.apart.working import Lane
from enclosure_app.window.main_window import MainWindow
from enclosure_app.window.settings import Settings

LONG = 60_000


@pytest.fixture
def apart(settings: Settings, qtbot: QtBot) -> Iterator[MainWindow]:
    """Return a window as it really works, with a sample open."""
    window = MainWindow(settings)
    qtbot.addWidget(window)
    window.show()
    window.filing.open_sample("eave-flush-faulty.dxf", "layers-second-office.toml")
    qtbot.waitUntil(lambda: bool(window.document.project.sections), timeout=LONG)
    qtbot.waitUntil(lambda: window.checking.current, timeout=LONG)
    yield window
    window.commands.files.leave()


def cut(window: MainWindow) -> None:
    project = window.document.project
    name = project.sections[0].pieces[0].name
    window.document.apply("Delete", remove_pieces(project, 0, [name]))


def answer(window: MainWindow, text: str) -> QPushButton:
    row = window.messages.answers
    buttons = [row.itemAt(i).widget() for i in range(row.count())]
    return next(b for b in buttons if isinstance(b, QPushButton) and b.text() == text)


def test_cancel_leaves_everything_as_it_was(apart: MainWindow, large: Path, qtbot: QtBot) -> None:
    before, recent = apart.document.project, apart.settings.recent
    apart.filing.open(large)
    qtbot.waitUntil(apart.views.working.isVisible, timeout=LONG)
    assert apart.views.working.words.text().startswith("Reading large.dxf…")
    qtbot.mouseClick(apart.views.working.cancel, Qt.MouseButton.LeftButton)
    assert not apart.views.working.isVisible()
    qtbot.wait(300)
    assert apart.document.project is before
    assert apart.settings.recent == recent
    assert not apart.messages.isVisible()
    apart.filing.open(sample("ridge.dxf"))
    qtbot.waitUntil(lambda: apart.document.project.source.endswith("ridge.dxf"), timeout=LONG)


def test_escape_over_the_drawing_cancels_too(apart: MainWindow, large: Path, qtbot: QtBot) -> None:
    before = apart.document.project
    apart.filing.open(large)
    qtbot.waitUntil(apart.views.working.isVisible, timeout=LONG)
    apart.activateWindow()
    apart.canvas.setFocus()
    qtbot.keyClick(apart.canvas, Qt.Key.Key_Escape)
    qtbot.waitUntil(lambda: apart.working.jobs == (), timeout=LONG)
    assert apart.document.project is before


def test_a_second_wish_takes_the_place_of_the_first(
    apart: MainWindow, large: Path, qtbot: QtBot
) -> None:
    opened: list[str] = []
    apart.filing.opened.connect(lambda: opened.append(apart.document.project.source))
    apart.filing.open(large)
    apart.filing.open(sample("parapet.dxf"))
    qtbot.waitUntil(lambda: apart.working.jobs == (), timeout=LONG)
    assert [Path(source).name for source in opened] == ["parapet.dxf"]


def test_what_is_drawn_while_a_file_is_read_is_asked_about(
    apart: MainWindow, qtbot: QtBot
) -> None:
    apart.filing.open(sample("parapet.dxf"))
    cut(apart)
    changed = apart.document.project
    qtbot.waitUntil(lambda: apart.working.jobs == (), timeout=LONG)
    assert apart.document.project is changed
    assert "not kept yet" in apart.messages.words.text()
    qtbot.mouseClick(answer(apart, "Go on without saving"), Qt.MouseButton.LeftButton)
    assert apart.document.project.source.endswith("parapet.dxf")


def test_what_is_drawn_while_it_is_saved_is_still_to_be_saved(
    apart: MainWindow, qtbot: QtBot, tmp_path: Path
) -> None:
    kept = tmp_path / f"eave{SUFFIX}"
    cut(apart)
    apart.document.path = kept
    saved = apart.document.project
    apart.filing.save()
    cut(apart)
    qtbot.waitUntil(lambda: not apart.working.busy(Lane.KEEPING), timeout=LONG)
    assert load_project(kept).sections == saved.sections
    assert apart.document.modified
    apart.filing.save()
    qtbot.waitUntil(lambda: not apart.document.modified, timeout=LONG)
    assert load_project(kept).sections == apart.document.project.sections


def test_closing_while_it_is_saved_closes_when_it_is_saved(
    apart: MainWindow, qtbot: QtBot, tmp_path: Path
) -> None:
    kept = tmp_path / f"eave{SUFFIX}"
    cut(apart)
    apart.document.path = kept
    wanted = apart.document.project
    apart.filing.save()
    apart.close()
    qtbot.waitUntil(apart.isHidden, timeout=LONG)
    assert load_project(kept).sections == wanted.sections


def test_closing_while_a_file_is_read_closes_at_once(
    apart: MainWindow, large: Path, qtbot: QtBot
) -> None:
    apart.filing.open(large)
    qtbot.wait(100)
    assert apart.close()
    assert apart.working.jobs == ()
    assert apart.isHidden()


def test_saving_another_project_does_not_name_the_one_that_was_opened_since(
    apart: MainWindow, qtbot: QtBot, tmp_path: Path
) -> None:
    kept = tmp_path / f"eave{SUFFIX}"
    apart.document.path = kept
    cut(apart)
    saved = apart.document.project
    apart.filing.save()
    apart.filing.new_sheet()
    qtbot.waitUntil(lambda: not apart.working.busy(Lane.KEEPING), timeout=LONG)
    assert load_project(kept).sections == saved.sections
    assert apart.document.path is None


def test_the_sheet_is_written_beside_the_window_and_said(
    apart: MainWindow, qtbot: QtBot, tmp_path: Path
) -> None:
    apart.commands.files.write_pdf_to(tmp_path / "eave.pdf")
    assert not (tmp_path / "eave.pdf").exists(), "it is written meanwhile"
    qtbot.waitUntil(lambda: "is written" in apart.messages.words.text(), timeout=LONG)
    assert (tmp_path / "eave.pdf").read_bytes().startswith(b"%PDF")
