"""open-penetration: something passes through the layer and nothing seals it there.

What it finds
    A pipe, duct or beam that meets a sheet or board of the air or water layer where no collar,
    tape, bead or gasket touches both.

Why it matters
    A hole cut for a pipe is always larger than the pipe. Air leaks round it the whole winter, and
    water that runs down the sheet follows the pipe in.

What to draw instead
    A collar sealed to the pipe and to the sheet, lapped under the sheet above; or a bead and tape
    all round.

Source
    Penetrations of the air barrier are sealed (International Energy Conservation Code, air barrier
    table, from memory); the water-resistive barrier is flashed at penetrations (International
    Residential Code R703.4, second-hand).
"""

from collections.abc import Iterator

from enclosure_app.language import say
from enclosure_app.model.finding import Finding, Severity, begun
from enclosure_app.model.limits import Limits
from enclosure_app.model.product import Control
from enclosure_app.network.details.passages import Passage, passages
from enclosure_app.network.network import Network
from enclosure_app.rules.rule import Rule


def check(network: Network, limits: Limits) -> Iterator[Finding]:
    """Yield one finding for each unsealed passage, under the first control it opens."""
    seen: set[tuple[str, str]] = set()
    for control in (Control.AIR, Control.WATER):
        for passage in passages(network, control):
            if not passage.sealed and (passage.passing, passage.layer) not in seen:
                seen.add((passage.passing, passage.layer))
                yield _finding(network, control, passage)


def _finding(network: Network, control: Control, passage: Passage) -> Finding:
    through, sheet = network.words(passage.passing), network.words(passage.layer)
    parts = sorted(network.part(n, passage.at) for n in (passage.passing, passage.layer))
    return Finding(
        key=f"open-penetration:{control}:{'+'.join(parts)}",
        rule="open-penetration",
        control=control,
        severity=Severity.FAULT,
        at=passage.at,
        pieces=(passage.passing, passage.layer),
        message=say(
            "{through} goes through {sheet} and nothing seals the hole.",
            through=begun(through),
            sheet=sheet,
        ),
        advice=say(
            "Seal it with a collar, or with bead and tape, to both {through} and {sheet}.",
            through=through,
            sheet=sheet,
        ),
        extent=((passage.at, passage.at),),
    )


RULE = Rule("open-penetration", (Control.AIR, Control.WATER), Severity.FAULT, check)
