"""How the drawing looks on a screen: by day, and on a dark ground by night."""

from dataclasses import dataclass, replace
from functools import cache

from enclosure_app.drawing.marks import Flag, Mark
from enclosure_app.drawing.theme import Pen, Theme, load_theme
from enclosure_app.model.drawing import Units
from enclosure_app.model.product import Control
from enclosure_app.resources import resource

DOTS = 4.0  # dots of the screen for one mm of the sheet: how large letters and glyphs are
_INK, _GROUND = "#15181b", "#fff6cf"  # a flag stays dark on light, whatever it stands on


@dataclass(frozen=True, slots=True)
class Look:
    """The theme in use, the units that lengths are written in, the one control shown, if only one."""

    units: Units = Units.MM
    dark: bool = False
    only: Control | None = None

    @property
    def theme(self) -> Theme:
        """The theme by day or by night."""
        return screen_theme(dark=self.dark)


@cache
def screen_theme(*, dark: bool) -> Theme:
    """Return the theme for the screen."""
    return load_theme(resource("theme-dark.toml")) if dark else load_theme()


def legible(mark: Mark, *, dark: bool) -> Mark:
    """Return a mark as it is to be painted: a flag keeps its light ground on a dark sheet."""
    if not dark or not isinstance(mark, Flag):
        return mark
    edge = Pen(_INK, mark.edge.width, mark.edge.dash)
    return replace(mark, edge=edge, ground=_GROUND, label=replace(mark.label, colour=_INK))
