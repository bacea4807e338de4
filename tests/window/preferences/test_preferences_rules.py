"""How loud each rule is."""

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.model.finding import Severity
from enclosure_app.rules import RULES
from enclosure_app.window.preferences.preferences_rules import RulesPage


@pytest.fixture
def page(qtbot: QtBot) -> RulesPage:
    made = RulesPage()
    qtbot.addWidget(made)
    made.show_severities({}, {})
    made.show()
    return made


def test_every_rule_has_its_choice_and_says_what_is_usual(page: RulesPage) -> None:
    assert list(page.choices) == [rule.name for rule in RULES]
    assert page.choices["gap"].currentText() == "as usual (fault)"
    page.show_severities({}, {"gap": Severity.DOUBT})
    assert page.choices["gap"].currentText() == "as usual (doubt)"


def test_an_arrow_makes_a_rule_louder_or_quieter(page: RulesPage, qtbot: QtBot) -> None:
    with qtbot.waitSignal(page.chosen) as told:
        qtbot.keyClick(page.choices["no-drip"], Qt.Key.Key_End)
    assert told.args == ["no-drip", Severity.OFF]
    with qtbot.waitSignal(page.chosen) as told:
        qtbot.keyClick(page.choices["no-drip"], Qt.Key.Key_Home)
    assert told.args == ["no-drip", None]


def test_what_the_project_says_is_shown_and_told_to_nobody(page: RulesPage, qtbot: QtBot) -> None:
    with qtbot.assertNotEmitted(page.chosen):
        page.show_severities({"gap": Severity.REMARK}, {})
    assert page.choices["gap"].currentText() == "Remark"
    assert page.choices["ponding"].currentData() == ""
