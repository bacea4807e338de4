"""unsealed-joint: two pieces of the air layer meet and nothing seals them.

What it finds
    A joint on the trace of the air layer that is not sealed: no adhered sheet over the lap, no
    fluid-applied coat, and no tape or bead that touches both sides.

Why it matters
    Two boards pushed together, or two sheets stapled one over the other, leave a slit. Air that
    leaks out in winter carries more moisture into the wall than vapour diffusing through it, and
    wets what is cold.

What to draw instead
    A tape over the joint, a bead or gasket between the two, or an adhered sheet across both. If
    the joint is sealed in a way that the drawing cannot show, say so on that joint.

Source
    Joints of the air barrier are sealed (International Energy Conservation Code, air barrier
    table, second-hand); sheets are sealed, or lapped at least 100 mm and clamped (National
    Building Code of Canada 2020, 9.25.3.3, read).
"""

from collections.abc import Iterator

from enclosure_app.language import say
from enclosure_app.model.finding import Finding, Severity, begun
from enclosure_app.model.limits import Limits
from enclosure_app.model.product import Control, Kind
from enclosure_app.model.report import Joint, JointKind
from enclosure_app.network.network import Network
from enclosure_app.rules.rule import Rule


def check(network: Network, limits: Limits) -> Iterator[Finding]:
    """Yield one finding for each joint on the air trace that is not sealed."""
    for joint in network.layers[Control.AIR].joints:
        kinds = {network.product(name).kind for name in (joint.a, joint.b)}
        if joint.on_trace and not joint.sealed and Kind.PENETRATION not in kinds:
            yield _finding(network, joint)


def _finding(network: Network, joint: Joint) -> Finding:
    parts = sorted((network.part(joint.a, joint.at), network.part(joint.b, joint.at)))
    both = begun(network.both(joint.a, joint.b))
    if joint.kind is JointKind.LAP:
        message = say("{both} lap and nothing seals them: air gets through.", both=both)
        advice = say("Tape the lap, lay a bead in it, or use an adhered sheet on the outside.")
    else:
        message = say("{both} meet and nothing seals them: air gets through.", both=both)
        advice = say(
            "Tape over the joint, lay a bead or gasket between them, or seal them with a coat."
        )
    return Finding(
        key=f"unsealed-joint:air:{'+'.join(parts)}",
        rule="unsealed-joint",
        control=Control.AIR,
        severity=Severity.FAULT,
        at=joint.at,
        pieces=(joint.a, joint.b),
        message=message,
        advice=advice,
        extent=(joint.run_a, joint.run_b) if joint.run_a else ((joint.at, joint.at),),
    )


RULE = Rule("unsealed-joint", (Control.AIR,), Severity.FAULT, check, local=True)
