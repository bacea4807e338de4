"""Which one it is now: chosen by mouse or keys, left open unless somebody says it."""

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.window.revising.asking import Asking
from tests.window.revising.walls_laid import laid

FINDING = laid().anew[0].findings[0]


@pytest.fixture
def asking(qtbot: QtBot) -> Asking:
    shown = Asking()
    qtbot.addWidget(shown)
    shown.resize(600, 60)
    shown.show()
    shown.ask([(FINDING, 1)], None)
    return shown


def test_it_is_left_open_unless_somebody_says_it(asking: Asking) -> None:
    texts = [button.text() for button in asking.buttons]
    assert texts == ["It is number 1 now", "It is gone", "Leave it open"]
    assert asking.answer is None


def test_a_person_says_which_one_it_is(asking: Asking, qtbot: QtBot) -> None:
    with qtbot.waitSignal(asking.answered):
        qtbot.mouseClick(
            asking.buttons[0], Qt.MouseButton.LeftButton, pos=asking.buttons[0].rect().center()
        )
    assert asking.answer is FINDING
    with qtbot.waitSignal(asking.answered):
        qtbot.keyClick(asking.buttons[1], Qt.Key.Key_Space)
    assert asking.answer == ""


def test_what_was_said_is_shown_again(asking: Asking) -> None:
    asking.ask([(FINDING, 1)], FINDING)
    assert asking.answer is FINDING
    asking.ask([], "")
    assert asking.answer == ""
    assert len(asking.buttons) == 2
