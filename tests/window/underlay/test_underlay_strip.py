"""The strip for what lies under the drawing: what it says, what its buttons do."""

from dataclasses import replace
from io import BytesIO

import pytest
from PIL import Image
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.model import edits
from enclosure_app.model.drawing import Units
from enclosure_app.model.underlay import Underlay
from enclosure_app.window.main_window import MainWindow


def scan(name: str, **more: object) -> Underlay:
    held = BytesIO()
    Image.new("L", (400, 400), 220).save(held, "PNG")
    return Underlay(name, "png", held.getvalue(), size=(400.0, 400.0), **more)  # type: ignore[arg-type]


@pytest.fixture
def page(sheet: MainWindow) -> MainWindow:
    put(sheet, scan("scan.png", paper_mm=0.5, mm_per_pixel=0.5))
    return sheet


def put(window: MainWindow, underlay: Underlay) -> None:
    name = window.document.project.sections[0].name
    window.document.apply(
        "", edits.add_underlay(window.document.project, replace(underlay, section=name))
    )


def under(window: MainWindow, index: int = 0) -> Underlay:
    return window.document.project.underlays[index]


def press(window: MainWindow, qtbot: QtBot, name: str) -> None:
    qtbot.mouseClick(getattr(window.views.underlay, name), Qt.MouseButton.LeftButton)


def choose(window: MainWindow, menu: str, text: str) -> None:
    actions = getattr(window.views.underlay, menu).menu().actions()
    next(action for action in actions if action.text() == text).trigger()


def test_it_is_there_only_with_something_under_the_drawing(sheet: MainWindow) -> None:
    assert sheet.views.underlay.isHidden()
    put(sheet, scan("scan.png"))
    assert not sheet.views.underlay.isHidden()
    sheet.do("undo")
    assert sheet.views.underlay.isHidden()


def test_it_says_that_lengths_are_those_of_the_paper_until_it_is_to_scale(
    page: MainWindow,
) -> None:
    strip = page.views.underlay
    assert strip.words.text() == "Not to scale: lengths are the paper's  ·  scan.png"
    choose(page, "paper", "1:10")
    assert strip.words.text() == "To scale, 1:10 on paper  ·  scan.png"
    assert under(page).mm_per_pixel == pytest.approx(5.0)
    page.do("undo")
    assert not under(page).to_scale


def test_scales_of_feet_and_inches_are_there_too(page: MainWindow) -> None:
    choose(page, "paper", '1 1/2" = 1\'-0"')
    assert under(page).mm_per_pixel == pytest.approx(0.5 * 8)


def test_a_photograph_has_no_scale_of_its_paper(sheet: MainWindow) -> None:
    put(sheet, scan("site.jpg"))
    strip = sheet.views.underlay
    assert strip.paper.isHidden()
    assert strip.words.text().startswith("Not to scale: its size is not known")
    project = edits.scale_underlay(sheet.document.project, 0, ((0, 0), (100, 0)), 300.0)
    sheet.document.apply("", edits.set_units(project, Units.CM))
    assert strip.words.text() == "To scale, 120.0 cm wide  ·  site.jpg"


def test_the_scale_is_set_with_the_tool(page: MainWindow, qtbot: QtBot) -> None:
    press(page, qtbot, "scale")
    assert page.toolbox.name == "scale"
    choose(page, "more", "Move or turn it")
    assert page.toolbox.name == "lay"


def test_it_is_hidden_and_shown(page: MainWindow, qtbot: QtBot) -> None:
    strip = page.views.underlay
    press(page, qtbot, "seen")
    assert not under(page).shown
    assert (strip.seen.text(), strip.words.text()) == ("Show", "Hidden  ·  scan.png")
    assert not strip.scale.isEnabled()
    press(page, qtbot, "seen")
    assert under(page).shown
    assert page.document.undo_stack.undoText() == "Show the picture"


def test_what_is_locked_can_only_be_unlocked(page: MainWindow) -> None:
    strip = page.views.underlay
    choose(page, "more", "Locked where it lies")
    assert under(page).locked
    assert "locked" in strip.words.text()
    assert not strip.scale.isEnabled()
    removing = next(a for a in strip.more.menu().actions() if a.text().startswith("Remove"))
    assert not removing.isEnabled()
    choose(page, "more", "Locked where it lies")
    assert not under(page).locked


def test_it_is_painted_paler_and_removed(page: MainWindow) -> None:
    choose(page, "more", "Faint")
    assert under(page).strength == 0.25
    choose(page, "more", "Remove it, and its lines")
    assert page.document.project.underlays == ()
    page.do("undo")
    assert under(page).strength == 0.25


def test_of_several_one_is_chosen_the_last_one_at_first(page: MainWindow) -> None:
    put(page, scan("second.png"))
    strip = page.views.underlay
    assert (strip.index, strip.which.currentText()) == (1, "second.png")
    strip.which.setCurrentIndex(0)
    strip.which.activated.emit(0)
    choose(page, "more", "Faint")
    assert [each.strength for each in page.document.project.underlays] == [0.25, 1.0]
    choose(page, "more", "Remove it, and its lines")
    assert [each.name for each in page.document.project.underlays] == ["second.png"]
    assert strip.words.text().endswith("second.png")
