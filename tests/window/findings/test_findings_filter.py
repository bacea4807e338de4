"""What narrows the list: severities, rules, verdicts, each with how many there are."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox
from pytestqt.qtbot import QtBot

from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Severity
from enclosure_app.model.product import Control
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.window.findings.findings_filter import FindingsFilter
from enclosure_app.window.findings.findings_model import FindingsModel
from tests.drawing import eave

DECIDED = {
    eave.SHORT.key: Decision(eave.SHORT.key, State.MENDED),
    "gap:x": Decision("gap:x", State.MENDED),
}


@pytest.fixture
def model(qtbot: QtBot) -> FindingsModel:
    return FindingsModel()


@pytest.fixture
def narrow(qtbot: QtBot, model: FindingsModel) -> FindingsFilter:
    made = FindingsFilter(model)
    qtbot.addWidget(made)
    model.show(eave.result(decisions=DECIDED), Units.MM)
    made.resize(350, 90)
    made.show()
    return made


def pick(qtbot: QtBot, choice: QComboBox, words: str) -> None:
    """Choose a row by the arrows."""
    qtbot.keyClick(choice, Qt.Key.Key_Home)
    while not choice.currentText().startswith(words):
        before = choice.currentIndex()
        qtbot.keyClick(choice, Qt.Key.Key_Down)
        assert choice.currentIndex() > before, f"{words} is not offered"


def test_buttons_say_how_many_and_leave_out(
    qtbot: QtBot, narrow: FindingsFilter, model: FindingsModel
) -> None:
    words = [button.text() for button in narrow.severities.values()]
    assert words == ["4 faults", "1 doubt", "1 remark"]
    qtbot.mouseClick(narrow.severities[Severity.FAULT], Qt.MouseButton.LeftButton)
    assert [row.finding.severity for row in model.rows] == [Severity.DOUBT, Severity.REMARK]
    qtbot.mouseClick(narrow.severities[Severity.FAULT], Qt.MouseButton.LeftButton)
    assert len(model.rows) == 6


def test_rules_that_found_something_are_offered_in_walking_order(narrow: FindingsFilter) -> None:
    rows = [narrow.rules.itemText(i) for i in range(narrow.rules.count())]
    assert rows[:3] == ["Every rule", "Gap (1)", "Short lap (1)"]
    assert len(rows) == 7


def test_a_rule_is_chosen_by_keys(
    qtbot: QtBot, narrow: FindingsFilter, model: FindingsModel
) -> None:
    pick(qtbot, narrow.rules, "Short lap")
    assert [row.rule for row in model.rows] == ["short-lap"]
    pick(qtbot, narrow.rules, "Every rule")
    assert len(model.rows) == 6


def test_verdicts_and_what_is_gone_are_offered(
    qtbot: QtBot, narrow: FindingsFilter, model: FindingsModel
) -> None:
    rows = [narrow.verdicts.itemText(i) for i in range(narrow.verdicts.count())]
    assert rows == ["Every verdict", "Open (5)", "Mended (1)", "No longer found (1)"]
    pick(qtbot, narrow.verdicts, "Mended")
    assert [row.rule for row in model.rows] == ["short-lap"]
    pick(qtbot, narrow.verdicts, "No longer found")
    assert model.rows == ()
    assert [row.decision.key for row in model.gone] == ["gap:x"]


def test_a_chosen_rule_stays_to_be_seen_when_it_finds_nothing(
    qtbot: QtBot, narrow: FindingsFilter, model: FindingsModel
) -> None:
    pick(qtbot, narrow.rules, "Gap")
    model.filter_by(control=Control.VAPOUR)
    assert narrow.rules.currentText() == "Gap (0)"
    assert model.rows == ()


def test_with_nothing_found_there_is_nothing_to_choose(
    narrow: FindingsFilter, model: FindingsModel
) -> None:
    model.show(eave.result(findings=()), Units.MM)
    assert not narrow.rules.isEnabled()
    assert not narrow.verdicts.isEnabled()
    assert not any(button.isEnabled() for button in narrow.severities.values())
