"""level-lap: a lap on the level that nothing seals.

What it finds
    A lap in the water layer on a surface flatter than the level limit (1:48 unless the project
    says otherwise) with the outside above, that is not sealed. An edge metal over the underlayment
    of a steep roof is passed over: along a rake the roof falls out of the drawing.

Why it matters
    On the level no order of the sheets drains: water lies on the lap and finds its way in.

What to draw instead
    A sealed lap: an adhered sheet, a tape over the edge, a bead in the lap. Better, give the
    surface a fall.

Source
    Low-slope roofs need at least a quarter inch in twelve (International Building Code 1507,
    Minnesota Rules 1305.1507, read); that laps flatter than this are sealed is common practice,
    no source.
"""

from collections.abc import Iterator

from enclosure_app.language import say
from enclosure_app.model.finding import Finding, Severity, begun
from enclosure_app.model.limits import Limits
from enclosure_app.model.product import Control
from enclosure_app.network.details.drainage import is_level, is_rake, is_reversed, is_sheet_lap
from enclosure_app.network.joints.laps import Lap
from enclosure_app.network.network import Network
from enclosure_app.rules.rule import Rule


def check(network: Network, limits: Limits) -> Iterator[Finding]:
    """Yield one finding for each level lap of the water layer that is not sealed."""
    layer = network.layers[Control.WATER]
    for lap in layer.laps:
        if _has_to_be_sealed(network, lap) and not layer.sealed(lap):
            yield _finding(network, lap)


def _has_to_be_sealed(network: Network, lap: Lap) -> bool:
    return (
        lap.is_joint
        and is_level(network, lap)
        and is_sheet_lap(network, lap)
        and not is_reversed(network, lap)
        and not is_rake(network, lap)
    )


def _finding(network: Network, lap: Lap) -> Finding:
    both = network.both(lap.outer.name, lap.inner.name)
    parts = sorted(network.part(sheet.name, lap.at) for sheet in (lap.outer, lap.inner))
    return Finding(
        key=f"level-lap:water:{'+'.join(parts)}",
        rule="level-lap",
        control=Control.WATER,
        severity=Severity.FAULT,
        at=lap.at,
        pieces=(lap.outer.name, lap.inner.name),
        message=say("{both} lap on the level and nothing seals the lap.", both=begun(both)),
        advice=say(
            "Seal the lap with a tape, a bead or an adhered sheet, or give the surface a fall."
        ),
        extent=(lap.outer.run, lap.inner.run),
    )


RULE = Rule("level-lap", (Control.WATER,), Severity.FAULT, check, local=True)
