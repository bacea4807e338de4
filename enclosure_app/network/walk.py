"""The trace as a person follows it: runs along pieces and lifts between them, from cut end to cut end.

The walk starts at the lower of its two cut ends (the left one where they are level); a round that
never meets the frame starts at its lowest lift.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np

from enclosure_app.geometry.rims.closed_curve import ClosedCurve
from enclosure_app.geometry.rims.parity import Way, flips_along
from enclosure_app.geometry.rims.rims import Bools, Floats, Ints
from enclosure_app.geometry.rims.rows import NEW, same_rows
from enclosure_app.geometry.runs.polyline import around, as_points, nearest_positions, stretch
from enclosure_app.model.place import Points
from enclosure_app.model.report import Lift, Run
from enclosure_app.network.fabric.fabric import Fabric
from enclosure_app.network.trace import Trace


@dataclass(frozen=True, slots=True)
class Walk:
    """The steps of a trace in walking order, the links taken, and the closed curve of the round.

    `legs` and `chords` are the same round as it was found, to be taken up by the next walk.
    """

    steps: tuple[Run | Lift, ...]
    links: tuple[int, ...]
    curve: ClosedCurve
    legs: "Legs"
    chords: "Chords"


@dataclass(frozen=True, slots=True)
class Legs:
    """The rims of the round: a row that says which stretch, its points (m, 2), and its step."""

    rows: Floats
    points: tuple[Floats, ...]
    steps: tuple[Run | None, ...]


@dataclass(frozen=True, slots=True)
class Chords:
    """The links and jumps of the round, each with a row that says which, and its step."""

    rows: Floats
    steps: tuple[Lift | None, ...]


def follow(
    fabric: Fabric, trace: Trace, last: Walk | None = None, moved: Bools | None = None
) -> Walk:
    """Return the walk along `trace`.

    `last` is the walk in a fabric of which only the `moved` (o,) owners stand elsewhere now.
    """
    if not len(trace.round.numbers):
        return _round_one(fabric, trace)
    ends = _ends(trace)
    stretches = _stretches(fabric, trace, ends)
    order = _order(fabric, ends, stretches)
    known = (last.legs, moved) if last is not None and moved is not None else None
    legs = _legs(fabric, stretches, order, known)
    chords = _chords(fabric, ends, order, last.chords if last else None)
    curve = ClosedCurve(np.concatenate(legs.points))
    steps = tuple(_in_order(legs, chords, order))
    return Walk(steps, tuple(trace.round.numbers.tolist()), curve, legs, chords)


def _round_one(fabric: Fabric, trace: Trace) -> Walk:
    """Return the walk once round a single ring."""
    rim, rims = trace.round.rim, fabric.rims
    points, owner = rims.points_of(rim), int(rims.owner[rim])
    step = Run(fabric.names[owner], as_points(points)) if owner < len(fabric.pieces) else None
    legs = Legs(np.zeros((0, 0)), (points,), (step,))
    steps = () if step is None else (step,)
    return Walk(steps, (), ClosedCurve(points), legs, Chords(np.zeros((0, 0)), ()))


@dataclass(frozen=True, slots=True)
class _Ends:
    """Where each chord leaves one rim and comes to the next: segments (k,) and points (k, 2)."""

    off: Ints
    off_at: Floats
    on: Ints
    on_at: Floats
    lift: Floats


def _ends(trace: Trace) -> _Ends:
    links, number, swapped = trace.round.links, trace.round.numbers, trace.round.swapped
    a, b, at_a, at_b = links.a[number], links.b[number], links.at_a[number], links.at_b[number]
    turned = swapped[:, None]
    return _Ends(
        off=np.where(swapped, b, a),
        off_at=np.where(turned, at_b, at_a),
        on=np.where(swapped, a, b),
        on_at=np.where(turned, at_a, at_b),
        lift=links.lift[number],
    )


@dataclass(frozen=True, slots=True)
class _Stretches:
    """What of each rim the pen follows, and its two ends (k, 2); `longer` goes over the seam."""

    rim: Ints
    start: Floats
    end: Floats
    longer: Bools
    first: Floats
    last: Floats


def _stretches(fabric: Fabric, trace: Trace, ends: _Ends) -> _Stretches:
    """Leg 0 ends where chord 0 leaves, leg 1 begins where chord 0 arrives."""
    rims = fabric.rims
    rim = rims.rim[ends.off]
    came, came_at = np.roll(ends.on, 1), np.roll(ends.on_at, 1, axis=0)
    start, end = rims.position(came, came_at), rims.position(ends.off, ends.off_at)
    longer = rims.ring[rim]
    if longer.any():
        flips = flips_along(rims, Way(np.asarray(trace.outside), np.asarray(trace.inside)))
        longer = longer & ~flips.whole[rim] & (2 * np.abs(end - start) > rims.length[rim])
    return _Stretches(rim, start, end, longer, came_at, ends.off_at)


@dataclass(frozen=True, slots=True)
class _Order:
    """Which leg and chord the walk begins with, whether it skips that leg (the frame), and turns back."""

    begin: int
    framed: bool
    back: bool


def _order(fabric: Fabric, ends: _Ends, stretches: _Stretches) -> _Order:
    """Turn the round so that it starts behind the frame, at the lower cut end."""
    owner = fabric.rims.owner[stretches.rim]
    frame = np.flatnonzero(owner == fabric.frame)
    if not len(frame):
        return _Order(_lowest_lift(ends), framed=False, back=False)
    begin, count = int(frame[0]), len(owner)
    if count == 1:
        return _Order(begin, framed=True, back=False)
    outer = np.array([(begin + 1) % count, (begin - 1) % count])
    first, last = _lines(fabric, stretches, outer)
    (x, y), (other_x, other_y) = first[0], last[-1]
    return _Order(begin, framed=True, back=(y, x) > (other_y, other_x))


def _lowest_lift(ends: _Ends) -> int:
    lifted = np.flatnonzero(ends.lift > 0)
    if not len(lifted):
        return 0
    x, y = ends.off_at[lifted].T
    return int(lifted[np.lexsort((lifted, x, y))[0]])


def _legs(
    fabric: Fabric,
    stretches: _Stretches,
    order: _Order,
    known: tuple[Legs, Bools] | None,
) -> Legs:
    owner = fabric.rims.owner[stretches.rim]
    rows = np.column_stack(
        [
            stretches.rim, stretches.start, stretches.end, stretches.longer,
            stretches.first, stretches.last, np.full(len(owner), order.back),
        ]
    ).astype(np.float64)  # fmt: skip
    source = np.full(len(owner), NEW)
    if known is not None:
        source = same_rows(known[0].rows, rows)
        source[known[1][owner]] = NEW
    fresh = np.flatnonzero(source == NEW)
    points: list[Any] = _taken_up(known[0].points if known else (), source)
    steps: list[Any] = _taken_up(known[0].steps if known else (), source)
    for leg, line in zip(fresh.tolist(), _lines(fabric, stretches, fresh), strict=True):
        points[leg] = np.array(line)
        steps[leg] = _run(fabric, int(owner[leg]), line[:: -1 if order.back else 1])
    return Legs(rows, tuple(points), tuple(steps))


def _taken_up(old: Sequence[Any], source: Ints) -> list[Any]:
    """Return what stood at each place of `source`, None where that is new."""
    if np.array_equal(source, np.arange(len(old))):
        return list(old)
    return [None if number == NEW else old[number] for number in source.tolist()]


def _run(fabric: Fabric, owner: int, points: Points) -> Run | None:
    return Run(fabric.names[owner], points) if owner < len(fabric.pieces) else None


def _chords(fabric: Fabric, ends: _Ends, order: _Order, known: Chords | None) -> Chords:
    rims = fabric.rims
    owners = np.column_stack([rims.owner[rims.rim[ends.off]], rims.owner[rims.rim[ends.on]]])
    back = np.full(len(owners), order.back)
    rows = np.column_stack([owners, ends.lift, ends.off_at, ends.on_at, back]).astype(np.float64)
    steps: list[Lift | None] = [None] * len(rows)
    source = same_rows(known.rows, rows) if known else np.full(len(rows), NEW)
    for chord in np.flatnonzero(ends.lift > 0).tolist():
        if source[chord] != NEW and known is not None:
            steps[chord] = known.steps[int(source[chord])]
        else:
            names = [fabric.names[owner] for owner in owners[chord].tolist()]
            places = as_points(np.array([ends.off_at[chord], ends.on_at[chord]]))
            (a, b), (start, end) = (names[::-1], places[::-1]) if order.back else (names, places)
            steps[chord] = Lift(a, b, start, end)
    return Chords(rows, tuple(steps))


def _in_order(legs: Legs, chords: Chords, order: _Order) -> Iterator[Run | Lift]:
    """Yield chord and leg in turn, the chord behind the first leg first."""
    count, begin = len(legs.steps), order.begin
    turned_legs = (*legs.steps[begin + 1 :], *legs.steps[: begin + 1])
    turned_chords = (*chords.steps[begin:], *chords.steps[:begin])
    items: list[Run | Lift | None] = [None] * (2 * count)
    items[0::2], items[1::2] = turned_chords, turned_legs
    if order.framed:
        items.pop()  # the frame itself
    yield from filter(None, reversed(items) if order.back else items)


def _lines(fabric: Fabric, stretches: _Stretches, which: Ints) -> list[Points]:
    """Return the points that the pen follows on each of some rims."""
    rims = fabric.rims
    rim, start, end = stretches.rim[which], stretches.start[which], stretches.end[which]
    lines = rims.stretches(rim, start, end)
    for place in np.flatnonzero(stretches.longer[which]).tolist():
        points = rims.points_of(int(rim[place]))
        lines[place] = as_points(around(points, float(start[place]), float(end[place])))
    for place in np.flatnonzero(_has_width(fabric, rims.owner[rim])).tolist():
        leg = int(which[place])
        ends = np.array([stretches.first[leg], stretches.last[leg]])
        lines[place] = _along_axis(fabric, int(rims.owner[rim[place]]), ends)
    return lines


def _has_width(fabric: Fabric, owners: Ints) -> Bools:
    wide = np.zeros(len(fabric.names), dtype=bool)
    wide[fabric.axes.owner[fabric.half > 0]] = True
    return np.asarray(wide[owners])


def _along_axis(fabric: Fabric, owner: int, ends: Floats) -> Points:
    """Follow the middle of a sheet that was drawn with a width, between two places on its faces."""
    axis = fabric.axes.points_of(int(np.searchsorted(fabric.axes.owner, owner)))
    start, end = nearest_positions(axis, ends).tolist()
    return as_points(np.vstack([ends[:1], stretch(axis, start, end), ends[1:]]))


def along_walk(steps: tuple[Run | Lift, ...], points: Floats) -> Floats:
    """Return how far along the walk (k,) the nearest places to points (k, 2) lie, mm."""
    parts = [step.points if isinstance(step, Run) else (step.start, step.end) for step in steps]
    return nearest_positions(np.array([point for part in parts for point in part]), points)
