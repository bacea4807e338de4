"""Drafting symbols: lines that only say what an area is, like the cross in a timber."""

from collections import defaultdict
from collections.abc import Sequence
from math import dist, floor

from enclosure_app.geometry.outlines.clipping import standing
from enclosure_app.model.place import Point, Points

SAME = 1.0  # mm

_Box = tuple[float, float, float, float]


def symbols_among(runs: Sequence[Points], rings: Sequence[Points]) -> frozenset[int]:
    """Return which of `runs`, all of one product drawn as areas, are drafting symbols.

    They lie within one of `rings`, or are the two diagonals of a rectangle.
    """
    boxed = [(_box(ring), ring) for ring in rings]
    inside = (i for i, run in enumerate(runs) if _lies_in(run, boxed))
    return frozenset(inside) | _crosses(runs)


def _lies_in(points: Points, rings: Sequence[tuple[_Box, Points]]) -> bool:
    x0, y0, x1, y1 = _box(points)
    return any(
        left - SAME <= x0
        and low - SAME <= y0
        and x1 <= right + SAME
        and y1 <= high + SAME
        and bool(standing([points], ring)[0][0])
        for (left, low, right, high), ring in rings
    )


def _crosses(runs: Sequence[Points]) -> frozenset[int]:
    """Return the straight runs that halve each other and are of one length."""
    cells: dict[tuple[int, int], list[int]] = defaultdict(list)
    found: set[int] = set()
    for i, run in enumerate(runs):
        if len(run) != 2:
            continue
        x, y = _middle(run)
        column, row = floor(x / SAME), floor(y / SAME)
        around = [(column + dx, row + dy) for dx in (-1, 0, 1) for dy in (-1, 0, 1)]
        for k in (k for cell in around for k in cells.get(cell, ())):
            if _is_cross(run, runs[k]):
                found |= {i, k}
        cells[column, row].append(i)
    return frozenset(found)


def _is_cross(a: Points, b: Points) -> bool:
    long, short = dist(*a), dist(*b)
    apart = min(dist(a[0], b[0]), dist(a[0], b[1]))
    return (
        dist(_middle(a), _middle(b)) <= SAME
        and abs(long - short) <= 0.02 * long
        and apart > 0.05 * long
    )


def _middle(run: Points) -> Point:
    return (run[0][0] + run[-1][0]) / 2, (run[0][1] + run[-1][1]) / 2


def _box(points: Points) -> _Box:
    xs, ys = zip(*points, strict=True)
    return min(xs), min(ys), max(xs), max(ys)
