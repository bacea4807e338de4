"""The parts of a window hear one another."""

from collections.abc import Callable

from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.errors import EnclosureError
from enclosure_app.window.main_window import MainWindow

Opened = Callable[..., MainWindow]


def test_a_product_that_is_chosen_is_drawn_with(opened: Opened) -> None:
    window = opened()
    window.lines.chosen.emit("wall-sheet")
    assert window.place.product == "wall-sheet"


def test_whoever_refuses_is_heard_in_the_bar_above_the_drawing(opened: Opened) -> None:
    window = opened()
    window.place.refuse(EnclosureError("The run has no end here."))
    assert window.messages.words.text() == "The run has no end here."
    for says in (window.checking.failed, window.filing.failed, window.views.naming.refused):
        says.emit("Not so.")
        assert window.messages.words.text() == "Not so."
        window.messages.say("")


def test_two_clicks_on_a_tab_name_the_section(opened: Opened) -> None:
    window = opened()
    assert not window.views.naming.isVisible()
    window.views.sections.tabBarDoubleClicked.emit(0)
    assert window.views.naming.isVisible()


def test_the_hint_is_that_of_the_tool_in_hand(opened: Opened) -> None:
    window = opened()
    window.do("tool_measure")
    assert window.views.hint.text() == window.canvas.tool.hint != ""


def test_each_list_has_what_can_be_done_with_its_rows_on_a_right_click(
    opened: Opened, qtbot: QtBot
) -> None:
    window = opened()
    by_name = window.actions_by_name
    assert by_name["give_product"] in window.lines.list.list.actions()
    assert by_name["why"] in window.findings.list.actions()
    assert by_name["name_section"] in window.views.sections.actions()
    assert by_name["fit"] in window.ribbon.view.actions()
    assert window.findings.list.contextMenuPolicy() is Qt.ContextMenuPolicy.ActionsContextMenu
