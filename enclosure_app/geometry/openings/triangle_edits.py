"""Triangles to take out and to put in one by one, for the few places where that is needed."""

import numpy as np
import numpy.typing as npt

Ints = npt.NDArray[np.int64]

GONE = -1


class Triangles:
    """Triangles (t, 3) over `number` points, anticlockwise.

    Finding a triangle in the array costs a search; what has changed since stands in dictionaries.
    """

    def __init__(self, triangles: Ints, number: int) -> None:
        starts, ends = triangles.ravel(), np.roll(triangles, -1, axis=1).ravel()
        keys = starts * number + ends
        self._order = np.argsort(keys)
        self._keys = keys[self._order]
        self._triangles, self._number = triangles, number
        self._spokes = np.zeros(number, dtype=np.int64)
        self._spokes[starts] = ends
        self._apexes: dict[tuple[int, int], int] = {}
        self._new_spokes: dict[int, int] = {}
        self._gone: set[int] = set()
        self._added: dict[tuple[int, int, int], None] = {}

    def apex(self, start: int, end: int) -> int:
        """Return the third corner of the triangle left of an edge, GONE if there is none."""
        found = self._apexes.get((start, end))
        if found is None:
            half = self._half_edge(start, end)
            found = GONE if half < 0 else int(self._triangles[half // 3, (half + 2) % 3])
            self._apexes[start, end] = found
        return found

    def spoke(self, start: int) -> int:
        """Return a point that an edge leads to from `start`."""
        found = self._new_spokes.get(start)
        return int(self._spokes[start]) if found is None else found

    def remove(self, a: int, b: int, c: int) -> None:
        """Take a triangle out."""
        row = _smallest_first(a, b, c)
        if row in self._added:
            del self._added[row]
        else:
            self._gone.add(self._half_edge(a, b) // 3)
        for edge in ((a, b), (b, c), (c, a)):
            self._apexes[edge] = GONE

    def add(self, a: int, b: int, c: int) -> None:
        """Put a triangle in."""
        self._added[_smallest_first(a, b, c)] = None
        self._apexes[a, b], self._apexes[b, c], self._apexes[c, a] = c, a, b
        self._new_spokes[a], self._new_spokes[b], self._new_spokes[c] = b, c, a

    def rows(self) -> Ints:
        """Return all triangles."""
        kept = np.delete(self._triangles, sorted(self._gone), axis=0)
        return np.concatenate([kept, np.array(list(self._added), dtype=np.int64).reshape(-1, 3)])

    def _half_edge(self, start: int, end: int) -> int:
        key = start * self._number + end
        at = int(np.searchsorted(self._keys, key))
        return int(self._order[at]) if at < len(self._keys) and self._keys[at] == key else GONE


def _smallest_first(a: int, b: int, c: int) -> tuple[int, int, int]:
    if a < b and a < c:
        return a, b, c
    return (b, c, a) if b < c else (c, a, b)
