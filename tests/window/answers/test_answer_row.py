"""One answer: what is certain is ticked, what is in doubt waits for a person, reasons are asked for."""

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

from enclosure_app.files.replies.proposal import Proposal
from enclosure_app.model.said.decision import State
from enclosure_app.window.answers.answer_row import AnswerRow

MENDED = Proposal(
    "gap:a+b", State.MENDED, "Zoë", "2026-12-01T09:30:00+01:00", "Taped.", "Eave", "eave.dxf",
    note="The sheet stops.\nMeasured 30 mm.",
)  # fmt: skip
BARE = replace(MENDED, state=State.NO_FAULT, remark="", doubt="It gives no reason.")


def row(qtbot: QtBot, proposal: Proposal) -> AnswerRow:
    shown = AnswerRow(proposal, "Go to 3 · Eave")
    qtbot.addWidget(shown)
    shown.show()
    return shown


def words(shown: AnswerRow) -> list[str]:
    return [label.text() for label in shown.findChildren(QLabel)]


def test_what_is_certain_is_ticked_and_told_whole(qtbot: QtBot) -> None:
    shown = row(qtbot, MENDED)
    assert shown.take.text() == "Mended · Zoë · 2026-12-01 09:30 (UTC+01:00)"
    assert words(shown) == ["The sheet stops.", "Taped."]
    assert shown.taken == MENDED
    assert shown.complete
    assert not shown.reason.isVisible()
    with qtbot.waitSignal(shown.changed):
        qtbot.keyClick(shown.take, Qt.Key.Key_Space)
    assert shown.taken is None


def test_what_is_in_doubt_says_why_and_is_not_ticked(qtbot: QtBot) -> None:
    shown = row(qtbot, replace(MENDED, doubt="Per decided otherwise."))
    assert "Not sure: Per decided otherwise." in words(shown)
    assert shown.taken is None


def test_a_reason_that_is_missing_is_typed_here(qtbot: QtBot) -> None:
    shown = row(qtbot, BARE)
    assert shown.reason.isVisible()
    qtbot.keyClick(shown.take, Qt.Key.Key_Space)
    assert not shown.complete
    qtbot.keyClicks(shown.reason, "It goes on behind.")
    assert shown.complete
    assert shown.taken == replace(BARE, remark="It goes on behind.")


def test_what_is_about_nothing_cannot_be_taken(qtbot: QtBot) -> None:
    shown = row(qtbot, replace(MENDED, key="", state=None, doubt="About nothing."))
    assert not shown.take.isEnabled()
    assert not shown.go.isEnabled()
    assert shown.take.text().startswith("Remark · Zoë")


@pytest.mark.parametrize("text", ["<b>bold</b> & more", "&File"])
def test_what_people_wrote_is_shown_as_they_wrote_it(qtbot: QtBot, text: str) -> None:
    assert text in words(row(qtbot, replace(MENDED, remark=text)))


def test_the_place_can_be_asked_for(qtbot: QtBot) -> None:
    shown = row(qtbot, MENDED)
    with qtbot.waitSignal(shown.wanted) as asked:
        qtbot.mouseClick(shown.go, Qt.MouseButton.LeftButton)
    assert asked.args == [MENDED]


def test_where_the_note_itself_is_gone_one_can_look_and_nothing_can_be_taken(qtbot: QtBot) -> None:
    lost = replace(
        MENDED,
        state=None,
        who="",
        when="",
        remark="",
        note="",
        doubt="The note is gone.",
        lost=True,
    )
    shown = row(qtbot, lost)
    assert words(shown) == ["The note is gone."]
    assert shown.go.isEnabled()
    assert not shown.take.isVisible()
    assert not shown.reason.isVisible()
    assert shown.taken is None
    assert shown.complete
