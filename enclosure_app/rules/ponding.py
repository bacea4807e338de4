"""ponding: water stands in a low point and cannot run off.

What it finds
    A low point of the outer face of the water layer with no drain, and how deep water stands in
    it before it runs over on its lower side. Less than the drafting slop is passed over.

Why it matters
    Standing water finds every pinhole and every lap that only sheds water, loads the roof, and
    freezes. Laps that drain in a flow do not hold against a head of water.

What to draw instead
    Slope the face to an edge or to a drain, put a tapered board or a saddle under the low point,
    or lower the edge that holds the water back. Turn a pan so that it falls to the outside.

Source
    A rough-opening pan is sealed or sloped to the outside: IRC R703.4.1, second-hand. That a roof
    must drain is common practice, no source.
"""

from collections import Counter
from collections.abc import Iterator

from enclosure_app.language import say
from enclosure_app.model.finding import Finding, Severity
from enclosure_app.model.limits import Limits
from enclosure_app.model.product import Control
from enclosure_app.network.network import Network
from enclosure_app.network.rain.rain import Pond
from enclosure_app.rules.rule import Rule


def check(network: Network, limits: Limits) -> Iterator[Finding]:
    """Yield one finding for each low point that holds water deeper than the drafting slop."""
    known: Counter[str] = Counter()
    for pond in network.rain.ponds if network.rain else ():
        if pond.depth > limits.tolerances.touch:
            key = _key(network, pond)
            known[key] += 1
            yield _finding(network, pond, key if known[key] == 1 else f"{key}#{known[key]}")


def _key(network: Network, pond: Pond) -> str:
    ends = (pond.place, *pond.extent)
    places = {network.part(name, place) for name in pond.pieces for place in ends}
    return f"ponding:{'+'.join(sorted(places))}"


def _finding(network: Network, pond: Pond, key: str) -> Finding:
    held = say(" and the ").join(dict.fromkeys(network.words(name) for name in pond.pieces))
    message = say("Water stands on the {sheets} here and cannot run off.", sheets=held)
    if not pond.bounded:
        message += " " + say("It may stand deeper: the drawing ends before it runs over.")
    return Finding(
        key=key,
        rule="ponding",
        control=Control.WATER,
        severity=Severity.FAULT,
        at=pond.place,
        pieces=pond.pieces,
        message=message,
        advice=say(
            "Slope the face to an edge or a drain, or lower the edge that holds the water back."
        ),
        measured=pond.depth,
        required=0.0,
        extent=(pond.extent,),
    )


RULE = Rule("ponding", (Control.WATER,), Severity.FAULT, check)
