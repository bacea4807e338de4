"""Naming and removing sections."""

from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.window.main_window import MainWindow


def names(window: MainWindow) -> list[str]:
    return [section.name for section in window.document.project.sections]


def test_a_section_is_named_in_place_and_undone(sheet: MainWindow, qtbot: QtBot) -> None:
    sheet.do("name_section")
    qtbot.keyClicks(sheet.views.naming.field, "Eave at the north side")
    qtbot.keyClick(sheet.views.naming.field, Qt.Key.Key_Return)
    assert names(sheet) == ["Eave at the north side"]
    sheet.do("undo")
    assert names(sheet) == ["New section"]


def test_a_name_that_another_section_has_is_refused_in_words(
    sheet: MainWindow, qtbot: QtBot
) -> None:
    sheet.parts.begin("ridge")
    sheet.do("name_section")
    qtbot.keyClicks(sheet.views.naming.field, "New section")
    qtbot.keyClick(sheet.views.naming.field, Qt.Key.Key_Return)
    assert "New section" in sheet.messages.words.text()
    assert names(sheet) == ["New section", "Ridge"]
    assert sheet.views.naming.isVisible()


def test_a_section_is_removed_and_comes_back(sheet: MainWindow) -> None:
    sheet.parts.begin("ridge")
    sheet.do("drop_section")
    assert names(sheet) == ["New section"]
    assert sheet.document.undo_stack.undoText() == "Remove Ridge"
    sheet.do("undo")
    assert names(sheet) == ["New section", "Ridge"]


def test_the_only_section_stays(sheet: MainWindow) -> None:
    sheet.do("drop_section")
    assert names(sheet) == ["New section"]
    assert "only section" in sheet.messages.words.text()
