"""The list of what is wrong: what it shows, and what it says when it shows nothing."""

import pytest
from pytestqt.qtbot import QtBot

from enclosure_app.window.canvas.look import Look
from enclosure_app.window.findings_panel import FindingsPanel
from tests.drawing import eave


@pytest.fixture
def panel(qtbot: QtBot) -> FindingsPanel:
    made = FindingsPanel()
    made.resize(350, 700)
    qtbot.addWidget(made)
    made.show()
    return made


def test_an_empty_list_says_that_nothing_is_wrong(panel: FindingsPanel) -> None:
    panel.show_result(eave.result(findings=()), Look())
    assert panel.nothing.isVisible()
    assert panel.nothing.text().startswith("Nothing is wrong here")


def test_an_empty_list_says_what_could_not_be_judged(panel: FindingsPanel) -> None:
    panel.show_result(eave.unsure(), Look())
    assert panel.nothing.text() == (
        "The air layer could not be judged. The two proofs differ: look at it yourself.\n\n"
        "Nothing else was found."
    )
