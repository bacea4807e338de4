"""Where rain lands: on each stretch of outer face that does not face down and that no sheet hides."""

from itertools import pairwise

import numpy as np

from enclosure_app.geometry.faces import Bools
from enclosure_app.geometry.falling import STEEP
from enclosure_app.network.edges import Spot
from enclosure_app.network.runs import Foot, Ground

_CLEAR = 0.25  # how far from a face a place is asked for its side, mm
_LEG = 200.0  # a longer face under its own sheet's overhang is a wall, mm


def landings(ground: Ground) -> list[Spot]:
    """Return the highest place where rain lands on each stretch of each run."""
    stretches = [
        (Spot(run, low), high)
        for run in np.flatnonzero(ground.wets & ~_sheltered(ground)).tolist()
        for low, high in _stretches(ground, run)
    ]
    if not stretches:
        return []
    probes = np.array([_probe(ground, spot, high) for spot, high in stretches])
    edges = np.array([spot.run // 2 for spot, _ in stretches])
    normal = ground.layer.surfaces.faces.normal[edges]
    beyond = probes + normal * ground.tolerances.lap_reach
    wet = ground.is_outside(probes) & ~ground.layer.surfaces.crossed(probes, beyond)
    return [spot for (spot, _), out in zip(stretches, wet.tolist(), strict=True) if out]


def _sheltered(ground: Ground) -> Bools:
    """Whether a run is the inner face of a leg that hangs under its own sheet."""
    faces = ground.layer.surfaces.faces
    normal = np.repeat(faces.normal, 2, axis=0)
    above = np.stack([2 * faces.before, 2 * faces.after + 1], axis=1).reshape(-1)
    roofed = normal[above, 1] < -STEEP
    concave = np.sum(ground.heading * normal[above], axis=1) > 1e-9
    ends = np.array([foot is Foot.EDGE for foot in ground.foot])
    leg = np.repeat(faces.length <= _LEG, 2)
    sheltered: Bools = roofed & concave & ends & leg
    return sheltered


def _probe(ground: Ground, spot: Spot, high: float) -> tuple[float, float]:
    (x, y), (nx, ny) = (
        ground.at(spot.run, (spot.station + high) / 2),
        ground.normals[spot.run // 2],
    )
    return x + nx * _CLEAR, y + ny * _CLEAR


def _stretches(ground: Ground, run: int) -> list[tuple[float, float]]:
    """Return the open part of each stretch between two bars, as stations along the run."""
    length, touch = ground.length(run // 2), ground.tolerances.touch
    cuts = [0.0, *(bar.station for bar in ground.bars.get(run, ())), length]
    hidden = _hidden(ground, run, length)
    parts = (_open(low, high, hidden) for low, high in pairwise(cuts))
    least = min(touch, length / 2)
    return [(low, high) for low, high in parts if high - low > least]


def _hidden(ground: Ground, run: int, length: float) -> list[tuple[float, float]]:
    spans = [(flank.low, flank.high) for flank in ground.flanks.get(run // 2, ()) if flank.hides]
    if run % 2:
        spans = [(length - high, length - low) for low, high in spans]
    return sorted(spans)


def _open(low: float, high: float, hidden: list[tuple[float, float]]) -> tuple[float, float]:
    """Return the first part of a stretch that is not hidden."""
    for start, end in hidden:
        if start > low + 1e-6:
            return low, min(high, start)
        low = max(low, end)
    return low, high
