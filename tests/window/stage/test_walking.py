"""Walking shows the section in view, from the finding that is chosen on."""

from collections.abc import Callable
from threading import Event

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from enclosure_app.errors import EnclosureError
from enclosure_app.model.edits import remove_pieces
from enclosure_app.progress import go_on
from enclosure_app.window import checking
from enclosure_app.window.apart.working import Working
from enclosure_app.window.main_window import MainWindow
from enclosure_app.window.settings import Settings

LEFT = Qt.MouseButton.LeftButton
Opened = Callable[..., MainWindow]


def test_it_begins_at_the_finding_that_is_chosen(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    window.do("next_finding")
    window.do("next_finding")
    chosen = window.findings.current
    assert chosen is not None
    window.do("walk")
    assert window.views.walk.here == chosen.key


def test_the_next_section_follows_the_last_page(opened: Opened, qtbot: QtBot) -> None:
    window = opened("four-sections-faulty.dxf")
    window.do("walk")
    page = window.views.walk
    first = page.head.name.text()
    page.go_to("")
    qtbot.mouseClick(page.words.signing.next_section, LEFT)
    assert window.place.index == 1
    assert page.head.name.text() != first
    assert page.head.progress.text().startswith("1 of ")


def test_a_name_given_on_the_walk_is_known_in_the_panel(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    window.do("walk")
    page = window.views.walk
    page.go_to("")
    qtbot.keyClicks(page.words.signing.who, "Per")
    qtbot.mouseClick(page.words.signing.sign, LEFT)
    qtbot.keyClick(page, Qt.Key.Key_Escape)
    assert window.findings.advice.verdict.who.text() == "Per"


def test_a_walk_that_begins_before_the_check_has_ended_waits_for_it(
    qtbot: QtBot, settings: Settings
) -> None:
    settings.who = "Ida"
    window = MainWindow(settings, Working())
    qtbot.addWidget(window)
    window.show()
    window.filing.open_sample("four-sections-faulty.dxf", "layers-second-office.toml")
    qtbot.waitUntil(lambda: bool(window.document.project.sections), timeout=20_000)
    page = window.views.walk
    assert not window.checking.current
    window.do("walk")
    assert page.stops == ()
    assert page.head.still.text() == "being checked"
    assert not page.words.signing.sign.isEnabled()
    qtbot.waitUntil(lambda: window.checking.current, timeout=20_000)
    assert len(page.stops) > 5
    assert page.here == page.stops[0].key
    assert page.foot.onward.hasFocus()
    window.commands.files.leaving = True
    window.close()


def test_a_check_that_was_stopped_is_told_on_the_walk_and_made_up_for_there(
    opened: Opened, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    ended = Event()

    def endless(*_: object) -> checking.Checked:
        while not ended.wait(0.005):
            go_on()
        raise EnclosureError("The test is over.")

    window = opened()
    window.settings.who = "Ida"
    project, page = window.document.project, window.views.walk
    window.do("walk")
    with monkeypatch.context() as slow:
        slow.setattr(checking, "SLOW", -1.0)
        slow.setattr(checking, "judge", endless)
        name = project.sections[0].pieces[0].name
        window.document.apply("Delete", remove_pieces(project, 0, [name]))
        window.checking.check_now()
        assert page.head.still.text() == "being checked"
        assert not page.head.check.isVisible()
        window.checking.stop()
    assert page.head.still.text() == "not checked"
    assert page.head.check.isVisible()
    page.go_to("")
    assert page.words.signing.state.text().startswith("Checking was stopped")
    assert not page.head.check.isVisible()  # one button is enough
    qtbot.mouseClick(page.words.signing.check, LEFT)
    qtbot.waitUntil(lambda: window.checking.current)
    assert page.head.still.text().endswith(" left")
    assert not page.words.signing.check.isVisible()
    ended.set()


def test_where_nothing_can_be_judged_nothing_is_said_to_be_under_way(
    window: MainWindow,
) -> None:
    window.do("new_sheet")
    window.checking.check_now()
    window.do("walk")
    page = window.views.walk
    assert page.head.still.text() == ""
    assert page.words.signing.state.text() == "There is nothing to look at here yet"


def test_what_is_decided_is_no_reason_to_check_the_section_again(
    opened: Opened, qtbot: QtBot
) -> None:
    window = opened()
    window.settings.who = "Ida"
    window.do("walk")
    page = window.views.walk
    told: list[str] = []
    window.document.changed.connect(lambda: told.append(page.head.still.text()))
    while page.stop is not None:
        page.step(1)
    page.words.signing.sign.setFocus()
    qtbot.keyClick(page.words.signing.sign, Qt.Key.Key_Space)
    assert window.document.project.sign_offs
    assert told
    assert "being checked" not in told
    assert page.isAncestorOf(QApplication.focusWidget() or window)
    assert page.words.signing.isAncestorOf(QApplication.focusWidget() or window)
