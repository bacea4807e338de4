"""Rain and air on their way: the routes of drops, and the stream through the widest opening."""

from collections.abc import Iterable, Iterator

from enclosure_app.drawing.marks import Fill, Mark, Stroke, on, overlays_of
from enclosure_app.drawing.placement import Placement
from enclosure_app.drawing.polylines import distinct, length, offset, simplified, stretch, walk_to
from enclosure_app.drawing.shapes import arrow_head, drop, smooth
from enclosure_app.drawing.theme import Pen, Theme
from enclosure_app.model.place import Point
from enclosure_app.model.product import Control
from enclosure_app.model.report import Continuity, LayerResult, RainRoute, RouteEnd

EVERY = 17.0  # mm on paper from one drop of a route to the next
DROP = 2.0  # mm on paper, how long a drop is
_BESIDE = 2.4  # mm on paper between two streams
STREAMS = (Control.WATER, Control.AIR)  # what comes in through an opening as a stream
_ENDS = 5.0  # mm on paper by which a stream keeps clear of the marks of the sides


def rain_marks(
    routes: tuple[RainRoute, ...],
    placement: Placement,
    down: Point,
    theme: Theme,
    *,
    drops: bool = True,
) -> Iterator[Mark]:
    """Yield the routes as fine dots with drops; one that ends inside is heavy and has an arrow.

    Without `drops` whoever shows them paints these, since they move.
    """
    pen = theme.pen("rain")
    wet = Pen(pen.colour, theme.pen("stream").width, pen.dash)
    for route in routes:
        way = distinct(placement.points(route.points))
        if len(way) < 2:
            continue
        inside = route.end is RouteEnd.INSIDE
        yield Stroke(way, wet if inside else pen, "rain")
        yield Stroke(arrow_head(way, 1.3), Pen(pen.colour, pen.width), "rain")
        for k in range(int(length(way) / EVERY + 0.5) if drops else 0):
            at, _ = walk_to(way, (k + 0.5) * EVERY)
            yield Fill((drop(at, DROP, down),), pen.colour, "rain")


def has_stream(layer: LayerResult, controls: tuple[Control, ...] = STREAMS) -> bool:
    """Whether the layer is open and one of `controls`, so that its way in is shown as a stream."""
    broken = layer.continuity is not Continuity.CONTINUOUS and len(layer.way_in) > 1
    return broken and layer.control in controls


def all_stream_marks(
    layers: Iterable[LayerResult],
    placement: Placement,
    theme: Theme,
    controls: tuple[Control, ...] = STREAMS,
) -> Iterator[Mark]:
    """Yield the streams of all open layers, beside each other where they take the same way."""
    for i, layer in enumerate(layer for layer in layers if has_stream(layer, controls)):
        stream = _stream_marks(layer, placement, i * _BESIDE, theme)
        yield from on(overlays_of(layer.control), stream)


def _stream_marks(
    layer: LayerResult, placement: Placement, beside: float, theme: Theme
) -> Iterator[Mark]:
    """Yield the way in through the widest opening of a broken layer, from outside to inside."""
    way = distinct(placement.points(layer.way_in))
    if len(way) < 2:
        return
    way = offset(simplified(way, 1.0), beside)
    way = stretch(way, min(_ENDS, length(way) / 4), length(way) - min(_ENDS, length(way) / 4))
    width = min(max(placement.length(layer.opening or 0.0), 1.0), 3.2)
    curve = smooth(way)
    tint = theme.tints[layer.control.value][1]
    source = f"opening:{layer.control.value}"
    pen = Pen(theme.control(layer.control).colour, theme.pen("glyph").width)
    banks = offset(curve, width / 2), offset(curve, -width / 2)
    yield Fill(((*banks[0], *banks[1][::-1]),), tint, source)
    for bank in banks:
        yield Stroke(bank, Pen(pen.colour, 0.13), source)
    for share in (0.3, 0.62):
        yield Stroke(_head(walk_to(curve, length(curve) * share), 1.8), pen, source)
    yield Stroke(arrow_head(curve, 2.4), pen, source)


def _head(place: tuple[Point, Point], size: float) -> tuple[Point, ...]:
    at, direction = place
    start = (at[0] - direction[0], at[1] - direction[1])
    return arrow_head((start, at), size)
