"""Of several lines running along one side of a line, only the nearest is beside it.

Where three sheets lie on each other, the outer two do not touch: a tape on the face of the outer
sheet does not stick to what lies behind that sheet.
"""

from collections import defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

import numpy as np

from enclosure_app.geometry.rims.closest import cross
from enclosure_app.geometry.rims.rims import Bools, Floats, Rims
from enclosure_app.geometry.runs.alongside import SideBySide

NEARER = 0.2  # mm: what is drawn nearer by less than this hides nothing
SCRAP = 1.0  # mm: overlaps and leftovers shorter than this do not count
Span = tuple[float, float]  # shares of a run, 0 to 1


@dataclass(frozen=True, slots=True)
class _View:
    """One run seen from one of its two lines: where along it, how far, and whether the other hides."""

    run: int
    start: float
    end: float
    distance: float
    hides: bool


def foremost(rims: Rims, runs: Sequence[SideBySide], hides: Bools) -> list[SideBySide]:
    """Return the runs without the stretches along which a third line lies between the two.

    `hides` (r,) tells which rims hide what is behind them: a bead between two sheets does not.
    """
    return [part for parts in open_parts(rims, runs, hides) for part in parts]


def open_parts(
    rims: Rims, runs: Sequence[SideBySide], hides: Bools
) -> list[tuple[SideBySide, ...]]:
    """Return for each run what `foremost` leaves of it: itself, parts of it, or nothing.

    That depends on nothing but the runs which share one of its two lines.
    """
    if len(runs) < 2:
        return [(run,) for run in runs]
    sides_a, sides_b, opposed = _sides(rims, runs)
    views: defaultdict[tuple[int, bool], list[_View]] = defaultdict(list)
    for number, run in enumerate(runs):
        from_a = _View(number, run.a_from, run.a_to, run.distance, bool(hides[run.b]))
        from_b = _View(number, run.b_from, run.b_to, run.distance, bool(hides[run.a]))
        views[run.a, sides_a[number]].append(from_a)
        views[run.b, sides_b[number]].append(from_b)
    hidden: defaultdict[int, list[Span]] = defaultdict(list)
    for (rim, _), group in views.items():
        for number, (low, high) in _hidden(group):
            backwards = opposed[number] and runs[number].b == rim
            hidden[number].append((1 - high, 1 - low) if backwards else (low, high))
    return [
        tuple(_open_parts(run, hidden.get(number, []), opposed=opposed[number]))
        for number, run in enumerate(runs)
    ]


def _sides(rims: Rims, runs: Sequence[SideBySide]) -> tuple[list[bool], list[bool], list[bool]]:
    """Return on which side of a line b lies, on which side of b line a lies, and who is opposed."""
    middle_a, heading_a = _middle(rims, [(run.a, run.a_from, run.a_to) for run in runs])
    middle_b, heading_b = _middle(rims, [(run.b, run.b_from, run.b_to) for run in runs])
    across = middle_b - middle_a
    return (
        (cross(heading_a, across) > 0).tolist(),
        (cross(heading_b, -across) > 0).tolist(),
        ((heading_a * heading_b).sum(axis=1) < 0).tolist(),
    )


def _middle(rims: Rims, stretches: list[tuple[int, float, float]]) -> tuple[Floats, Floats]:
    table = np.array(stretches, dtype=np.float64)
    rim, middle = table[:, 0].astype(np.intp), (table[:, 1] + table[:, 2]) / 2
    step = (table[:, 2] - table[:, 1]) / 100
    before, after = (rims.locate(rim, middle + side * step)[1] for side in (-1, 1))
    return rims.locate(rim, middle)[1], after - before


def _hidden(group: list[_View]) -> Iterator[tuple[int, Span]]:
    """Yield which share of which run lies behind a nearer one."""
    group.sort(key=lambda view: view.start)
    for place, view in enumerate(group):
        for other in group[place + 1 :]:
            if other.start >= view.end - SCRAP:
                break
            near, far = sorted((view, other), key=lambda each: each.distance)
            low, high = max(near.start, far.start), min(near.end, far.end)
            if near.hides and near.distance < far.distance - NEARER and high - low > SCRAP:
                length = far.end - far.start
                yield far.run, ((low - far.start) / length, (high - far.start) / length)


def _open_parts(run: SideBySide, hidden: list[Span], *, opposed: bool) -> Iterator[SideBySide]:
    if not hidden:
        yield run
        return
    reached = 0.0
    for low, high in [*sorted(hidden), (1.0, 1.0)]:
        if (low - reached) * run.length > SCRAP:
            yield _part(run, (reached, low), opposed=opposed)
        reached = max(reached, high)


def _part(run: SideBySide, span: Span, *, opposed: bool) -> SideBySide:
    a, b = run.a_to - run.a_from, run.b_to - run.b_from
    low, high = (1 - span[1], 1 - span[0]) if opposed else span
    return replace(
        run,
        a_from=run.a_from + span[0] * a,
        a_to=run.a_from + span[1] * a,
        b_from=run.b_from + low * b,
        b_to=run.b_from + high * b,
    )
