"""What Preferences in the menu does, and what puts a person's own settings in force."""

from PySide6.QtCore import QObject

from enclosure_app.window.canvas.picture.rainfall import system_wants_motion
from enclosure_app.window.commands.fittings import Fittings
from enclosure_app.window.preferences.preferences import Preferences


class PreferenceCommands(QObject):
    """Shows the preferences, and follows what is the person's own in them."""

    def __init__(self, fittings: Fittings) -> None:
        super().__init__(fittings.window)
        self._fittings = fittings
        self.shown: Preferences | None = None
        self._follow()

    def preferences(self) -> None:
        """Show the preferences beside the drawing."""
        if self.shown is None:
            self.shown = Preferences(
                self._fittings.document, self._fittings.settings, self._fittings.window
            )
            self.shown.own.changed.connect(self._follow_all)
        self.shown.show_project()
        self.shown.show()
        self.shown.activateWindow()

    def _follow_all(self) -> None:
        self._fittings.show_ground(self._fittings.settings.ground)
        self._follow()

    def _follow(self) -> None:
        """Put in force what is the person's own, apart from light and dark."""
        fittings, settings = self._fittings, self._fittings.settings
        wants = settings.motion == "on" or (
            settings.motion == "as_system" and system_wants_motion()
        )
        fittings.canvas.rain.allow(motion=wants)
        fittings.keeping.copy_after(settings.copy_after)
        fittings.findings.advice.verdict.set_who(settings.who)
