"""Going through findings and deciding about them, by keys, as one step that can be undone."""

from collections.abc import Callable
from datetime import datetime
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from enclosure_app.files.project.file import load_project, save_project
from enclosure_app.model.finding import Severity
from enclosure_app.model.product import Control
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.window.filing.printing import drawn
from enclosure_app.window.main_window import MainWindow

Opened = Callable[..., MainWindow]
_CTRL = Qt.KeyboardModifier.ControlModifier


@pytest.fixture
def shown(opened: Opened, qtbot: QtBot) -> MainWindow:
    """Return the window at its first finding, with the name of who decides."""
    window = opened()
    window.settings.who = "Ida"
    window.findings.advice.verdict.set_who("Ida")
    window.activateWindow()
    qtbot.waitUntil(lambda: window.isActiveWindow() and window.findings.model.total == 3)
    qtbot.keyClick(window, Qt.Key.Key_N)
    return window


def decision(window: MainWindow) -> Decision:
    return window.document.project.decisions[-1]


def test_keys_walk_through_the_findings(shown: MainWindow, qtbot: QtBot) -> None:
    first = shown.findings.current
    qtbot.keyClick(shown, Qt.Key.Key_N)
    second = shown.findings.current
    qtbot.keyClick(shown, Qt.Key.Key_N, Qt.KeyboardModifier.ShiftModifier)
    assert shown.findings.current == first != second


def test_where_every_finding_is_left_out_the_next_one_shows_them_again(
    shown: MainWindow, qtbot: QtBot
) -> None:
    shown.place.show_only(Control.AIR)
    shown.findings.filter.severities[Severity.FAULT].click()
    assert shown.findings.model.rows == ()
    qtbot.keyClick(shown, Qt.Key.Key_N)
    assert shown.place.only is None
    assert len(shown.findings.model.rows) == 3
    assert shown.findings.current is not None


def test_a_verdict_is_one_key_and_one_step(shown: MainWindow, qtbot: QtBot) -> None:
    finding = shown.findings.current
    before = shown.document.project
    qtbot.keyClick(shown, Qt.Key.Key_1, _CTRL)
    made = decision(shown)
    assert finding is not None
    assert (made.key, made.state, made.who) == (finding.key, State.TO_BE_MENDED, "Ida")
    assert (made.about, made.section) == (finding.message, finding.section)
    assert datetime.fromisoformat(made.when).tzinfo is not None
    assert shown.document.undo_stack.undoText() == "Verdict: To be mended"
    qtbot.keyClick(shown, Qt.Key.Key_Z, _CTRL)
    assert shown.document.project is before


def test_a_verdict_is_shown_and_the_finding_stays_chosen(shown: MainWindow, qtbot: QtBot) -> None:
    chosen = shown.findings.current
    with qtbot.waitSignal(shown.checking.checked):
        qtbot.keyClick(shown, Qt.Key.Key_2, _CTRL)
    assert shown.findings.current == chosen
    assert shown.findings.model.rows[0].state is State.MENDED
    assert shown.findings.advice.verdict.buttons[State.MENDED].isChecked()
    assert shown.views.steps.words.text().startswith("2 faults")


@pytest.mark.parametrize(
    ("key", "state"), [(Qt.Key.Key_3, State.ACCEPTED), (Qt.Key.Key_4, State.NO_FAULT)]
)
def test_a_reason_is_typed_where_one_is_needed(
    shown: MainWindow, qtbot: QtBot, key: Qt.Key, state: State
) -> None:
    qtbot.keyClick(shown, key, _CTRL)
    assert shown.document.project.decisions == ()
    QTest.keyClicks(shown.findings.advice.verdict.reason, "Shown in detail 7.")
    QTest.keyClick(shown.findings.advice.verdict.reason, Qt.Key.Key_Return)
    assert (decision(shown).state, decision(shown).remark) == (state, "Shown in detail 7.")


def test_with_every_verdict_the_sheet_is_the_next_step(shown: MainWindow, qtbot: QtBot) -> None:
    for _ in range(3):
        qtbot.keyClick(shown, Qt.Key.Key_1, _CTRL)
        qtbot.keyClick(shown, Qt.Key.Key_N)
    told = shown.views.steps.words
    qtbot.waitUntil(lambda: told.text().startswith("Every fault and doubt has its verdict"))


def test_a_name_is_remembered(shown: MainWindow, qtbot: QtBot) -> None:
    shown.findings.advice.verdict.set_who("")
    qtbot.keyClick(shown, Qt.Key.Key_1, _CTRL)
    QTest.keyClicks(shown.findings.advice.verdict.who, "Jon")
    QTest.keyClick(shown.findings.advice.verdict.who, Qt.Key.Key_Return)
    assert decision(shown).who == "Jon"
    assert shown.settings.who == "Jon"


def test_a_finding_that_is_mended_in_the_drawing_is_still_listed(
    shown: MainWindow, qtbot: QtBot
) -> None:
    for _ in range(2):
        qtbot.keyClick(shown, Qt.Key.Key_N)
    finding = shown.findings.current
    assert finding is not None
    qtbot.keyClick(shown, Qt.Key.Key_1, _CTRL)
    shown.place.pick(finding.pieces[:1])
    qtbot.keyClick(shown.canvas, Qt.Key.Key_Delete)
    model = shown.findings.model
    qtbot.waitUntil(lambda: model.total_gone == 1)
    assert finding.key not in [row.finding.key for row in model.rows]
    assert [row.decision.key for row in model.gone] == [finding.key]
    shown.findings.list.setCurrentIndex(model.index(model.rowCount() - 1))
    qtbot.mouseClick(shown.findings.advice.verdict.take_back, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: model.gone == ())
    assert decision(shown).state is State.OPEN


def test_nothing_is_decided_about_nothing(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    qtbot.keyClick(window, Qt.Key.Key_1, _CTRL)
    assert window.document.project.decisions == ()


def test_a_verdict_is_saved_opened_again_and_on_the_sheet(
    shown: MainWindow, qtbot: QtBot, tmp_path: Path
) -> None:
    finding = shown.findings.current
    assert finding is not None
    qtbot.keyClick(shown, Qt.Key.Key_2, _CTRL)
    made = decision(shown)
    kept = tmp_path / "eave.enclosure.json"
    save_project(shown.document.project, kept)
    again = load_project(kept)
    assert again.decisions == (made,)
    (result,) = drawn(again, tuple(shown.checking.results)).sections
    assert result.state(finding) is State.MENDED


def test_a_rule_s_page_makes_way_for_the_finding_that_is_gone_to(
    shown: MainWindow, qtbot: QtBot
) -> None:
    qtbot.keyClick(shown, Qt.Key.Key_W)
    assert shown.findings.pages.currentIndex() == 1
    qtbot.keyClick(shown, Qt.Key.Key_N)
    assert shown.findings.pages.currentIndex() == 0
