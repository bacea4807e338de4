"""The list of answers: how many, which are not sure, and what is taken over at one click."""

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.files.replies.proposal import Proposal
from enclosure_app.model.said.decision import State
from enclosure_app.window.answers.answers import Answers

MENDED = Proposal("gap:a+b", State.MENDED, "Zoë", "2026-12-01", "Taped.", "Eave", "eave.dxf")
UNSURE = replace(MENDED, key="gap:c+d", state=State.ACCEPTED, remark="", doubt="No reason.")
NOTE = replace(MENDED, key="", section="", state=None, page=2, doubt="About nothing.")


@pytest.fixture
def answers(qtbot: QtBot) -> Answers:
    shown = Answers()
    qtbot.addWidget(shown)
    shown.show_answers((MENDED, UNSURE, NOTE), {("Eave", "gap:a+b"): 3})
    shown.show()
    return shown


def test_each_answer_says_where_it_belongs(answers: Answers) -> None:
    assert answers.told.text() == (
        "3 answers, 2 of them not sure: look at these, and tick what is right."
    )
    places = [row.go.text() for row in answers.rows]
    assert places == ["Go to 3 · Eave", "Eave", "Page 2 of the PDF"]


def test_what_is_ticked_is_taken_over(answers: Answers, qtbot: QtBot) -> None:
    with qtbot.waitSignal(answers.taken) as taken:
        qtbot.mouseClick(answers.take, Qt.MouseButton.LeftButton)
    assert taken.args == [(MENDED,)]


def test_nothing_is_taken_over_while_a_reason_is_missing(answers: Answers, qtbot: QtBot) -> None:
    second = answers.rows[1]
    qtbot.keyClick(second.take, Qt.Key.Key_Space)
    assert not answers.take.isEnabled()
    assert answers.lacking.text() == "A verdict that is ticked lacks its reason."
    qtbot.keyClicks(second.reason, "Drains by itself.")
    with qtbot.waitSignal(answers.taken) as taken:
        qtbot.mouseClick(answers.take, Qt.MouseButton.LeftButton)
    assert taken.args == [(MENDED, replace(UNSURE, remark="Drains by itself."))]


def test_without_a_tick_there_is_nothing_to_take(answers: Answers, qtbot: QtBot) -> None:
    qtbot.keyClick(answers.rows[0].take, Qt.Key.Key_Space)
    assert not answers.take.isEnabled()


def test_other_answers_take_the_place_of_these(answers: Answers) -> None:
    answers.show_answers((UNSURE,), {})
    assert [row.proposal for row in answers.rows] == [UNSURE]


def test_notes_that_are_gone_are_no_answers_and_are_told_apart(answers: Answers) -> None:
    lost = replace(UNSURE, state=None, doubt="The note is gone.", lost=True)
    answers.show_answers((MENDED, lost), {})
    assert answers.told.text() == (
        "1 answers, 0 of them not sure: look at these, and tick what is right. "
        "Notes are not in the file any more: look at the rows that say so."
    )
    answers.show_answers((lost,), {})
    assert answers.told.text().startswith("Notes are not in the file any more")
    assert not answers.take.isEnabled()
