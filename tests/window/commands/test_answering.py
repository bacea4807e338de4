"""The whole way round: written, answered elsewhere, read back, looked at, taken over, undone."""

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFileDialog
from pytestqt.qtbot import QtBot

from enclosure_app.model.said.decision import State
from enclosure_app.model.standing.verdicts import verdicts_in
from enclosure_app.resources import sample
from enclosure_app.window.main_window import MainWindow
from tests.files.pdf_reviewer import Reviewer

Opened = Callable[..., MainWindow]
_LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def shown(opened: Opened, qtbot: QtBot) -> MainWindow:
    window = opened()
    qtbot.waitUntil(lambda: window.findings.model.total == 3)
    return window


def keys(window: MainWindow) -> list[str]:
    return [finding.key for finding in window.checking.results[0].findings]


def answered(window: MainWindow, tmp_path: Path) -> Path:
    """The window's sheet with two answers, as another program saved it."""
    window.commands.files.write_pdf_to(tmp_path / "eave.pdf")
    first, second, _ = keys(window)
    reviewer = Reviewer(tmp_path / "eave.pdf")
    reviewer.state(first, "Zoë", "Completed")
    reviewer.reply(first, "Zoë", "Taped on both sides.")
    reviewer.state(second, "Zoë", "Rejected")
    return reviewer.saved(tmp_path / "back.pdf")


def test_an_answer_becomes_a_verdict_and_is_undone_as_one_step(
    shown: MainWindow, tmp_path: Path, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = answered(shown, tmp_path)
    before = shown.document.project
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_: (str(path), ""))
    shown.do("read_answers")
    answers = shown.commands.answering.shown
    assert answers is not None
    assert answers.isVisible()
    assert shown.document.project is before  # nothing is taken over by itself
    certain, doubtful = answers.rows
    assert certain.go.text().startswith("Go to 1 · ")
    qtbot.mouseClick(doubtful.go, _LEFT)
    assert shown.findings.current is not None
    assert shown.findings.current.key == keys(shown)[1]
    qtbot.keyClick(doubtful.take, Qt.Key.Key_Space)
    qtbot.keyClicks(doubtful.reason, "It goes on behind.")
    qtbot.mouseClick(answers.take, _LEFT)
    assert not answers.isVisible()
    section = before.sections[0].name
    decided = verdicts_in(shown.document.project, section)
    told = {key: (d.state, d.who, d.remark) for key, d in decided.items()}
    assert told == {
        keys(shown)[0]: (State.MENDED, "Zoë", "Taped on both sides."),
        keys(shown)[1]: (State.NO_FAULT, "Zoë", "It goes on behind."),
    }
    assert shown.document.undo_stack.undoText() == "Take over answers"
    shown.document.undo_stack.undo()
    assert shown.document.project == before


def test_answers_are_not_taken_over_into_a_project_that_was_opened_meanwhile(
    shown: MainWindow, tmp_path: Path, qtbot: QtBot
) -> None:
    shown.commands.answering.read_answers_from(answered(shown, tmp_path))
    answers = shown.commands.answering.shown
    assert answers is not None
    shown.filing.open(sample("ridge.dxf"), asked=True)
    other = shown.document.project
    assert other.source.endswith("ridge.dxf")
    qtbot.mouseClick(answers.take, _LEFT)
    assert shown.document.project is other
    assert not answers.isVisible()
    assert shown.messages.words.text().startswith("Another project was opened meanwhile")


def test_a_pdf_is_not_read_twice(shown: MainWindow, tmp_path: Path, qtbot: QtBot) -> None:
    path = answered(shown, tmp_path)
    shown.commands.answering.read_answers_from(path)
    answers = shown.commands.answering.shown
    assert answers is not None
    qtbot.mouseClick(answers.take, _LEFT)
    shown.commands.answering.read_answers_from(path)
    assert [row.proposal.state for row in answers.rows] == [State.NO_FAULT]  # which was not ticked


def test_a_pdf_without_answers_says_so(shown: MainWindow, tmp_path: Path) -> None:
    shown.commands.files.write_pdf_to(tmp_path / "eave.pdf")
    shown.commands.answering.read_answers_from(tmp_path / "eave.pdf")
    assert shown.messages.words.text() == "Nothing was answered in it that is not here already."


def test_a_file_that_is_no_pdf_is_told_in_one_sentence(shown: MainWindow, tmp_path: Path) -> None:
    (tmp_path / "text.pdf").write_text("no PDF", encoding="utf-8")
    shown.commands.answering.read_answers_from(tmp_path / "text.pdf")
    assert "text.pdf is not a PDF that can be read" in shown.messages.words.text()
