"""The steps of the rain again, after a few pieces have moved."""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from math import inf

import numpy as np

from enclosure_app.geometry.surfaces.faces import Bools, Floats, Ints
from enclosure_app.network.rain.edges import Off, lower_edges, offs
from enclosure_app.network.rain.ground_again import GroundAgain, merged
from enclosure_app.network.rain.runs import Ground
from enclosure_app.network.rain.water import Node, Water


@dataclass(frozen=True, slots=True, eq=False)
class Falls:
    """Where drops come past that leave the ends of `runs` (k,): `paths` are x, top and low (k, 3)."""

    runs: Ints
    paths: Floats


@dataclass(frozen=True, slots=True, eq=False)
class WaterAgain:
    """The water as it is now, its falls, and the nodes on which a drop does something else than before."""

    water: Water
    falls: Falls
    changed: frozenset[Node]


def falls_of(ground: Ground, leaving: Mapping[int, Off]) -> Falls:
    """Return where the drops come past that leave the lower edges."""
    paths = [_path(ground, off) for off in leaving.values()]
    runs = np.fromiter(leaving, dtype=np.intp, count=len(leaving))
    return Falls(runs, np.array(paths).reshape(-1, 3))


def water_again(last: Water, falls: Falls, again: GroundAgain) -> WaterAgain:
    """Return the water on the ground as it is now; `falls` are those of the last water."""
    ground = again.ground
    dropped = np.zeros(len(ground.wets), dtype=bool)
    dropped[np.concatenate([2 * again.edges, 2 * again.edges + 1])] = True
    dropped[falls.runs[_met(ground, falls.paths, again.boxes)]] = True
    fresh = offs(ground, _of(lower_edges(ground), dropped))
    leaving = dict(last.offs)
    for run in falls.runs[dropped[falls.runs]].tolist():
        del leaving[run]
    leaving |= fresh
    kept, more = ~dropped[falls.runs], falls_of(ground, fresh)
    falls = Falls(
        np.concatenate([falls.runs[kept], more.runs]), np.vstack([falls.paths[kept], more.paths])
    )
    stale = [*last.stood, *_fallen_otherwise(ground, last.fell, again.boxes)]
    stale += [
        (run, passed)
        for run in np.flatnonzero(dropped).tolist()
        for passed in range(
            max(len(bars.get(run, ())) for bars in (last.ground.bars, ground.bars)) + 1
        )
    ]
    water = _without(last, ground, stale)
    water.__dict__["offs"] = leaving
    return WaterAgain(water, falls, frozenset(_changed(last, water, stale)))


def _of(runs: Ints, wanted: Bools) -> Ints:
    return runs[wanted[runs]]


def _without(last: Water, ground: Ground, stale: Iterable[Node]) -> Water:
    """Return the water on `ground` with what the last one knew, but for the `stale` nodes."""
    steps, fell, stood = dict(last.steps), dict(last.fell), set(last.stood)
    for node in stale:
        steps.pop(node, None)
        fell.pop(node, None)
        stood.discard(node)
    return Water(ground, last.drains, steps, stood, fell)


def _changed(last: Water, water: Water, stale: Iterable[Node]) -> Iterator[Node]:
    """Yield the `stale` nodes on which a drop does something else, or which are others on their run.

    Nobody had asked what it does on some of them.
    """
    old, new = last.ground.bars, water.ground.bars
    for node in stale:
        run = node[0]
        same = water.ground.wets[run] and old.get(run, []) == new.get(run, [])
        if not same or node not in last.steps or water.step(node) != last.steps[node]:
            yield node


def _fallen_otherwise(ground: Ground, fell: Mapping[Node, Off], boxes: Floats) -> Iterable[Node]:
    if not fell:
        return ()
    paths = np.array([_path(ground, off) for off in fell.values()])
    met = _met(ground, paths, boxes).tolist()
    return [node for node, hit in zip(fell, met, strict=True) if hit]


def _path(ground: Ground, off: Off) -> tuple[float, float, float]:
    """Return x, top and low of all that can decide where a drop goes that leaves an edge."""
    x, top = off.edge
    if off.leaves is not None:
        return x, top, off.leaves[1]
    if off.rises is not None:
        return x, top, top
    ends = [ground.at(spot.run, spot.station)[1] for spot in off.spots]
    return x, top, min(ends) - ground.tolerances.lap_reach if ends else -inf


def _met(ground: Ground, paths: Floats, boxes: Floats) -> Bools:
    """Return which paths (k, 3) come near any of the boxes (m, 2, 2)."""
    reach = 2 * (ground.tolerances.lap_reach + ground.tolerances.touch)
    if not len(boxes):
        return np.zeros(len(paths), dtype=bool)
    met = np.zeros(len(paths), dtype=bool)
    x, top, low = paths.T
    for (left, bottom), (right, high) in merged(boxes).tolist():
        beside = (x - reach <= right) & (x + reach >= left)
        met |= beside & (low - reach <= high) & (top + reach >= bottom)
    return met
