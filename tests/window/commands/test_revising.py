"""A revised drawing over the open one: read, looked at, laid over as one step, undone."""

from collections.abc import Callable
from pathlib import Path
from shutil import copy

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFileDialog, QPushButton
from pytestqt.qtbot import QtBot

from enclosure_app.model import edits
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.model.said.remark import Remark
from enclosure_app.model.standing.verdicts import verdicts_in
from enclosure_app.resources import sample
from enclosure_app.window.main_window import MainWindow

Opened = Callable[..., MainWindow]
LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def shown(opened: Opened, qtbot: QtBot) -> MainWindow:
    """A window in which something was said of a drawing."""
    window = opened()
    qtbot.waitUntil(lambda: window.findings.model.total == 3)
    finding = window.checking.results[0].findings[0]
    said = Decision(finding.key, State.ACCEPTED, "Ida", "2026-03-02T10:15:00+02:00", "Dry.",
                    finding.section, finding.message)  # fmt: skip
    window.document.apply("said", edits.set_decision(window.document.project, said))
    return window


@pytest.fixture
def same(tmp_path: Path) -> Path:
    """The drawing as the office sent it again, with nothing changed."""
    return Path(copy(sample("eave-flush-faulty.dxf"), tmp_path / "eave-flush-faulty-rev-B.dxf"))


def test_what_was_said_stays_with_its_finding_and_all_is_undone_as_one_step(
    shown: MainWindow, same: Path, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    before = shown.document.project
    monkeypatch.setattr(QFileDialog, "getOpenFileNames", lambda *_: ([str(same)], ""))
    shown.do("lay_over")
    dialog = shown.commands.revising.shown
    assert dialog is not None
    assert dialog.isVisible()
    assert shown.document.project is before  # nothing is laid over by itself
    qtbot.mouseClick(dialog.bar.take, LEFT)
    assert not dialog.isVisible()
    after = shown.document.project
    assert Path(after.source).name == same.name
    assert after.revision != before.revision
    section = after.sections[0].name
    assert [d.state for d in verdicts_in(after, section).values()] == [State.ACCEPTED]
    assert shown.document.undo_stack.undoText() == "Lay a revised drawing over"
    shown.document.undo_stack.undo()
    assert shown.document.project is before


def test_leaving_it_changes_nothing(shown: MainWindow, same: Path, qtbot: QtBot) -> None:
    before = shown.document.project
    shown.commands.revising.lay_over_from((same,))
    dialog = shown.commands.revising.shown
    assert dialog is not None
    qtbot.mouseClick(dialog.bar.leave, LEFT)
    assert not dialog.isVisible()
    assert shown.document.project is before


def test_what_changed_meanwhile_is_compared_again(
    shown: MainWindow, same: Path, qtbot: QtBot
) -> None:
    shown.commands.revising.lay_over_from((same,))
    dialog = shown.commands.revising.shown
    assert dialog is not None
    edited = edits.rename_section(shown.document.project, 0, "Eave")
    shown.document.apply("name", edited)
    qtbot.mouseClick(dialog.bar.take, LEFT)
    assert shown.document.project is edited
    assert dialog.isVisible()
    assert "changed meanwhile" in shown.messages.words.text()
    qtbot.mouseClick(dialog.bar.take, LEFT)
    assert Path(shown.document.project.source).name == same.name


def test_a_drawing_that_is_clearly_a_revision_is_asked_about(
    shown: MainWindow, same: Path, qtbot: QtBot
) -> None:
    before = shown.document.project
    shown.open_files([same])
    assert "looks like a revision" in shown.messages.words.text()
    assert shown.document.project is before
    buttons = {b.text(): b for b in shown.messages.findChildren(QPushButton)}
    assert "Open it by itself" in buttons
    qtbot.mouseClick(buttons["Lay it over"], LEFT)
    dialog = shown.commands.revising.shown
    assert dialog is not None
    assert dialog.isVisible()


def test_another_drawing_is_opened_without_a_question(shown: MainWindow) -> None:
    assert not shown.commands.revising.offer([sample("ridge.dxf")])
    assert not shown.commands.revising.offer([sample("eave-flush.dxf"), sample("ridge.dxf")])


def test_a_revision_under_any_name_is_known_by_what_is_drawn_and_asked_about(
    shown: MainWindow, same: Path, qtbot: QtBot
) -> None:
    before = shown.document.project
    other = Path(copy(same, same.with_name("2604-17.dxf")))
    shown.document.saved(same.with_suffix(".enclosure.json"))
    shown.open_files([other])
    assert shown.messages.words.text().startswith("Most of what is open is drawn in 2604-17.dxf")
    assert shown.document.project is before
    buttons = {b.text(): b for b in shown.messages.findChildren(QPushButton)}
    qtbot.mouseClick(buttons["Open it by itself"], LEFT)
    assert Path(shown.document.project.source).name == other.name
    assert shown.document.project.decisions == ()


def test_opening_it_by_itself_does_not_throw_away_what_was_drawn_since(
    shown: MainWindow, tmp_path: Path, qtbot: QtBot
) -> None:
    shown.filing.open_all([Path(copy(sample("eave-flush-faulty.dxf"), tmp_path / "2604-17.dxf"))])
    own = next(b for b in shown.messages.findChildren(QPushButton) if "by itself" in b.text())
    project = shown.document.project
    name = project.sections[0].pieces[0].name
    drawn = edits.remove_pieces(project, 0, [name])
    shown.document.apply("Delete", drawn)
    qtbot.mouseClick(own, LEFT)
    assert shown.document.project is drawn
    assert shown.messages.words.text().startswith("What you changed since the last save")


def test_a_drawing_that_shares_some_details_is_asked_about_as_doubtful(
    opened: Opened, qtbot: QtBot
) -> None:
    window = opened("four-sections-faulty.dxf")
    section = window.document.project.sections[0]
    said = Remark("gap:x", "Ida", "2026-03-02T10:15:00+02:00", "Dry.", section.name)
    window.document.apply("said", edits.add_remark(window.document.project, said))
    window.document.saved(Path("a.enclosure.json"))
    window.open_files([sample("eave-flush.dxf")])
    told = "Some of what is open is drawn in eave-flush.dxf"
    assert window.messages.words.text().startswith(told)
    buttons = {b.text(): b for b in window.messages.findChildren(QPushButton)}
    qtbot.mouseClick(buttons["Lay it over"], LEFT)
    dialog = window.commands.revising.shown
    assert dialog is not None
    assert dialog.isVisible()


def test_what_has_little_in_common_opens_by_itself(shown: MainWindow) -> None:
    shown.document.saved(Path("a.enclosure.json"))
    shown.open_files([sample("window.dxf")])
    assert Path(shown.document.project.source).name == "window.dxf"


def test_one_of_several_drawings_may_take_the_place_of_another_than_it_seems(
    opened: Opened, same: Path, qtbot: QtBot
) -> None:
    window = opened()
    window.filing.open_all([sample("eave-flush-faulty.dxf"), sample("ridge.dxf")])
    names = [each.name for each in window.document.project.sections]
    window.commands.revising.lay_over_from((same,))
    dialog = window.commands.revising.shown
    assert dialog is not None
    assert dialog.head.others.text().endswith(": ridge.dxf.")
    qtbot.keyClick(dialog.head.place, Qt.Key.Key_End)  # beside the others
    assert dialog.laid is not None
    assert dialog.laid.kept == {*names}
    for _ in names:
        qtbot.keyClick(dialog.head.place, Qt.Key.Key_Up)
    assert dialog.laid.kept == {names[1]}
    qtbot.mouseClick(dialog.bar.take, LEFT)
    after = window.document.project
    assert [each.name for each in after.sections] == names
    assert [Path(each.file).name for each in after.sections] == [same.name, "ridge.dxf"]


def test_a_file_that_is_no_drawing_is_told_in_one_sentence(
    shown: MainWindow, tmp_path: Path
) -> None:
    (tmp_path / "b.dxf").write_text("no drawing", encoding="utf-8")
    before = shown.document.project
    shown.commands.revising.lay_over_from((tmp_path / "b.dxf",))
    assert "b.dxf" in shown.messages.words.text()
    assert shown.document.project is before
    assert shown.commands.revising.shown is None


def test_without_a_drawing_there_is_nothing_to_lay_it_over(window: MainWindow) -> None:
    window.do("lay_over")
    assert window.messages.words.text() == "Open the earlier drawing or its project first."
