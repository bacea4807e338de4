"""What can be done with a thing is asked of the thing: menus of the lists, the tabs, the ribbon."""

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QWidget

from enclosure_app.window.actions import Actions

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
SECTIONS = ("name_section", "next_section", "last_section")
RIBBON = ("only_all", "only_water", "only_air", "only_vapour", "only_heat", "fit")


def give_menu(widget: QWidget, names: Sequence[str], actions: Actions) -> None:
    """Open a menu of these actions on a right click, or by the menu key."""
    widget.addActions([actions[name] for name in names])
    widget.setContextMenuPolicy(Qt.ContextMenuPolicy.ActionsContextMenu)
