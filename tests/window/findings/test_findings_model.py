"""The list of findings: its rows, what each says, and what of them is shown."""

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Severity
from enclosure_app.model.product import Control
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.window.findings.findings_model import ROW, FindingsModel, GoneRow, Row
from tests.drawing import eave

SHORT = Decision(
    eave.SHORT.key, State.ACCEPTED, "Ida", "2026-03-02T08:15:00+00:00", "Behind glass."
)
GONE = Decision("level-lap:water:x", State.MENDED, "Jon", "", "", about="It lapped on the level.")
DECIDED = {eave.SHORT.key: SHORT, GONE.key: GONE}


@pytest.fixture
def model(qtbot: QtBot) -> FindingsModel:
    made = FindingsModel()
    made.show(eave.result(decisions=DECIDED), Units.MM)
    return made


def rules(model: FindingsModel) -> list[str]:
    return [row.rule for row in model.rows]


def test_findings_stand_in_walking_order_with_their_numbers(model: FindingsModel) -> None:
    assert [row.number for row in model.rows] == [1, 2, 3, 4, 5, 6]
    assert [row.finding for row in model.rows] == list(eave.result().findings)


def test_a_row_says_what_it_is_in_the_units_of_the_drawing(model: FindingsModel) -> None:
    row = model.rows[1]
    assert (row.heading, row.measured, row.required) == ("Short lap · Water", "60 mm", "100 mm")
    assert row.told == "Fault · Accepted by Ida"
    assert row.spoken.startswith("2. Fault · Accepted by Ida: Short lap · Water. The wall sheet")
    model.show(eave.result(), Units.IN)
    assert model.rows[1].measured == '2 3/8"'


def test_a_verdict_is_read_whole_in_the_tip(model: FindingsModel) -> None:
    tip = model.data(model.index(1), Qt.ItemDataRole.ToolTipRole)
    assert tip.splitlines()[0] == "Accepted by Ida, 2026-03-02: Behind glass."


def test_the_tip_teaches_the_words_that_stand_in_the_row(model: FindingsModel) -> None:
    tip = model.data(model.index(0), Qt.ItemDataRole.ToolTipRole)
    assert tip.splitlines()[0].startswith("Gap: Two pieces that neither touch nor lap")


def test_what_is_no_longer_found_comes_after_what_is_found(model: FindingsModel) -> None:
    assert model.rowCount() == 7
    row = model.data(model.index(6), ROW)
    assert isinstance(row, GoneRow)
    assert (row.heading, row.sentence) == ("Level lap", "It lapped on the level.")
    assert row.told == "No longer found · Mended by Jon"
    assert row.spoken == "No longer found · Mended by Jon: Level lap. It lapped on the level."


@pytest.mark.parametrize(
    ("wish", "left"),
    [
        ({"control": Control.VAPOUR}, ["stops-short"]),
        ({"hidden": frozenset({Severity.FAULT})}, ["stops-short", "no-drip"]),
        ({"rule": "gap"}, ["gap"]),
        ({"state": State.ACCEPTED}, ["short-lap"]),
        ({"state": State.OPEN, "control": Control.AIR}, ["gap", "unsealed-joint"]),
        ({"gone": True}, []),
    ],
)
def test_filters_leave_what_was_asked_for(
    model: FindingsModel, wish: dict[str, object], left: list[str]
) -> None:
    model.filter_by(**wish)
    assert rules(model) == left
    model.show(eave.result(decisions=DECIDED), Units.MM)  # a filter outlives a check
    assert rules(model) == left


def test_what_is_gone_follows_the_filters_that_can_hold_for_it(model: FindingsModel) -> None:
    model.filter_by(gone=True)
    assert [row.decision for row in model.gone] == [GONE]
    model.filter_by(gone=False, rule="gap")
    assert model.gone == ()
    model.filter_by(rule="", state=State.MENDED)
    assert [row.decision for row in model.gone] == [GONE]


def test_a_finding_of_no_control_is_shown_with_every_control(model: FindingsModel) -> None:
    cycle = replace(eave.GAP, key="lap-cycle:a", rule="lap-cycle", control=None)
    model.show(eave.result(findings=(cycle,)), Units.MM)
    model.filter_by(control=Control.HEAT)
    assert rules(model) == ["lap-cycle"]


def test_counts_are_of_the_control_that_is_shown(model: FindingsModel) -> None:
    assert model.count(Severity.FAULT) == 4
    assert (model.total, model.total_gone) == (6, 1)
    model.filter_by(control=Control.AIR)
    assert model.count(Severity.FAULT) == 2
    assert model.rules == {"gap": 1, "unsealed-joint": 1}
    assert model.states == {State.OPEN: 2}


def test_a_row_is_found_by_its_key_while_it_is_shown(model: FindingsModel) -> None:
    assert model.place_of(eave.STOPS.key) == 2
    model.filter_by(control=Control.AIR)
    assert model.place_of(eave.STOPS.key) == -1
    assert model.place_of(eave.UNSEALED.key) == 1


def test_a_row_without_a_verdict_says_its_severity_alone() -> None:
    assert Row(1, eave.NO_DRIP).told == "Remark"
    assert Row(1, eave.NO_DRIP, decision=Decision(eave.NO_DRIP.key, State.OPEN)).told == "Remark"
