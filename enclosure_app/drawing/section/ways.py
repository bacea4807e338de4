"""Long polylines of which only a stretch is asked for: a trace, a rain route.

A wall of two thousand sheets has traces of eight thousand points, of which a handful is in view.
What is near a place or a window is found here by arrays and boxes, not point by point.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import cached_property
from itertools import chain, pairwise

import numpy as np
from numpy.typing import NDArray

from enclosure_app.drawing.placement import Box, Placement
from enclosure_app.drawing.polylines import Foot, distinct, foot, moved, unit
from enclosure_app.model.place import Point, Points

_SAME = 1e-9  # mm: as in polylines
_BLOCK = 16  # stretches of a way that share a box


@dataclass(frozen=True, eq=False)
class Way:
    """A polyline of n distinct points: an array of n rows and two columns, mm."""

    array: NDArray[np.float64]

    def __len__(self) -> int:
        """Return how many points it has."""
        return len(self.array)

    @property
    def points(self) -> Points:
        """All its points."""
        return self.part(0, len(self))

    def part(self, first: int, end: int) -> Points:
        """Return the points from number `first` to the one before number `end`."""
        return tuple((x, y) for x, y in self.array[first:end].tolist())

    @cached_property
    def stations(self) -> NDArray[np.float64]:
        """How far along the way each point lies: n lengths, mm."""
        steps = np.diff(self.array, axis=0)
        return np.concatenate(([0.0], np.cumsum(np.hypot(steps[:, 0], steps[:, 1]))))

    def placed(self, placement: Placement) -> "Way":
        """Return the way on the sheet."""
        return Way(placement.at + (self.array - placement.origin) / placement.scale)

    def at(self, along: float) -> tuple[Point, Point]:
        """Return the place at `along` and the direction there; beyond an end it goes on straight."""
        i = int(np.searchsorted(self.stations, along, side="right")) - 1
        i = min(max(i, 0), len(self) - 2)
        start, end = self.part(i, i + 2)
        direction = unit(start, end)
        return moved(start, direction, along - float(self.stations[i])), direction

    def foot(self, place: Point) -> Foot:
        """Return the place on the way (two points or more) that is nearest, as `polylines.foot`.

        Raises:
            ValueError: it has fewer than two points.
        """
        best: Foot | None = None
        for block in self._blocks_near(place):
            first = int(block) * _BLOCK
            found = foot(self.part(first, first + _BLOCK + 1), place)
            if best is None or found.off < best.off - _SAME:
                along = float(self.stations[first]) + found.along
                best = Foot(found.at, along, found.off, found.direction, found.left)
        if best is None:
            raise ValueError("A polyline needs two points.")
        return best

    def near(self, box: Box) -> list[int]:
        """Return the numbers of the points from which the way goes on into or past a box.

        A stretch is past the box where its own upright box meets it.
        """
        x, y = self.array.T
        return np.flatnonzero(
            (np.minimum(x[:-1], x[1:]) <= box.right)
            & (np.maximum(x[:-1], x[1:]) >= box.left)
            & (np.minimum(y[:-1], y[1:]) <= box.top)
            & (np.maximum(y[:-1], y[1:]) >= box.bottom)
        ).tolist()

    @cached_property
    def _boxes(self) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
        """The least and the greatest corners of blocks of stretches: two arrays of rows (x, y)."""
        starts = np.arange(0, len(self) - 1, _BLOCK)
        closing = self.array[np.minimum(starts + _BLOCK, len(self) - 1)]
        least = np.minimum(np.minimum.reduceat(self.array, starts), closing)
        return least, np.maximum(np.maximum.reduceat(self.array, starts), closing)

    def _blocks_near(self, place: Point) -> Iterable[int]:
        """Return the blocks in which the nearest place may be, in order."""
        if len(self) < 2:
            return ()
        low, high = self._boxes
        beyond = np.maximum(np.maximum(low - place, place - high), 0.0)
        least = np.hypot(beyond[:, 0], beyond[:, 1])
        nearest = int(least.argmin()) * _BLOCK
        away = self.array[nearest : nearest + _BLOCK + 1] - place
        bound = float(np.hypot(away[:, 0], away[:, 1]).min())
        return np.flatnonzero(least <= bound + _SAME).tolist()


def way_through(runs: Iterable[Points]) -> Way:
    """Return the way along runs one after the other, without repeats in a row."""
    flat = np.fromiter(chain.from_iterable(chain.from_iterable(runs)), dtype=np.float64)
    array = flat.reshape(-1, 2)
    if len(array) < 2:
        return Way(array)
    steps = np.diff(array, axis=0)
    sizes = np.hypot(steps[:, 0], steps[:, 1])
    if ((sizes > 0.0) & (sizes <= 2 * _SAME)).any():  # many small steps may add up to a large one
        return Way(np.array(distinct(tuple((x, y) for x, y in array.tolist()))))
    return Way(array[np.concatenate(([True], sizes > 0.0))])


def seen_parts(way: Way, box: Box, period: float) -> list[Points]:
    """Return the parts of a way that come into a box, each cut off beyond it.

    A part starts at a whole number of `period` mm along the way, so that the dashes of a line
    lie as on the whole.
    """
    parts = []
    for first, last in _stretches(way.near(box)):
        start = _before(way, first, period)
        i = int(np.searchsorted(way.stations, start, side="right"))
        parts.append((way.at(start)[0], *way.part(i, last + 2)))
    return parts


def _before(way: Way, number: int, period: float) -> float:
    """Return how far along a part is to start that shows the way from a point on."""
    along = float(way.stations[number])
    return along - along % period if period > 0 else along


def _stretches(numbers: Sequence[int]) -> list[tuple[int, int]]:
    """Return the first and the last of each series of numbers that follow each other."""
    if not numbers:
        return []
    breaks = [b for b in pairwise(numbers) if b[1] != b[0] + 1]
    firsts = [numbers[0], *(b for _, b in breaks)]
    return list(zip(firsts, [*(a for a, _ in breaks), numbers[-1]], strict=True))
