"""no-drip: a lower edge lets the drop run back instead of dripping clear.

What it finds
    The lower edge of a flashing, drip edge or sill pan that does not turn down, or whose drop
    falls nearer to the wall beneath than the rule book asks. An edge that lies on the sheet
    below it is a lap, and passed over.

Why it matters
    A drop clings to the underside of a flat edge and runs back along it to the wall. It then runs
    down the wall, into the joint under the flashing or behind the cladding.

What to draw instead
    Turn the edge down and away from the wall, and carry it out until the drop falls clear.

Source
    The figure `drip-clear` of the rule book in force, shown with each finding. That an edge turns
    down is common practice, no source.
"""

from collections import Counter
from collections.abc import Iterator
from math import isfinite

from enclosure_app.language import say
from enclosure_app.model.finding import Finding, Severity
from enclosure_app.model.limits import Limits
from enclosure_app.model.product import Control, Kind
from enclosure_app.network.network import Network
from enclosure_app.network.rain.rain import Drip
from enclosure_app.rules.rule import Rule

_EDGED = frozenset({Kind.FLASHING, Kind.DRIP_EDGE, Kind.SILL_PAN})


def check(network: Network, limits: Limits) -> Iterator[Finding]:
    """Yield one finding for each lower edge that does not drip clear."""
    least = limits.figure("drip-clear").value
    known: Counter[str] = Counter()
    for drip in network.rain.drips if network.rain else ():
        if network.product(drip.piece).kind in _EDGED and (
            not drip.turns_down or drip.clear < least
        ):
            key = f"no-drip:{network.part(drip.piece, drip.point)}"
            known[key] += 1
            key = key if known[key] == 1 else f"{key}#{known[key]}"
            yield _finding(network, limits, drip, key)


def _finding(network: Network, limits: Limits, drip: Drip, key: str) -> Finding:
    figure, words = limits.figure("drip-clear"), network.words(drip.piece)
    if drip.turns_down:
        message = say(
            "The lower edge of the {sheet} drips too near to the wall beneath it.", sheet=words
        )
        advice = say("Carry the edge further out, so that the drop falls clear of the wall.")
    else:
        message = say(
            "The lower edge of the {sheet} does not turn down: the drop runs back under it.",
            sheet=words,
        )
        advice = say("Turn the edge down and out, so that the drop lets go.")
    return Finding(
        key=key,
        rule="no-drip",
        control=Control.WATER,
        severity=Severity.FAULT,
        at=drip.point,
        pieces=(drip.piece,),
        message=message,
        advice=advice,
        measured=drip.clear if isfinite(drip.clear) else None,
        required=figure.value,
        basis=figure.basis,
    )


RULE = Rule("no-drip", (Control.WATER,), Severity.FAULT, check)
