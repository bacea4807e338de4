"""Of several lines running along one side of a line, only the nearest is beside it.

Where three sheets lie on each other, the outer two do not touch: a tape on the face of the outer
sheet does not stick to what lies behind that sheet. But two sheets that do lie on each other lap
for as long as they overlap, although a third, as the leg of a flashing, follows between them for a
while: what gets in at the edge of the one has to go all that way to get behind the other. Only
where the third takes over, running on past the ends of both, is the joint its own.
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
HEM = 15.0  # mm: what ends this short behind a lap is a hem, not a sheet that goes on
Span = tuple[float, float]  # shares of a run, 0 to 1


@dataclass(frozen=True, slots=True)
class _View:
    """One run seen from one of its two lines: where along it, how far, and whether the other hides.

    `other` is the other line's rim; `passes` says at the start and at the end of the run whether
    the other line goes on past the end of this one.
    """

    run: int
    other: int
    start: float
    end: float
    distance: float
    hides: bool
    passes: tuple[bool, bool]


@dataclass(frozen=True, slots=True)
class _Hidden:
    """Which share of a run lies behind the line `third`, as seen from the line `seen_from`.

    `passes` says that the third leaves the run there, and goes on past the end of that line.
    """

    span: Span
    third: int
    seen_from: int
    passes: bool


def parts_left(
    rims: Rims, runs: Sequence[SideBySide], hides: Bools
) -> list[tuple[SideBySide, ...]]:
    """Return each run without the stretches along which a third line takes over between its two.

    What is left is the run itself, parts of it, or nothing. `hides` (r,) tells which rims hide what
    is behind them: a bead between two sheets does not.

    That depends on nothing but the runs which share one of its two lines, and how long the lines
    of these are.
    """
    if len(runs) < 2:
        return [(run,) for run in runs]
    sides_a, sides_b, opposed = _sides(rims, runs)
    views: defaultdict[tuple[int, bool], list[_View]] = defaultdict(list)
    for number, run in enumerate(runs):
        from_a, from_b = _views(rims, number, run, hides, opposed=opposed[number])
        views[run.a, sides_a[number]].append(from_a)
        views[run.b, sides_b[number]].append(from_b)
    hidden: defaultdict[int, list[_Hidden]] = defaultdict(list)
    for (rim, _), group in views.items():
        for number, each in _hidden(rim, group):
            backwards = opposed[number] and runs[number].b == rim
            low, high = each.span
            turned = replace(each, span=(1 - high, 1 - low)) if backwards else each
            hidden[number].append(turned)
    return [
        tuple(_parts_left(run, hidden.get(number, []), opposed=opposed[number]))
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


def _views(
    rims: Rims, number: int, run: SideBySide, hides: Bools, *, opposed: bool
) -> tuple[_View, _View]:
    """Return a run as seen from its first line, and from its second."""
    of_a = _beyond(rims, run.a, run.a_from, run.a_to)
    of_b = _beyond(rims, run.b, run.b_from, run.b_to)
    at_a, at_b = (of_a[::-1], of_b[::-1]) if opposed else (of_a, of_b)
    return (
        _View(number, run.b, run.a_from, run.a_to, run.distance, bool(hides[run.b]),
              (_passes(of_a[0], at_b[0]), _passes(of_a[1], at_b[1]))),
        _View(number, run.a, run.b_from, run.b_to, run.distance, bool(hides[run.a]),
              (_passes(of_b[0], at_a[0]), _passes(of_b[1], at_a[1]))),
    )  # fmt: skip


def _beyond(rims: Rims, rim: int, start: float, end: float) -> tuple[float, float]:
    """Return how far a line goes on before and after a stretch of it, mm."""
    after = float(rims.length[rim]) - end
    return (start + after, start + after) if rims.ring[rim] else (start, after)


def _passes(beyond: float, other: float) -> bool:
    return beyond <= HEM < other


def _hidden(rim: int, group: list[_View]) -> Iterator[tuple[int, _Hidden]]:
    """Yield which share of which run, seen from the line `rim`, lies behind a nearer one."""
    group.sort(key=lambda view: view.start)
    for place, view in enumerate(group):
        for other in group[place + 1 :]:
            if other.start >= view.end - SCRAP:
                break
            near, far = sorted((view, other), key=lambda each: each.distance)
            low, high = max(near.start, far.start), min(near.end, far.end)
            if near.hides and near.distance < far.distance - NEARER and high - low > SCRAP:
                length = far.end - far.start
                passes = (low <= far.start + SCRAP and near.passes[0]) or (
                    high >= far.end - SCRAP and near.passes[1]
                )
                span = ((low - far.start) / length, (high - far.start) / length)
                yield far.run, _Hidden(span, near.other, rim, passes)


def _parts_left(run: SideBySide, hidden: list[_Hidden], *, opposed: bool) -> Iterator[SideBySide]:
    if not hidden:
        yield run
        return
    least = SCRAP / run.length
    seen = [*_between([each.span for each in hidden], least)]
    barred = [each.span for each in hidden if not _follows(each.third, hidden)]
    for low, high in _between(barred, least):
        own = [span for span in seen if low <= span[0] and span[1] <= high]
        if own:
            part = run if (low, high) == (0.0, 1.0) else _part(run, (low, high), opposed=opposed)
            widest = max(own, key=lambda span: span[1] - span[0])
            bare = None if widest == (low, high) else _part(run, widest, opposed=opposed)
            yield replace(part, bare=bare)


def _follows(third: int, hidden: list[_Hidden]) -> bool:
    """Whether a third line, seen from both, does not go on past the ends of both."""
    passes: defaultdict[int, bool] = defaultdict(bool)
    for each in hidden:
        if each.third == third:
            passes[each.seen_from] |= each.passes
    return len(passes) > 1 and not all(passes.values())


def _between(spans: list[Span], least: float) -> Iterator[Span]:
    """Yield what lies between `spans` of a run, where it is longer than `least`."""
    reached = 0.0
    for low, high in [*sorted(spans), (1.0, 1.0)]:
        if low - reached > least:
            yield reached, low
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
