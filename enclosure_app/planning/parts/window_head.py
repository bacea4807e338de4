"""Window head: a sheet turned into the opening, a flashing over it, the wall's sheet over its leg."""

from enclosure_app.planning.parts.assembly import LINING, ON, ROOM, Sketch, Wall, box
from enclosure_app.planning.parts.flashed import flashed, shelf_at
from enclosure_app.planning.parts.opening import OUT, Parameters, unit

__all__ = ["Parameters", "draw"]

JOINT = 16.0  # mm between the opening and the window


def draw(sizes: Parameters) -> Sketch:
    """Return the head; the opening's upper edge stands at 0."""
    wall = Wall(sizes)
    left, right, bottom, top = wall.face - 160, wall.room + 250, -340.0, 640.0
    frame = box(left, bottom, right, top)
    sketch = Sketch("Window head", frame, (right - 60, bottom + 80), (left + 50, bottom + 80))
    wall.inner_leaves(sketch, 0.2, top)
    sketch.area("framing", box(wall.board, 0.2, wall.studs, 160))
    back = sizes.back
    reveal = back + JOINT
    sketch.area("gypsum-board", box(reveal, -LINING - 0.6, wall.room, -0.6))
    unit(sketch, back, (-JOINT - 4, -JOINT), bottom)
    flashed(sketch, wall, 0.0, ((-ON, 200.0), (-ON, -0.4), (reveal - 2, -0.4)))
    sketch.line("sealant", [(back - 20, -JOINT - 1), (back - 20, -0.8)], 12)
    foam = [(back - 13, -JOINT - 0.6), (back, -JOINT + 0.2), (back, -0.8), (back - 13, -0.8)]
    sketch.area("closed-cell-foam", foam)
    _insulation(sketch, wall, top)
    wall.screen(sketch, shelf_at(0, wall.outer)[1] + 16, top)
    return sketch


def _insulation(sketch: Sketch, wall: Wall, top: float) -> None:
    over = [shelf_at(0, x, 0.5) for x in (wall.outer, -ROOM)]
    sketch.area("mineral-wool", [*over, (-ROOM, top), (wall.outer, top)])
    low = -JOINT - 4
    out = max(wall.outer, -150.0)
    under = [(out, low), (OUT, low), (-ROOM, low + 2)]
    sketch.area("xps", [*under, shelf_at(0, -ROOM, -0.5), shelf_at(0, out, -0.5)])
