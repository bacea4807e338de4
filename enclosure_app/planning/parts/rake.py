"""Rake at a gable, cut across the slope: here the roof is level, and the metal goes over the sheet."""

from dataclasses import dataclass

from enclosure_app.planning.parts.assembly import ON, OVER, Roof, Sketch, Wall
from enclosure_app.planning.parts.parameters import DeckSizes, size
from enclosure_app.planning.parts.roof_edge import begun

FLANGE = 120.0  # mm of metal on the roof
TAPE = 80.0  # mm of tape on each side of the metal's inner edge


@dataclass(frozen=True, slots=True)
class Parameters(DeckSizes):
    """Sizes of a rake."""

    overhang: float = size(60, 20, 600, "Overhang past the cladding")


def draw(sizes: Parameters) -> Sketch:
    """Return the rake."""
    wall, roof = Wall(sizes), Roof(sizes, 0.0)
    edge = wall.face - sizes.overhang
    sketch = begun("Rake", wall, roof, edge)
    right = sketch.frame[1][0]
    roof.roofing(sketch, edge - 4, right)
    sheet, metal = roof.top + ON, roof.top + ON + OVER
    sketch.line("underlayment", [(edge + 2, sheet), (right, sheet)])
    inner, nose = edge + FLANGE, edge - 8
    drip = [(nose, metal), (nose, metal - 60), (nose - 12, metal - 72)]
    sketch.line("drip-edge", [(inner, metal), *drip])
    over = metal + ON
    step = [(inner + 1, over), (inner + 5, sheet + ON)]
    sketch.line("flashing-tape", [(inner - TAPE, over), *step, (inner + TAPE, sheet + ON)])
    return sketch
