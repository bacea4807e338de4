"""A row is as high as its words, at every width."""

from PySide6.QtWidgets import QListWidget
from pytestqt.qtbot import QtBot

from enclosure_app.window.revising.row_delegate import RowDelegate

SENTENCE = "Roof underlayment laps under the sheet below it: water running down goes in behind it."


def rows(qtbot: QtBot, width: int) -> QListWidget:
    shown = QListWidget()
    qtbot.addWidget(shown)
    shown.setItemDelegate(RowDelegate(shown))
    shown.resize(width, 400)
    shown.show()
    shown.addItem(f"Gone · Eave\n{SENTENCE}")
    shown.addItem("New · Eave\nA gap.")
    return shown


def height(shown: QListWidget, row: int) -> int:
    return shown.visualItemRect(shown.item(row)).height()


def test_a_long_sentence_has_room_for_all_its_lines(qtbot: QtBot) -> None:
    narrow, wide = rows(qtbot, 200), rows(qtbot, 900)
    assert height(narrow, 0) > height(wide, 0)
    assert height(wide, 0) == height(wide, 1)
    line = narrow.fontMetrics().lineSpacing()
    assert height(narrow, 0) >= 4 * line


def test_the_words_are_painted(qtbot: QtBot) -> None:
    with_words = rows(qtbot, 300).grab().toImage()
    bare = rows(qtbot, 300)
    bare.item(0).setText(" \n ")
    bare.item(1).setText(" \n ")
    assert bare.grab().toImage() != with_words
