"""Segments in arrays: those near a place are found in one go, be they a hundred thousand."""

from collections.abc import Iterable
from dataclasses import dataclass
from itertools import pairwise
from math import hypot

import numpy as np
from numpy.typing import NDArray

from enclosure_app.model.place import Point, Points
from enclosure_app.model.section import Stroke

Rows = NDArray[np.float64]
Numbers = NDArray[np.int64]
_TOUCH = 0.01  # mm


@dataclass(frozen=True, slots=True)
class Segments:
    """Segments `rows` (n, 4): ax, ay, bx, by in mm; `owner` (n) says of which run each is a part.

    `low` and `high` (n, 2) are the corners of the box around each.
    """

    rows: Rows
    owner: Numbers
    low: Rows
    high: Rows

    def near(self, at: Point, reach: float) -> Numbers:
        """Return the numbers of the segments whose boxes come within `reach` mm of a place."""
        x, y = at
        return self.around((x - reach, y - reach), (x + reach, y + reach))

    def around(self, low: Point, high: Point) -> Numbers:
        """Return the numbers of the segments whose boxes meet that between two corners."""
        inside = (
            (self.low[:, 0] <= high[0])
            & (self.high[:, 0] >= low[0])
            & (self.low[:, 1] <= high[1])
            & (self.high[:, 1] >= low[1])
        )
        numbers: Numbers = np.flatnonzero(inside)
        return numbers

    def along(self, start: Point, through: Point) -> Numbers:
        """Return the numbers of the segments that meet the line through two places."""
        dx, dy = through[0] - start[0], through[1] - start[1]
        slack = _TOUCH * hypot(dx, dy)
        first = dx * (self.rows[:, 1] - start[1]) - dy * (self.rows[:, 0] - start[0])
        last = dx * (self.rows[:, 3] - start[1]) - dy * (self.rows[:, 2] - start[0])
        numbers: Numbers = np.flatnonzero(
            (np.minimum(first, last) <= slack) & (np.maximum(first, last) >= -slack)
        )
        return numbers

    def ends(self, number: int) -> tuple[Point, Point]:
        """Return the two ends of a segment."""
        ax, ay, bx, by = self.rows[number].tolist()
        return (ax, ay), (bx, by)


def segments_of(runs: Iterable[Points]) -> Segments:
    """Return the segments of runs, which are numbered in order."""
    runs = tuple(runs)
    # one by one, since making an array of a long list would stop the window for its whole time
    flat = (x for run in runs for a, b in pairwise(run) for x in (*a, *b))
    rows = np.fromiter(flat, dtype=np.float64).reshape(-1, 4)
    counts = np.array([max(len(run) - 1, 0) for run in runs], dtype=np.int64)
    return Segments(
        rows,
        np.repeat(np.arange(len(runs), dtype=np.int64), counts),
        np.minimum(rows[:, :2], rows[:, 2:]),
        np.maximum(rows[:, :2], rows[:, 2:]),
    )


def stroke_segments(strokes: tuple[Stroke, ...]) -> Segments:
    """Return the segments of the office's lines, which take long where there are very many."""
    return segments_of(stroke.points for stroke in strokes)
