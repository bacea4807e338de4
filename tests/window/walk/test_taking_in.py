"""Photographs are read beside the window and put to what they are about; nothing is lost."""

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path
from threading import Event

import pytest
from PIL import Image
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from enclosure_app.files import photographs
from enclosure_app.model.edits import move_point
from enclosure_app.model.place import Line
from enclosure_app.model.said.site_check import Seen
from enclosure_app.model.standing.verdicts import history_of
from enclosure_app.window.apart.working import Lane, Working
from enclosure_app.window.main_window import MainWindow
from enclosure_app.window.settings import Settings
from enclosure_app.window.walk.page import WalkPage
from enclosure_app.window.walk.stops import Stop

LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def apart(qtbot: QtBot, settings: Settings) -> Iterator[MainWindow]:
    """Return a window on a sample that is walked by Ida, with work done beside it."""
    working = Working()
    shown = MainWindow(settings, working)
    qtbot.addWidget(shown)
    settings.who = "Ida"
    shown.show()
    shown.filing.open_sample("eave-flush-faulty.dxf", "layers-second-office.toml")
    qtbot.waitUntil(lambda: shown.showing.result is not None, timeout=20_000)
    shown.do("walk")
    yield shown
    shown.commands.files.leaving = True
    shown.close()


@pytest.fixture
def held(monkeypatch: pytest.MonkeyPatch) -> Event:
    """Return what lets photographs be read; until it is set, none is."""
    go, load = Event(), photographs.load_photograph

    def waiting(path: Path) -> photographs.Photograph:
        go.wait(10)
        return load(path)

    monkeypatch.setattr(photographs, "load_photograph", waiting)
    return go


def pictures(folder: Path, *names: str) -> list[Path]:
    for number, name in enumerate(names):
        Image.new("RGB", (40, 30), (60 * number, 9, 9)).save(folder / name)
    return [folder / name for name in names]


def walk_to(window: MainWindow, *, finding: bool) -> Stop:
    page = window.views.walk
    stop = next(s for s in page.stops if (s.finding is not None) is finding)
    page.go_to(stop.key)
    return stop


def names_at(window: MainWindow, key: str) -> list[str]:
    project = window.document.project
    said = history_of(project, key, project.sections[0].name)
    return [project.photographs[name].name for each in said for name in each.photographs]


def done(window: MainWindow) -> bool:
    return not window.working.busy(Lane.TAKING_IN)


def test_the_window_is_free_while_they_are_read_and_they_go_where_they_were_meant(
    apart: MainWindow, held: Event, tmp_path: Path, qtbot: QtBot
) -> None:
    stop, page = walk_to(apart, finding=True), apart.views.walk
    qtbot.keyClicks(page.words.note.words, "Torn")
    page.words.note.take_in(pictures(tmp_path, "a.jpg", "b.jpg"))
    assert page.words.note.words.text() == ""  # it waits with the photographs
    qtbot.keyClick(page.foot.onward, Qt.Key.Key_Right)
    assert page.here != stop.key
    page.words.note.words.setText("typed meanwhile")
    assert [job.words for job in apart.working.jobs] == ["Taking in 2 photographs"]
    held.set()
    qtbot.waitUntil(lambda: done(apart))
    assert names_at(apart, stop.key) == ["a.jpg", "b.jpg"]
    assert apart.document.project.remarks[-1].remark == "Torn"
    assert page.words.note.words.text() == "typed meanwhile"
    apart.do("undo")
    assert names_at(apart, stop.key) == []


def test_what_is_dropped_while_others_are_read_waits_its_turn(
    apart: MainWindow, held: Event, tmp_path: Path, qtbot: QtBot
) -> None:
    stop, page = walk_to(apart, finding=True), apart.views.walk
    for path in pictures(tmp_path, "a.jpg", "b.jpg", "c.jpg"):
        page.words.note.take_in([path])
    held.set()
    qtbot.waitUntil(lambda: done(apart))
    assert names_at(apart, stop.key) == ["a.jpg", "b.jpg", "c.jpg"]


def test_a_bad_one_among_good_ones_has_its_sentence_and_the_good_ones_are_taken(
    apart: MainWindow, tmp_path: Path, qtbot: QtBot
) -> None:
    stop, page = walk_to(apart, finding=True), apart.views.walk
    good = pictures(tmp_path, "a.jpg", "b.png")
    (tmp_path / "cut.jpg").write_bytes(good[0].read_bytes()[:200])
    (tmp_path / "notes.txt").write_text("no picture")
    page.words.note.take_in([good[0], tmp_path / "cut.jpg", tmp_path / "notes.txt", good[1]])
    qtbot.waitUntil(lambda: done(apart))
    assert names_at(apart, stop.key) == ["a.jpg", "b.png"]
    told = apart.messages.words.text().splitlines()
    assert [line.split(":")[0] for line in told] == ["cut.jpg", "notes.txt"]


def test_when_none_can_be_read_the_words_come_back(
    apart: MainWindow, tmp_path: Path, qtbot: QtBot
) -> None:
    walk_to(apart, finding=True)
    page, before = apart.views.walk, apart.document.project
    (tmp_path / "cut.jpg").write_bytes(b"\xff\xd8\xff")
    page.words.note.words.setText("Torn")
    page.words.note.take_in([tmp_path / "cut.jpg"])
    qtbot.waitUntil(lambda: done(apart))
    assert apart.document.project is before
    assert page.words.note.words.text() == "Torn"


def test_escape_gives_up_what_is_read_and_does_not_leave_the_walk(
    apart: MainWindow, held: Event, tmp_path: Path, qtbot: QtBot
) -> None:
    stop, page = walk_to(apart, finding=True), apart.views.walk
    page.words.note.words.setText("Torn")
    page.words.note.take_in(pictures(tmp_path, "a.jpg", "b.jpg"))
    qtbot.waitUntil(apart.views.working.isVisible)
    page.go_to("")
    qtbot.keyClick(QApplication.focusWidget() or page, Qt.Key.Key_Escape)
    assert done(apart)
    assert apart.walking.on
    held.set()
    assert names_at(apart, stop.key) == []
    assert "Nothing was taken in" in apart.messages.words.text()
    page.go_to(stop.key)
    assert page.words.note.words.text() == "Torn"
    qtbot.keyClick(page, Qt.Key.Key_Escape)
    assert not apart.walking.on


def test_photographs_of_a_place_go_to_the_question_that_is_chosen_for_them(
    apart: MainWindow, tmp_path: Path, qtbot: QtBot
) -> None:
    stop, page = walk_to(apart, finding=False), apart.views.walk
    page.words.note.take_in(pictures(tmp_path, "a.jpg"))
    assert apart.document.project.site_checks == ()
    key, row = list(page.words.look_here.looks.rows.items())[1]
    qtbot.mouseClick(row.note, LEFT)
    qtbot.waitUntil(lambda: bool(apart.document.project.site_checks))
    (check,) = apart.document.project.site_checks
    assert (check.key, check.seen, len(check.photographs)) == (key, Seen.NOT_LOOKED_AT, 1)
    assert page.here == stop.key
    assert row.told.text() == "1 photograph"  # nobody looked yet
    assert row.asked.text() in page.words.said.text()


def test_an_edit_meanwhile_is_no_hindrance(
    apart: MainWindow, held: Event, tmp_path: Path, qtbot: QtBot
) -> None:
    stop, page = walk_to(apart, finding=True), apart.views.walk
    page.words.note.take_in(pictures(tmp_path, "a.jpg"))
    section = apart.document.project.sections[0]
    piece = next(p for p in section.pieces if isinstance(p.shape, Line))
    x, y = piece.shape.points[0]
    moved = move_point(apart.document.project, 0, piece.name, 0, (x, y + 1))
    apart.document.apply("Move a point", moved)
    held.set()
    qtbot.waitUntil(lambda: done(apart))
    assert names_at(apart, stop.key) == ["a.jpg"]
    assert apart.document.project.sections[0].by_name[piece.name].shape.points[0] == (x, y + 1)


def test_another_drawing_meanwhile_gets_nothing_that_is_not_about_it(
    apart: MainWindow, held: Event, tmp_path: Path, qtbot: QtBot
) -> None:
    walk_to(apart, finding=True)
    page: WalkPage = apart.views.walk
    page.words.note.take_in(pictures(tmp_path, "a.jpg"))
    project = apart.document.project
    apart.document.apply("Revise", replace(project, revision="another"))
    held.set()
    qtbot.waitUntil(lambda: done(apart))
    assert apart.document.project.photographs == {}
    assert "was not put down: another drawing is open" in apart.messages.words.text()


def test_a_photograph_dropped_on_the_last_page_goes_nowhere_and_says_so(
    apart: MainWindow, tmp_path: Path
) -> None:
    page, before = apart.views.walk, apart.document.project
    page.go_to("")
    files = QMimeData()
    files.setUrls([QUrl.fromLocalFile(str(path)) for path in pictures(tmp_path, "a.jpg")])
    plain = Qt.KeyboardModifier.NoModifier
    entered = QDragEnterEvent(QPoint(90, 90), Qt.DropAction.CopyAction, files, LEFT, plain)
    page.dragEnterEvent(entered)
    assert entered.isAccepted()  # else the window would lay it under the drawing
    page.dropEvent(QDropEvent(QPointF(90, 90), Qt.DropAction.CopyAction, files, LEFT, plain))
    assert "about one place" in apart.messages.words.text()
    assert apart.document.project is before


def test_a_note_does_not_make_one_person_say_what_another_saw(
    apart: MainWindow, tmp_path: Path, qtbot: QtBot
) -> None:
    walk_to(apart, finding=False)
    page = apart.views.walk
    row = list(page.words.look_here.looks.rows.values())[1]
    qtbot.mouseClick(row.buttons[Seen.IN_ORDER], LEFT)
    apart.settings.who = "Per"
    qtbot.mouseClick(row.note, LEFT)
    qtbot.keyClicks(page.words.note.words, "Seen from below")
    qtbot.keyClick(page.words.note.words, Qt.Key.Key_Return)
    check = apart.document.project.site_checks[-1]
    assert (check.who, check.seen) == ("Per", Seen.IN_ORDER)
    assert check.remark == "Seen from below (as Ida saw it)"
    assert row.buttons[Seen.IN_ORDER].isChecked()
