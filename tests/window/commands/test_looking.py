"""View in the menu: closer, wider, all, light and dark, the full screen and back."""

from collections.abc import Callable

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.drawing.placement import box_around
from enclosure_app.model.edits import set_frame
from enclosure_app.window.main_window import MainWindow

Opened = Callable[..., MainWindow]


def test_closer_and_wider_keep_the_middle_and_undo_each_other(opened: Opened) -> None:
    window = opened()
    camera = window.canvas.camera
    window.do("closer")
    assert window.canvas.camera.zoom == pytest.approx(camera.zoom * 1.4)
    window.do("wider")
    assert window.canvas.camera.zoom == pytest.approx(camera.zoom)
    assert window.canvas.camera.centre == pytest.approx(camera.centre)


def test_all_is_shown_again(opened: Opened) -> None:
    window = opened()
    whole = window.canvas.camera
    window.canvas.go_to((0.0, 0.0), 50.0)
    window.do("fit")
    assert window.canvas.camera == whole


def test_a_small_frame_is_shown_with_its_surround_and_then_all_that_is_drawn(
    opened: Opened,
) -> None:
    window = opened()
    canvas, project = window.canvas, window.document.project
    x, y = box_around(project.sections[0].frame).centre
    small = tuple((x + dx, y + dy) for dx, dy in ((0, 0), (300, 0), (300, 200), (0, 200)))
    window.document.apply("Frame", set_frame(project, 0, small))
    window.do("fit")
    assert canvas.camera.centre == pytest.approx((x + 150, y + 100))
    seen = canvas.camera.window
    assert seen.left < x - 29
    assert seen.right > x + 329
    window.do("fit")
    content = canvas.content()
    assert content is not None
    assert content.width > 1000.0
    assert canvas.camera == canvas.camera.fitted(content)
    window.do("fit")
    assert canvas.camera.centre == pytest.approx((x + 150, y + 100))


def test_dark_and_light_dress_the_window_and_the_paper(opened: Opened) -> None:
    window = opened()
    window.do("night")
    dark = window.canvas.overlay.paper.lightness()
    window.do("day")
    assert dark < 80
    assert window.canvas.overlay.paper.lightness() > 200
    assert window.settings.ground == "day"


@pytest.mark.parametrize("large", [False, True])
def test_the_full_screen_is_left_by_escape_to_how_the_window_stood(
    opened: Opened, qtbot: QtBot, large: bool
) -> None:
    window = opened()
    window.showMaximized() if large else window.showNormal()
    window.do("full_screen")
    assert window.isFullScreen()
    qtbot.keyClick(window.canvas, Qt.Key.Key_Escape)
    assert not window.isFullScreen()
    assert window.isMaximized() is large
    assert not window.actions_by_name["full_screen"].isChecked()


def test_escape_first_ends_the_tool_and_then_the_full_screen(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    window.do("full_screen")
    window.do("tool_measure")
    qtbot.keyClick(window.canvas, Qt.Key.Key_Escape)
    assert window.toolbox.name == "select"
    assert window.isFullScreen()
    qtbot.keyClick(window.canvas, Qt.Key.Key_Escape)
    assert not window.isFullScreen()


def test_the_action_knows_when_the_system_leaves_the_full_screen(opened: Opened) -> None:
    window = opened()
    window.do("full_screen")
    window.showNormal()
    assert not window.actions_by_name["full_screen"].isChecked()


def test_catching_is_switched_off_and_on(opened: Opened) -> None:
    window = opened()
    window.do("catching")
    assert not window.canvas.catching
    window.do("catching")
    assert window.canvas.catching
