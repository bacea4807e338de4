"""Why a layer could not be judged, in a sentence with lengths in the drawing's units."""

from enclosure_app.drawing.lengths import format_length
from enclosure_app.language import say
from enclosure_app.model.drawing import Units
from enclosure_app.model.report import LayerResult


def why_unsure(layer: LayerResult, units: Units) -> str:
    """Return why a layer could not be judged, or is absent; "" where nothing is known of it."""
    if layer.why or not layer.disagrees:
        return layer.why
    trace, opening = layer.bottleneck or 0.0, layer.opening or 0.0
    widest, apart = format_length(trace, units), format_length(abs(opening - trace), units)
    if opening > trace:
        return say(
            "The trace says that the widest gap is {widest}, the opening that it is {apart} wider: "
            "one of them is wrong, so look at this layer yourself.",
            widest=widest,
            apart=apart,
        )
    return say(
        "The trace says that the widest gap is {widest}, the opening that it is {apart} narrower: "
        "one of them is wrong, so look at this layer yourself.",
        widest=widest,
        apart=apart,
    )
