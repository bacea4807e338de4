"""What can be done with a thing is asked of the thing: menus of the drawing, lists, tabs, ribbon."""

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QMenu, QWidget

from enclosure_app.window.canvas.catching.picking import piece_at
from enclosure_app.window.canvas.tools.tool import Pointer
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.menus.action_table import CHANGE
from enclosure_app.window.menus.actions import Actions

PRODUCTS = ("give_product", "pick_product")
FINDINGS = (
    "next_finding",
    "last_finding",
    "why",
    "decide_to_mend",
    "decide_mended",
    "decide_accepted",
    "decide_no_fault",
)
SECTIONS = ("name_section", "walk", "next_section", "last_section")
RIBBON = ("only_all", "only_water", "only_air", "only_vapour", "only_heat", "fit")


_REACH = 6.0  # dots from the mouse to what a menu is asked about
_OF_PIECES = ("give_product", "pick_same", "tool_points", "copy_picked", "paste", "delete")
_OF_TOOLS = ("tool_sheet", "tool_inside", "tool_outside", "fit")


def made_menu_of_drawing(
    window: QWidget, place: Workplace, actions: Actions, pointer: Pointer
) -> QMenu:
    """Return what can be done with what the mouse is on, which is picked if it is not yet."""
    section = place.section
    name = piece_at(section, pointer.bare, pointer.reach(_REACH)) if section else ""
    if name and name not in place.picked:
        place.pick((name,))
    menu = QMenu(window)
    menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    menu.addActions([actions[name] for name in _OF_PIECES])
    menu.addMenu(actions.menus[CHANGE])
    menu.addSeparator()
    menu.addActions([actions[name] for name in _OF_TOOLS])
    return menu


def give_menu(widget: QWidget, names: Sequence[str], actions: Actions) -> None:
    """Open a menu of these actions on a right click, or by the menu key."""
    widget.addActions([actions[name] for name in names])
    widget.setContextMenuPolicy(Qt.ContextMenuPolicy.ActionsContextMenu)
