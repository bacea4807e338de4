"""Lists, tabs and the ribbon have menus of what can be done with them."""

from collections.abc import Callable

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from enclosure_app.model.place import Line
from enclosure_app.model.said.decision import State
from enclosure_app.window.canvas.tools.tool import Pointer
from enclosure_app.window.main_window import MainWindow
from enclosure_app.window.menus import context_menus as menus

Opened = Callable[..., MainWindow]
WHERE: dict[str, tuple[Callable[[MainWindow], QWidget], tuple[str, ...]]] = {
    "products": (lambda window: window.lines.list.list, menus.PRODUCTS),
    "findings": (lambda window: window.findings.list, menus.FINDINGS),
    "sections": (lambda window: window.views.sections, menus.SECTIONS),
    "ribbon": (lambda window: window.ribbon.view, menus.RIBBON),
}


@pytest.mark.parametrize("where", WHERE)
def test_the_menu_holds_what_can_be_done_there(opened: Opened, where: str) -> None:
    window = opened()
    of, names = WHERE[where]
    widget = of(window)
    assert widget.contextMenuPolicy() is Qt.ContextMenuPolicy.ActionsContextMenu
    wanted = [window.actions_by_name[name].text() for name in names]
    assert [action.text() for action in widget.actions()] == wanted


def test_a_right_click_chooses_the_finding_that_the_menu_is_about(
    opened: Opened, qtbot: QtBot
) -> None:
    window = opened()
    window.settings.who = "Ida"
    window.findings.advice.verdict.set_who("Ida")
    view = window.findings.list
    view.setContextMenuPolicy(Qt.ContextMenuPolicy.NoContextMenu)  # a menu wants a screen
    at = view.visualRect(window.findings.model.index(1)).center()
    qtbot.mouseClick(view.viewport(), Qt.MouseButton.RightButton, pos=at)
    wanted = window.findings.model.rows[1].finding
    assert window.findings.current is wanted
    to_mend = window.actions_by_name["decide_to_mend"]
    next(action for action in view.actions() if action is to_mend).trigger()
    (decision,) = window.document.project.decisions
    assert (decision.key, decision.state) == (wanted.key, State.TO_BE_MENDED)


def test_the_drawing_s_menu_is_about_what_the_mouse_is_on(opened: Opened) -> None:
    window = opened()
    section = window.place.section
    assert section is not None
    line = next(piece for piece in section.pieces if isinstance(piece.shape, Line))
    camera = window.canvas.camera
    pointer = Pointer(camera.seen(line.shape.points[0]), line.shape.points[0], camera)
    menu = menus.made_menu_of_drawing(window, window.place, window.actions_by_name, pointer)
    assert len(window.place.picked) == 1
    words = [action.text() for action in menu.actions()]
    assert window.actions_by_name["copy_picked"].text() in words
    assert window.actions_by_name["tool_sheet"].text() in words
