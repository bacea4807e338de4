"""The walk by keys alone."""

from collections.abc import Callable

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from enclosure_app.model.said.decision import State
from enclosure_app.model.said.site_check import Seen
from enclosure_app.window.main_window import MainWindow
from enclosure_app.window.walk.page import WalkPage

K = Qt.Key


def project(walk: WalkPage):  # noqa: ANN201
    window = walk.window()
    assert isinstance(window, MainWindow)
    return window.document.project


def press(walk: WalkPage, qtbot: QtBot, key: Qt.Key) -> None:
    qtbot.keyClick(QApplication.focusWidget() or walk, key)


def to_place(walk: WalkPage, *, finding: bool) -> None:
    walk.go_to(next(s.key for s in walk.stops if (s.finding is not None) is finding))


@pytest.mark.parametrize(
    ("on", "back"), [(K.Key_Right, K.Key_Left), (K.Key_PageDown, K.Key_PageUp)]
)
def test_arrows_and_pages_go_on_and_back(
    walk: WalkPage, qtbot: QtBot, on: Qt.Key, back: Qt.Key
) -> None:
    first = walk.here
    press(walk, qtbot, on)
    assert walk.here == walk.stops[1].key
    press(walk, qtbot, back)
    assert walk.here == first


def test_numbers_decide_about_a_finding(walk: WalkPage, qtbot: QtBot) -> None:
    to_place(walk, finding=True)
    key = walk.here
    press(walk, qtbot, K.Key_1)
    assert [(d.key, d.state) for d in project(walk).decisions] == [(key, State.TO_BE_MENDED)]
    press(walk, qtbot, K.Key_3)
    assert walk.words.finding.verdict.reason.hasFocus()
    qtbot.keyClicks(walk.words.finding.verdict.reason, "1 2 n a")  # typed, not obeyed
    press(walk, qtbot, K.Key_Return)
    assert project(walk).decisions[-1].remark == "1 2 n a"
    assert walk.here == key


def test_keys_lead_on_after_what_was_typed(walk: WalkPage, qtbot: QtBot) -> None:
    to_place(walk, finding=True)
    at = [stop.key for stop in walk.stops].index(walk.here)
    press(walk, qtbot, K.Key_4)
    qtbot.keyClicks(walk.words.finding.verdict.reason, "Drawn wrong")
    press(walk, qtbot, K.Key_Return)
    press(walk, qtbot, K.Key_R)
    qtbot.keyClicks(walk.words.note.words, "Seen with Per")
    press(walk, qtbot, K.Key_Return)
    assert project(walk).remarks[-1].remark == "Seen with Per"
    press(walk, qtbot, K.Key_Right)
    assert walk.here == walk.stops[at + 1].key


def test_numbers_answer_the_questions_of_a_place_one_after_the_other(
    walk: WalkPage, qtbot: QtBot
) -> None:
    to_place(walk, finding=False)
    press(walk, qtbot, K.Key_1)
    press(walk, qtbot, K.Key_2)
    press(walk, qtbot, K.Key_3)
    seen = [check.seen for check in project(walk).site_checks]
    assert seen == [Seen.IN_ORDER, Seen.NOT_IN_ORDER, Seen.HIDDEN]
    assert len({check.key for check in project(walk).site_checks}) == 3


def test_one_key_says_that_all_of_a_place_is_in_order(walk: WalkPage, qtbot: QtBot) -> None:
    to_place(walk, finding=False)
    stop = walk.stop
    assert stop is not None
    assert stop.place is not None
    press(walk, qtbot, K.Key_A)
    checked = {check.key: check.seen for check in project(walk).site_checks}
    assert checked == dict.fromkeys([key for key, _ in stop.place.items], Seen.IN_ORDER)


def test_escape_goes_back_by_one(walk: WalkPage, qtbot: QtBot) -> None:
    window = walk.window()
    to_place(walk, finding=True)
    press(walk, qtbot, K.Key_W)
    assert walk.rule.isVisible()
    press(walk, qtbot, K.Key_Escape)
    assert walk.place.isVisible()
    press(walk, qtbot, K.Key_4)
    assert walk.words.finding.verdict.form.isVisible()
    press(walk, qtbot, K.Key_Escape)
    assert not walk.words.finding.verdict.form.isVisible()
    press(walk, qtbot, K.Key_Escape)
    assert not walk.isVisible()
    assert isinstance(window, MainWindow)
    assert window.canvas.isVisible()


def test_the_drawing_comes_closer_and_a_remark_is_a_key_away(walk: WalkPage, qtbot: QtBot) -> None:
    before = walk.place.camera.zoom
    press(walk, qtbot, K.Key_Plus)
    assert walk.place.camera.zoom > before
    press(walk, qtbot, K.Key_0)
    assert walk.place.camera.zoom < before
    press(walk, qtbot, K.Key_R)
    assert walk.words.note.words.hasFocus()
    qtbot.keyClicks(walk.words.note.words, "a1")
    assert walk.words.note.words.text() == "a1"
    assert project(walk).site_checks == ()


def test_keys_of_the_drawing_do_nothing_while_one_walks(walk: WalkPage, qtbot: QtBot) -> None:
    window = walk.window()
    assert isinstance(window, MainWindow)
    window.place.pick([window.place.section.pieces[0].name])
    before = window.document.project
    for key in (K.Key_S, K.Key_Delete, K.Key_T, K.Key_G):
        press(walk, qtbot, key)
    assert window.document.project is before
    assert window.toolbox.name == "select"


def test_nobody_is_stuck_in_the_line_for_the_name(
    opened: Callable[..., MainWindow], qtbot: QtBot
) -> None:
    window = opened()
    window.do("walk")
    page = window.views.walk
    to_place(page, finding=False)
    press(page, qtbot, K.Key_1)
    assert page.words.who.hasFocus()
    qtbot.keyClicks(page.words.who, "Ida")
    press(page, qtbot, K.Key_Return)
    (check,) = window.document.project.site_checks
    assert (check.who, check.seen) == ("Ida", Seen.IN_ORDER)
    here = page.here
    press(page, qtbot, K.Key_Right)
    assert page.here != here


def test_the_last_page_has_the_keys_on_what_comes_next(walk: WalkPage, qtbot: QtBot) -> None:
    while walk.here:
        press(walk, qtbot, K.Key_Right)
    assert walk.words.signing.first_left.hasFocus()
    press(walk, qtbot, K.Key_Space)
    assert walk.here == walk.stops[0].key
    assert walk.foot.onward.hasFocus()


def test_escape_leaves_a_line_before_it_leaves_the_walk(walk: WalkPage, qtbot: QtBot) -> None:
    to_place(walk, finding=True)
    press(walk, qtbot, K.Key_R)
    qtbot.keyClicks(walk.words.note.words, "torn")
    press(walk, qtbot, K.Key_Escape)
    assert walk.isVisible()
    assert walk.foot.onward.hasFocus()
    assert walk.words.note.words.text() == "torn"
    press(walk, qtbot, K.Key_Escape)
    assert not walk.isVisible()


def test_q_goes_from_one_question_to_the_next(walk: WalkPage, qtbot: QtBot) -> None:
    to_place(walk, finding=False)
    keys = list(walk.words.look_here.looks.rows)
    press(walk, qtbot, K.Key_Q)
    assert walk.words.look_here.looks.chosen == keys[0]
    press(walk, qtbot, K.Key_Q)
    press(walk, qtbot, K.Key_R)
    qtbot.keyClicks(walk.words.note.words, "wet")
    press(walk, qtbot, K.Key_Return)
    (check,) = project(walk).site_checks
    assert (check.key, check.remark) == (keys[1], "wet")
