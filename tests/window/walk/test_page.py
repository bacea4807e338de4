"""The walk's page: one stop at a time, on and back, filtered, turned with the tablet."""

from pathlib import Path

import pytest
from PIL import Image
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QDropEvent, QInputDevice
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QPushButton
from pytestqt.qtbot import QtBot

from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.walk.page import WalkPage
from enclosure_app.window.walk.stops import Which
from enclosure_app.window.walk.words_column import Shown
from tests.drawing import eave
from tests.window.walk.rounds import LAP, TAPE, eave_round
from tests.window.walk.test_photo_strip import photograph

LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def page(qtbot: QtBot) -> WalkPage:
    made = WalkPage()
    qtbot.addWidget(made)
    made.resize(1024, 700)
    made.show()
    walked = eave_round()
    made.begin()
    made.moved.connect(lambda: made.show_walk(Shown(walked, Look(), who="Ida")))
    made.show_walk(Shown(walked, Look(), who="Ida"))
    return made


def test_it_begins_at_the_first_stop_and_ends_with_the_signature(page: WalkPage) -> None:
    assert page.here == TAPE.key
    assert page.words.look_here.isVisible()
    assert page.head.progress.text() == "1 of 8"
    for _ in range(8):
        page.step(1)
    assert page.words.signing.isVisible()
    assert not page.words.note.isVisible()
    page.step(1)
    assert page.words.signing.isVisible()
    page.step(-1)
    assert page.here == LAP.key


def test_buttons_and_swipes_turn_the_page(page: WalkPage, qtbot: QtBot) -> None:
    qtbot.mouseClick(page.foot.onward, LEFT)
    assert page.here == eave.SHORT.key
    qtbot.mousePress(page.words.page, LEFT, pos=QPoint(300, 20))
    qtbot.mouseRelease(page.words.page, LEFT, pos=QPoint(100, 24))
    assert page.here == eave.GAP.key
    qtbot.mouseClick(page.foot.before, LEFT)
    assert page.here == eave.SHORT.key


def test_a_finger_turns_the_page_and_presses_buttons(page: WalkPage, qtbot: QtBot) -> None:
    screen = QTest.createTouchDevice(QInputDevice.DeviceType.TouchScreen)
    label = page.words.look_here.name
    start, end = QPoint(250, 8), QPoint(60, 10)
    QTest.touchEvent(page, screen).press(1, start, label).commit()
    QTest.touchEvent(page, screen).move(1, end, label).commit()
    QTest.touchEvent(page, screen).release(1, end, label).commit()
    qtbot.waitUntil(lambda: page.here == eave.SHORT.key)
    button = page.foot.onward
    middle = button.rect().center()
    QTest.touchEvent(page, screen).press(1, middle, button).commit()
    QTest.touchEvent(page, screen).release(1, middle, button).commit()
    qtbot.waitUntil(lambda: page.here == eave.GAP.key)


def test_only_what_is_wrong_is_walked_when_it_is_wished(page: WalkPage) -> None:
    page.choose(Which.WRONG)
    assert page.here == eave.SHORT.key
    assert page.head.progress.text() == "1 of 6"
    page.choose(Which.EVERYTHING)
    assert page.here == eave.SHORT.key
    assert page.head.progress.text() == "2 of 8"


def test_what_is_done_stays_until_one_goes_on(page: WalkPage) -> None:
    from enclosure_app.model.said.site_check import Seen, SiteCheck  # noqa: PLC0415

    page.choose(Which.LEFT)
    seen = {key: SiteCheck(key, Seen.IN_ORDER, "Ida") for key, _ in TAPE.items}
    page.show_walk(Shown(eave_round(**seen), Look(), who="Ida"))
    assert page.here == TAPE.key
    assert page.foot.onward.objectName() == "main"
    page.step(1)
    assert TAPE.key not in [stop.key for stop in page.stops] or page.here == eave.SHORT.key


def test_a_stop_that_is_gone_leaves_one_near_where_one_was(page: WalkPage) -> None:
    page.go_to(eave.GAP.key)
    from enclosure_app.planning.site_list.listing import SiteList  # noqa: PLC0415
    from enclosure_app.window.walk.stops import round_of  # noqa: PLC0415

    without = eave.result(findings=(eave.SHORT, eave.STOPS))
    page.show_walk(Shown(round_of(without, SiteList("", (TAPE, LAP))), Look(), who="Ida"))
    assert page.here == eave.STOPS.key


def test_the_words_stand_beside_or_below_the_picture(page: WalkPage, qtbot: QtBot) -> None:
    assert page.words.x() > page.picture.x()
    page.resize(800, 1200)
    qtbot.waitUntil(lambda: page.words.y() > page.picture.y())
    assert page.words.width() == 800


def test_dropped_photographs_are_noted(page: WalkPage, tmp_path: Path, qtbot: QtBot) -> None:
    Image.new("RGB", (9, 9)).save(tmp_path / "a.jpg")
    dropped = QMimeData()
    dropped.setUrls([QUrl.fromLocalFile(str(tmp_path / name)) for name in ("a.jpg", "b.txt")])
    event = QDropEvent(
        QPointF(50, 50), Qt.DropAction.CopyAction, dropped, LEFT, Qt.KeyboardModifier.NoModifier
    )
    page.go_to(eave.SHORT.key)
    with qtbot.waitSignal(page.noted) as told:
        page.dropEvent(event)
    assert told.args == ["", (tmp_path / "a.jpg", tmp_path / "b.txt")]


def test_photographs_dropped_on_a_question_are_about_it(page: WalkPage, qtbot: QtBot) -> None:
    key, row = list(page.words.look_here.looks.rows.items())[1]
    page.words.ensureWidgetVisible(row)
    dropped = QMimeData()
    dropped.setUrls([QUrl.fromLocalFile("/photographs/a.jpg")])
    at = QPointF(row.mapTo(page, QPoint(20, 10)))
    plain = Qt.KeyboardModifier.NoModifier
    event = QDropEvent(at, Qt.DropAction.CopyAction, dropped, LEFT, plain)
    with qtbot.waitSignal(page.noted):
        page.dropEvent(event)
    assert page.words.look_here.looks.chosen == key


def test_what_is_typed_goes_to_no_other_stop_however_one_leaves(page: WalkPage) -> None:
    page.words.note.words.setText("torn")
    page.choose(Which.WRONG)
    assert page.here == eave.SHORT.key
    assert page.words.note.words.text() == ""
    page.go_to(TAPE.key)
    assert page.words.note.words.text() == "torn"


def test_every_button_says_what_it_is(page: WalkPage) -> None:
    for stop in ("", TAPE.key, eave.SHORT.key):
        page.go_to(stop)
        buttons = [b for b in page.findChildren(QPushButton) if b.isVisible()]
        assert buttons
        assert all(button.text() or button.accessibleName() for button in buttons)


@pytest.mark.parametrize("size", [(800, 1280), (1280, 800), (600, 1024), (1024, 600)])
def test_a_tablet_may_be_turned_either_way(page: WalkPage, size: tuple[int, int]) -> None:
    for key in ("", TAPE.key, eave.SHORT.key):
        page.go_to(key)
        page.resize(*size[::-1])
        page.resize(*size)
        assert (page.width(), page.height()) == size
        assert page.minimumSizeHint().width() <= min(size)


def test_the_words_have_their_share_however_much_is_said(page: WalkPage, qtbot: QtBot) -> None:
    page.resize(1280, 800)
    qtbot.waitUntil(lambda: page.words.x() > 0)
    assert page.words.width() == pytest.approx(0.46 * 1280, abs=3)
    page.resize(1920, 1080)
    qtbot.waitUntil(lambda: page.words.width() == 620)
    page.resize(800, 1280)
    qtbot.waitUntil(lambda: page.words.y() > page.picture.y())
    assert page.words.height() > 0.8 * page.picture.height()


def test_closer_and_wider_are_about_what_is_seen(page: WalkPage, qtbot: QtBot) -> None:
    zoom = page.place.camera.zoom
    qtbot.mouseClick(page.foot.closer, LEFT)
    assert page.place.camera.zoom > zoom
    zoom = page.place.camera.zoom
    page.words.strip.opened.emit(photograph("lap.jpg"))
    whole = page.photo.view.filled
    qtbot.mouseClick(page.foot.closer, LEFT)
    assert page.photo.view.filled.width() == pytest.approx(1.5 * whole.width())
    assert page.place.camera.zoom == zoom
    qtbot.mouseClick(page.foot.whole, LEFT)
    assert page.photo.view.filled == whole
