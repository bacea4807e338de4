"""wet-route: rain gets behind the water layer.

What it finds
    A way for a drop that lands on the outer face of the water layer, runs downhill on it, falls
    from its edges, and ends up on the inner side: behind a sheet that is lapped the wrong way
    round, through a gap, over the back of a pan that slopes inwards. With several outside marks
    it rains in the open air round each, and what comes through the layer that keeps it there is
    behind it.

Why it matters
    What gets in behind the water layer wets sheathing and framing where nothing dries it soon.
    Rot and mould follow long before a stain shows indoors.

What to draw instead
    Lap every sheet over the one below it, on the outside, all the way down. Slope pans and
    flashings to the outside, and end each of them in front of the layer that goes on below.

Source
    Flashing is applied shingle-fashion and drains to the outside: IRC R703.4, second-hand. That
    water runs downhill and behind whatever is lapped against it is common practice, no source.
"""

from collections import defaultdict
from collections.abc import Iterator
from math import dist

from enclosure_app.language import say
from enclosure_app.model.finding import Finding, Severity
from enclosure_app.model.limits import Limits
from enclosure_app.model.place import Point
from enclosure_app.model.product import Control
from enclosure_app.network.network import Network
from enclosure_app.network.rain.rain import Entry
from enclosure_app.rules.rule import Rule

_SAME_PLACE = 20.0  # mm: drops that pass to the inside this near to each other use one way in


def check(network: Network, limits: Limits) -> Iterator[Finding]:
    """Yield one finding for each place where a drop passes to the inside."""
    known: dict[str, list[Point]] = defaultdict(list)
    for entry in network.rain.entries if network.rain else ():
        key = f"wet-route:{network.part(entry.piece, entry.place)}+{entry.into or 'inside'}"
        if all(dist(entry.place, place) > _SAME_PLACE for place in known[key]):
            known[key].append(entry.place)
            count = len(known[key])
            yield _finding(network, entry, key if count == 1 else f"{key}#{count}")


def _finding(network: Network, entry: Entry, key: str) -> Finding:
    left = network.words(entry.piece)
    if entry.into:
        message = say(
            "Rain that runs down the {left} gets in behind the {into} here.",
            left=left,
            into=network.words(entry.into),
        )
    else:
        message = say("Rain that runs down the {left} gets in to the inside here.", left=left)
    return Finding(
        key=key,
        rule="wet-route",
        control=Control.WATER,
        severity=Severity.FAULT,
        at=entry.place,
        pieces=tuple(dict.fromkeys(name for name in (entry.piece, entry.into) if name)),
        message=message,
        advice=say(
            "Lap the upper sheet over the outside of the lower one, or close the gap, so that the "
            "water stays in front."
        ),
        extent=(entry.route.points,),
    )


RULE = Rule("wet-route", (Control.WATER,), Severity.FAULT, check)
