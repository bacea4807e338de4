"""What is found is shown in every view, and each view leads the others to a place."""

from collections.abc import Callable
from dataclasses import replace
from math import dist

import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from enclosure_app.model.finding import Severity
from enclosure_app.model.place import Line
from enclosure_app.model.product import Control
from enclosure_app.model.section import Piece
from enclosure_app.window.main_window import MainWindow
from enclosure_app.window.words.labels import coordinate

Opened = Callable[..., MainWindow]
FOUR = ("four-sections-faulty.dxf", "layers-second-office.toml")


def test_a_single_section_needs_no_tab(opened: Opened) -> None:
    assert not opened().views.sections.isVisible()


def test_several_sections_have_tabs_with_their_faults(opened: Opened) -> None:
    window = opened(*FOUR)
    tabs = window.views.sections
    assert tabs.isVisible()
    wanted = []
    for result in window.checking.results:
        faults = sum(finding.severity is Severity.FAULT for finding in result.findings)
        told = "" if not faults else "  ·  1 fault" if faults == 1 else f"  ·  {faults} faults"
        wanted.append(result.section.name + told)
    assert [tabs.tabText(number) for number in range(tabs.count())] == wanted
    assert any("fault" in text for text in wanted)


def test_another_tab_shows_another_section_whole(opened: Opened, qtbot: QtBot) -> None:
    window = opened(*FOUR)
    tabs = window.views.sections
    qtbot.mouseClick(tabs, Qt.MouseButton.LeftButton, pos=tabs.tabRect(2).center())
    section = window.document.project.sections[2]
    assert window.place.section is section
    assert window.result is not None
    assert window.result.section.name == section.name
    seen = window.canvas.camera.window
    assert all(seen.holds(corner) for corner in section.frame)


def test_the_mouse_is_followed_in_the_drawings_units(opened: Opened) -> None:
    window = opened("window-faulty.dxf", "layers.toml")
    dot = QPointF(200, 150)
    none = Qt.MouseButton.NoButton
    everywhere = QPointF(window.canvas.mapToGlobal(dot))
    moved = QMouseEvent(
        QEvent.Type.MouseMove, dot, everywhere, none, none, Qt.KeyboardModifier.NoModifier
    )
    QApplication.sendEvent(window.canvas, moved)
    units = window.document.project.units
    place = window.canvas.camera.place(dot)
    x, y = (coordinate(value, units) for value in place)
    assert window.views.where.text() == f"x {x}   y {y} in"
    window.canvas.pointed.emit(None)
    assert window.views.where.text() == ""


def test_a_place_in_the_band_is_shown_in_the_drawing(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    band = window.ribbon.view
    qtbot.mouseClick(band, Qt.MouseButton.LeftButton, pos=QPoint(band.width() // 2, 50))
    assert window.canvas.overlay.place_gone_to == window.canvas.camera.centre
    section = window.place.section
    assert section is not None
    shapes = [point for piece in section.pieces for point in points_of(piece.shape)]
    assert min(dist(window.canvas.camera.centre, point) for point in shapes) < 2000.0


def points_of(shape: object) -> tuple[tuple[float, float], ...]:
    return getattr(shape, "points", None) or getattr(shape, "outer", ())


def test_one_layer_alone_is_shown_alone_everywhere(opened: Opened) -> None:
    window = opened()
    whole = window.ribbon.view.sizeHint().height()
    window.do("only_air")
    assert window.place.only is Control.AIR
    assert window.ribbon.view.sizeHint().height() < whole
    assert window.findings.model.rows == ()
    window.do("only_all")
    assert len(window.findings.model.rows) == 3


@pytest.mark.parametrize("dark", [True, False])
def test_light_and_dark_reach_every_view(opened: Opened, dark: bool) -> None:
    window = opened()
    window.showing.show_dark(dark=dark)
    assert (window.canvas.overlay.paper.lightness() < 128) is dark


def test_a_window_that_is_closed_shows_nothing_more(
    opened: Opened, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    window = opened()
    shown: list[object] = []
    monkeypatch.setattr(window.checking, "_last", None)  # a check is under way
    window.checking.working.emit(True)
    monkeypatch.setattr(window.canvas, "show_result", lambda *what: shown.append(what))
    window.commands.files.leaving = True
    window.close()
    qtbot.wait(300)
    assert shown == []


def test_while_a_check_takes_long_no_step_is_offered_that_was_done(sheet: MainWindow) -> None:
    piece = Piece("wall", "self-adhered-sheet", Line(((900.0, 0.0), (900.0, 2000.0))))
    project = sheet.document.project
    drawn = replace(project.sections[0], pieces=(piece,))
    sheet.document.apply("Draw", replace(project, sections=(drawn,)))
    sheet.checking.check_now()
    assert "outside" in sheet.views.steps.words.text()
    marked = replace(drawn, outside=((100.0, 900.0),), inside=((1900.0, 900.0),))
    sheet.document.apply("Mark", replace(project, sections=(marked,)))
    assert not sheet.checking.current
    sheet.showing._show_unjudged()  # noqa: SLF001  what its clock does
    assert sheet.views.steps.words.text() == "What is drawn is being judged."
    assert sheet.findings.nothing.text() == "What is drawn is being judged."
    sheet.checking.check_now()
    assert "judged" not in sheet.views.steps.words.text()
