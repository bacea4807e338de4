"""What Draw in the menu does, but for the tools: gravity, and what helps a hand to draw."""

from PySide6.QtCore import QObject

from enclosure_app.model.edits import set_gravity
from enclosure_app.model.place import Point
from enclosure_app.model.section import DOWN
from enclosure_app.window.commands.fittings import Fittings
from enclosure_app.window.typed.typed_size import Asked


class SketchCommands(QObject):
    """Gravity, the grid, angles and catching."""

    def __init__(self, fittings: Fittings) -> None:
        super().__init__(fittings.window)
        self._fittings = fittings

    def hangs_down(self) -> None:
        """Let gravity act down the sheet."""
        self._set_gravity(DOWN, self.tr("Gravity acts down the sheet"))

    def hangs_askew(self) -> None:
        """Ask for two places on a plumb line."""
        self._fittings.toolbox.take("down")

    def is_plan(self) -> None:
        """Make the section a plan, in which no gravity acts."""
        self._set_gravity(None, self.tr("Make it a plan"))

    def catching(self, on: bool) -> None:
        """Catch ends, middles and crossings, or not."""
        self._fittings.canvas.catching = on

    def grid_shown(self, on: bool) -> None:
        """Show the grid and catch it, or not."""
        self._fittings.place.aid(grid_shown=on)

    def keep_angles(self, on: bool) -> None:
        """Keep lines to angles, or not."""
        self._fittings.place.aid(kept=on)

    def set_aids(self) -> None:
        """Ask for the spacing of the grid, the distance off boards, the angles, and beads."""
        place, units = self._fittings.place, self._fittings.document.project.units
        aids = place.aids
        asked = (
            Asked("grid", self.tr("Spacing of the grid"), aids.spacing(units), 0.5, 10_000),
            Asked("beside", self.tr("Sheets off boards"), aids.beside, 0.5, 100),
            Asked("step", self.tr("Angles that lines keep to"), aids.step, 1, 90, "degrees"),
            Asked("bead", self.tr("Width of a bead"), aids.bead, 1, 100),
        )
        self._fittings.sizes.put_away()
        title = self.tr("Grid, angles and distances")
        self._fittings.sizes.ask(title, asked, units, lambda values: place.aid(**values))

    def _set_gravity(self, down: Point | None, text: str) -> None:
        place = self._fittings.place
        if place.section is None or place.section.gravity == down:
            return
        place.document.apply(text, set_gravity(place.document.project, place.index, down))
