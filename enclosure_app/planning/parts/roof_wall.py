"""Roof that falls away from a higher wall: sheet turned up, flashing over it, wall sheet over both."""

from dataclasses import dataclass

from enclosure_app.planning.parts.assembly import (
    DECK,
    NAIL_BASE,
    ON,
    OVER,
    PLATE,
    ROOM,
    Roof,
    Sketch,
    Wall,
    box,
)
from enclosure_app.planning.parts.parameters import RoofSizes, size

APRON = 170.0  # mm that the flashing reaches past the cladding
CLEAR = 60.0  # mm between roofing and cladding
ABOVE, BELOW = 420.0, 160.0  # mm of wall above the flashing's leg, and of room under the ceiling


@dataclass(frozen=True, slots=True)
class Parameters(RoofSizes):
    """Sizes of a roof against a higher wall."""

    leg: float = size(200, 170, 400, "Height of the flashing up the wall")


def draw(sizes: Parameters) -> Sketch:
    """Return the roof-wall joint; the wall's board stands at x = 0, where the deck's top is 0."""
    wall, roof = Wall(sizes), Roof(sizes, sizes.pitch)
    left = wall.face - APRON - 500
    shelf = roof.top + ON + OVER
    foot = roof.at(-ON - OVER, shelf)
    top = foot[1] + sizes.leg + ABOVE
    bottom = roof.at(left, -DECK - sizes.rafters)[1] - BELOW
    frame = box(left, bottom, wall.room + 400, top)
    sketch = Sketch(
        "Roof to higher wall", frame, (wall.room + 200, top - 80), (left + 60, top - 60)
    )
    roof.structure(sketch, left, -0.2)
    wall.inner_leaves(sketch, bottom, top)
    for level in (roof.at(0, -DECK)[1] - 240, roof.at(0, -DECK)[1] - 240 - PLATE):
        wall.plate(sketch, level)
    _insulation(sketch, wall, roof, shelf)
    _sheets(sketch, wall, roof, shelf, sizes.leg)
    wall.screen(sketch, roof.at(wall.outer, roof.top + 22)[1] + CLEAR, top)
    return sketch


def _insulation(sketch: Sketch, wall: Wall, roof: Roof, shelf: float) -> None:
    left, top = sketch.frame[0][0], sketch.frame[2][1]
    low, high = roof.insulation
    sketch.area("pir", roof.slab(left, -ROOM, low, high))
    sketch.area("mineral-wool", roof.slab(wall.outer, -ROOM, high, shelf - 0.5))
    feet = [roof.at(wall.outer, shelf + 0.5), roof.at(-ROOM, shelf + 0.5)]
    sketch.area("mineral-wool", [*feet, (-ROOM, top), (wall.outer, top)])
    sketch.area("plywood", roof.slab(left, wall.outer - 0.2, roof.top - NAIL_BASE, roof.top))
    roof.roofing(sketch, left, wall.face - 30)


def _sheets(sketch: Sketch, wall: Wall, roof: Roof, shelf: float, leg_height: float) -> None:
    left, top = sketch.frame[0][0], sketch.frame[2][1]
    leg = -ON - OVER
    foot = roof.at(leg, shelf)
    head = foot[1] + leg_height
    turned_up = [roof.at(left, ON), roof.at(-ON, ON), (-ON, head - 10)]
    sketch.line("self-adhered-underlayment", turned_up)
    sketch.line(
        "underlayment", [roof.at(left, roof.top + ON), roof.at(wall.outer - 1, roof.top + ON)]
    )
    end = roof.at(wall.face - APRON, shelf)
    sketch.line("base-flashing", [(leg, head), foot, end, (end[0] - 3, end[1] - 4)])
    over = leg - OVER
    down = [(-ON, head + 24), (over, head + 10), (over, foot[1] + 20)]
    sketch.line("self-adhered-sheet", [(-ON, top), *down])
