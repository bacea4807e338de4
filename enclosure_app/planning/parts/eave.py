"""Eave: the roof's sheet is turned down over the wall's; the overhang stands outside both."""

from dataclasses import dataclass

from enclosure_app.planning.parts.assembly import ON, OVER, Roof, Sketch, Wall
from enclosure_app.planning.parts.parameters import RoofSizes, size
from enclosure_app.planning.parts.roof_edge import begun

COVER = 700.0  # mm that the eave membrane reaches past the room's face; 610 is asked for


@dataclass(frozen=True, slots=True)
class Parameters(RoofSizes):
    """Sizes of an eave with an overhang."""

    overhang: float = size(300, 120, 900, "Overhang past the cladding")


def draw(sizes: Parameters) -> Sketch:
    """Return the eave."""
    return drawn("Eave", sizes, sizes.overhang)


def drawn(name: str, sizes: RoofSizes, overhang: float) -> Sketch:
    """Return an eave whose nail base ends `overhang` mm outside the cladding."""
    wall, roof = Wall(sizes), Roof(sizes, sizes.pitch)
    edge = wall.face - overhang
    sketch = begun(name, wall, roof, edge)
    right = sketch.frame[1][0]
    roof.roofing(sketch, edge - 28, right)
    metal = roof.top + ON
    nose = roof.at(edge - 6, metal)
    drip = [nose, (edge - 6, nose[1] - 70), (edge - 18, nose[1] - 82)]
    sketch.line("drip-edge", [roof.at(edge + 110, metal), *drip])
    reach, cover = wall.room + COVER, metal + OVER
    sketch.line("eave-membrane", [roof.at(edge - 10, cover), roof.at(reach, cover)])
    start = roof.at(reach - roof.lap, cover + OVER)
    sketch.line("underlayment", [start, roof.at(right, cover + OVER)])
    return sketch
