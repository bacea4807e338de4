"""Puts wanted edges into a triangulation by filling again what they cut through.

After M. V. Anglada, "An improved incremental algorithm for constructing restricted Delaunay
triangulations", Computers & Graphics 21 (1997): the triangles a wanted edge crosses are taken
out, and the hole on each side is filled so that every triangle is Delaunay as far as the edge lets it.
"""

import numpy as np
import numpy.typing as npt

from enclosure_app.geometry.openings.triangle_edits import GONE, Triangles
from enclosure_app.progress import gone_through

Ints = npt.NDArray[np.int64]
Edge = tuple[int, int]

ON_LINE = 1e-6  # mm; a corner this near to a wanted edge lies on it


class CrossingError(ArithmeticError):
    """Two wanted edges cross where there is no point, or two points fall on one place."""


class Cavities:
    """A triangulation of `points` (n, 2) that wanted edges can be put into.

    `kept` (k, 2) are wanted edges that it has already, the smaller index first.
    """

    def __init__(self, points: npt.NDArray[np.float64], triangles: Ints, kept: Ints) -> None:
        self._points = points
        self._triangles = Triangles(triangles, len(points))
        self._kept = np.sort(kept[:, 0] * len(points) + kept[:, 1])
        self._new: set[Edge] = set()
        self._places: dict[int, complex] = {}

    def triangles(self) -> Ints:
        """Return the triangles as rows of three indices, anticlockwise."""
        return self._triangles.rows()

    def insert(self, edges: Ints) -> Ints:
        """Put `edges` (k, 2) in and return what they became: one through a corner ends there.

        Raises:
            CrossingError: an edge crosses one that is kept.
        """
        became: list[Edge] = []
        for at, end in gone_through(edges.tolist(), 0.0, 0.0):
            start, passed = at, {at}
            while start != end:
                reached = self._insert(start, end)
                became.append((min(start, reached), max(start, reached)))
                self._new.add(became[-1])
                start = reached
                if start in passed:
                    raise CrossingError
                passed.add(start)
        return np.array(became, dtype=np.int64).reshape(-1, 2)

    def _insert(self, start: int, end: int) -> int:
        """Put in the edge from `start` towards `end` as far as the first corner on it."""
        if self._triangles.apex(start, end) != GONE:
            return end
        right, left = self._first_crossed(start, end)
        if right == left:
            return right
        lefts, rights, crossed = [left], [right], [(start, right, left)]
        while True:
            self._check_free(left, right)
            corner = self._triangles.apex(left, right)
            crossed.append((left, right, corner))
            offset = self._offset(start, end, corner)
            if corner == end or abs(offset) < ON_LINE:
                break
            if offset > 0:
                left = corner
                lefts.append(left)
            else:
                right = corner
                rights.append(right)
        for triangle in crossed:
            self._triangles.remove(*triangle)
        self._fill(start, corner, lefts)
        self._fill(corner, start, rights[::-1])
        return corner

    def _check_free(self, left: int, right: int) -> None:
        low, high = min(left, right), max(left, right)
        key = low * len(self._points) + high
        at = int(np.searchsorted(self._kept, key))
        if (low, high) in self._new or (at < len(self._kept) and self._kept[at] == key):
            raise CrossingError
        if self._triangles.apex(left, right) == GONE:
            raise CrossingError

    def _first_crossed(self, start: int, end: int) -> Edge:
        """Return the edge across from `start` that the wanted edge leaves by: right, left corner.

        Both are the same corner if the wanted edge runs through it.
        """
        right = self._triangles.spoke(start)
        seen: set[int] = set()
        while right not in seen:  # rounding may have left triangles that go round without an end
            seen.add(right)
            left = self._triangles.apex(start, right)
            if self._on_line(start, end, right):
                return right, right
            if self._on_line(start, end, left):
                return left, left
            if self._offset(start, end, right) < 0 < self._offset(start, end, left):
                return right, left
            right = left
            if right == GONE:
                break
        raise CrossingError

    def _on_line(self, start: int, end: int, corner: int) -> bool:
        """Tell whether the corner lies on the way from `start` to `end`, not behind its start."""
        here = self._place(start)
        along, to = self._place(end) - here, self._place(corner) - here
        ahead = (along.conjugate() * to).real > 0
        return ahead and abs(self._offset(start, end, corner)) < ON_LINE

    def _offset(self, start: int, end: int, corner: int) -> float:
        """Return how far `corner` lies to the left of the line from `start` to `end`."""
        here = self._place(start)
        along = self._place(end) - here
        if along == 0:
            raise CrossingError
        return (along.conjugate() * (self._place(corner) - here)).imag / abs(along)

    def _place(self, point: int) -> complex:
        found = self._places.get(point)
        if found is None:
            self._places[point] = found = complex(*self._points[point])
        return found

    def _fill(self, start: int, end: int, chain: list[int]) -> None:
        """Fill the hole to the left of an edge, round which `chain` leads from start to end."""
        holes = [(start, end, chain)]
        while holes:
            start, end, chain = holes.pop()
            best = 0
            for k in range(1, len(chain)):
                if self._in_circle(start, end, chain[best], chain[k]):
                    best = k
            corner = chain[best]
            self._triangles.add(start, end, corner)
            if best:
                holes.append((start, corner, chain[:best]))
            if best + 1 < len(chain):
                holes.append((corner, end, chain[best + 1 :]))

    def _in_circle(self, a: int, b: int, c: int, d: int) -> bool:
        """Tell whether `d` sees the edge ab, from its left, under a wider angle than `c` does."""
        p, q, at_c, at_d = (self._place(corner) for corner in (a, b, c, d))
        from_c = (q - at_c) * (p - at_c).conjugate()
        from_d = (q - at_d) * (p - at_d).conjugate()
        return (from_d * from_c.conjugate()).imag > 0
