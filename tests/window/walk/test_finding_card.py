"""One finding, large."""

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.model.drawing import Units
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.window.walk.finding_card import FindingCard
from tests.drawing import eave


@pytest.fixture
def card(qtbot: QtBot) -> FindingCard:
    shown = FindingCard()
    qtbot.addWidget(shown)
    shown.show()
    return shown


def test_it_tells_what_is_measured_required_and_to_be_done(card: FindingCard) -> None:
    card.show_finding(eave.SHORT, 2, Units.MM, None)
    assert card.kind.text() == "2   Fault · short lap, water"
    assert card.message.text() == eave.SHORT.message
    assert card.advice.text() == eave.SHORT.advice
    assert (card.measured.length.text(), card.required.length.text()) == ("60 mm", "100 mm")
    assert "Rule book" in card.basis.text()


def test_what_measures_nothing_shows_no_figures(card: FindingCard) -> None:
    card.show_finding(eave.UNSEALED, 5, Units.MM, None)
    assert not card.measured.isVisible()
    assert not card.required.isVisible()


def test_the_rule_s_page_is_a_touch_away(card: FindingCard, qtbot: QtBot) -> None:
    card.show_finding(eave.SHORT, 2, Units.MM, None)
    with qtbot.waitSignal(card.why) as told:
        qtbot.mouseClick(card.ask_why, Qt.MouseButton.LeftButton)
    assert told.args == ["short-lap"]


def test_a_verdict_is_shown_and_taken(card: FindingCard, qtbot: QtBot) -> None:
    card.verdict.set_who("Ida")
    card.show_finding(eave.SHORT, 2, Units.MM, Decision("k", State.MENDED, "Per"))
    assert card.verdict.told.text().startswith("Mended by Per")
    with qtbot.waitSignal(card.verdict.decided) as told:
        qtbot.mouseClick(card.verdict.buttons[State.TO_BE_MENDED], Qt.MouseButton.LeftButton)
    assert told.args == [State.TO_BE_MENDED, "", "Ida"]
