"""Remarks and photographs, typed and taken in place."""

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFileDialog
from pytestqt.qtbot import QtBot

from enclosure_app.window.walk.note_box import NoteBox


@pytest.fixture
def box(qtbot: QtBot) -> NoteBox:
    shown = NoteBox()
    qtbot.addWidget(shown)
    shown.show()
    return shown


def test_a_remark_is_put_down_by_its_button_and_by_enter(box: NoteBox, qtbot: QtBot) -> None:
    assert not box.put_down.isEnabled()
    qtbot.keyClicks(box.words, " torn at the corner ")
    with qtbot.waitSignal(box.noted) as told:
        qtbot.mouseClick(box.put_down, Qt.MouseButton.LeftButton)
    assert told.args == ["torn at the corner", ()]
    with qtbot.waitSignal(box.noted):
        qtbot.keyClick(box.words, Qt.Key.Key_Return)


FILES = (Path("a.JPG"), Path("plan.dxf"), Path("b.png"))


def test_all_files_are_taken_in_with_what_is_typed(box: NoteBox, qtbot: QtBot) -> None:
    """What is no photograph is told by whoever reads it, and not overlooked in silence."""
    qtbot.keyClicks(box.words, "seen from below")
    with qtbot.waitSignal(box.noted) as told:
        box.take_in(FILES)
    assert told.args == ["seen from below", FILES]
    with qtbot.assertNotEmitted(box.noted):
        box.take_in([])


def test_photographs_wait_until_their_question_is_chosen(box: NoteBox, qtbot: QtBot) -> None:
    box.show_about("", lacks=True)
    qtbot.keyClicks(box.words, "torn")
    with qtbot.assertNotEmitted(box.noted):
        box.take_in(FILES[:1])
        box.take_in(FILES[2:])
    assert box.about.text().startswith("2 photographs wait: touch")
    with qtbot.waitSignal(box.noted) as told:
        box.show_about("Is the edge flat?", lacks=False)
    assert told.args == ["torn", (FILES[0], FILES[2])]
    assert box.about.text() == "About: Is the edge flat?"
    assert not box.is_waiting


def test_a_remark_waits_too_and_can_be_given_up(box: NoteBox, qtbot: QtBot) -> None:
    box.show_about("", lacks=True)
    qtbot.keyClicks(box.words, "torn")
    with qtbot.assertNotEmitted(box.noted):
        qtbot.keyClick(box.words, Qt.Key.Key_Return)
    assert box.is_waiting
    box.give_up()
    with qtbot.assertNotEmitted(box.noted):
        box.show_about("Is the edge flat?", lacks=False)
    assert box.words.text() == "torn"
    with qtbot.waitSignal(box.noted):
        qtbot.keyClick(box.words, Qt.Key.Key_Return)


def test_what_is_typed_stays_at_its_stop(box: NoteBox, qtbot: QtBot) -> None:
    box.turn_to(("p", "Eave", "one"))
    qtbot.keyClicks(box.words, "torn")
    box.turn_to(("p", "Eave", "two"))
    assert box.words.text() == ""
    assert box.begun == (("p", "Eave", "one"),)
    box.turn_to(("p", "Eave", "one"))
    assert box.words.text() == "torn"
    box.clear(("p", "Eave", "one"))
    box.turn_to(("p", "Eave", "two"))
    assert box.begun == ()


def test_what_could_not_be_put_down_comes_back_to_its_stop(box: NoteBox, qtbot: QtBot) -> None:
    one, two = ("p", "Eave", "one"), ("p", "Eave", "two")
    box.turn_to(two)
    box.give_back("torn", one)
    qtbot.keyClicks(box.words, "whole")
    box.give_back("cut", two)
    assert box.words.text() == "whole"  # what one is typing is never overwritten
    box.turn_to(one)
    assert box.words.text() == "torn"


def test_photographs_are_chosen_from_files(box: NoteBox, qtbot: QtBot) -> None:
    qtbot.mouseClick(box.photograph, Qt.MouseButton.LeftButton)
    dialog = box.findChild(QFileDialog)
    assert dialog is not None
    assert dialog.fileMode() is QFileDialog.FileMode.ExistingFiles
    with qtbot.waitSignal(box.noted) as told:
        dialog.filesSelected.emit(["/photographs/one.jpeg"])
    assert told.args == ["", (Path("/photographs/one.jpeg"),)]
    dialog.close()


def test_it_says_that_the_camera_cannot_be_used(box: NoteBox) -> None:
    assert "cannot use the tablet's camera" in box.told.text()


def test_a_photograph_dropped_on_the_line_is_no_remark(box: NoteBox) -> None:
    assert not box.words.acceptDrops()
