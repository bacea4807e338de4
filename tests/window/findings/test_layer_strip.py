"""How each layer runs: one row each, by mouse and by arrows."""

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.model.drawing import Units
from enclosure_app.model.product import Control
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.findings.layer_strip import LayerStrip
from tests.drawing import eave


@pytest.fixture
def strip(qtbot: QtBot) -> LayerStrip:
    made = LayerStrip()
    qtbot.addWidget(made)
    made.resize(350, 160)
    made.show_result(eave.result(), Look())
    made.show()
    return made


def test_every_row_says_how_its_layer_runs_and_how_much_was_found(strip: LayerStrip) -> None:
    words = {control: row.words for control, row in strip.rows.items()}
    assert words[None] == "4 faults, 1 doubt"
    assert words[Control.WATER] == "continuous, 2 faults"
    assert words[Control.AIR] == "1 gap, 30 mm, 2 faults"
    assert words[Control.HEAT] == ""
    strip.show_result(eave.result(), Look(Units.IN))
    assert strip.rows[Control.AIR].words == '1 gap, 1 3/16", 2 faults'


def test_a_click_shows_one_layer_alone(strip: LayerStrip, qtbot: QtBot) -> None:
    with qtbot.waitSignal(strip.chosen) as told:
        qtbot.mouseClick(strip.rows[Control.VAPOUR], Qt.MouseButton.LeftButton)
    assert told.args == [Control.VAPOUR]
    with qtbot.waitSignal(strip.chosen) as told:
        qtbot.mouseClick(strip.rows[None], Qt.MouseButton.LeftButton)
    assert told.args == [None]


def test_arrows_go_from_row_to_row_and_stop_at_the_ends(strip: LayerStrip, qtbot: QtBot) -> None:
    told = []
    strip.chosen.connect(told.append)
    for _ in range(6):
        qtbot.keyClick(strip, Qt.Key.Key_Down)
    assert told[:4] == list(Control)
    assert strip.rows[Control.HEAT].isChecked()
    qtbot.keyClick(strip, Qt.Key.Key_Up)
    assert told[-1] is Control.VAPOUR


def test_a_layer_that_could_not_be_judged_says_why(strip: LayerStrip) -> None:
    strip.show_result(eave.unsure(), Look())
    row = strip.rows[Control.AIR]
    assert row.words == "unsure"
    assert "The two proofs differ: look at it yourself." in row.toolTip()


def test_tips_say_what_a_layer_does_and_teach_its_words(strip: LayerStrip) -> None:
    tip = strip.rows[Control.WATER].toolTip()
    assert "every sheet laps over the one below it" in tip
    assert "Sheet: A membrane" in tip
    assert strip.rows[Control.AIR].accessibleName() == "Air: 1 gap, 30 mm, 2 faults"


def test_each_control_is_painted_in_its_pattern(strip: LayerStrip) -> None:
    patterns = [strip.rows[c].pen.dash for c in Control]  # type: ignore[union-attr]
    assert len(set(patterns)) == 4


def test_a_choice_made_elsewhere_is_shown_and_told_to_nobody(
    strip: LayerStrip, qtbot: QtBot
) -> None:
    with qtbot.assertNotEmitted(strip.chosen):
        strip.choose(Control.AIR)
    assert strip.rows[Control.AIR].isChecked()
