"""edge-cover-short: the eave membrane does not reach far enough up the roof.

What it finds
    An eave membrane (ice barrier) that ends too near the eave: its length along the slope, from
    the roof's edge, against the length needed to pass the wall line by the required distance.
    From which face of the wall that is counted is a setting; the report's figure says which book
    was applied.

Why it matters
    Snow melts over the warm house and freezes over the cold eave. Behind the dam of ice water
    stands on the roof and goes under the shingles; the membrane has to reach to where the roof is
    warm.

What to draw instead
    A longer membrane, or a second one lapped over its upper end.

Source
    International Residential Code R905.1.2: 24 in inside the wall line, and on steep roofs 36 in
    along the slope (from memory); National Building Code of Canada 9.26.5.1: 900 mm up the slope
    to a line 300 mm inside the wall's inner face (read).
"""

from collections.abc import Iterator

from enclosure_app.language import say
from enclosure_app.model.finding import Finding, Severity, begun
from enclosure_app.model.limits import Limits
from enclosure_app.model.product import Control
from enclosure_app.network.details.eaves import Eave, eaves
from enclosure_app.network.network import Network
from enclosure_app.rules.rule import Rule

DRAFTING = 3.2  # mm: published lengths are rounded to an eighth of an inch


def check(network: Network, limits: Limits) -> Iterator[Finding]:
    """Yield one finding for each eave whose membrane is too short."""
    for eave in eaves(network):
        needed, limit = eave.required(limits)
        if eave.reach < needed - DRAFTING:
            yield _finding(network, eave, needed, limit.basis)


def _finding(network: Network, eave: Eave, needed: float, basis: str) -> Finding:
    words = network.words(eave.pieces[0])
    return Finding(
        key=f"edge-cover-short:water:{network.part(eave.pieces[0], eave.top)}",
        rule="edge-cover-short",
        control=Control.WATER,
        severity=Severity.FAULT,
        at=eave.top,
        pieces=eave.pieces,
        message=say(
            "{sheet} ends too near the eave, measured along the slope.", sheet=begun(words)
        ),
        advice=say(
            "Carry it further up the roof, past the wall line, or lap a second sheet over its end."
        ),
        measured=eave.reach,
        required=needed,
        basis=basis,
        extent=((eave.edge, eave.top),),
    )


RULE = Rule("edge-cover-short", (Control.WATER,), Severity.FAULT, check)
