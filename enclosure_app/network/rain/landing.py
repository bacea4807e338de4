"""Where rain lands: on outer faces that do not face down, that no sheet hides, where rain gets to."""

from collections import defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import inf

import numpy as np

from enclosure_app.geometry.surfaces.faces import Bools, Floats, Ints
from enclosure_app.network.rain.edges import Spot
from enclosure_app.network.rain.runs import Ground
from enclosure_app.network.rain.sky import Sky

_CLEAR = 0.25  # how far from a face a place is asked for its side, mm
_APART = 50.0  # how far apart the sky is first looked for down a face, mm
_MOST = 100  # and at how many places at most


@dataclass(frozen=True, slots=True)
class Part:
    """An open part of a stretch, from station `low` to `high`; `stretch` counts along the run."""

    run: int
    stretch: int
    low: float
    high: float


Landed = dict[int, tuple[Spot, ...]]


def landings(ground: Ground, sky: Sky | None = None) -> list[Spot]:
    """Return the highest place where rain lands on each stretch of each run.

    Without a `sky` all of an outer face is taken to be rained on.
    """
    parts = outer_parts(ground, np.flatnonzero(ground.wets))
    found = landed(ground, sky, [part for each in parts.values() for part in each])
    return [spot for spots in found.values() for spot in spots]


def outer_parts(ground: Ground, runs: Ints) -> dict[int, tuple[Part, ...]]:
    """Return the open parts of each of `runs` on which a drop would run outside, down the run."""
    runs = runs[ground.wets[runs] & ~ground.sheltered[runs]]
    parts = [part for run in runs.tolist() for part in _parts(ground, run)]
    if not parts:
        return {}
    run = np.array([part.run for part in parts])
    low, high = np.array([(part.low, part.high) for part in parts]).T
    open_out = _opens(ground, run, (low + high) / 2)
    hidden = np.flatnonzero(~open_out)  # in the middle: in a corner it may be open further down
    foot = np.maximum(high[hidden] - _CLEAR, low[hidden])
    open_out[hidden] = _opens(ground, run[hidden], foot)
    outer: defaultdict[int, list[Part]] = defaultdict(list)
    for number in np.flatnonzero(open_out).tolist():
        outer[parts[number].run].append(parts[number])
    return {run: tuple(found) for run, found in outer.items()}


def _opens(ground: Ground, runs: Ints, stations: Floats) -> Bools:
    """Return which places on runs lie outside with nothing of the layer close in front of them."""
    normal = ground.layer.surfaces.faces.normal[runs // 2]
    probes = ground.start[runs] + ground.heading[runs] * stations[:, None] + normal * _CLEAR
    beyond = probes + normal * ground.tolerances.lap_reach
    lands = ground.rained_on or ground.is_outside
    opens: Bools = lands(probes) & ~ground.layer.surfaces.crossed(probes, beyond)
    return opens


def landed(ground: Ground, sky: Sky | None, parts: Sequence[Part]) -> Landed:
    """Return where rain lands on outer parts, by their runs; those on which it does not are left out."""
    return _first_of_each(parts, _highest(ground, sky, parts))


def _first_of_each(parts: Sequence[Part], stations: list[float]) -> Landed:
    """Return the first wet place of each stretch; `stations` are infinite where it stays dry."""
    first: dict[tuple[int, int], Spot] = {}
    for part, station in zip(parts, stations, strict=True):
        if station < inf:
            first.setdefault((part.run, part.stretch), Spot(part.run, station))
    found: defaultdict[int, list[Spot]] = defaultdict(list)
    for (run, _), spot in first.items():
        found[run].append(spot)
    return {run: tuple(spots) for run, spots in found.items()}


def _highest(ground: Ground, sky: Sky | None, parts: Sequence[Part]) -> list[float]:
    """Return the highest place of each part that rain gets to, infinite where there is none."""
    if sky is None or not parts:
        return [part.low for part in parts]
    rays = _Rays(ground, sky, np.array([part.run for part in parts]))
    low = np.array([part.low for part in parts])
    high = np.array([part.high for part in parts])
    all_parts = np.arange(len(parts))
    slop = np.minimum(ground.tolerances.lap_reach, (high - low) / 2)
    found = np.where(rays.wet(all_parts, low + slop), low, inf)
    dry = np.flatnonzero(found == inf)
    found[dry] = rays.first_wet(dry, low[dry], high[dry])
    stations: list[float] = found.tolist()
    return stations


@dataclass(frozen=True, slots=True, eq=False)
class _Rays:
    """Asks the sky about places on runs, each given as its number in `runs` and a station."""

    ground: Ground
    sky: Sky
    runs: Ints

    def wet(self, which: Ints, station: Floats) -> Bools:
        """Return whether rain gets to each place."""
        ground, run = self.ground, self.runs[which]
        normal = ground.layer.surfaces.faces.normal[run // 2]
        at = ground.start[run] + ground.heading[run] * station[:, None]
        return self.sky.wets(at + normal * _CLEAR, normal)

    def first_wet(self, which: Ints, low: Floats, high: Floats) -> Floats:
        """Return the highest wet station between `low` and `high`, to a millimetre or so."""
        count = np.clip(np.ceil((high - low) / _APART), 1, _MOST).astype(np.intp)
        part = np.repeat(np.arange(len(which)), count)
        number = np.arange(len(part)) - np.repeat(np.cumsum(count) - count, count) + 1
        station = low[part] + (high - low - _CLEAR)[part] * number / count[part]
        wet = np.flatnonzero(self.wet(which[part], station))
        found, at = np.full(len(which), inf), np.unique(part[wet], return_index=True)
        dry = np.where(number > 1, station - (high - low - _CLEAR)[part] / count[part], low[part])
        first = wet[at[1]]
        found[at[0]] = self._between(which[at[0]], dry[first], station[first])
        return found

    def _between(self, which: Ints, dry: Floats, wet: Floats) -> Floats:
        """Return where between two stations it begins to be wet, each to a millimetre."""
        wide = np.flatnonzero(wet - dry > 1.0)
        while len(wide):
            middle = (dry[wide] + wet[wide]) / 2
            told = self.wet(which[wide], middle)
            dry[wide], wet[wide] = (
                np.where(told, dry[wide], middle),
                np.where(told, middle, wet[wide]),
            )
            wide = wide[wet[wide] - dry[wide] > 1.0]
        return wet


def _parts(ground: Ground, run: int) -> Iterator[Part]:
    """Yield the open parts of each stretch between two bars, down the run."""
    length, touch = ground.length(run // 2), ground.tolerances.touch
    cuts = [0.0, *(bar.station for bar in ground.bars.get(run, ())), length]
    hidden = _hidden(ground, run, length)
    least = min(touch, length / 2)
    for number, (top, foot) in enumerate(pairwise(cuts)):
        for low, high in _open(top, foot, hidden):
            if high - low > least:
                yield Part(run, number, low, high)


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
