"""Work that is not saved outlives a crash."""

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.files.autosave import autosave_path
from enclosure_app.files.lock import lock_path
from enclosure_app.files.project_file import SUFFIX, save_project
from enclosure_app.model.edits import remove_pieces
from enclosure_app.window.main_window import MainWindow
from enclosure_app.window.settings import Settings

Opened = Callable[..., MainWindow]


def cut(window: MainWindow) -> None:
    project = window.document.project
    after = remove_pieces(project, 0, [project.sections[0].pieces[0].name])
    window.document.apply("Delete", after)


def test_what_was_never_saved_is_offered_after_a_crash(
    opened: Opened, settings: Settings, qtbot: QtBot
) -> None:
    window = opened()
    cut(window)
    window.keeping.copy()
    changed = window.document.project
    again = MainWindow(settings)  # the first one has not ended as it should
    qtbot.addWidget(again)
    again.show()
    assert "before the work of" in again.messages.words.text()
    qtbot.mouseClick(again.messages.answers.itemAt(0).widget(), Qt.MouseButton.LeftButton)
    assert again.document.project.sections == changed.sections
    assert again.document.modified
    again.commands.files.leaving = True


def test_closing_leaves_nothing_to_be_recovered(opened: Opened, settings: Settings) -> None:
    window = opened()
    cut(window)
    window.keeping.copy()
    copy = autosave_path(settings.folder / f"unsaved{SUFFIX}")
    assert copy.exists()
    window.commands.files.leave()
    assert not copy.exists()


def test_saving_throws_the_copy_away_and_keeps_the_lock(opened: Opened, tmp_path: Path) -> None:
    window = opened()
    kept = tmp_path / f"eave{SUFFIX}"
    save_project(window.document.project, kept)
    window.filing.open(kept)
    assert lock_path(kept).exists()
    cut(window)
    window.keeping.copy()
    assert autosave_path(kept).exists()
    assert window.filing.save()
    assert not autosave_path(kept).exists()
    window.close()
    assert not lock_path(kept).exists()


def test_a_copy_is_made_some_time_after_a_change(opened: Opened, settings: Settings) -> None:
    window = opened()
    timer = window.keeping._timer  # noqa: SLF001
    window.keeping.copy()
    copy = autosave_path(settings.folder / f"unsaved{SUFFIX}")
    assert not timer.isActive()
    assert not copy.exists()
    cut(window)
    assert timer.isActive()
    timer.timeout.emit()
    assert copy.exists()
