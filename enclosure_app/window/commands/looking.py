"""What View in the menu does."""

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QAction, QKeyEvent

from enclosure_app.window.commands.fittings import Fittings
from enclosure_app.window.surround.panel_round import go_round

_CLOSER = 1.4


class LookCommands(QObject):
    """How the drawing is looked at."""

    def __init__(self, fittings: Fittings) -> None:
        super().__init__(fittings.window)
        self._fittings = fittings
        fittings.window.installEventFilter(self)

    def fit(self) -> None:
        """Show the section in its frame; once more: all that is drawn."""
        self._fittings.canvas.fit_in_turn()

    def closer(self) -> None:
        """Look closer."""
        self._fittings.canvas.zoom(_CLOSER)

    def wider(self) -> None:
        """Look wider."""
        self._fittings.canvas.zoom(1 / _CLOSER)

    def next_section(self) -> None:
        """Turn to the next section."""
        self._fittings.sections.step(1)

    def last_section(self) -> None:
        """Turn to the section before."""
        self._fittings.sections.step(-1)

    def day(self) -> None:
        """Show everything light."""
        self._fittings.show_ground("day")

    def night(self) -> None:
        """Show everything dark."""
        self._fittings.show_ground("night")

    def as_system(self) -> None:
        """Show everything as the system wants it."""
        self._fittings.show_ground("as_system")

    def next_panel(self) -> None:
        """Give the keys to the next part of the window."""
        go_round(self._fittings.window, 1)

    def last_panel(self) -> None:
        """Give the keys to the part of the window before."""
        go_round(self._fittings.window, -1)

    def full_screen(self, on: bool) -> None:
        """Use the whole screen, or stand as before: large or small."""
        window = self._fittings.window
        if on is not window.isFullScreen():
            window.setWindowState(window.windowState() ^ Qt.WindowState.WindowFullScreen)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Leave the full screen by Escape that nothing else wants; know when the system did it."""
        window = self._fittings.window
        if event.type() == QEvent.Type.WindowStateChange:
            self._check_full_screen(on=window.isFullScreen())
        elif _is_escape(event) and window.isFullScreen():
            self.full_screen(on=False)
            return True
        return super().eventFilter(watched, event)

    def _check_full_screen(self, *, on: bool) -> None:
        action = self._fittings.window.findChild(QAction, "full_screen")
        if action:
            action.setChecked(on)


def _is_escape(event: QEvent) -> bool:
    if not isinstance(event, QKeyEvent) or event.type() != QEvent.Type.KeyPress:
        return False
    return event.key() == Qt.Key.Key_Escape
