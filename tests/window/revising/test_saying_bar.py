"""Who says something puts a name to it; what is lacking is told."""

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.window.revising.saying_bar import SayingBar


@pytest.fixture
def bar(qtbot: QtBot) -> SayingBar:
    shown = SayingBar("Leave it", "Take it")
    qtbot.addWidget(shown)
    shown.show()
    shown.changed.connect(lambda: shown.show_state(says=True))
    return shown


def test_without_saying_anything_no_name_is_asked(bar: SayingBar) -> None:
    bar.show_state(says=False)
    assert not bar.who.isVisible()
    assert bar.take.isEnabled()
    assert bar.lacking.text() == ""


def test_a_name_is_asked_for_once_something_is_said(bar: SayingBar, qtbot: QtBot) -> None:
    bar.show_state(says=True)
    assert not bar.take.isEnabled()
    assert bar.lacking.text() == "Type your name: it is put beside what you say."
    qtbot.keyClicks(bar.who, " Jon ")
    assert bar.name == "Jon"
    with qtbot.waitSignal(bar.taken):
        qtbot.mouseClick(bar.take, Qt.MouseButton.LeftButton)


def test_what_is_lacking_comes_first(bar: SayingBar, qtbot: QtBot) -> None:
    bar.show_state(says=False, lacking="Still to be chosen: 1.", ready=False)
    assert (bar.lacking.text(), bar.take.isEnabled()) == ("Still to be chosen: 1.", False)
    with qtbot.waitSignal(bar.left):
        qtbot.mouseClick(bar.leave, Qt.MouseButton.LeftButton)
