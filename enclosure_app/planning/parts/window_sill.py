"""Window sill: a sheet over a falling sill, turned up at a back dam, lapped over the wall's sheet."""

from enclosure_app.planning.parts.assembly import ON, OVER, PLATE, ROOM, Sketch, Wall, box
from enclosure_app.planning.parts.opening import OUT, Parameters, unit

__all__ = ["Parameters", "draw"]

DAM = 40.0  # mm of back dam above the sill
JOINT = 24.0  # mm between window and back dam
LAP = 170.0


def draw(sizes: Parameters) -> Sketch:
    """Return the sill; the rough sill's outer edge stands at 0."""
    wall = Wall(sizes)
    left, right, bottom, top = wall.face - 120, wall.room + 250, -520.0, 340.0
    frame = box(left, bottom, right, top)
    sketch = Sketch("Window sill", frame, (right - 60, top - 80), (left + 50, top - 80))
    wall.inner_leaves(sketch, bottom, -0.2)
    for level in (-PLATE, -2 * PLATE):
        wall.plate(sketch, level)
    _insulation(sketch, wall, bottom)
    _sill(sketch, sizes.back)
    unit(sketch, sizes.back, (DAM, DAM), top)
    sketch.line("self-adhered-sheet", [(-ON, bottom), (-ON, -8)])
    nose = _metal(wall.face - 40)
    metal = [_metal(OUT - 0.5), nose, (nose[0], nose[1] - 30), (nose[0] - 10, nose[1] - 42)]
    sketch.line("sill-flashing", metal)
    wall.screen(sketch, bottom, _metal(wall.face)[1] - 6)
    return sketch


def _metal(x: float) -> tuple[float, float]:
    return (x, DAM + 3 + (x - OUT) / 8)


def _insulation(sketch: Sketch, wall: Wall, bottom: float) -> None:
    under = [(x, _metal(x)[1] - 0.9) for x in (OUT - 2, wall.outer)]
    foot = [(wall.outer, bottom), (-ROOM, bottom), (-ROOM, DAM - 0.5), (OUT - 2, DAM - 0.5)]
    sketch.area("mineral-wool", [*foot, *under])


def _sill(sketch: Sketch, back: float) -> None:
    """Draw the falling sill, its dam, and the sheet over both."""
    dam = back + JOINT
    sketch.area("framing", [(0, 0), (dam, 0), (dam, 12), (0, 2)])
    sketch.area("framing", box(dam, 0, dam + 20, DAM + 10))
    over = -ON - OVER
    turned = [(over, 2.6), (dam - ON, 12.8), (dam - ON, DAM + 10)]
    sketch.line("flashing-tape", [(over, -LAP), *turned])
    sketch.area("closed-cell-foam", box(back + 0.4, 24, dam - 1.2, DAM + 2))
    sketch.area("sealant", box(back + 0.2, DAM + 2.2, dam - ON, DAM + 10))
