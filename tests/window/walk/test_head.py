"""The head of the walk: where one is, how far, and which stops are walked."""

from dataclasses import replace

from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.model.said.sign_off import SignOff
from enclosure_app.model.standing.sign_offs import Signed
from enclosure_app.window.walk.head import Head
from enclosure_app.window.walk.stops import Which
from tests.window.walk.rounds import LAP, eave_round

LEFT = Qt.MouseButton.LeftButton


def test_progress_is_told_in_numbers(qtbot: QtBot) -> None:
    head = Head()
    qtbot.addWidget(head)
    head.show_round(eave_round(), Which.EVERYTHING, (LAP.key, 7, 8))
    assert head.progress.text() == "7 of 8"
    assert head.still.text() == "8 left"
    head.name_section("EAVE", (1, 1))
    assert head.name.text() == "EAVE"
    head.name_section("EAVE", (2, 4))
    assert head.name.text() == "EAVE · section 2 of 4"
    head.show_round(eave_round(), Which.EVERYTHING, ("", 0, 8))
    assert head.progress.text() == "Sign"


def test_filters_count_and_are_chosen(qtbot: QtBot) -> None:
    head = Head()
    qtbot.addWidget(head)
    head.show_round(eave_round(), Which.EVERYTHING, (LAP.key, 7, 8))
    assert [button.text() for button in head.filters.values()] == [
        "Everything (8)", "What is wrong (6)", "What is left (8)",
    ]  # fmt: skip
    with qtbot.waitSignal(head.chosen) as told:
        qtbot.mouseClick(head.filters[Which.WRONG], LEFT)
    assert told.args == [Which.WRONG]
    head.choose(Which.LEFT)
    assert [each.isChecked() for each in head.filters.values()] == [False, False, True]
    with qtbot.waitSignal(head.left):
        qtbot.mouseClick(head.back, LEFT)


def test_it_says_who_signed_and_whether_that_still_holds(qtbot: QtBot) -> None:
    head = Head()
    qtbot.addWidget(head)
    off = SignOff("EAVE", "Ida")
    head.name_section("EAVE", (1, 1), (Signed(off, changed=False),))
    assert head.name.text() == "EAVE · signed by Ida"
    head.name_section("EAVE", (1, 1), (Signed(off, changed=True),))
    assert head.name.text() == "EAVE · changed since it was signed"


def test_on_a_narrow_page_the_stops_have_a_row_of_their_own(qtbot: QtBot) -> None:
    head = Head()
    qtbot.addWidget(head)
    head.show_round(eave_round(), Which.EVERYTHING, (LAP.key, 7, 8))
    head.resize(1280, 110)
    head.show()
    first = head.filters[Which.EVERYTHING]
    qtbot.waitUntil(lambda: first.x() > head.overview.x())
    head.resize(800, 160)
    qtbot.waitUntil(lambda: first.y() > head.overview.y())
    qtbot.waitUntil(lambda: head.overview.width() > 700)


def test_where_there_is_nothing_to_look_at_nothing_is_done(qtbot: QtBot) -> None:
    head = Head()
    qtbot.addWidget(head)
    head.show_round(replace(eave_round(), stops=()), Which.EVERYTHING, ("", 0, 0))
    assert head.still.text() == ""
