"""reverse-lap: the upper sheet is tucked under the lower one.

What it finds
    A lap in the water layer at which the sheet that goes on uphill is the inner one, so that water
    running down it goes in behind the lower sheet. Along a level edge with an edge metal (a rake):
    the metal lies under the sheet. Where two sheets are drawn on top of each other and the order
    matters, a doubt. A reverse lap that is also short is reported once, with its length.

Why it matters
    The water that every cladding lets through runs down the sheet, meets the edge, and is led
    inside. Nobody sees it for years; the framing rots behind a sound cladding.

What to draw instead
    The upper sheet over the lower one, as shingles lie. At an eave the underlayment goes over the
    drip edge; along a rake the drip edge goes over the underlayment. A flashing's upper leg goes
    under the wall sheet. Where a leg must go on the face of the sheet, cover its upper edge with a
    strip that laps over it.

Source
    Flashing is applied shingle-fashion (International Residential Code R703.4, second-hand); felt
    is applied with the upper layer over the lower (R703.2, second-hand); drip edge order at eaves
    and rakes (R905.2.8.5, from memory).
"""

from collections.abc import Iterator

from enclosure_app.language import say
from enclosure_app.model.finding import Finding, Severity, begun
from enclosure_app.model.limits import Limits
from enclosure_app.model.product import Control
from enclosure_app.network.details.drainage import is_level, is_reversed, is_sheet_lap
from enclosure_app.network.joints.laps import Lap, Sheet
from enclosure_app.network.network import Network
from enclosure_app.rules.rule import Rule


def check(network: Network, limits: Limits) -> Iterator[Finding]:
    """Yield one finding for each lap of the water layer that leads water in."""
    for lap in network.layers[Control.WATER].laps:
        if is_reversed(network, lap):
            yield _reversed(network, lap)
        elif _cannot_be_told(network, lap):
            yield _untold(network, lap)


def _reversed(network: Network, lap: Lap) -> Finding:
    upper, lower = network.upper_and_lower(lap.inner.name, lap.outer.name)
    if is_level(network, lap):
        message = say(
            "Along this level edge {upper} lies under {lower}: water runs in over the metal.",
            upper=upper,
            lower=lower,
        )
        advice = say(
            "Put {upper} over {lower} here; only at an eave does the sheet go over the metal.",
            upper=upper,
            lower=lower,
        )
    else:
        message = say(
            "{upper} laps under {lower}: water running down goes in behind {lower}.",
            upper=begun(upper),
            lower=lower,
        )
        advice = say(
            "Put {upper} over {lower}; where that cannot be, cover the upper edge of {lower} "
            "with a strip that laps over it.",
            upper=upper,
            lower=lower,
        )
    return _finding(network, lap, Severity.FAULT, (message, advice))


def _cannot_be_told(network: Network, lap: Lap) -> bool:
    return (
        network.section.gravity is not None
        and lap.outward is None
        and lap.upper is not None
        and is_sheet_lap(network, lap)
        and not is_level(network, lap)
    )


def _untold(network: Network, lap: Lap) -> Finding:
    both = network.both(lap.outer.name, lap.inner.name)
    message = say(
        "{both} are drawn on top of each other: the drawing does not show the order.",
        both=begun(both),
    )
    advice = say("Draw them 3 mm apart, with the sheet that comes from above on the outside.")
    return _finding(network, lap, Severity.DOUBT, (message, advice))


def _finding(
    network: Network, lap: Lap, severity: Severity, sentences: tuple[str, str]
) -> Finding:
    parts = sorted(network.part(s.name, _end_in(s)) for s in (lap.outer, lap.inner))
    return Finding(
        key=f"reverse-lap:water:{'+'.join(parts)}",
        rule="reverse-lap",
        control=Control.WATER,
        severity=severity,
        at=lap.at,
        pieces=(lap.outer.name, lap.inner.name),
        message=sentences[0],
        advice=sentences[1],
        measured=lap.length,
        extent=(lap.outer.run, lap.inner.run),
    )


def _end_in(sheet: Sheet) -> tuple[float, float]:
    """Return the sheet's end inside the lap: what names the place."""
    return sheet.run[-1] if sheet.beyond_upper < sheet.beyond_lower else sheet.run[0]


RULE = Rule("reverse-lap", (Control.WATER,), Severity.FAULT, check, local=True)
