"""What a revision left open is answered another day, as one step."""

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.model.standing.questions import open_questions
from enclosure_app.window.apart.working import Job, Lane
from enclosure_app.window.main_window import MainWindow
from tests.window.revising.walls_laid import laid


def test_an_answer_is_put_down_and_undone(window: MainWindow, qtbot: QtBot) -> None:
    before = laid().revision.project
    window.filing.begin(before)
    window.do("answer_open")
    dialog = window.commands.open_questions.shown
    assert dialog is not None
    assert dialog.isVisible()
    (card,) = dialog.cards
    qtbot.keyClick(card.asking.buttons[0], Qt.Key.Key_Space)
    qtbot.keyClicks(dialog.bar.who, "Jon")
    qtbot.mouseClick(dialog.bar.take, Qt.MouseButton.LeftButton)
    assert not dialog.isVisible()
    after = window.document.project
    assert open_questions(after) == ()
    assert after.carried[-1].who == "Jon"
    assert after.carried[-1].later.key == card.question.asked[0]
    assert window.settings.who == "Jon"
    window.document.undo_stack.undo()
    assert window.document.project is before


def test_looking_the_places_up_drops_nothing_that_waits_to_be_said(
    window: MainWindow, monkeypatch: pytest.MonkeyPatch
) -> None:
    window.filing.begin(laid().revision.project)
    begun: list[Job] = []
    monkeypatch.setattr(window.working, "begin", begun.append)
    window.do("answer_open")
    (job,) = begun
    assert job.lane is Lane.LOOKING_UP  # a newer wish drops the older ones of its own lane


def test_where_nothing_is_open_it_says_so(window: MainWindow) -> None:
    window.filing.new_sheet()
    window.do("answer_open")
    assert window.messages.words.text().startswith("Nothing is open:")
    assert window.commands.open_questions.shown is None
