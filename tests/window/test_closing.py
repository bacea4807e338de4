"""What is not saved is asked about; a window that closes leaves nothing running behind it."""

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QPushButton
from pytestqt.qtbot import QtBot

from enclosure_app.model.edits import remove_pieces
from enclosure_app.window.main_window import MainWindow

Opened = Callable[..., MainWindow]


def changed(window: MainWindow) -> MainWindow:
    project = window.document.project
    name = project.sections[0].pieces[0].name
    window.document.apply("Delete", remove_pieces(project, 0, [name]))
    return window


def test_close_asks_about_what_is_not_saved(opened: Opened, qtbot: QtBot) -> None:
    window = changed(opened())
    window.do("close")
    assert window.isVisible()
    assert "not kept yet" in window.messages.words.text()
    button = window.messages.answers.itemAt(1).widget()
    assert isinstance(button, QPushButton)
    assert button.text() == "Go on without saving"
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    assert not window.isVisible()


def test_what_is_saved_closes_at_once(opened: Opened) -> None:
    window = opened()
    window.do("close")
    assert not window.isVisible()


def test_what_was_given_lately_and_how_the_window_stood_is_kept(opened: Opened) -> None:
    window = opened()
    window.lines.lately = ["wall-sheet"]
    window.do("close")
    assert window.settings.lately == ["wall-sheet"]
    assert window.settings.layout() is not None


def test_a_closed_window_is_told_no_more_of_its_document(opened: Opened) -> None:
    window = changed(opened())
    title = window.windowTitle()
    told: list[bool] = []
    window.document.undo_stack.cleanChanged.connect(told.append)
    window.commands.files.leave()
    window.document.undo_stack.setClean()
    assert told == []
    assert window.windowTitle() == title
