"""upturn-short: the roof's water layer does not go far enough up the wall.

What it finds
    A roof sheet or flashing that turns up a wall and ends lower than required. The height is
    measured plumb, from the fold to the top of the highest leg at that joint.

Why it matters
    Snow lies against the wall, water splashes and is driven up, and ice dams it. What stands
    higher than the flashing runs in behind it.

What to draw instead
    A higher leg, with the wall's sheet lapped over it, and the cladding kept clear of the roof.

Source
    Steep roofs: at least 4 in (International Residential Code R905.2.8.3, read). Low slopes:
    8 in by the practice of a trade association (from memory); 150 mm above the finished surface
    (BS 6229:2018, second-hand). The figure in force stands in the rule book.
"""

from collections.abc import Iterator

from enclosure_app.language import say
from enclosure_app.model.finding import Finding, Severity, begun
from enclosure_app.model.limits import Limit, Limits
from enclosure_app.model.product import Control
from enclosure_app.network.details.drainage import DRAWN
from enclosure_app.network.details.upturns import Upturn, upturns
from enclosure_app.network.network import Network
from enclosure_app.rules.rule import Rule

DRAFTING = 0.5  # mm


def check(network: Network, limits: Limits) -> Iterator[Finding]:
    """Yield one finding for each roof-wall joint whose highest leg is too low."""
    for upturn in upturns(network):
        required = _required(upturn, limits)
        if upturn.height < required.value - DRAFTING:
            yield _finding(network, upturn, required)


def _required(upturn: Upturn, limits: Limits) -> Limit:
    low = upturn.slope < limits.figure("upturn-low-slope-limit").value - DRAWN
    return limits.figure("upturn-low-slope" if low else "upturn")


def _finding(network: Network, upturn: Upturn, required: Limit) -> Finding:
    words = network.words(upturn.piece)
    return Finding(
        key=f"upturn-short:water:{network.part(upturn.piece, upturn.top)}",
        rule="upturn-short",
        control=Control.WATER,
        severity=Severity.FAULT,
        at=upturn.top,
        pieces=(upturn.piece,),
        message=say(
            "{sheet} does not turn up far enough where the roof meets the wall.",
            sheet=begun(words),
        ),
        advice=say("Carry it higher up the wall and lap the wall's sheet over it."),
        measured=upturn.height,
        required=required.value,
        basis=required.basis,
        extent=(upturn.leg,),
    )


RULE = Rule("upturn-short", (Control.WATER,), Severity.FAULT, check)
