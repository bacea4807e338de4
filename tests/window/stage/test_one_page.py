"""A pile of pages is only as large as the page that is seen."""

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QMainWindow, QWidget
from pytestqt.qtbot import QtBot

from enclosure_app.window.stage.one_page import OnePage


def page(width: int) -> QWidget:
    made = QWidget()
    made.setMinimumSize(width, 50)
    return made


def test_a_wide_page_below_keeps_no_window_from_being_narrow(qtbot: QtBot) -> None:
    window, pages = QMainWindow(), OnePage()
    qtbot.addWidget(window)
    for width in (900, 300):
        pages.addWidget(page(width))
    window.setCentralWidget(pages)
    window.show()
    window.resize(320, 200)
    assert window.width() >= 900
    pages.setCurrentIndex(1)
    window.resize(320, 200)
    qtbot.waitUntil(lambda: window.minimumSizeHint().width() < 900)
    window.resize(320, 200)
    qtbot.waitUntil(lambda: window.width() == 320)


def test_a_pile_without_pages_asks_for_no_room(qtbot: QtBot) -> None:
    pages = OnePage()
    qtbot.addWidget(pages)
    assert pages.minimumSizeHint() == QSize()
