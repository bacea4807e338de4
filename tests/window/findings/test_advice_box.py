"""What to do about one finding, in as little room as it takes."""

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.model.said.decision import Decision, State
from enclosure_app.window.findings.advice_box import AdviceBox
from enclosure_app.window.findings.findings_model import GoneRow, Row
from tests.drawing import eave


@pytest.fixture
def box(qtbot: QtBot) -> AdviceBox:
    made = AdviceBox()
    qtbot.addWidget(made)
    made.resize(350, 200)
    made.verdict.set_who("Ida")
    return made


def test_the_rule_s_page_is_a_click_away(qtbot: QtBot, box: AdviceBox) -> None:
    box.show_row(Row(1, eave.SHORT))
    assert box.isVisible()
    with qtbot.waitSignal(box.why) as told:
        qtbot.mouseClick(box.button, Qt.MouseButton.LeftButton)
    assert told.args == ["short-lap"]


def test_it_is_as_high_as_its_sentences_and_hides_without_a_finding(box: AdviceBox) -> None:
    box.show_row(Row(1, eave.UNSEALED))
    low = box.height()
    box.show_row(Row(1, eave.SHORT, decision=Decision("k", State.MENDED, "Ida")))
    assert box.height() > low
    box.verdict.choose(State.ACCEPTED)
    assert box.verdict.form.isVisible()
    box.show_row(None)
    assert not box.isVisible()


def test_of_what_is_gone_it_says_how_to_take_it_off_the_list(box: AdviceBox) -> None:
    box.show_row(GoneRow(Decision("an-older-rule:water:x", State.MENDED, "Ida")))
    assert not box.button.isEnabled()  # there is no page of it
    box.show_row(GoneRow(Decision("level-lap:water:x", State.MENDED, "Ida")))
    assert box.button.isEnabled()
    assert box.verdict.take_back.isVisible()
    assert not box.verdict.choices.isVisible()
