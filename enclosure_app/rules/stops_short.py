"""stops-short: the layer ends before it reaches the edge of the drawing.

What it finds
    A layer whose last piece ends inside the frame, with nothing of that layer between it and the
    edge where the next drawing takes over. It is measured by the distance that is missing.

Why it matters
    A layer that stops keeps nothing apart: air, vapour or water goes round its end. Often the
    sheet was meant to go on and was forgotten at the edge of the detail, and then it is missing
    from the next detail too, since each drawing trusts the other.

What to draw instead
    Carry the layer on to the edge of the drawing, or to the piece of another product that takes
    over from it. If the detail ends where the layer ends, move the frame to that place.

Source
    Following each layer from one end of the drawing to the other without lifting the pen is
    common practice, no source.
"""

from collections.abc import Iterator

from enclosure_app.language import say
from enclosure_app.model.finding import Finding, Severity
from enclosure_app.model.limits import Limits
from enclosure_app.model.product import Control, layer_words
from enclosure_app.model.report import Lift
from enclosure_app.network.network import Network
from enclosure_app.rules.rule import Rule

LOUD = (Control.WATER, Control.AIR)


def check(network: Network, limits: Limits) -> Iterator[Finding]:
    """Yield one finding for each lift between a piece and the frame."""
    for control, layer in network.layers.items():
        for lift in layer.lifts:
            if bool(lift.a) != bool(lift.b):
                yield _finding(network, control, lift)


def _finding(network: Network, control: Control, lift: Lift) -> Finding:
    name, end = (lift.a, lift.start) if lift.a else (lift.b, lift.end)
    return Finding(
        key=f"stops-short:{control}:{network.part(name, end)}",
        rule="stops-short",
        control=control,
        severity=Severity.FAULT if control in LOUD else Severity.DOUBT,
        at=end,
        pieces=(name,),
        message=say(
            "The {layer} stops short: {name} ends here and nothing goes on to the edge of the "
            "drawing.",
            layer=layer_words(control),
            name=network.words(name),
        ),
        advice=say(
            "Carry it on to the edge of the drawing, or draw the piece that takes over from it."
        ),
        measured=lift.width,
        required=0.0,
        extent=((lift.start, lift.end) if lift.a else (lift.end, lift.start),),
    )


RULE = Rule("stops-short", tuple(Control), Severity.FAULT, check)
