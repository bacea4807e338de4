"""What of the sky is seen from places between surfaces: angles that no edge hides, told exactly.

Angles are radians off the vertical, positive to the right. Each edge above a place hides the
angles between its two ends; what the edges leave of the angles asked for are slots.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
import shapely

from enclosure_app.geometry.runs.alongside import when_between
from enclosure_app.geometry.surfaces.faces import Bools, Floats, Ints
from enclosure_app.geometry.surfaces.falling import Surfaces

_FIRST_LOOK = 50.0  # mm up; then twice as far each time, for what still sees some sky
_FURTHER = 2.0
_LEAST = 1e-6  # radians: what is narrower is where two edges meet
_APART = 20.0  # more than any two angles differ by


@dataclass(frozen=True, slots=True, eq=False)
class Lookout:
    """Places (n, 2), the angles `low` to `high` (n,) asked for, and the box (2, 2) that all lies in.

    Nothing counts that is more than `far` further up than a place, and slots that are seen no wider
    than `slop` mm are closed.
    """

    points: Floats
    low: Floats
    high: Floats
    box: Floats
    far: float
    slop: float

    @property
    def ceiling(self) -> Floats:
        """The height (n,) above which nothing counts."""
        ceiling: Floats = np.minimum(self.points[:, 1] + self.far, self.box[1, 1])
        return ceiling


@dataclass(frozen=True, slots=True, eq=False)
class _Spans:
    """Angles from `low` to `high` (k,) seen from places, by their numbers `of`.

    `to_low` and `to_high` are how far it is to what they end at, mm; infinite where that is nothing.
    """

    of: Ints
    low: Floats
    high: Floats
    to_low: Floats
    to_high: Floats

    def take(self, which: Ints | Bools) -> "_Spans":
        return _Spans(*(getattr(self, name)[which] for name in self.__slots__))

    def numbered(self, of: Ints) -> "_Spans":
        return _Spans(of, self.low, self.high, self.to_low, self.to_high)


def sees_sky(surfaces: Sequence[Surfaces], lookout: Lookout) -> Bools:
    """Return from which places some of the angles asked for are free all the way up.

    It is looked further up only from places that still see some sky, and only where they do.
    """
    sees = np.zeros(len(lookout.points), dtype=bool)
    left = np.flatnonzero(lookout.high - lookout.low > _LEAST)
    none = np.full(len(left), np.inf)
    free = _Spans(np.arange(len(left)), lookout.low[left], lookout.high[left], none, none)
    known: list[_Spans] = []
    bottom, top = 0.0, _FIRST_LOOK
    while len(left):
        some = replace(lookout, points=lookout.points[left], low=free.low, high=free.high)
        known += [_hidden(each, some, (bottom, top)) for each in surfaces]
        slots = _between(_joined([*_rims(free), *known]), lookout.slop)
        done = some.points[:, 1] + top >= some.ceiling
        sees[left[slots.of[done[slots.of]]]] = True
        slots = slots.take(~done[slots.of])
        known = [_still_asked(_joined(known), slots)]
        left, free = left[slots.of], slots.numbered(np.arange(len(slots.of)))
        bottom, top = top, top * _FURTHER
    return sees


def _joined(spans: Sequence[_Spans]) -> _Spans:
    names = _Spans.__slots__
    return _Spans(*(np.concatenate([getattr(each, name) for each in spans]) for name in names))


def _rims(free: _Spans) -> tuple[_Spans, _Spans]:
    """Return what is free as two hidden spans without a width, one at each of its ends."""
    return (
        _Spans(free.of, free.low, free.low, free.to_low, free.to_low),
        _Spans(free.of, free.high, free.high, free.to_high, free.to_high),
    )


def _still_asked(known: _Spans, slots: _Spans) -> _Spans:
    """Return what is hidden between the ends of what is free, by the numbers of that."""
    if not len(known.of):
        return known
    number = np.full(max(int(known.of.max()), int(slots.of.max(initial=0))) + 1, -1)
    number[slots.of] = np.arange(len(slots.of))
    known = known.take(number[known.of] >= 0)
    of = number[known.of]
    kept = (known.high > slots.low[of]) & (known.low < slots.high[of])
    return known.take(kept).numbered(of[kept])


def _hidden(surfaces: Surfaces, lookout: Lookout, window: tuple[float, float]) -> _Spans:
    """Return what edges in a window of heights above the places hide of the angles asked for."""
    x, y = lookout.points.T
    foot, head = y + window[0], np.minimum(y + window[1], lookout.ceiling)
    ways = np.tan(lookout.low), np.tan(lookout.high)
    left = x + np.minimum(ways[0] * (foot - y), ways[0] * (head - y))
    right = x + np.maximum(ways[1] * (foot - y), ways[1] * (head - y))
    of, edge = surfaces.index.query(shapely.box(left, foot, right, np.maximum(head, foot)))
    ends, kept = _clipped(surfaces.faces.a[edge], surfaces.faces.b[edge], lookout, of)
    of = of[kept]
    away = ends - lookout.points[of]
    angle, distance = np.arctan2(away[..., 0], away[..., 1]), np.hypot(away[..., 0], away[..., 1])
    first = np.argmin(angle, axis=0)
    every = np.arange(len(of))
    low, high = angle[first, every], angle[1 - first, every]
    spans = _Spans(of, low, high, distance[first, every], distance[1 - first, every])
    return spans.take((high > lookout.low[of]) & (low < lookout.high[of]))


def _clipped(start: Floats, end: Floats, lookout: Lookout, place: Ints) -> tuple[Floats, Bools]:
    """Return the ends (2, k, 2) of edges, cut to where they count for each place; and which do.

    That is above the place, up to its ceiling and in the box, where nearly all of them lie whole.
    """
    floor, ceiling, box = lookout.points[place, 1], lookout.ceiling[place], lookout.box[:, 0]
    (left, low), (right, high) = np.minimum(start, end).T, np.maximum(start, end).T
    kept = (low >= floor) & (high <= ceiling) & (left >= box[0]) & (right <= box[1])
    cut = np.flatnonzero(~kept)
    way = end[cut] - start[cut]
    (low, high), (first, last) = (
        when_between(start[cut, 1], way[:, 1], floor[cut], ceiling[cut]),
        when_between(start[cut, 0], way[:, 0], *box.tolist()),
    )
    low, high = np.maximum(np.maximum(low, first), 0.0), np.minimum(np.minimum(high, last), 1.0)
    kept[cut] = some = high >= low
    low, high = np.where(some, [low, high], 0.0)  # what is beyond may begin at infinity
    ends = np.stack([start, end])
    ends[:, cut] = start[cut] + way * np.stack([low, high])[..., None]
    return ends[:, kept], kept


def _between(spans: _Spans, slop: float) -> _Spans:
    """Return for each place from where to where reach the slots between hidden spans."""
    spans = spans.take(np.lexsort((spans.low, spans.of)))
    of, number = spans.of, np.arange(len(spans.of))
    high = spans.high + of * _APART  # so that no place's angles come between another's
    reached = np.maximum.accumulate(high)
    last = np.maximum.accumulate(np.where(high >= reached, number, 0))[:-1]
    width = spans.low[1:] - spans.high[last]
    seen = width * np.minimum(spans.to_high[last], spans.to_low[1:])
    slots = np.flatnonzero((of[1:] == of[:-1]) & (width > _LEAST) & (seen > slop))
    places, first = np.unique(of[slots], return_index=True)
    final = np.searchsorted(of[slots], places, side="right") - 1
    before, after = last[slots[first]], slots[final] + 1
    return _Spans(
        places, spans.high[before], spans.low[after], spans.to_high[before], spans.to_low[after]
    )
