"""gap: the layer stops and starts again.

What it finds
    A place on the trace where the pen has to leave the layer: two pieces that neither touch nor
    lap. It is measured by the shortest distance between them.

Why it matters
    Air and water find the gap. No published rule allows a width that is harmless: a slit one
    millimetre wide lets some seven litres of air through each metre and second at 75 pascal
    (sharp-edged orifice, coefficient 0.6, computed). In the water layer a gap that rain reaches is
    a leak; one that no rain reaches is a doubt. A gap in the vapour or heat layer is a doubt too.

What to draw instead
    Carry the sheet on to the next one and lap it, or draw the piece that joins the two: a tape, a
    bead of sealant, a flashing. If the two do meet on site, draw them meeting.

Source
    Codes ask for a continuous, sealed air barrier and name no harmless gap (International Energy
    Conservation Code, air barrier table, second-hand). Following each layer round the section
    without lifting the pen is common practice, no source.
"""

from collections.abc import Iterator

from enclosure_app.language import say
from enclosure_app.model.finding import Finding, Severity
from enclosure_app.model.limits import Limits
from enclosure_app.model.product import Control, layer_words
from enclosure_app.model.report import Lift
from enclosure_app.network.network import Network
from enclosure_app.rules.rule import Rule


def check(network: Network, limits: Limits) -> Iterator[Finding]:
    """Yield one finding for each lift between two pieces."""
    for control, layer in network.layers.items():
        for lift in layer.lifts:
            if lift.a and lift.b:
                yield _finding(network, control, lift)


def _finding(network: Network, control: Control, lift: Lift) -> Finding:
    parts = sorted((network.part(lift.a, lift.start), network.part(lift.b, lift.end)))
    return Finding(
        key=f"gap:{control}:{'+'.join(parts)}",
        rule="gap",
        control=control,
        severity=_severity(network, control, lift),
        at=((lift.start[0] + lift.end[0]) / 2, (lift.start[1] + lift.end[1]) / 2),
        pieces=(lift.a, lift.b) if lift.a != lift.b else (lift.a,),
        message=say(
            "The {layer} has a gap between {both}: they neither touch nor lap.",
            layer=layer_words(control),
            both=network.both(lift.a, lift.b),
        ),
        advice=say(
            "Carry one on to lap the other, or add the tape, bead or flashing that joins them."
        ),
        measured=lift.width,
        required=0.0,
        extent=((lift.start, lift.end),),
    )


def _severity(network: Network, control: Control, lift: Lift) -> Severity:
    if control in (Control.VAPOUR, Control.HEAT):
        return Severity.DOUBT
    if control is Control.WATER and not network.rain_reaches(lift.start, lift.end):
        return Severity.DOUBT
    return Severity.FAULT


RULE = Rule("gap", tuple(Control), Severity.FAULT, check)
