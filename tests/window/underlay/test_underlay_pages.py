"""Which page: asked in place, with small pictures, by mouse and keys."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor
from pytestqt.qtbot import QtBot

from enclosure_app.files.underlay.reading import UnderlayFile
from enclosure_app.window.underlay.underlay_pages import PageChooser
from tests.made_pdf import made_pdf

FILE = UnderlayFile(
    "set.pdf", made_pdf("0 0 420 595 re f", "", "1 0 0 rg 0 0 420 595 re f"), ("A-1", "A-2", "A-3")
)


@pytest.fixture
def chooser(qtbot: QtBot) -> PageChooser:
    shown = PageChooser()
    qtbot.addWidget(shown)
    return shown


def middle(chooser: PageChooser, row: int) -> str:
    icon = chooser.pages.item(row).icon().pixmap(chooser.pages.iconSize()).toImage()
    return QColor(icon.pixel(icon.width() // 2, icon.height() // 2)).name()


def test_pages_are_named_and_pictured_one_after_the_other(
    chooser: PageChooser, qtbot: QtBot
) -> None:
    assert chooser.isHidden()
    chooser.ask(FILE)
    assert chooser.words.text() == "set.pdf has 3 pages. Which one goes under the drawing?"
    assert [chooser.pages.item(row).text() for row in range(3)] == [
        "Page A-1", "Page A-2", "Page A-3",
    ]  # fmt: skip
    qtbot.waitUntil(lambda: middle(chooser, 2) == "#ff0000")
    assert [middle(chooser, row) for row in range(3)] == ["#000000", "#ffffff", "#ff0000"]


def test_enter_takes_the_page(chooser: PageChooser, qtbot: QtBot) -> None:
    chooser.ask(FILE)
    chooser.pages.setCurrentRow(1)
    with qtbot.waitSignal(chooser.chosen) as heard:
        qtbot.keyClick(chooser.pages, Qt.Key.Key_Return)
    assert heard.args == [FILE, 1]
    assert chooser.isHidden()


def test_the_button_takes_the_first_page_where_none_was_chosen(
    chooser: PageChooser, qtbot: QtBot
) -> None:
    chooser.ask(FILE)
    with qtbot.waitSignal(chooser.chosen) as heard:
        qtbot.mouseClick(chooser.put, Qt.MouseButton.LeftButton)
    assert heard.args == [FILE, 0]


def test_escape_and_the_other_button_leave_it(chooser: PageChooser, qtbot: QtBot) -> None:
    for leave in (
        lambda: qtbot.keyClick(chooser.pages, Qt.Key.Key_Escape),
        lambda: qtbot.mouseClick(chooser.leave, Qt.MouseButton.LeftButton),
    ):
        chooser.ask(FILE)
        with qtbot.assertNotEmitted(chooser.chosen):
            leave()
        assert chooser.isHidden()


def test_a_page_that_cannot_be_pictured_does_not_keep_the_others_waiting(
    chooser: PageChooser, qtbot: QtBot
) -> None:
    chooser.ask(UnderlayFile("set.pdf", made_pdf("", size=(90_000, 90_000)), ("1", "2")))
    qtbot.wait(80)
    assert middle(chooser, 0) == QColor(0, 0, 0, 0).name()
    assert chooser.pages.count() == 2
