"""What View in the menu does."""

from PySide6.QtCore import QObject

from enclosure_app.window.commands.parts import Parts

_CLOSER = 1.4


class LookCommands(QObject):
    """How the drawing is looked at."""

    def __init__(self, parts: Parts) -> None:
        super().__init__(parts.window)
        self._parts = parts

    def fit(self) -> None:
        """Show all."""
        self._parts.canvas.fit()

    def closer(self) -> None:
        """Look closer."""
        self._parts.canvas.zoom(_CLOSER)

    def wider(self) -> None:
        """Look wider."""
        self._parts.canvas.zoom(1 / _CLOSER)

    def day(self) -> None:
        """Show everything light."""
        self._parts.show_ground("day")

    def night(self) -> None:
        """Show everything dark."""
        self._parts.show_ground("night")

    def as_system(self) -> None:
        """Show everything as the system wants it."""
        self._parts.show_ground("as_system")

    def full_screen(self, on: bool) -> None:
        """Use the whole screen, or not."""
        self._parts.window.showFullScreen() if on else self._parts.window.showNormal()

    def catching(self, on: bool) -> None:
        """Catch ends, middles and crossings, or not."""
        self._parts.canvas.catching = on
