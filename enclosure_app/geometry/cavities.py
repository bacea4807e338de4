"""Puts wanted edges into a triangulation by filling again what they cut through.

After M. V. Anglada, "An improved incremental algorithm for constructing restricted Delaunay
triangulations", Computers & Graphics 21 (1997): the triangles a wanted edge crosses are taken
out, and the hole on each side is filled so that every triangle is Delaunay as far as the edge lets it.
"""

from collections.abc import Iterable

import numpy as np
import numpy.typing as npt

Ints = npt.NDArray[np.int64]
Edge = tuple[int, int]

ON_LINE = 1e-6  # mm; a corner this near to a wanted edge lies on it


class CrossingError(ArithmeticError):
    """Two wanted edges cross where there is no point."""


class Cavities:
    """A triangulation that edges can be put into.

    `apex` maps each directed edge to the third corner of the triangle on its left; `kept` holds
    the wanted edges, smaller index first.
    """

    def __init__(self, points: npt.NDArray[np.float64], triangles: Ints) -> None:
        self._points: list[complex] = (points[:, 0] + 1j * points[:, 1]).tolist()
        a, b, c = (triangles[:, k].tolist() for k in range(3))
        self.apex: dict[Edge, int] = dict(zip(zip(a, b, strict=True), c, strict=True))
        self.apex.update(zip(zip(b, c, strict=True), a, strict=True))
        self.apex.update(zip(zip(c, a, strict=True), b, strict=True))
        self._spoke: dict[int, int] = dict(self.apex.keys())
        self.kept: set[Edge] = set()

    def triangles(self) -> Ints:
        """Return the triangles as rows of three indices, anticlockwise."""
        rows = [(a, b, c) for (a, b), c in self.apex.items() if a < b and a < c]
        return np.array(rows, dtype=np.int64)

    def insert(self, edges: Iterable[Edge]) -> list[Edge]:
        """Put `edges` in and return what they became: an edge through a corner ends there.

        Raises:
            CrossingError: an edge crosses one that is kept.
        """
        became: list[Edge] = []
        for start, end in edges:
            at = start
            while at != end:
                reached = self._insert(at, end)
                edge = (min(at, reached), max(at, reached))
                self.kept.add(edge)
                became.append(edge)
                at = reached
        return became

    def _insert(self, start: int, end: int) -> int:
        """Put in the edge from `start` towards `end` as far as the first corner on it."""
        if (start, end) in self.apex:
            return end
        right, left = self._first_crossed(start, end)
        if right == left:
            return right
        lefts, rights, crossed = [left], [right], [(start, right, left)]
        while True:
            if (min(left, right), max(left, right)) in self.kept:
                raise CrossingError
            corner = self.apex[left, right]
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
            self._remove(*triangle)
        self._fill(start, corner, lefts)
        self._fill(corner, start, rights[::-1])
        return corner

    def _first_crossed(self, start: int, end: int) -> Edge:
        """Return the edge across from `start` that the wanted edge leaves by: right, left corner.

        Both are the same corner if the wanted edge runs through it.
        """
        first = right = self._spoke[start]
        while True:
            left = self.apex[start, right]
            offset = self._offset(start, end, right)
            if abs(offset) < ON_LINE and self._ahead(start, end, right):
                return right, right
            if offset < 0 < self._offset(start, end, left):
                left_on_line = abs(self._offset(start, end, left)) < ON_LINE
                if not (left_on_line and self._ahead(start, end, left)):
                    return right, left
            right = left
            if right == first:
                raise CrossingError

    def _ahead(self, start: int, end: int, corner: int) -> bool:
        here, there, at = self._points[start], self._points[end], self._points[corner]
        return ((there - here).conjugate() * (at - here)).real > 0

    def _offset(self, start: int, end: int, corner: int) -> float:
        """Return how far `corner` lies to the left of the line from `start` to `end`."""
        along = self._points[end] - self._points[start]
        return (along.conjugate() * (self._points[corner] - self._points[start])).imag / abs(along)

    def _remove(self, a: int, b: int, c: int) -> None:
        for edge in ((a, b), (b, c), (c, a)):
            del self.apex[edge]

    def _add(self, a: int, b: int, c: int) -> None:
        self.apex[a, b], self.apex[b, c], self.apex[c, a] = c, a, b
        self._spoke[a], self._spoke[b], self._spoke[c] = b, c, a

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
            self._add(start, end, corner)
            if best:
                holes.append((start, corner, chain[:best]))
            if best + 1 < len(chain):
                holes.append((corner, end, chain[best + 1 :]))

    def _in_circle(self, a: int, b: int, c: int, d: int) -> bool:
        """Tell whether `d` sees the edge ab, from its left, under a wider angle than `c` does."""
        p, q = self._points[a], self._points[b]
        at_c = (q - self._points[c]) * (p - self._points[c]).conjugate()
        at_d = (q - self._points[d]) * (p - self._points[d]).conjugate()
        return (at_d * at_c.conjugate()).imag > 0
