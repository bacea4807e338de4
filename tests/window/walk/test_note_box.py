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


def test_only_pictures_are_taken_in_with_what_is_typed(box: NoteBox, qtbot: QtBot) -> None:
    qtbot.keyClicks(box.words, "seen from below")
    with qtbot.waitSignal(box.noted) as told:
        box.take_in([Path("a.JPG"), Path("plan.dxf"), Path("b.png")])
    assert told.args == ["seen from below", (Path("a.JPG"), Path("b.png"))]
    with qtbot.assertNotEmitted(box.noted):
        box.take_in([Path("plan.dxf")])


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
