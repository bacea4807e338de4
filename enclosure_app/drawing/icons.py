"""The glyphs again as small pictures of their own, for the table and the legend."""

from collections.abc import Iterator

from enclosure_app.drawing.marks import Mark, Stroke
from enclosure_app.drawing.section.glyphs import GLYPHS, Facts, Spot, glyph
from enclosure_app.drawing.section.laps import APART
from enclosure_app.drawing.theme import Pen, Theme
from enclosure_app.model.place import Point
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
    for steps in _SHEETS.get(rule, _UPPER_OUTSIDE):
        yield Stroke(spot.line(*steps), Pen(pen.colour, pen.width, pen.dash))
    yield from glyph(rule, _moved(rule, spot), _facts(rule), theme)


_UP, _DOWN, _HALF = 6.0, -6.0, 2.2
Steps = tuple[tuple[float, float], ...]
_UPPER_OUTSIDE: tuple[Steps, ...] = (
    ((_HALF, 0), (_DOWN, 0)),
    ((_UP, APART), (-_HALF, APART)),
)
# The runs of the sheets in each picture, inner one first, as steps uphill and outward.
_SHEETS: dict[str, tuple[Steps, ...]] = {
    "gap": (((_UP, 0), (1.3, 0)), ((-1.3, 0), (_DOWN, 0))),
    "reverse-lap": (((_UP, 0), (-_HALF, 0)), ((_HALF, APART), (_DOWN, APART))),
    "short-lap": (((_UP, APART), (-0.8, APART)), ((0.8, 0), (_DOWN, 0))),
    "stops-short": (((_DOWN, 0), (-2.0, 0)),),
    "ponding": (((5.2, 2.05), (0, 0), (-5.2, 2.05)),),
    "no-drip": (((4.0, -4.0), (2.6, 2.2), (-0.4, 2.5)),),
    "wet-route": (((_UP, 0), (1.7, 0)), ((-1.7, 0), (_DOWN, 0))),
    "lap-cycle": (),
    "edge-cover-short": (((1.0, 0), (_DOWN, 0)), ((_DOWN, 0), (_DOWN, -3.0))),
    "upturn-short": (((0.2, 0), (-4.5, 0), (-4.5, 5.5)),),
    "open-penetration": (
        ((_UP, 0), (2.1, 0)),
        ((-2.1, 0), (_DOWN, 0)),
        ((1.2, -4.5), (1.2, 4.5)),
        ((-1.2, -4.5), (-1.2, 4.5)),
    ),
}


def _moved(rule: str, spot: Spot) -> Spot:
    """Return the spot of the glyph, which for some pictures is not the middle."""
    if rule == "stops-short":
        return Spot(spot.to(-2.0, 0), spot.up, spot.out)
    if rule in ("edge-cover-short", "upturn-short"):
        return Spot(spot.to(-2.4, -APART), spot.up, spot.out)
    if rule == "no-drip":
        return Spot(spot.to(-0.6, 2.5), spot.up, spot.out)
    return spot


def _facts(rule: str) -> Facts:
    if rule in ("edge-cover-short", "upturn-short"):
        return Facts(length=4.4, needed=8.0)
    if rule == "gap":
        return Facts(length=2.6)
    if rule == "short-lap":
        return Facts(length=1.6, needed=4.6)
    return Facts(length=4.4)
