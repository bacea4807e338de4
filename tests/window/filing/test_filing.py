"""Opening and saving."""

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.model.edits import remove_pieces
from enclosure_app.resources import sample
from enclosure_app.window.main_window import MainWindow

Opened = Callable[..., MainWindow]


def test_what_is_saved_opens_again_as_it_was(opened: Opened, tmp_path: Path) -> None:
    window = opened()
    project = window.document.project
    name = project.sections[0].pieces[0].name
    window.document.apply("Delete", remove_pieces(project, 0, [name]))
    changed = window.document.project
    kept = tmp_path / "eave.enclosure.json"
    window.document.path = kept
    window.filing.save()
    assert not window.document.modified
    window.filing.open_sample("parapet.dxf", "layers-second-office.toml")
    window.filing.open(kept)
    assert window.document.project.sections == changed.sections
    assert window.document.path == kept
    assert str(kept.resolve()) in window.settings.recent


def test_a_ready_made_part_begins_a_project_and_another_is_added(
    window: MainWindow, qtbot: QtBot
) -> None:
    window.parts.begin("eave")
    window.parts.begin("eave")
    names = [section.name for section in window.document.project.sections]
    assert names == ["Eave", "Eave 2"]
    assert window.place.index == 1
    # the tabs come with the check's answer, which a busy machine gives later
    qtbot.waitUntil(lambda: window.views.sections.tabText(1) == "Eave 2", timeout=5000)
    assert window.findings.model.rows == ()


def test_unsaved_work_is_asked_about_before_something_else_is_opened(
    opened: Opened, qtbot: QtBot
) -> None:
    window = opened()
    project = window.document.project
    window.document.apply(
        "Delete", remove_pieces(project, 0, [project.sections[0].pieces[0].name])
    )
    window.do("new_sheet")
    assert "not kept yet" in window.messages.words.text()
    assert window.document.project.source.endswith("eave-flush-faulty.dxf")
    button = window.messages.answers.itemAt(1).widget()
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    assert window.document.project.source == ""


def test_a_folder_that_refuses_is_told_and_nothing_is_said_to_be_saved(
    opened: Opened, tmp_path: Path
) -> None:
    window = opened()
    window.document.path = tmp_path / "no" / "such" / "x.enclosure.json"
    window.filing.save()
    assert window.messages.isVisible()
    assert window.document.path is None or not window.document.path.exists()


def test_a_recent_file_that_is_gone_is_told_and_forgotten(
    window: MainWindow, tmp_path: Path
) -> None:
    copy = tmp_path / "moved.dxf"
    copy.write_bytes(sample("ridge.dxf").read_bytes())
    window.filing.open(copy)
    copy.unlink()
    window.filing.recent.aboutToShow.emit()
    (action, *_) = window.filing.recent.actions()
    assert "not there any more" in action.text()
    action.trigger()
    assert "moved.dxf is not in" in window.messages.words.text()
    assert window.settings.recent == []


def test_a_project_of_a_newer_program_is_refused_and_what_is_open_stays(
    opened: Opened, tmp_path: Path
) -> None:
    window = opened()
    before = window.document.project
    newer = tmp_path / "newer.enclosure.json"
    newer.write_text('{"format": 99}', encoding="utf-8")
    window.filing.open(newer)
    assert "saved by a newer version (format 99)" in window.messages.words.text()
    assert window.document.project is before
