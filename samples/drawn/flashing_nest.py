"""A metal flashing that leaves the wall between two sheets, shingled: lower, leg, upper."""

from drawn.shapes import Point, Points
from drawn.sheet import Sheet

SHELF: Points = [(-4.6, 42.0), (-206.0, 12.0)]
LEG_TOP = 230.0


def on_shelf(x: float, above: float) -> Point:
    """Return the place at `x` on the sloping shelf, lifted by `above`."""
    (x0, y0), (x1, y1) = SHELF
    return (x, y0 + (x - x0) * (y1 - y0) / (x1 - x0) + above)


def flashing_nest(s: Sheet, lower: Points, metal: Points, top: float) -> None:
    """Draw the lower sheet, the metal from the top of its leg, and the sheet that laps over it."""
    s.line("self-adhered-sheet", lower)
    s.line("base-flashing", [(metal[0][0], LEG_TOP), *metal])
    s.line("self-adhered-sheet", [(-0.8, top), (-0.8, 252), (-8.4, 238), (-8.4, 58)])
