"""How a window closes: what is being saved is waited for, what is not saved is asked about."""

from PySide6.QtCore import QObject, QTimer

from enclosure_app.window.apart.working import Lane
from enclosure_app.window.commands.files import FileCommands
from enclosure_app.window.commands.fittings import Fittings
from enclosure_app.window.stage.arrangement import Arrangement
from enclosure_app.window.stage.showing import Showing


class Closing(QObject):
    """Says whether a window may close, and ends all its work once it does."""

    def __init__(self, fittings: Fittings, files: FileCommands, showing: Showing) -> None:
        super().__init__(fittings.window)
        self._fittings, self._files, self._showing = fittings, files, showing
        self._wished = self._done = False
        fittings.working.changed.connect(self._close_at_last)

    def may(self) -> bool:
        """Whether the window may close now; if not, it is asked for or waited for what is missing."""
        if self._files.leaving:
            return True
        if self._is_busy():
            self._wished = True
            return False
        if self._fittings.document.modified:
            self._files.ask_to_save(self._files.leave)
            return False
        return True

    def _is_busy(self) -> bool:
        """Whether something of the person's is being saved, or taken in and then to be saved."""
        return any(map(self._fittings.working.busy, (Lane.KEEPING, Lane.TAKING_IN)))

    def _close_at_last(self) -> None:
        """Close when what is being saved is saved, if that was wished meanwhile."""
        if self._wished and not self._is_busy():
            self._wished = False
            QTimer.singleShot(0, self._fittings.window.close)

    def end(self, arrangement: Arrangement) -> None:
        """Keep how the window stood, and end all work."""
        if self._done:
            return
        self._done = True
        fittings = self._fittings
        fittings.walking.end()
        arrangement.keep()
        fittings.settings.lately = fittings.lines.lately
        fittings.window.hide()  # what has to come to its end does so unseen
        fittings.document.close()
        fittings.checking.close()
        self._showing.close()
        fittings.keeping.close()
        fittings.working.close()
