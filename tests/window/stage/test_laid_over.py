"""What is under way is told over the page; nothing on it moves when that comes and goes."""

from collections.abc import Callable

import pytest
from PySide6.QtCore import QPoint, QRect
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from enclosure_app.window.filing import working_bar
from enclosure_app.window.main_window import MainWindow

Opened = Callable[..., MainWindow]


def place(widget: QWidget) -> QRect:
    """Return where a widget is in its window."""
    return QRect(widget.mapTo(widget.window(), QPoint(0, 0)), widget.size())


@pytest.fixture
def tells(monkeypatch: pytest.MonkeyPatch, qtbot: QtBot) -> Callable[[MainWindow], QWidget]:
    """Return what lets a window tell at once that a check is under way."""

    def tell(window: MainWindow) -> QWidget:
        monkeypatch.setattr(working_bar, "SOON", 0)
        bar = window.views.working
        bar.tell_check("Checking the section")
        qtbot.waitUntil(bar.isVisible)
        return bar

    return tell


def test_the_drawing_stays_where_it_is_while_a_check_is_told(
    opened: Opened, tells: Callable[[MainWindow], QWidget]
) -> None:
    window = opened("four-sections-faulty.dxf")
    drawing, tabs, steps = window.canvas, window.views.section_row, window.views.steps
    before = [place(each) for each in (drawing, tabs, steps)]
    bar = tells(window)
    assert [place(each) for each in (drawing, tabs, steps)] == before
    assert place(bar) == place(steps)  # and the tabs can be used


def test_it_follows_when_a_message_moves_the_drawing(
    opened: Opened, tells: Callable[[MainWindow], QWidget], qtbot: QtBot
) -> None:
    window = opened()
    bar = tells(window)
    above = place(bar).top()
    window.messages.say("A sheet is drawn twice.")
    qtbot.waitUntil(lambda: place(bar).top() > above)
    assert place(bar) == place(window.views.steps)


def test_on_the_walk_it_covers_the_row_of_stops_and_nothing_that_is_touched(
    opened: Opened, tells: Callable[[MainWindow], QWidget], qtbot: QtBot
) -> None:
    window = opened()
    window.do("walk")
    head = window.views.walk.head
    qtbot.wait(50)  # the walk is laid out by then
    before = place(window.views.walk.place)
    bar = tells(window)
    assert place(window.views.walk.place) == before
    touched = [head.back, *head.filters.values()]
    assert not any(place(bar).intersects(place(each)) for each in touched)
    window.resize(800, 1280)
    qtbot.waitUntil(lambda: place(bar).width() == head.overview.width() < 800)
    assert not any(place(bar).intersects(place(each)) for each in touched)


def test_on_the_first_page_it_is_along_the_top(
    window: MainWindow, tells: Callable[[MainWindow], QWidget]
) -> None:
    bar, page = tells(window), window.views.start
    assert place(bar).topLeft() == place(page).topLeft()
    assert bar.width() == page.width()
    assert bar.height() < page.height() / 8
