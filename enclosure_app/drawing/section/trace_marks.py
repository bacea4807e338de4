"""The way of the pen along one layer: a pale band under its sheets, with ends, lifts and arrows."""

from collections.abc import Iterator

from enclosure_app.drawing.marks import Mark, Stroke
from enclosure_app.drawing.placement import Placement
from enclosure_app.drawing.polylines import distinct, length, walk_to
from enclosure_app.drawing.shapes import barb, circle
from enclosure_app.drawing.theme import Pen, Theme
from enclosure_app.model.place import Points
from enclosure_app.model.report import LayerResult, Lift, Run

_BREADTH = 3.8  # mm on paper
_EVERY = 24.0  # mm on paper from one arrow to the next
_ARROW, _RING = 3.2, 1.5
_LIFTED = (0.7, 0.7)  # the dash where the pen is lifted, mm


def trace_marks(layer: LayerResult, placement: Placement, theme: Theme) -> Iterator[Mark]:
    """Yield the trace of a layer, from a ring at one end to a ring at the other.

    A lift is a thin dashed line between the two ends: the pen is in the air there.
    """
    source = f"trace:{layer.control.value}"
    band = Pen(theme.tints[layer.control.value][1], _BREADTH)
    fine = Pen(theme.control(layer.control).colour, theme.pen("glyph").width)
    ways = [
        (isinstance(step, Lift), distinct(placement.points(_points(step)))) for step in layer.walk
    ]
    ways = [(lifted, way) for lifted, way in ways if len(way) > 1]
    for lifted, way in ways:
        yield Stroke(way, Pen(fine.colour, fine.width, _LIFTED) if lifted else band, source)
    for lifted, way in ways:
        for k in range(0 if lifted else int(length(way) / _EVERY + 0.5)):
            at, ahead = walk_to(way, (k + 0.5) * _EVERY)
            yield Stroke(barb(at, ahead, _ARROW), fine, source)
    if ways:
        for end in (ways[0][1][0], ways[-1][1][-1]):
            yield Stroke(circle(end, _RING), fine, source, closed=True)


def _points(step: Run | Lift) -> Points:
    return (step.start, step.end) if isinstance(step, Lift) else step.points
