"""The whole window, driven by mouse and keys."""

import gc
import weakref
from collections.abc import Callable

from PySide6.QtCore import QCoreApplication, QEvent, QPointF, Qt
from PySide6.QtWidgets import QApplication, QLabel
from pytestqt.qtbot import QtBot

from enclosure_app.model.finding import Severity
from enclosure_app.model.product import Control
from enclosure_app.model.report import Continuity
from enclosure_app.window.apart.working import Working
from enclosure_app.window.main_window import MainWindow
from enclosure_app.window.settings import Settings

Opened = Callable[..., MainWindow]


def test_a_window_without_a_file_offers_three_ways_to_begin(window: MainWindow) -> None:
    assert window.views.pages.currentWidget() is window.views.start
    assert not any(dock.isVisible() for dock in window.docks)


def test_a_sample_is_opened_and_judged_in_one_click(window: MainWindow, qtbot: QtBot) -> None:
    button = next(
        b
        for b in window.views.start.findChildren(type(window.views.steps.button))
        if "eave" in b.text()
    )
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    assert window.document.project.source.endswith("eave-flush-faulty.dxf")
    rules = [row.finding.rule for row in window.findings.model.rows]
    assert rules == ["wet-route", "reverse-lap", "edge-cover-short"]
    assert window.views.pages.currentIndex() == 1


def test_the_next_step_leads_through_the_findings(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    assert window.views.steps.words.text().startswith("3 faults")
    for key in ("wet-route", "reverse-lap", "edge-cover-short", "wet-route"):
        qtbot.mouseClick(window.views.steps.button, Qt.MouseButton.LeftButton)
        finding = window.findings.current
        assert finding is not None
        assert finding.rule == key
        assert window.canvas.camera.centre == finding.at


def test_a_click_on_a_finding_goes_there(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    view = window.findings.list
    at = view.visualRect(window.findings.model.index(2)).center()
    qtbot.mouseClick(view.viewport(), Qt.MouseButton.LeftButton, pos=at)
    finding = window.findings.model.rows[2].finding
    assert window.canvas.camera.centre == finding.at
    assert "Carry it further up" in window.findings.advice.findChildren(QLabel)[0].text()


def test_why_shows_the_page_of_the_rule_and_leads_back(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    window.commands.finding.next_finding()
    window.commands.finding.next_finding()
    qtbot.mouseClick(window.findings.advice.button, Qt.MouseButton.LeftButton)
    told = window.findings.rule.text.toPlainText()
    assert told.startswith("Reverse lap")
    assert "Why it matters" in told
    qtbot.mouseClick(window.findings.rule.back, Qt.MouseButton.LeftButton)
    assert window.findings.pages.currentIndex() == 0


def test_one_control_can_be_shown_alone(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    row = window.findings.strip.rows[Control.AIR]
    qtbot.mouseClick(row, Qt.MouseButton.LeftButton)
    assert window.place.only is Control.AIR
    assert window.findings.model.rows == ()
    qtbot.keyClick(window, Qt.Key.Key_0, Qt.KeyboardModifier.AltModifier)
    assert len(window.findings.model.rows) == 3


def test_a_severity_can_be_left_out(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    qtbot.mouseClick(window.findings.filter.severities[Severity.FAULT], Qt.MouseButton.LeftButton)
    assert window.findings.model.rows == ()
    assert "filtered out" in window.findings.nothing.text()


def test_deleting_a_sheet_is_judged_and_undone(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    before = window.document.project
    name = next(p.name for p in before.sections[0].pieces if p.product == "underlayment")
    window.place.pick((name,))
    qtbot.keyClick(window.canvas, Qt.Key.Key_Delete)
    assert name not in window.document.project.sections[0].by_name
    with qtbot.waitSignal(window.checking.checked):
        pass
    water = window.result.layers[Control.WATER] if window.result else None
    assert water is not None
    assert water.continuity is Continuity.BROKEN
    assert window.isWindowModified()
    window.do("undo")
    assert window.document.project is before
    assert not window.isWindowModified()


def test_the_wheel_zooms_about_the_mouse(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    dot = QPointF(200, 150)
    place = window.canvas.camera.place(dot)
    window.canvas.zoom(1.25, dot)
    there = window.canvas.camera.seen(place)
    assert abs(there.x() - dot.x()) < 1e-6
    assert abs(there.y() - dot.y()) < 1e-6


def test_a_file_that_cannot_be_read_is_told_in_the_window(window: MainWindow, tmp_path) -> None:  # noqa: ANN001
    bad = tmp_path / "bad.dxf"
    bad.write_text("this is no drawing", encoding="utf-8")
    assert not window.filing.open(bad)
    assert window.messages.isVisible()
    assert "bad.dxf" in window.messages.words.text()


def test_a_window_that_went_for_another_language_is_forgotten(
    settings: Settings, qapp: QApplication
) -> None:
    window = MainWindow(settings, Working(apart=False))
    window.show()
    window.close()
    window.deleteLater()
    gone = weakref.ref(window)
    del window
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    gc.collect()
    assert gone() is None
    qapp.styleHints().colorSchemeChanged.emit(Qt.ColorScheme.Dark)  # and follows nothing any more
