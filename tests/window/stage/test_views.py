"""The views of a window: laid out for large screens and small, shown and hidden from one menu."""

from collections.abc import Callable

import pytest

from enclosure_app.window.main_window import MainWindow

Opened = Callable[..., MainWindow]
SMALL = (960, 480)  # 1920 x 1080 at 200 %, less the bars of the desktop


def test_a_screen_at_200_percent_has_room_for_the_window(opened: Opened) -> None:
    window = opened()
    window.do("next_finding")
    needed = window.minimumSizeHint()
    assert (needed.width(), needed.height()) <= SMALL
    assert needed.height() <= SMALL[1]
    window.resize(*SMALL)
    assert (window.width(), window.height()) == SMALL
    assert window.canvas.width() >= 240
    assert window.canvas.height() >= 180


@pytest.mark.parametrize("number", [0, 1, 2])
def test_the_menu_of_panels_hides_and_shows_each(opened: Opened, number: int) -> None:
    window = opened()
    dock = window.docks[number]
    menu = window.views.made_menu_of_panels(window)
    action = next(each for each in menu.actions() if each.text() == dock.windowTitle())
    action.trigger()
    assert dock.isHidden()
    action.trigger()
    assert not dock.isHidden()


def test_the_drawing_is_the_window(opened: Opened) -> None:
    window = opened()
    canvas = window.canvas.width() * window.canvas.height()
    others = [dock.width() * dock.height() for dock in window.docks]
    assert all(canvas > other for other in others)


def test_the_status_bar_says_what_to_do_and_where_the_mouse_is(opened: Opened) -> None:
    window = opened()
    assert window.views.hint.text().startswith("Click a sheet or a line to pick it")
    assert window.views.where.parent() is window.statusBar()
