"""The glyphs again as small pictures of their own, for the table and the legend."""

from collections.abc import Iterator

from enclosure_app.drawing.glyphs import GLYPHS, Facts, Spot, glyph
from enclosure_app.drawing.laps import APART
from enclosure_app.drawing.marks import Mark, Stroke
from enclosure_app.drawing.theme import Pen, Theme
from enclosure_app.model.place import Point, Points
from enclosure_app.model.product import Control

WIDTH, HEIGHT = 11.0, 13.0

_LEVEL_RULES = frozenset({"level-lap", "ponding"})


def icon(rule: str, control: Control | None, centre: Point, theme: Theme) -> Iterator[Mark]:
    """Yield a picture of the fault about `centre`: the sheets as they lie, and the glyph on them.

    Inside is on the left. A rule without a glyph has no picture.
    """
    if rule not in GLYPHS:
        return
    x, y = centre
    level = rule in _LEVEL_RULES
    spot = Spot((x - 1.2, y), (0.0, 1.0), (1.0, 0.0))
    if level:
        spot = Spot((x, y - 2.2), (1.0, 0.0), (0.0, 1.0))
    pen = theme.control(control or Control.WATER)
    for run in _sheets(rule, spot):
        yield Stroke(run, Pen(pen.colour, pen.width, pen.dash))
    yield from glyph(rule, _moved(rule, spot), _facts(rule), theme)


def _sheets(rule: str, spot: Spot) -> tuple[Points, ...]:
    """Return the runs of the two sheets: the inner one first."""
    up, down, half = 6.0, -6.0, 2.2
    upper_inside = (spot.line((up, 0), (-half, 0)), spot.line((half, APART), (down, APART)))
    upper_outside = (spot.line((half, 0), (down, 0)), spot.line((up, APART), (-half, APART)))
    match rule:
        case "gap":
            return spot.line((up, 0), (1.3, 0)), spot.line((-1.3, 0), (down, 0))
        case "reverse-lap":
            return upper_inside
        case "stops-short":
            return (spot.line((down, 0), (-2.0, 0)),)
        case "ponding":
            return (spot.line((5.0, 1.9), (0, 0), (-5.0, 1.9)),)
        case "no-drip":
            return (spot.line((0.5, -3.5), (0.9, 3.2), (4.5, 2.4)),)
        case "lap-cycle":
            return ()
        case "short-lap":
            return spot.line((up, APART), (-0.8, APART)), spot.line((0.8, 0), (down, 0))
        case _:
            return upper_outside


def _moved(rule: str, spot: Spot) -> Spot:
    """Return the spot of the glyph, which for some pictures is not the middle."""
    if rule == "stops-short":
        return Spot(spot.to(-2.0, 0), spot.up, spot.out)
    if rule == "no-drip":
        return Spot(spot.to(1.8, 3.4), spot.up, spot.out)
    return spot


def _facts(rule: str) -> Facts:
    if rule == "gap":
        return Facts(length=2.6)
    if rule == "short-lap":
        return Facts(length=1.6, needed=4.6)
    return Facts(length=4.4)
