"""Where two lines run side by side: the stretches of each, and how far apart they are.

A point of one line belongs to a run if its foot on the other line falls inside one of that line's
segments (not on an end), the two head nearly the same way, and they are no further apart than the
reach. The end of a sheet therefore ends the run exactly where the sheet ends.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

import numpy as np

from enclosure_app.geometry.rims.closest import cross, near_pairs, near_pairs_of
from enclosure_app.geometry.rims.rims import Floats, Ints, Rims

SAME_WAY = np.cos(np.radians(40.0))


@dataclass(frozen=True, slots=True)
class SideBySide:
    """One run of rim `a` beside rim `b`: positions along each (mm) and the mean clear distance.

    `bare` is the longest stretch of it in which no third line lies between the two, None where
    none does anywhere.
    """

    a: int
    b: int
    a_from: float
    a_to: float
    b_from: float
    b_to: float
    distance: float
    bare: "SideBySide | None" = None

    @property
    def length(self) -> float:
        """The run's length in mm: the shorter of the two, so a fold is never counted twice."""
        return min(self.a_to - self.a_from, self.b_to - self.b_from)


@dataclass(frozen=True, slots=True)
class _Stretches:
    """Straight stretches side by side: segment pair, positions along both rims, distance."""

    a: Ints
    b: Ints
    a_from: Floats
    a_to: Floats
    b_from: Floats
    b_to: Floats
    distance: Floats


def runs_between(rims: Rims, half: Floats, reach: float, least: float) -> list[SideBySide]:
    """Return the runs between rims of different solids, each pair once (a < b).

    Args:
        rims: the axes of the sheets.
        half: (r,) half the drawn width of each rim, mm; distances are between the faces.
        reach: how far apart two faces may be, mm.
        least: a run must be longer than twice its distance plus this, mm.
    """
    a, b = near_pairs(rims, reach + _widest(half))
    return _runs(rims, half, (reach, least), (a, b))


def runs_of(rims: Rims, half: Floats, reach: float, least: float, few: Ints) -> list[SideBySide]:
    """Return those of `runs_between` in which one of a `few` rims takes part."""
    segments = np.flatnonzero(np.isin(rims.rim, few))
    return _runs(rims, half, (reach, least), near_pairs_of(rims, segments, reach + _widest(half)))


def _widest(half: Floats) -> float:
    return 2 * float(half.max(initial=0.0))


def _runs(
    rims: Rims, half: Floats, limits: tuple[float, float], pairs: tuple[Ints, Ints]
) -> list[SideBySide]:
    (reach, least), (a, b) = limits, pairs
    strangers = rims.owner[rims.rim[a]] != rims.owner[rims.rim[b]]
    stretches = _stretches(rims, a[strangers], b[strangers], half, reach)
    merged = (_merge(key, rows) for key, rows in _grouped(rims, stretches))
    runs = [run for several in merged for run in several]
    return [run for run in runs if is_lap(run, least)]


def is_lap(run: SideBySide, least: float) -> bool:
    """Whether a run is clearly longer than it is wide: than twice its distance plus `least` mm.

    Only where nothing lies between does that count.
    """
    run = run.bare or run
    return run.length > 2 * max(run.distance, 0.0) + least


def _stretches(rims: Rims, a: Ints, b: Ints, half: Floats, reach: float) -> _Stretches:
    heading, length = _directions(rims)
    alike = np.abs((heading[a] * heading[b]).sum(axis=1)) >= SAME_WAY  # of hatches few are
    a, b = a[alike], b[alike]
    u, v, length_a, length_b = heading[a], heading[b], length[a], length[b]
    from_b = rims.start[a] - rims.start[b]
    cosine, sine = (u * v).sum(axis=1), cross(u, v)
    foot, off = (from_b * v).sum(axis=1), cross(from_b, v)
    thick = half[rims.rim[a]] + half[rims.rim[b]]
    low, high = when_between(foot, cosine, np.zeros_like(foot), length_b)
    near, far = when_between(off, sine, -(reach + thick), reach + thick)
    low = np.maximum(np.maximum(low, near), 0.0)
    high = np.minimum(np.minimum(high, far), length_a)
    keep = high - low > 1e-9
    low, high = low[keep], high[keep]
    middle = (low + high) / 2
    beside = np.sort([foot[keep] + cosine[keep] * low, foot[keep] + cosine[keep] * high], axis=0)
    on_a, on_b = rims.along[a[keep]], rims.along[b[keep]]
    return _Stretches(
        a=a[keep],
        b=b[keep],
        a_from=on_a + low,
        a_to=on_a + high,
        b_from=on_b + beside[0],
        b_to=on_b + beside[1],
        distance=np.abs(off[keep] + sine[keep] * middle) - thick[keep],
    )


def when_between(
    at: Floats, rate: Floats, least: Floats | float, most: Floats | float
) -> tuple[Floats, Floats]:
    """Return the interval of t on which ``least <= at + rate * t <= most``."""
    flat = np.abs(rate) < 1e-12
    safe = np.where(flat, 1.0, rate)
    one, other = (least - at) / safe, (most - at) / safe
    always = flat & (least <= at) & (at <= most)
    low = np.where(flat, np.where(always, -np.inf, np.inf), np.minimum(one, other))
    return low, np.where(flat, np.inf, np.maximum(one, other))


def _directions(rims: Rims) -> tuple[Floats, Floats]:
    """Return the unit vector (n, 2) and the length (n,) of every segment."""
    step = rims.end - rims.start
    length = np.hypot(step[:, 0], step[:, 1])
    return step / length[:, None], length


def _grouped(rims: Rims, stretches: _Stretches) -> Iterator[tuple[tuple[int, int], Floats]]:
    rim_a, rim_b = rims.rim[stretches.a], rims.rim[stretches.b]
    order = np.lexsort((stretches.a_from, rim_b, rim_a))
    rows = np.column_stack(
        [
            stretches.a_from,
            stretches.a_to,
            stretches.b_from,
            stretches.b_to,
            stretches.distance,
        ]
    )[order]
    pairs = np.column_stack([rim_a[order], rim_b[order]])
    new = np.flatnonzero((pairs[1:] != pairs[:-1]).any(axis=1)) + 1
    bounds = [0, *new.tolist(), len(pairs)] if len(pairs) else []
    for start, end in pairwise(bounds):
        yield (int(pairs[start, 0]), int(pairs[start, 1])), rows[start:end]


def _merge(key: tuple[int, int], rows: Floats) -> Iterator[SideBySide]:
    """Join stretches that follow each other; at a fold the outer sheet has a corner to pass."""
    held: list[Floats] = []
    reached = 0.0
    for row in rows:
        if held and row[0] > reached + 2.5 * max(row[4], 0.0) + 1.0:
            yield _run(key, np.array(held))
            held = []
        held.append(row)
        reached = max(reached, row[1]) if len(held) > 1 else row[1]
    if held:
        yield _run(key, np.array(held))


def _run(key: tuple[int, int], rows: Floats) -> SideBySide:
    weights = np.maximum(rows[:, 1] - rows[:, 0], 1e-9)
    return SideBySide(
        a=key[0],
        b=key[1],
        a_from=float(rows[:, 0].min()),
        a_to=float(rows[:, 1].max()),
        b_from=float(rows[:, 2].min()),
        b_to=float(rows[:, 3].max()),
        distance=float(np.average(rows[:, 4], weights=weights)),
    )
