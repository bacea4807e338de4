"""A flashing that leaves the wall through the insulation: lower sheet, leg, and upper sheet over it."""

from enclosure_app.model.place import Point, Points
from enclosure_app.planning.parts.assembly import ON, OVER, Sketch, Wall

RISE = 40.0  # mm that the shelf stands above its level at the wall
FALL = 1 / 7
LEG = 190.0  # mm of leg up the wall
PAST = 40.0  # mm that the shelf reaches past the cladding


def shelf_at(level: float, x: float, above: float = 0.0) -> Point:
    """Return the place at `x` on the falling shelf of a flashing at a level."""
    return (x, level + RISE + (x + ON + OVER) * FALL + above)


def flashed(sketch: Sketch, wall: Wall, level: float, lower: Points) -> None:
    """Draw the lower sheet, the flashing over it, and the sheet that comes down over its leg."""
    top = sketch.frame[2][1]
    leg = -ON - OVER
    head = level + RISE + LEG
    nose = shelf_at(level, wall.face - PAST)
    drip = [nose, (nose[0], nose[1] - 34), (nose[0] - 10, nose[1] - 46)]
    sketch.line("self-adhered-sheet", lower)
    sketch.line("base-flashing", [(leg, head), shelf_at(level, leg), *drip])
    over = leg - OVER
    down = [(-ON, head + 24), (over, head + 10), (over, level + RISE + 16)]
    sketch.line("self-adhered-sheet", [(-ON, top), *down])
