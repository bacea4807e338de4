"""The list of what is wrong: what it shows, and what it says when it shows nothing."""

import pytest
from PySide6.QtCore import QPoint, Qt
from pytestqt.qtbot import QtBot

from enclosure_app.model.drawing import Units
from enclosure_app.model.product import Control
from enclosure_app.model.report import Continuity, LayerResult
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.findings.findings_panel import FindingsPanel
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


def test_by_how_much_the_two_proofs_differ_is_said_in_the_units_of_the_drawing(
    panel: FindingsPanel,
) -> None:
    air = LayerResult(Control.AIR, Continuity.UNSURE, bottleneck=25.4, opening=57.15)
    panel.show_result(eave.result(layers={Control.AIR: air}, findings=()), Look(units=Units.IN))
    assert 'the widest gap is 1", the opening that it is 1 1/4" wider' in panel.nothing.text()
    assert '1 1/4" wider' in panel.strip.rows[Control.AIR].toolTip()


def test_an_empty_list_says_what_could_not_be_judged(panel: FindingsPanel) -> None:
    panel.show_result(eave.unsure(), Look())
    assert panel.nothing.text() == (
        "The air layer could not be judged. The two proofs differ: look at it yourself.\n\n"
        "Nothing else was found."
    )


def row_of(panel: FindingsPanel, key: str) -> QPoint:
    index = panel.model.index(panel.model.place_of(key))
    return panel.list.visualRect(index).center()


def test_a_click_asks_to_go_there_and_shows_what_to_do(panel: FindingsPanel, qtbot: QtBot) -> None:
    panel.show_result(eave.result(), Look())
    with qtbot.waitSignal(panel.asked) as told:
        at = row_of(panel, eave.SHORT.key)
        qtbot.mouseClick(panel.list.viewport(), Qt.MouseButton.LeftButton, pos=at)
    assert told.args == [eave.SHORT]
    assert panel.advice.isVisible()
    assert panel.current == eave.SHORT


def test_arrows_walk_the_list_and_enter_goes_there(panel: FindingsPanel, qtbot: QtBot) -> None:
    panel.show_result(eave.result(), Look())
    panel.choose(eave.GAP.key)
    qtbot.keyClick(panel.list, Qt.Key.Key_Down)
    assert panel.current == eave.SHORT
    with qtbot.waitSignal(panel.asked) as told:
        qtbot.keyClick(panel.list, Qt.Key.Key_Return)
    assert told.args == [eave.SHORT]


def test_what_is_chosen_stays_so_when_the_section_is_checked_again(panel: FindingsPanel) -> None:
    panel.show_result(eave.result(), Look())
    panel.choose(eave.NO_DRIP.key)
    panel.show_result(eave.result(findings=(eave.SHORT, eave.NO_DRIP)), Look())
    assert panel.current == eave.NO_DRIP
    panel.show_result(eave.result(findings=(eave.SHORT,)), Look())
    assert panel.current is None
    assert not panel.advice.isVisible()


def test_a_reason_that_is_being_typed_outlives_a_check(panel: FindingsPanel, qtbot: QtBot) -> None:
    panel.advice.verdict.set_who("Ida")
    panel.show_result(eave.result(), Look())
    panel.choose(eave.SHORT.key)
    panel.decide(State.ACCEPTED)
    reason = panel.advice.verdict.reason
    qtbot.keyClicks(reason, "Behind the")
    panel.show_result(eave.result(), Look())
    assert reason.isVisible()
    assert reason.text() == "Behind the"
    with qtbot.waitSignal(panel.decided) as told:
        qtbot.keyClicks(reason, " pane.")
        qtbot.keyClick(reason, Qt.Key.Key_Return)
    assert told.args[1:] == [State.ACCEPTED, "Behind the pane.", "Ida"]


def test_a_reason_is_not_carried_over_to_another_finding(
    panel: FindingsPanel, qtbot: QtBot
) -> None:
    panel.advice.verdict.set_who("Ida")
    panel.show_result(eave.result(), Look())
    panel.choose(eave.SHORT.key)
    panel.decide(State.ACCEPTED)
    qtbot.keyClicks(panel.advice.verdict.reason, "Behind the pane.")
    panel.choose(eave.GAP.key)
    assert not panel.advice.verdict.form.isVisible()
    panel.decide(State.ACCEPTED)
    assert panel.advice.verdict.reason.text() == ""


def test_the_list_stays_where_it_was_scrolled_to(panel: FindingsPanel) -> None:
    panel.resize(350, 420)
    panel.show_result(eave.crowded(), Look())
    bar = panel.list.verticalScrollBar()
    bar.setValue(500)
    panel.show_result(eave.crowded(), Look())
    assert bar.value() == 500


def test_what_is_no_longer_found_is_listed_and_stays_chosen(
    panel: FindingsPanel, qtbot: QtBot
) -> None:
    gone = {"gap:x": Decision("gap:x", State.MENDED, "Ida", about="A gap.")}
    panel.show_result(eave.result(findings=(eave.SHORT,), decisions=gone), Look())
    panel.list.setCurrentIndex(panel.model.index(1))
    panel.show_result(eave.result(findings=(), decisions=gone), Look())
    row = panel.current_row
    assert row is not None
    assert row.sentence == "A gap."
    assert panel.current is None
    with qtbot.assertNotEmitted(panel.asked):
        qtbot.mouseClick(
            panel.list.viewport(), Qt.MouseButton.LeftButton, pos=row_of(panel, "gap:x")
        )
