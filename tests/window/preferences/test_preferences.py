"""Preferences: what is the project's is undone and kept in it, and all of it applies at once."""

from collections.abc import Callable
from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Severity
from enclosure_app.window.main_window import MainWindow
from enclosure_app.window.preferences.preferences import Preferences

Opened = Callable[..., MainWindow]


@pytest.fixture
def shown(opened: Opened, qtbot: QtBot) -> MainWindow:
    window = opened()
    qtbot.waitUntil(lambda: window.findings.model.total == 3)
    window.do("preferences")
    return window


def dialog(window: MainWindow) -> Preferences:
    made = window.commands.preferring.shown
    assert made is not None
    return made


def rules(window: MainWindow) -> list[str]:
    return [row.rule for row in window.findings.model.rows]


def test_a_rule_that_is_off_finds_nothing_at_once_and_undo_brings_it_back(
    shown: MainWindow, qtbot: QtBot
) -> None:
    assert "wet-route" in rules(shown)
    qtbot.keyClick(dialog(shown).rules.choices["wet-route"], Qt.Key.Key_End)
    assert shown.document.project.severities == {"wet-route": Severity.OFF}
    qtbot.waitUntil(lambda: "wet-route" not in rules(shown))
    assert shown.document.undo_stack.undoText() == "Rule Wet route: off"
    shown.do("undo")
    qtbot.waitUntil(lambda: "wet-route" in rules(shown))
    assert dialog(shown).rules.choices["wet-route"].currentData() == ""


def test_a_required_figure_is_in_force_at_once(shown: MainWindow, qtbot: QtBot) -> None:
    dialog(shown).figures.figure.emit("eave-cover-inside", 0.0)
    assert shown.document.project.figures == {"eave-cover-inside": 0.0}
    qtbot.waitUntil(lambda: "edge-cover-short" not in rules(shown))
    assert dialog(shown).figures.table.item(0, 0) is not None


def test_a_tolerance_is_in_force_at_once(shown: MainWindow, qtbot: QtBot) -> None:
    dialog(shown).figures.figure.emit("lap-reach", 1.0)
    assert shown.checking.limits.tolerances.lap_reach == 1.0
    qtbot.waitUntil(lambda: "reverse-lap" not in rules(shown))  # too far apart to be a lap


def test_units_and_book_are_the_project_s(shown: MainWindow) -> None:
    dialog(shown).figures.units.emit(Units.IN)
    dialog(shown).figures.book.emit("practice")
    project = shown.document.project
    assert (project.units, project.book) == (Units.IN, "practice")
    assert dialog(shown).figures.shown_units.currentData() == Units.IN
    shown.do("undo")
    shown.do("undo")
    assert shown.document.project.book == ""
    assert not shown.document.modified


def test_choosing_what_is_there_is_no_step(shown: MainWindow) -> None:
    before = shown.document.undo_stack.count()
    dialog(shown).figures.units.emit(shown.document.project.units)
    dialog(shown).rules.chosen.emit("gap", None)
    dialog(shown).figures.book.emit(shown.checking.limits.book)
    assert shown.document.undo_stack.count() == before


def test_without_a_drawing_only_what_is_one_s_own_can_be_set(
    window: MainWindow, qtbot: QtBot
) -> None:
    window.do("preferences")
    assert not dialog(window).rules.isEnabled()
    assert not dialog(window).figures.isEnabled()
    assert dialog(window).own.isEnabled()


def test_a_book_that_is_not_there_can_be_exchanged(shown: MainWindow) -> None:
    project = shown.document.project
    shown.document.apply("Book", replace(project, book="no-such-book"))
    dialog(shown).figures.book.emit("practice")
    assert shown.document.project.book == "practice"
