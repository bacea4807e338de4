"""short-lap: two sheets lap by less than is required.

What it finds
    A lap in the right order, or on the level, that is shorter than required: the product's own
    least lap, else the rule book's figure for the place and the slope. The report names the figure
    that was applied and whether anyone has confirmed it. Half a millimetre is taken for drafting.
    What follows between the two for a while, as the leg of a flashing does, does not shorten their
    lap.

Why it matters
    Wind drives water uphill under a lap, capillarity draws it in, and a sheet put up in a gale is
    never quite where it was drawn. The lap's length is the margin for all three.

What to draw instead
    Lengthen one of the sheets, or move the joint to where both reach.

Source
    Lengths by place and slope with their clauses stand in the rule book (resources/limits.toml);
    horizontal seams of self-adhered roof underlayment lap at least 4 in (common practice, no
    source).
"""

from collections.abc import Iterator

from enclosure_app.language import say
from enclosure_app.model.finding import Finding, Severity, begun
from enclosure_app.model.limits import Limit, Limits
from enclosure_app.model.product import Control
from enclosure_app.network.details.drainage import (
    are_neighbours,
    is_reversed,
    is_sheet_lap,
    required_lap,
)
from enclosure_app.network.joints.laps import Lap
from enclosure_app.network.network import Network
from enclosure_app.rules.rule import Rule

DRAFTING = 0.5  # mm


def check(network: Network, limits: Limits) -> Iterator[Finding]:
    """Yield one finding for each lap that is too short, under the first control it serves."""
    seen: set[frozenset[str]] = set()
    for control in (Control.WATER, Control.AIR, Control.VAPOUR):
        for lap in network.layers[control].laps:
            if _pair(lap) not in seen and _is_judged(network, control, lap):
                required = required_lap(network, lap, limits)
                if lap.length < required.value - DRAFTING:
                    yield _finding(network, control, lap, required)
        seen |= {_pair(lap) for lap in network.layers[control].laps}


def _pair(lap: Lap) -> frozenset[str]:
    return frozenset((lap.outer.name, lap.inner.name))


def _is_judged(network: Network, control: Control, lap: Lap) -> bool:
    """Whether a lap is a joint of two sheets; only in the water layer one is reversed instead."""
    if not lap.is_joint or not is_sheet_lap(network, lap):
        return False
    if control is Control.WATER and is_reversed(network, lap):
        return False
    return are_neighbours(network, control, lap)


def _finding(network: Network, control: Control, lap: Lap, required: Limit) -> Finding:
    both = network.both(lap.outer.name, lap.inner.name)
    parts = sorted(network.part(sheet.name, lap.at) for sheet in (lap.outer, lap.inner))
    return Finding(
        key=f"short-lap:{control}:{'+'.join(parts)}",
        rule="short-lap",
        control=control,
        severity=Severity.FAULT,
        at=lap.at,
        pieces=(lap.outer.name, lap.inner.name),
        message=say("{both} lap by less than is required.", both=begun(both)),
        advice=say("Lengthen one of the two sheets, or move the joint to where both reach."),
        measured=lap.length,
        required=required.value,
        basis=required.basis,
        extent=(lap.outer.run, lap.inner.run),
    )


RULE = Rule(
    "short-lap", (Control.WATER, Control.AIR, Control.VAPOUR), Severity.FAULT, check, local=True
)
