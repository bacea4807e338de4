"""Which actions are ticked: the tool in hand, the control in view, which way is down, what helps."""

from PySide6.QtCore import QObject

from enclosure_app.model.section import DOWN
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.menus.actions import Actions
from enclosure_app.window.settings import Settings


class Ticks(QObject):
    """Ticks the actions of a window that say how things are."""

    def __init__(self, actions: Actions, place: Workplace, settings: Settings) -> None:
        super().__init__(place)
        self._actions, self._place, self._settings = actions, place, settings

    def begin(self) -> None:
        """Begin with the grid, angles and distances as they were when a window was last open."""
        aids = self._settings.aids
        self._place.aids = aids
        self._actions["grid_shown"].setChecked(aids.grid_shown)
        self._actions["keep_angles"].setChecked(aids.kept)
        self._place.aided.connect(self._keep_aids)
        self._actions["catching"].setChecked(True)
        self._actions["tool_select"].setChecked(True)

    def _keep_aids(self) -> None:
        self._settings.aids = self._place.aids

    def show_tool(self, name: str) -> None:
        """Show which tool is in hand: none of the bar's while one hangs from the mouse for a moment."""
        group = self._actions["tool_select"].actionGroup()
        group.setExclusive(False)
        for action in group.actions():
            action.setChecked(action.objectName() == f"tool_{name}")
        group.setExclusive(True)
        self._show_gravity()

    def show_control(self) -> None:
        """Show which control is in view alone, and which way is down in the section in view."""
        only = self._place.only.value if self._place.only else "all"
        self._actions[f"only_{only}"].setChecked(True)
        self._show_gravity()

    def _show_gravity(self) -> None:
        gravity = self._place.section.gravity if self._place.section else DOWN
        name = {DOWN: "hangs_down", None: "is_plan"}.get(gravity, "hangs_askew")
        self._actions[name].setChecked(True)
