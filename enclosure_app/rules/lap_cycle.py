"""lap-cycle: the sheets cannot be put on in any order that makes these laps.

What it finds
    Sheets of which each is lapped by the next, and the last by the first. A sheet that lies over
    another goes on after it, so none of them can be the first to go on.

Why it matters
    The crew cannot build it as drawn. They will tuck, slit or turn one of the laps round on the
    scaffold, and nobody decides which.

What to draw instead
    Turn one of the laps round so that the sheets go on one after the other, from the bottom up;
    or split a sheet in two and lap the second part later.

Source
    That the outer sheet of a lap goes on after the inner one is common practice, no source.
"""

from collections.abc import Iterator
from itertools import pairwise

from enclosure_app.language import say
from enclosure_app.model.finding import Finding, Severity
from enclosure_app.model.limits import Limits
from enclosure_app.model.place import Point
from enclosure_app.model.product import Control
from enclosure_app.network.network import Network
from enclosure_app.rules.rule import Rule


def check(network: Network, limits: Limits) -> Iterator[Finding]:
    """Yield one finding for each ring of laps."""
    for cycle in network.order.cycles:
        yield _finding(network, cycle)


def _finding(network: Network, cycle: tuple[str, ...]) -> Finding:
    words = [network.words(name) for name in (*cycle, cycle[0])]
    chain = ", ".join(
        say("the {over} over the {under}", over=over, under=under)
        for under, over in pairwise(words)
    )
    return Finding(
        key=f"lap-cycle:{'+'.join(_turned(cycle))}",
        rule="lap-cycle",
        control=None,
        severity=Severity.FAULT,
        at=_first_lap(network, cycle),
        pieces=cycle,
        message=say("These sheets cannot go on in any order: {chain}.", chain=chain),
        advice=say(
            "Turn one of these laps round, so that each sheet goes on after the one it covers."
        ),
    )


def _turned(cycle: tuple[str, ...]) -> tuple[str, ...]:
    """Return the cycle from its first name in the alphabet, so that keys outlive a re-ordering."""
    first = cycle.index(min(cycle))
    return (*cycle[first:], *cycle[:first])


def _first_lap(network: Network, cycle: tuple[str, ...]) -> Point:
    """Return a place in the lap between the first two sheets of a cycle."""
    pair = cycle[:2]
    for layer in network.layers.values():
        for lap in layer.laps:
            if (lap.inner.name, lap.outer.name) == pair:
                return lap.at
    raise ValueError(f"No lap between {cycle[0]} and {cycle[1]}.")


RULE = Rule("lap-cycle", tuple(Control), Severity.FAULT, check)
