"""The last page: what is left, in words, and names under the section."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QPushButton
from pytestqt.qtbot import QtBot

from enclosure_app.model.said.sign_off import SignOff
from enclosure_app.model.said.site_check import Seen, SiteCheck
from enclosure_app.model.standing.sign_offs import Signed
from enclosure_app.planning.site_list.listing import SiteList
from enclosure_app.window.walk.signing import SignPage
from enclosure_app.window.walk.stops import Round, round_of
from tests.drawing import eave
from tests.window.walk.rounds import LAP, TAPE, eave_round

LEFT = Qt.MouseButton.LeftButton
OFF = SignOff("WALL", "Ida", "2026-05-04T09:00:00+02:00", "Left open: the sill.")


@pytest.fixture
def page(qtbot: QtBot) -> SignPage:
    shown = SignPage()
    qtbot.addWidget(shown)
    shown.show()
    return shown


def sound(*, looked: bool) -> Round:
    seen = {key: SiteCheck(key, Seen.IN_ORDER) for key, _ in LAP.items} if looked else {}
    return round_of(eave.result(findings=()), SiteList("", (LAP,)), seen)


def test_what_is_left_open_is_named(page: SignPage, qtbot: QtBot) -> None:
    page.show_round(eave_round(), (), "Ida")
    assert page.state.text() == "0 of 8 places are done"
    assert "Tape on wall sheet; finding 2 (short lap)" in page.told.text()
    assert page.sign.text() == "Sign, with this left open"
    with qtbot.waitSignal(page.wanted) as told:
        qtbot.mouseClick(page.first_left, LEFT)
    assert told.args == [TAPE.key]


def test_a_name_is_signed_with_what_is_left_open(page: SignPage, qtbot: QtBot) -> None:
    page.show_round(sound(looked=False), (), "")
    assert not page.sign.isEnabled()
    qtbot.keyClicks(page.who, "Ida Holm")
    qtbot.keyClicks(page.remark, "Rain stopped us.")
    with qtbot.waitSignal(page.signed) as told:
        qtbot.mouseClick(page.sign, LEFT)
    assert told.args == ["Ida Holm", "Rain stopped us. Left open: Wall sheet over coating."]


def test_when_all_was_looked_at_nothing_is_left_open(page: SignPage, qtbot: QtBot) -> None:
    page.show_round(sound(looked=True), (), "Ida")
    assert page.state.text() == "Everything was looked at"
    assert not page.first_left.isVisible()
    with qtbot.waitSignal(page.signed) as told:
        qtbot.keyClick(page.who, Qt.Key.Key_Return)
    assert told.args == ["Ida", ""]


def test_a_signature_is_shown_and_taken_back(page: SignPage, qtbot: QtBot) -> None:
    page.show_round(sound(looked=True), (Signed(OFF, changed=False),), "Ida")
    assert page.names.text() == (
        "Signed by Ida, 2026-05-04 09:00 (UTC+02:00): Left open: the sill."
    )
    back = next(b for b in page.findChildren(QPushButton) if "back" in b.text())
    with qtbot.waitSignal(page.taken_back) as told:
        qtbot.mouseClick(back, LEFT)
    assert told.args == [OFF]
    page.show_round(sound(looked=True), (), "Ida")
    assert not page.names.isVisible()


def test_a_section_that_was_changed_since_says_so(page: SignPage) -> None:
    page.show_round(sound(looked=True), (Signed(OFF, changed=True),), "Ida")
    assert "changed since" in page.names.text()


def test_where_nothing_can_be_looked_at_nothing_is_signed(page: SignPage) -> None:
    nothing = round_of(eave.result(findings=()), SiteList("", ()))
    page.show_round(nothing, (), "Ida")
    assert page.state.text() == "There is nothing to look at here yet"
    assert not page.sign.isEnabled()


def test_what_is_not_in_order_is_said_first(page: SignPage) -> None:
    amiss = {key: SiteCheck(key, Seen.NOT_IN_ORDER, "Ida") for key, _ in LAP.items}
    walked = round_of(eave.result(findings=()), SiteList("", (LAP,)), amiss)
    page.show_round(walked, (), "Ida")
    assert page.state.text() == "Everything was looked at; not all of it is in order"
    assert page.told.text() == "To be mended: Wall sheet over coating."


def test_nobody_signs_what_is_not_checked_yet(page: SignPage, qtbot: QtBot) -> None:
    page.show_round(sound(looked=True), (), "Ida")
    page.wait(stopped=False)
    assert "still being checked" in page.state.text()
    assert not page.check.isVisible()
    with qtbot.assertNotEmitted(page.signed):
        qtbot.keyClicks(page.who, " Frost")
        qtbot.mouseClick(page.sign, LEFT)
        qtbot.keyClick(page.who, Qt.Key.Key_Return)
    page.show_round(sound(looked=True), (), "Ida")
    assert page.sign.isEnabled()


def test_where_checking_was_stopped_it_is_offered_before_a_signature(page: SignPage) -> None:
    page.show_round(sound(looked=True), (), "Ida")
    page.wait(stopped=True)
    assert page.state.text() == "Checking was stopped: have the section checked, then sign it"
    assert page.next_step is page.check
    assert not page.sign.isEnabled()


def test_what_comes_next_is_what_is_left_the_name_and_then_the_next_section(
    page: SignPage,
) -> None:
    page.show_round(sound(looked=False), (), "Ida")
    assert page.next_step is page.first_left
    page.show_round(sound(looked=True), (), "Ida")
    assert page.next_step is page.sign
    page.show_round(sound(looked=True), (Signed(OFF, changed=False),), "Ida")
    assert page.next_step is page.next_section
    assert page.sign.text() == "Sign again"
    page.show_round(sound(looked=True), (Signed(OFF, changed=True),), "Ida")
    assert (page.next_step, page.sign.text()) == (page.sign, "Sign this section")
    page.show_round(sound(looked=True), (Signed(OFF, changed=False),), "Per")
    assert (page.next_step, page.sign.text()) == (page.sign, "Sign this section")
