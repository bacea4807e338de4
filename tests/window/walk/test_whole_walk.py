"""A supervisor's whole walk over a sample, with mouse, touch and keys, saved and opened again."""

from collections.abc import Callable
from functools import cache
from pathlib import Path

from PIL import Image
from PySide6.QtCore import Qt
from PySide6.QtGui import QInputDevice, QPointingDevice
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from enclosure_app.files.project.file import load_project, save_project
from enclosure_app.model.said.decision import State
from enclosure_app.model.said.site_check import Seen
from enclosure_app.model.standing.sign_offs import signed
from enclosure_app.model.standing.site_checks import seen_in
from enclosure_app.model.standing.verdicts import verdicts_in
from enclosure_app.window.main_window import MainWindow
from enclosure_app.window.walk.page import WalkPage

LEFT = Qt.MouseButton.LeftButton


@cache
def touch_screen() -> QPointingDevice:
    """Return the one screen that is touched; another at each touch would muddle Qt."""
    return QTest.createTouchDevice(QInputDevice.DeviceType.TouchScreen)


def tap(page: WalkPage, widget: QWidget, qtbot: QtBot) -> None:
    """Bring a button into view, and touch it with one finger."""
    qtbot.wait(QApplication.doubleClickInterval())  # no second half of a double click
    page.words.ensureWidgetVisible(widget)
    screen = touch_screen()
    qtbot.wait(40)
    place = widget.rect().center()
    QTest.touchEvent(page.window(), screen).press(1, place, widget).commit()
    QTest.touchEvent(page.window(), screen).release(1, place, widget).commit()
    QApplication.processEvents()


def decide(page: WalkPage, qtbot: QtBot, number: int) -> None:
    """Decide about a finding: by mouse, by touch, and by keys with a reason, in turn."""
    buttons = page.words.finding.verdict.buttons
    if number == 0:
        qtbot.mouseClick(buttons[State.TO_BE_MENDED], LEFT)
    elif number == 1:
        tap(page, buttons[State.MENDED], qtbot)
    else:
        qtbot.keyClick(page.foot.onward, Qt.Key.Key_3)
        qtbot.keyClicks(page.words.finding.verdict.reason, "As agreed with the architect")
        qtbot.keyClick(page.words.finding.verdict.reason, Qt.Key.Key_Return)


def look(page: WalkPage, qtbot: QtBot, folder: Path, number: int) -> None:
    """Look at a place: the first has a wrinkle, with a photograph; the others are in order."""
    if number == 0:
        row = list(page.words.look_here.looks.rows.values())[-1]
        tap(page, row.buttons[Seen.NOT_IN_ORDER], qtbot)
        Image.new("RGB", (60, 40), "brown").save(folder / "wrinkle.jpg")
        qtbot.keyClicks(page.words.note.words, "A wrinkle at the corner")
        page.words.note.take_in([folder / "wrinkle.jpg"])
        qtbot.keyClick(page.foot.onward, Qt.Key.Key_A)
    else:
        qtbot.mouseClick(page.words.look_here.looks.all_in_order, LEFT)


def walked(page: WalkPage, qtbot: QtBot, folder: Path) -> tuple[int, int]:
    """Walk to the last page; return how many findings and places there were."""
    findings = places = 0
    while page.stop is not None:
        if page.stop.finding is not None:
            decide(page, qtbot, findings)
            findings += 1
        else:
            look(page, qtbot, folder, places)
            places += 1
        qtbot.keyClick(page.foot.onward, Qt.Key.Key_Right)
    return findings, places


def test_a_whole_walk(opened: Callable[..., MainWindow], qtbot: QtBot, tmp_path: Path) -> None:
    window = opened()
    window.resize(1024, 768)
    window.settings.who = "Ida Holm"
    window.do("walk")
    page = window.views.walk
    whole = len(page.stops)
    assert page.head.progress.text() == f"1 of {whole}"
    findings, places = walked(page, qtbot, tmp_path)
    assert (findings, findings + places) == (3, whole)
    assert "Left open" not in page.words.signing.told.text()
    assert page.head.still.text() == "all done"
    assert page.words.signing.told.text().startswith("To be mended: ")
    qtbot.mouseClick(page.words.signing.sign, LEFT)
    qtbot.keyClick(page, Qt.Key.Key_Escape)
    assert window.canvas.isVisible()
    save_project(window.document.project, tmp_path / "walked.enclosure")
    kept_is_what_was_said(tmp_path / "walked.enclosure")


def kept_is_what_was_said(path: Path) -> None:
    again = load_project(path)
    section = again.sections[0]
    states = sorted(decision.state.value for decision in verdicts_in(again, section.name).values())
    assert states == ["accepted", "mended", "to be mended"]
    seen = seen_in(again, section.name)
    amiss = [check for check in seen.values() if check.seen is Seen.NOT_IN_ORDER]
    assert [check.remark for check in amiss] == ["A wrinkle at the corner"]
    assert [again.photographs[key].name for key in amiss[0].photographs] == ["wrinkle.jpg"]
    (name,) = signed(again, section)
    assert (name.sign_off.who, name.sign_off.remark, name.changed) == ("Ida Holm", "", False)
