"""Walking puts down in the project what was touched, each as one step that can be undone."""

from collections.abc import Callable
from pathlib import Path

import pytest
from PIL import Image
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.model.edits import move_point
from enclosure_app.model.said.decision import State
from enclosure_app.model.said.site_check import Seen
from enclosure_app.model.standing.sign_offs import signed
from enclosure_app.model.standing.verdicts import history_of
from enclosure_app.window.main_window import MainWindow
from enclosure_app.window.walk.page import WalkPage

LEFT = Qt.MouseButton.LeftButton
Opened = Callable[..., MainWindow]


@pytest.fixture
def shown(walk: WalkPage) -> MainWindow:
    window = walk.window()
    assert isinstance(window, MainWindow)
    return window


def finding(walk: WalkPage) -> str:
    walk.go_to(next(stop.key for stop in walk.stops if stop.finding))
    return walk.here


def place(walk: WalkPage) -> str:
    walk.go_to(next(stop.key for stop in walk.stops if stop.place))
    return walk.here


def photograph(folder: Path, name: str = "seen.jpg") -> Path:
    Image.new("RGB", (40, 30), "green").save(folder / name)
    return folder / name


def test_a_verdict_is_shown_at_once_and_undone_as_one_step(
    walk: WalkPage, shown: MainWindow, qtbot: QtBot
) -> None:
    key = finding(walk)
    qtbot.mouseClick(walk.words.finding.verdict.buttons[State.MENDED], LEFT)
    assert walk.words.finding.verdict.told.text().startswith("Mended by Ida")
    assert shown.document.project.decisions[-1].key == key
    left = walk.head.still.text()
    shown.do("undo")
    assert walk.words.finding.verdict.told.text() == ""
    assert walk.head.still.text() != left
    assert walk.here == key


def test_a_look_is_kept_with_its_question_in_words(
    walk: WalkPage, shown: MainWindow, qtbot: QtBot
) -> None:
    place(walk)
    key, row = next(iter(walk.words.look_here.looks.rows.items()))
    qtbot.mouseClick(row.buttons[Seen.NOT_IN_ORDER], LEFT)
    (check,) = shown.document.project.site_checks
    assert (check.key, check.seen, check.who) == (key, Seen.NOT_IN_ORDER, "Ida")
    assert row.asked.text() in check.about
    qtbot.mouseClick(row.buttons[Seen.NOT_IN_ORDER], LEFT)
    assert shown.document.project.site_checks[-1].seen is Seen.NOT_LOOKED_AT
    assert len(shown.document.project.site_checks) == 2  # the earlier look stays


def test_all_of_a_place_is_one_step(walk: WalkPage, shown: MainWindow, qtbot: QtBot) -> None:
    place(walk)
    count = len(walk.words.look_here.looks.rows)
    qtbot.mouseClick(walk.words.look_here.looks.all_in_order, LEFT)
    assert len(shown.document.project.site_checks) == count
    shown.do("undo")
    assert shown.document.project.site_checks == ()


def test_nothing_is_said_without_a_name(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    window.do("walk")
    page = window.views.walk
    place(page)
    row = next(iter(page.words.look_here.looks.rows.values()))
    qtbot.mouseClick(row.buttons[Seen.IN_ORDER], LEFT)
    assert window.document.project.site_checks == ()
    assert not row.buttons[Seen.IN_ORDER].isChecked()
    assert page.words.who.hasFocus()
    assert page.words.name_asked.isVisible()
    assert page.words.name_asked.text().startswith("Type your name")
    qtbot.keyClicks(page.words.who, "Ida")
    qtbot.mouseClick(row.buttons[Seen.IN_ORDER], LEFT)
    assert window.document.project.site_checks[0].who == "Ida"
    assert not page.words.who.isVisible()
    assert not page.words.name_asked.isVisible()


def test_a_remark_and_a_photograph_are_put_to_a_finding(
    walk: WalkPage, shown: MainWindow, qtbot: QtBot, tmp_path: Path
) -> None:
    key = finding(walk)
    qtbot.keyClicks(walk.words.note.words, "Torn at the nail")
    walk.words.note.take_in([photograph(tmp_path)])
    project = shown.document.project
    (said,) = history_of(project, key, project.sections[0].name)
    assert said.remark == "Torn at the nail"
    assert [project.photographs[k].name for k in said.photographs] == ["seen.jpg"]
    assert walk.words.note.words.text() == ""
    assert len(walk.words.strip.buttons) == 1
    assert walk.words.said.text().endswith("Ida: Torn at the nail · 1 photograph")
    qtbot.mouseClick(walk.words.strip.buttons[0], LEFT)
    assert walk.photo.isVisible()


def test_a_photograph_of_a_place_goes_to_what_is_not_in_order_there(
    walk: WalkPage, shown: MainWindow, qtbot: QtBot, tmp_path: Path
) -> None:
    place(walk)
    key, row = list(walk.words.look_here.looks.rows.items())[1]
    qtbot.mouseClick(row.buttons[Seen.NOT_IN_ORDER], LEFT)
    walk.words.note.take_in([photograph(tmp_path)])
    check = shown.document.project.site_checks[-1]
    assert (check.key, check.seen, len(check.photographs)) == (key, Seen.NOT_IN_ORDER, 1)
    assert len(walk.words.strip.buttons) == 1


def test_a_file_that_is_no_photograph_is_refused_in_words(
    walk: WalkPage, shown: MainWindow, tmp_path: Path
) -> None:
    finding(walk)
    (tmp_path / "no.jpg").write_text("not a picture")
    before = shown.document.project
    walk.words.note.take_in([tmp_path / "no.jpg"])
    assert "no.jpg" in shown.messages.words.text()
    assert shown.document.project is before


def test_a_signature_stands_until_the_section_is_changed(
    walk: WalkPage, shown: MainWindow, qtbot: QtBot
) -> None:
    walk.go_to("")
    qtbot.mouseClick(walk.words.signing.sign, LEFT)
    section = shown.place.section
    assert section is not None
    (mine,) = signed(shown.document.project, section)
    assert (mine.sign_off.who, mine.changed) == ("Ida", False)
    assert mine.sign_off.remark.startswith("Left open: ")
    assert "Signed by Ida" in walk.words.signing.names.text()
    line = next(piece for piece in section.pieces if hasattr(piece.shape, "points"))
    x, y = line.shape.points[0]
    moved = move_point(shown.document.project, 0, line.name, 0, (x + 9, y))
    shown.document.apply("Move a point", moved)
    assert "changed since" in walk.words.signing.names.text()


def test_a_signature_is_undone_and_taken_back(
    walk: WalkPage, shown: MainWindow, qtbot: QtBot
) -> None:
    walk.go_to("")
    qtbot.mouseClick(walk.words.signing.sign, LEFT)
    shown.do("undo")
    assert shown.document.project.sign_offs == ()
    qtbot.mouseClick(walk.words.signing.sign, LEFT)
    walk.words.signing.taken_back.emit(shown.document.project.sign_offs[-1])
    section = shown.place.section
    assert section is not None
    assert signed(shown.document.project, section) == ()
    assert len(shown.document.project.sign_offs) == 2
