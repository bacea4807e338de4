"""Rims joined at no lift, each with its parity against the cluster's first rim.

A union-find that also keeps, for each rim, whether its first point lies on the other side of the
straight way between the marks than the first point of its cluster. As soon as a link closes a round
with odd parity, the rims joined so far separate the marks.
"""

from collections.abc import Iterable

import numpy as np
from numpy.typing import NDArray

from enclosure_app.geometry.rims.rims import Ints


class Clusters:
    """Which rims are joined so far, and whether a round of them separates the marks."""

    def __init__(self, count: int) -> None:
        self._above = list(range(count))
        self._turned = [False] * count
        self.separating = False

    def copy(self) -> "Clusters":
        """Return the same state, to go on from without changing this one."""
        twin = Clusters(0)
        twin._above, twin._turned = self._above.copy(), self._turned.copy()
        twin.separating = self.separating
        return twin

    def root(self, rim: int) -> tuple[int, bool]:
        """Return the cluster of a rim and the rim's parity in it."""
        above, turned = self._above, self._turned
        path = []
        while above[rim] != rim:
            path.append(rim)
            rim = above[rim]
        parity = False
        for step in reversed(path):
            parity ^= turned[step]
            above[step], turned[step] = rim, parity
        return rim, parity

    def join(self, a: int, b: int, *, turn: bool) -> bool:
        """Join two rims; return whether that closes a round which separates the marks."""
        root_a, parity_a = self.root(a)
        root_b, parity_b = self.root(b)
        odd = parity_a ^ parity_b ^ turn
        if root_a == root_b:
            self.separating |= odd
            return odd
        self._above[root_b], self._turned[root_b] = root_a, odd
        return False

    def join_all(self, links: Iterable[tuple[int, int, bool]]) -> None:
        """Join every (rim, rim, turn)."""
        for a, b, turn in links:
            self.join(a, b, turn=turn)

    def table(self) -> tuple[Ints, NDArray[np.bool_]]:
        """Return the cluster (r,) and the parity (r,) of every rim."""
        roots = [self.root(rim) for rim in range(len(self._above))]
        cluster = np.array([root for root, _ in roots], dtype=np.intp)
        return cluster, np.array([parity for _, parity in roots], dtype=bool)
