"""Another copy of the project: read, chosen from, made one with ours as one step, undone."""

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QFileDialog
from pytestqt.qtbot import QtBot

from enclosure_app.files.project.file import project_bytes
from enclosure_app.model import edits
from enclosure_app.model.project import Project
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.model.standing.verdicts import contested_in, verdicts_in
from enclosure_app.window.main_window import MainWindow
from tests.planning.revision.walls import WALL, project

Opened = Callable[..., MainWindow]
LEFT = Qt.MouseButton.LeftButton
WHEN = "2026-03-02T10:15:00+02:00"


@pytest.fixture
def shown(opened: Opened, qtbot: QtBot) -> MainWindow:
    """A window in which Ida decided about the first of three findings."""
    window = opened()
    qtbot.waitUntil(lambda: window.findings.model.total == 3)
    window.document.apply("said", said(window, State.MENDED, "Ida", 0))
    return window


def said(window: MainWindow, state: State, who: str, which: int) -> Project:
    finding = window.checking.results[0].findings[which]
    verdict = Decision(
        finding.key, state, who, WHEN, f"By {who}.", finding.section, finding.message
    )
    return edits.set_decision(window.document.project, verdict)


def kept(path: Path, copy: Project) -> Path:
    path.write_bytes(project_bytes(copy, path.name))
    return path


@pytest.fixture
def jons(shown: MainWindow, tmp_path: Path) -> Path:
    """Jon's copy: he decided differently about the first finding, and about the second."""
    bare = replace(shown.document.project, decisions=())
    first, second, _ = shown.checking.results[0].findings
    for finding, state in ((first, State.NO_FAULT), (second, State.TO_BE_MENDED)):
        verdict = Decision(
            finding.key, state, "Jon", WHEN, "By Jon.", finding.section, finding.message
        )
        bare = edits.set_decision(bare, verdict)
    return kept(tmp_path / "jon.enclosure.json", bare)


def test_both_are_united_what_differs_is_settled_and_all_is_undone_as_one_step(
    shown: MainWindow, jons: Path, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    before = shown.document.project
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_: (str(jons), ""))
    shown.do("merge_copy")
    dialog = shown.commands.merging.shown
    assert dialog is not None
    assert dialog.isVisible()
    assert dialog.told.text().startswith("jon.enclosure.json adds without a question: 2 verdicts.")
    assert shown.document.project is before  # nothing is made one by itself
    (card,) = dialog.contests
    jon = next(c for c in card.choices if "Jon" in c.told.text())
    qtbot.mouseClick(jon.button, LEFT, pos=QPoint(10, jon.button.height() // 2))
    qtbot.keyClicks(dialog.bar.who, "Mara")
    qtbot.mouseClick(dialog.bar.take, LEFT)
    assert not dialog.isVisible()
    after = shown.document.project
    section = after.sections[0].name
    assert contested_in(after, section) == {}
    assert {(d.state, d.who) for d in verdicts_in(after, section).values()} == {
        (State.NO_FAULT, "Mara"),
        (State.TO_BE_MENDED, "Jon"),
    }
    assert len(after.decisions) == 4
    assert shown.settings.who == "Mara"
    assert shown.document.undo_stack.undoText() == "Merge another copy"
    shown.document.undo_stack.undo()
    assert shown.document.project is before


def test_leaving_it_changes_nothing(shown: MainWindow, jons: Path, qtbot: QtBot) -> None:
    before = shown.document.project
    shown.commands.merging.merge_from(jons)
    dialog = shown.commands.merging.shown
    assert dialog is not None
    qtbot.mouseClick(dialog.bar.leave, LEFT)
    assert not dialog.isVisible()
    assert shown.document.project is before


def test_what_changed_meanwhile_is_compared_again(
    shown: MainWindow, jons: Path, qtbot: QtBot
) -> None:
    shown.commands.merging.merge_from(jons)
    dialog = shown.commands.merging.shown
    assert dialog is not None
    edited = said(shown, State.ACCEPTED, "Ida", 2)
    shown.document.apply("said", edited)
    qtbot.mouseClick(dialog.bar.take, LEFT)
    assert shown.document.project is edited
    assert "changed meanwhile" in shown.messages.words.text()
    qtbot.mouseClick(dialog.bar.take, LEFT)
    assert len(shown.document.project.decisions) == 4


def test_a_click_while_it_is_compared_again_loses_nothing(
    shown: MainWindow, jons: Path, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    shown.commands.merging.merge_from(jons)
    dialog = shown.commands.merging.shown
    assert dialog is not None
    edited = said(shown, State.ACCEPTED, "Ida", 2)
    shown.document.apply("said", edited)
    with monkeypatch.context() as slow:
        slow.setattr(shown.working, "begin", lambda _: None)  # it takes its time
        qtbot.mouseClick(dialog.bar.take, LEFT)
        qtbot.mouseClick(dialog.bar.take, LEFT)
    assert shown.document.project is edited


def test_a_copy_with_nothing_new_says_so(shown: MainWindow, tmp_path: Path) -> None:
    path = kept(tmp_path / "same.enclosure.json", shown.document.project)
    shown.commands.merging.merge_from(path)
    told = "same.enclosure.json holds nothing that is not here already."
    assert shown.messages.words.text() == told
    assert shown.commands.merging.shown is None


def test_what_is_no_copy_of_this_project_is_told_in_one_sentence(
    shown: MainWindow, tmp_path: Path
) -> None:
    path = kept(tmp_path / "barn.enclosure.json", replace(project(WALL), title="Barn"))
    shown.commands.merging.merge_from(path)
    assert "are not copies of one project" in shown.messages.words.text()
    (tmp_path / "text.json").write_text("no project", encoding="utf-8")
    shown.commands.merging.merge_from(tmp_path / "text.json")
    assert "text.json" in shown.messages.words.text()


def test_without_a_project_there_is_nothing_to_merge(window: MainWindow) -> None:
    window.do("merge_copy")
    assert window.messages.words.text() == "Open one copy of the project first."
