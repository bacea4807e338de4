"""One step to a verdict, by mouse and by keys."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QPalette
from pytestqt.qtbot import QtBot

from enclosure_app.model.said.decision import Decision, State
from enclosure_app.window.findings.verdict_box import CHOICES, VerdictBox, badge_icon

_LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def box(qtbot: QtBot) -> VerdictBox:
    made = VerdictBox()
    qtbot.addWidget(made)
    made.resize(320, 140)
    made.set_who("Ida")
    made.show_verdict(None)
    made.show()
    return made


def test_one_click_decides_where_no_reason_is_needed(qtbot: QtBot, box: VerdictBox) -> None:
    with qtbot.waitSignal(box.decided) as told:
        qtbot.mouseClick(box.buttons[State.TO_BE_MENDED], _LEFT)
    assert told.args == [State.TO_BE_MENDED, "", "Ida"]


@pytest.mark.parametrize("state", [State.ACCEPTED, State.NO_FAULT])
def test_a_reason_is_typed_in_place(qtbot: QtBot, box: VerdictBox, state: State) -> None:
    with qtbot.assertNotEmitted(box.decided):
        qtbot.mouseClick(box.buttons[state], _LEFT)
        assert box.reason.isVisible()
        assert not box.who.isVisible()
        assert not box.put_down.isEnabled()
        qtbot.keyClick(box.reason, Qt.Key.Key_Return)  # nothing is typed yet
    qtbot.keyClicks(box.reason, " Behind glass. ")
    with qtbot.waitSignal(box.decided) as told:
        qtbot.keyClick(box.reason, Qt.Key.Key_Return)
    assert told.args == [state, "Behind glass.", "Ida"]
    assert not box.form.isVisible()


def test_escape_leaves_it_undecided(qtbot: QtBot, box: VerdictBox) -> None:
    with qtbot.assertNotEmitted(box.decided):
        qtbot.mouseClick(box.buttons[State.ACCEPTED], _LEFT)
        qtbot.keyClicks(box.reason, "Because")
        qtbot.keyClick(box.reason, Qt.Key.Key_Escape)
    assert box.choices.isVisible()
    assert not box.buttons[State.ACCEPTED].isChecked()
    qtbot.mouseClick(box.buttons[State.ACCEPTED], _LEFT)
    assert box.reason.text() == ""


def test_a_name_that_nobody_gave_is_asked_for_once(qtbot: QtBot, box: VerdictBox) -> None:
    box.set_who("")
    qtbot.mouseClick(box.buttons[State.MENDED], _LEFT)
    assert box.who.isVisible()
    assert not box.reason.isVisible()
    qtbot.keyClicks(box.who, "Jon")
    with qtbot.waitSignal(box.decided) as told:
        qtbot.mouseClick(box.put_down, _LEFT)
    assert told.args == [State.MENDED, "", "Jon"]
    with qtbot.waitSignal(box.decided) as told:
        qtbot.mouseClick(box.buttons[State.TO_BE_MENDED], _LEFT)
    assert told.args[2] == "Jon"


def test_the_same_verdict_again_takes_it_back(qtbot: QtBot, box: VerdictBox) -> None:
    box.show_verdict(Decision("k", State.MENDED, "Ida", "2026-03-02T08:15:00+00:00"))
    assert box.buttons[State.MENDED].isChecked()
    assert box.told.text() == "Mended by Ida, 2026-03-02"
    with qtbot.waitSignal(box.decided) as told:
        qtbot.mouseClick(box.buttons[State.MENDED], _LEFT)
    assert told.args == [State.OPEN, "", "Ida"]


def test_a_verdict_on_what_is_gone_can_only_be_taken_back(qtbot: QtBot, box: VerdictBox) -> None:
    box.show_verdict(Decision("k", State.ACCEPTED, "Ida", "", "Why not."), gone=True)
    assert not box.choices.isVisible()
    with qtbot.waitSignal(box.decided) as told:
        qtbot.mouseClick(box.take_back, _LEFT)
    assert told.args[0] is State.OPEN


def test_every_verdict_has_a_badge_of_its_own_on_its_button(qtbot: QtBot, box: VerdictBox) -> None:
    pictures = [badge_icon(state, QPalette()).pixmap(28).toImage() for state in CHOICES]
    assert all(a != b for i, a in enumerate(pictures) for b in pictures[:i])
    assert all(button.toolTip() for button in box.buttons.values())
