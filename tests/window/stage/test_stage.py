"""The window is cleared for the walk, and afterwards stands as it stood."""

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from enclosure_app.window.apart.working import Job, Lane
from enclosure_app.window.main_window import MainWindow

Opened = Callable[..., MainWindow]


def test_only_the_walk_is_seen(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    window.docks[0].hide()
    window.do("walk")
    assert window.views.walk.isVisible()
    assert not window.tools.isVisible()
    assert not any(dock.isVisible() for dock in window.docks)
    assert not window.statusBar().isVisible()
    qtbot.keyClick(window.views.walk, Qt.Key.Key_Escape)
    assert window.tools.isVisible()
    assert [dock.isVisible() for dock in window.docks] == [False, True, True]
    assert window.canvas.isVisible()


def test_what_is_about_the_drawing_cannot_be_done_meanwhile(opened: Opened) -> None:
    window = opened()
    actions = window.actions_by_name
    window.do("walk")
    assert not actions["delete"].isEnabled()
    assert not actions["tool_sheet"].isEnabled()
    assert actions["save"].isEnabled()
    window.do("walk")
    assert actions["delete"].isEnabled()
    assert not actions["undo"].isEnabled()  # there is nothing to be undone


def test_what_is_undone_meanwhile_brings_no_panel_back(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    window.settings.who = "Ida"
    window.do("walk")
    qtbot.keyClick(window.views.walk, Qt.Key.Key_A)
    assert window.document.modified
    window.do("undo")
    assert window.views.walk.isVisible()
    assert not window.tools.isVisible()


def test_another_drawing_ends_the_walk(opened: Opened) -> None:
    window = opened()
    window.do("walk")
    opened("roof-to-wall.dxf")
    assert not window.views.walk.isVisible()
    assert window.canvas.isVisible()
    assert window.tools.isVisible()


def test_without_a_section_there_is_nothing_to_walk(window: MainWindow) -> None:
    window.do("walk")
    assert window.views.start.isVisible()
    assert "nothing to walk" in window.messages.words.text()


def test_the_drawing_comes_back_at_the_place_one_was_at(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    window.do("walk")
    page = window.views.walk
    page.step(1)
    stop = page.stop
    assert stop is not None
    qtbot.keyClick(page, Qt.Key.Key_Escape)
    assert window.canvas.camera.centre == stop.at
    assert window.canvas.hasFocus()


def test_a_window_closed_in_the_walk_keeps_its_panels_for_the_next_day(opened: Opened) -> None:
    window = opened()
    window.docks[2].hide()
    window.do("walk")
    window.commands.files.leaving = True
    window.close()
    assert window.settings.layout() is not None
    assert window.docks[2].isHidden()
    assert not window.docks[0].isHidden()


def test_what_is_said_on_the_walk_is_large_enough_for_a_finger(opened: Opened) -> None:
    window = opened()
    window.do("walk")
    window.messages.ask("The photograph is cut short.", {"Look": lambda: None})
    QApplication.processEvents()
    assert window.messages.close_button.height() >= 44
    window.do("walk")
    QApplication.processEvents()
    assert window.messages.close_button.height() < 44


def test_a_tablet_held_upright_is_wide_enough_for_the_whole_window(opened: Opened) -> None:
    window = opened()
    window.resize(1280, 800)
    window.do("walk")
    name = "a photograph with a very long name, as some cameras and archives give them " * 2
    window.messages.say(f"{name}.jpg: the photograph was cut short or is damaged; copy it again.")
    window.working.begin(Job(Lane.SAYING, f"Taking in {name}.jpg", lambda _: None))
    for key in (*(stop.key for stop in window.views.walk.stops), ""):
        window.views.walk.go_to(key)
        QApplication.processEvents()
        assert window.minimumSizeHint().width() <= 800
    window.resize(800, 1280)
    QApplication.processEvents()
    assert (window.width(), window.height()) == (800, 1280)
    window.resize(1280, 800)
    QApplication.processEvents()
    assert (window.width(), window.height()) == (1280, 800)
