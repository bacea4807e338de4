"""Where rain lands: on each stretch of outer face that does not face down and that no sheet hides."""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

import numpy as np

from enclosure_app.geometry.faces import Bools
from enclosure_app.geometry.falling import STEEP
from enclosure_app.network.edges import Spot
from enclosure_app.network.runs import Foot, Ground

_CLEAR = 0.25  # how far from a face a place is asked for its side, mm
_LEG = 200.0  # a longer face under its own sheet's overhang is a wall, mm


@dataclass(frozen=True, slots=True)
class _Part:
    """An open part of a stretch, from station `low` to `high`; `stretch` counts along the run."""

    run: int
    stretch: int
    low: float
    high: float


def landings(ground: Ground) -> list[Spot]:
    """Return the highest place where rain lands on each stretch of each run."""
    parts = [
        part
        for run in np.flatnonzero(ground.wets & ~_sheltered(ground)).tolist()
        for part in _parts(ground, run)
    ]
    if not parts:
        return []
    probes = np.array([_probe(ground, part) for part in parts])
    normal = ground.layer.surfaces.faces.normal[[part.run // 2 for part in parts]]
    beyond = probes + normal * ground.tolerances.lap_reach
    wet = ground.is_outside(probes) & ~ground.layer.surfaces.crossed(probes, beyond)
    first: dict[tuple[int, int], Spot] = {}
    for part, out in zip(parts, wet.tolist(), strict=True):
        if out:
            first.setdefault((part.run, part.stretch), Spot(part.run, part.low))
    return list(first.values())


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


def _probe(ground: Ground, part: _Part) -> tuple[float, float]:
    (x, y), (nx, ny) = (
        ground.at(part.run, (part.low + part.high) / 2),
        ground.normals[part.run // 2],
    )
    return x + nx * _CLEAR, y + ny * _CLEAR


def _parts(ground: Ground, run: int) -> Iterator[_Part]:
    """Yield the open parts of each stretch between two bars, down the run."""
    length, touch = ground.length(run // 2), ground.tolerances.touch
    cuts = [0.0, *(bar.station for bar in ground.bars.get(run, ())), length]
    hidden = _hidden(ground, run, length)
    least = min(touch, length / 2)
    for number, (top, foot) in enumerate(pairwise(cuts)):
        for low, high in _open(top, foot, hidden):
            if high - low > least:
                yield _Part(run, number, low, high)


def _hidden(ground: Ground, run: int, length: float) -> list[tuple[float, float]]:
    spans = [(flank.low, flank.high) for flank in ground.flanks.get(run // 2, ()) if flank.hides]
    if run % 2:
        spans = [(length - high, length - low) for low, high in spans]
    return sorted(spans)


def _open(
    low: float, high: float, hidden: list[tuple[float, float]]
) -> Iterator[tuple[float, float]]:
    """Yield the parts of a stretch that are not hidden."""
    for start, end in hidden:
        if low < start:
            yield low, min(high, start)
        low = max(low, end)
    if low < high:
        yield low, high
