"""Wall on a foundation wall: flashing over the insulation below, waterproofing carried up behind it."""

from dataclasses import dataclass

from enclosure_app.planning.parts.assembly import ON, OVER, ROOM, Sketch, Wall, box
from enclosure_app.planning.parts.flashed import flashed, shelf_at
from enclosure_app.planning.parts.parameters import WallSizes, size

BELOW = 420.0  # mm of foundation below the ground
ABOVE = 700.0  # mm of wall


@dataclass(frozen=True, slots=True)
class Parameters(WallSizes):
    """Sizes of a wall base."""

    plinth: float = size(250, 220, 600, "Foundation above the ground")


def draw(sizes: Parameters) -> Sketch:
    """Return the wall base; the foundation's top stands at 0."""
    wall = Wall(sizes)
    ground = -sizes.plinth
    bottom, top = ground - BELOW, ABOVE
    left, right = wall.face - 300, wall.room + 400
    frame = box(left, bottom, right, top)
    sketch = Sketch("Wall base", frame, (right - 80, top - 120), (left + 60, top - 120))
    sketch.area("concrete", box(0, bottom, wall.studs, 0))
    sketch.line("sill-gasket", [(wall.board, 1.0), (wall.studs, 1.0)], 1.5)
    wall.inner_leaves(sketch, 2.0, top)
    wall.plate(sketch, 2.0)
    _insulation(sketch, wall, bottom, top)
    outside = wall.outer - 10.5
    slope = [(left, ground - 15), (left, bottom), (outside, bottom), (outside, ground)]
    sketch.area("soil", slope)
    wall.screen(sketch, shelf_at(0, wall.outer)[1] + 16, top)
    lap = -200.0
    sketch.line("waterproofing-sheet", [(-ON, bottom), (-ON, lap + 170)])
    over = -ON - OVER
    lower = ((-ON, 200.0), (-ON, lap + 194), (over, lap + 180), (over, lap - 10))
    flashed(sketch, wall, 0.0, lower)
    return sketch


def _insulation(sketch: Sketch, wall: Wall, bottom: float, top: float) -> None:
    under = [shelf_at(0, x, -0.5) for x in (-ROOM, wall.outer)]
    sketch.area("xps", [(wall.outer, bottom), (-ROOM, bottom), *under])
    over = [shelf_at(0, x, 0.5) for x in (wall.outer, -ROOM)]
    sketch.area("mineral-wool", [*over, (-ROOM, top), (wall.outer, top)])
    high = shelf_at(0, wall.outer - 10, -4.0)[1]
    sketch.area("cement-board", box(wall.outer - 10, bottom, wall.outer, high))
