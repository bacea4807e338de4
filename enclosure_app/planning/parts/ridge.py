"""Ridge: on each level the sheet of one slope goes over the ridge and laps over the other's."""

from dataclasses import dataclass

from enclosure_app.model.place import Point, Points
from enclosure_app.planning.parts.assembly import (
    DECK,
    LINING,
    NAIL_BASE,
    ON,
    OVER,
    Roof,
    Sketch,
    box,
)
from enclosure_app.planning.parts.parameters import RoofSizes, size

BEAM = 90.0


@dataclass(frozen=True, slots=True)
class Parameters(RoofSizes):
    """Sizes of a ridge between two slopes of one pitch."""

    reach: float = size(700, 600, 1500, "How far the slopes are drawn on either side")


def draw(sizes: Parameters) -> Sketch:
    """Return the ridge, with its deck's top at the origin."""
    roof = Roof(sizes, sizes.pitch)
    low = roof.at(-sizes.reach, -DECK - sizes.rafters)[1] - 120
    frame = box(-sizes.reach, low, sizes.reach, roof.at(0, roof.top)[1] + 120)
    inside = (-sizes.reach / 2, low + 30)
    sketch = Sketch("Ridge", frame, inside, (-sizes.reach + 40, frame[2][1] - 30))
    _solids(sketch, roof, sizes.reach)
    _over(sketch, "self-adhered-underlayment", roof, ON)
    _over(sketch, "underlayment", roof, roof.top + ON)
    return sketch


def mirrored(points: Points) -> Points:
    """Return points of the left slope on the right one."""
    return tuple((-x, y) for x, y in points)


def _solids(sketch: Sketch, roof: Roof, reach: float) -> None:
    low, high = roof.insulation
    under = -DECK - roof.sizes.rafters
    for product, bottom, top, end in (
        ("plywood", -DECK, 0.0, 0.2),
        ("pir", low, high, 0.2),
        ("plywood", roof.top - NAIL_BASE, roof.top, 0.2),
        ("framing", under, -DECK, BEAM / 2),
        ("gypsum-board", under - LINING, under, BEAM / 2),
        ("metal-roofing", roof.top + 16, roof.top + 22, 50.0),
        ("trim", roof.top + 26, roof.top + 28, 0.2),
    ):
        start = -180.0 if product == "trim" else -reach
        outline = roof.slab(start, -end, bottom, top)
        sketch.area(product, outline)
        sketch.area(product, mirrored(outline))
    head = roof.at(-BEAM / 2, -DECK)[1]
    sketch.area("framing", box(-BEAM / 2, head - 300, BEAM / 2, head))


def _over(sketch: Sketch, product: str, roof: Roof, out: float) -> None:
    """Draw the right slope's sheet up to the ridge, and the left one's over it."""
    reach = -sketch.frame[0][0]
    right: Points = mirrored((roof.at(-reach, out), roof.at(-4, out)))
    sketch.line(product, right)
    turn: list[Point] = [roof.at(-reach, out), roof.at(-16, out), roof.at(-0.2, out + OVER)]
    sketch.line(product, [*turn, *mirrored((roof.at(-roof.lap - 6, out + OVER),))])
