"""How a window stands: its size and its panels, as the person left them."""

from PySide6.QtCore import QByteArray, Qt
from PySide6.QtWidgets import QMainWindow, QToolBar

from enclosure_app.window.settings import Settings
from enclosure_app.window.stage.views import Views

_SIDES = ((0.27, 300), (0.33, 350))  # of the width, dots at most: lines, findings
_STATE = 2  # of the layout that is kept; another number forgets an older one


class Arrangement:
    """Keeps the size of a window and where its tools and panels are, from one day to the next."""

    def __init__(
        self, window: QMainWindow, settings: Settings, views: Views, tools: QToolBar
    ) -> None:
        self._window, self._settings = window, settings
        self._tools, self._docks = tools, views.docks
        self._ribbon = views.ribbon

    def restore_size(self) -> None:
        """Give the window the size and the place that it had last."""
        self._window.resize(1366, 768)
        if kept := self._settings.layout():
            self._window.restoreGeometry(kept[0])

    def clear(self) -> None:
        """Show neither tools nor panels: nothing is open yet."""
        for part in (self._tools, *self._docks):
            part.hide()

    def furnish(self) -> None:
        """Show tools and panels as the person left them, unless they are shown."""
        if not self._tools.isHidden():
            return
        for part in (self._tools, *self._docks):
            part.show()
        if kept := self._settings.layout():
            self._window.restoreState(kept[1], _STATE)
            return
        if height := self._ribbon.wished_height(self._window.height()):
            self._window.resizeDocks([self._docks[2]], [height], Qt.Orientation.Vertical)
        wide = self._window.width()
        widths = [min(most, int(share * wide)) for share, most in _SIDES]
        self._window.resizeDocks(list(self._docks[:2]), widths, Qt.Orientation.Horizontal)

    def keep(self) -> None:
        """Keep how the panels stand, or stood when a drawing was last open."""
        kept = self._settings.layout()
        state = self._window.saveState(_STATE)
        if self._tools.isHidden():
            state = kept[1] if kept else QByteArray()
        self._settings.keep_layout(self._window.saveGeometry(), state)
