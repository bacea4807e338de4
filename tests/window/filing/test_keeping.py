"""Work that is not saved outlives a crash; what somebody else has open is told."""

import json
import subprocess
import sys
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QPushButton
from pytestqt.qtbot import QtBot

from enclosure_app.files.project.autosave import autosave_path, find_recovery
from enclosure_app.files.project.file import SUFFIX, load_project, save_project
from enclosure_app.files.project.lock import lock_path
from enclosure_app.model.edits import remove_pieces
from enclosure_app.resources import sample
from enclosure_app.window.apart.working import Lane, Working
from enclosure_app.window.main_window import MainWindow
from enclosure_app.window.settings import Settings

Opened = Callable[..., MainWindow]
CRASHING = Path(__file__).with_name("crashing.py")


def cut(window: MainWindow) -> None:
    project = window.document.project
    after = remove_pieces(project, 0, [project.sections[0].pieces[0].name])
    window.document.apply("Delete", after)


def answers(window: MainWindow) -> dict[str, QPushButton]:
    row = window.messages.answers
    buttons = [row.itemAt(i).widget() for i in range(row.count())]
    return {button.text(): button for button in buttons if isinstance(button, QPushButton)}


def unsaved(settings: Settings, number: int = 1) -> Path:
    return settings.folder / f"unsaved-{number}{SUFFIX}"


@pytest.fixture
def crash(settings: Settings, tmp_path: Path) -> Callable[[Path], None]:
    """Return a function that draws in a file and lets the program die without saving it."""

    def die(path: Path) -> None:
        ran = subprocess.run(
            [sys.executable, CRASHING, str(tmp_path / "settings.ini"), str(path)],
            capture_output=True, text=True, check=False, timeout=120,
        )  # fmt: skip
        assert ran.returncode == 9, ran.stderr

    return die


@pytest.fixture
def begun(settings: Settings, qtbot: QtBot) -> Iterator[Callable[[], MainWindow]]:
    """Return a function that starts the program anew."""
    made = []

    def begin() -> MainWindow:
        window = MainWindow(settings, Working(apart=False))
        qtbot.addWidget(window)
        window.show()
        made.append(window)
        return window

    yield begin
    for window in made:
        window.commands.files.leave()


def test_what_was_never_saved_is_offered_after_a_crash(
    crash: Callable[[Path], None],
    begun: Callable[[], MainWindow],
    settings: Settings,
    qtbot: QtBot,
) -> None:
    crash(sample("ridge.dxf"))
    window = begun()
    assert "before the work of" in window.messages.words.text()
    qtbot.mouseClick(answers(window)["Take it up again"], Qt.MouseButton.LeftButton)
    assert window.document.project.source.endswith("ridge.dxf")
    assert window.document.modified
    assert find_recovery(unsaved(settings)) is not None, "it is kept until it is saved"


def test_what_is_thrown_away_is_not_offered_again(
    crash: Callable[[Path], None],
    begun: Callable[[], MainWindow],
    settings: Settings,
    qtbot: QtBot,
) -> None:
    crash(sample("ridge.dxf"))
    window = begun()
    qtbot.mouseClick(answers(window)["Throw it away"], Qt.MouseButton.LeftButton)
    assert not autosave_path(unsaved(settings)).exists()
    assert not begun().messages.isVisible()


def test_unsaved_work_on_a_project_is_offered_when_it_is_opened_again(
    opened: Opened,
    crash: Callable[[Path], None],
    begun: Callable[[], MainWindow],
    qtbot: QtBot,
    tmp_path: Path,
) -> None:
    kept = tmp_path / f"eave{SUFFIX}"
    project = opened().document.project
    save_project(project, kept)
    crash(kept)
    window = begun()
    window.filing.open(kept)
    assert len(window.document.project.sections[0].pieces) == len(project.sections[0].pieces)
    qtbot.mouseClick(answers(window)["Take it up again"], Qt.MouseButton.LeftButton)
    assert len(window.document.project.sections[0].pieces) == len(project.sections[0].pieces) - 1
    window.filing.save()
    assert not autosave_path(kept).exists()
    assert load_project(kept).sections == window.document.project.sections


def test_another_window_that_runs_keeps_its_own_unsaved_work(
    opened: Opened, begun: Callable[[], MainWindow], settings: Settings
) -> None:
    first = opened()
    cut(first)
    first.keeping.copy()
    assert autosave_path(unsaved(settings)).exists()
    second = begun()
    assert not second.messages.isVisible(), "it is no crash that the first window runs"
    second.filing.open(sample("parapet.dxf"))
    cut(second)
    second.keeping.copy()
    first.keeping.copy()
    one, other = (find_recovery(unsaved(settings, number)) for number in (1, 2))
    assert one is not None
    assert other is not None
    assert one.load().sections == first.document.project.sections
    assert other.load().sections == second.document.project.sections


def test_closing_leaves_nothing_to_be_recovered(opened: Opened, settings: Settings) -> None:
    window = opened()
    cut(window)
    window.keeping.copy()
    copy = autosave_path(unsaved(settings))
    assert copy.exists()
    window.commands.files.leave()
    assert not copy.exists()
    assert not lock_path(unsaved(settings)).exists()


def test_saving_throws_the_copy_away_and_keeps_the_lock(opened: Opened, tmp_path: Path) -> None:
    window = opened()
    kept = tmp_path / f"eave{SUFFIX}"
    save_project(window.document.project, kept)
    window.filing.open(kept)
    assert lock_path(kept).exists()
    cut(window)
    window.keeping.copy()
    assert autosave_path(kept).exists()
    window.filing.save()
    assert not autosave_path(kept).exists()
    window.close()
    assert not lock_path(kept).exists()


def test_a_copy_is_made_some_time_after_a_change(opened: Opened, settings: Settings) -> None:
    window = opened()
    timer = window.keeping._timer  # noqa: SLF001
    window.keeping.copy()
    copy = autosave_path(unsaved(settings))
    assert not timer.isActive()
    assert not copy.exists()
    cut(window)
    assert timer.isActive()
    timer.timeout.emit()
    assert copy.exists()


def test_a_copy_that_is_still_written_when_the_work_is_saved_does_not_outlive_it(
    settings: Settings, qtbot: QtBot, tmp_path: Path
) -> None:
    """Copying and saving take their turns in one lane, so the copy is thrown away last."""
    window = MainWindow(settings)
    qtbot.addWidget(window)
    kept = tmp_path / f"ridge{SUFFIX}"
    window.filing.open(sample("ridge.dxf"))
    qtbot.waitUntil(lambda: bool(window.document.project.sections), timeout=20_000)
    cut(window)
    window.document.path = kept
    window.keeping.copy()
    window.filing.save()
    qtbot.waitUntil(lambda: not window.document.modified, timeout=10_000)
    qtbot.waitUntil(lambda: not window.working.busy(Lane.KEEPING), timeout=10_000)
    assert kept.exists()
    assert not autosave_path(kept).exists()
    window.close()


@pytest.fixture
def held(opened: Opened, tmp_path: Path) -> Path:
    """Return a project that somebody has open on another computer."""
    kept = tmp_path / f"eave{SUFFIX}"
    save_project(opened().document.project, kept)
    holder = {"who": "Ines", "host": "drawing-office-7", "pid": 41, "since": "2026-03-02T08:15:00"}
    lock_path(kept).write_text(json.dumps(holder), encoding="utf-8")
    return kept


def test_a_project_that_somebody_has_open_is_a_copy_unless_it_is_said_otherwise(
    window: MainWindow, held: Path, qtbot: QtBot
) -> None:
    window.filing.open(held)
    assert "Ines on drawing-office-7 since 2026-03-02 08:15" in window.messages.words.text()
    assert window.document.project.sections
    assert window.document.path is None, "saving asks where to, so nobody's work is written over"
    qtbot.mouseClick(answers(window)["Work on a copy"], Qt.MouseButton.LeftButton)
    assert window.document.path is None
    assert json.loads(lock_path(held).read_text(encoding="utf-8"))["who"] == "Ines"


def test_whoever_knows_what_they_do_works_on_it_all_the_same(
    window: MainWindow, held: Path, qtbot: QtBot
) -> None:
    window.filing.open(held)
    qtbot.mouseClick(answers(window)["Work on it all the same"], Qt.MouseButton.LeftButton)
    assert window.document.path == held
    assert json.loads(lock_path(held).read_text(encoding="utf-8"))["who"] != "Ines"
    assert "tell them before you save" in window.messages.words.text()
