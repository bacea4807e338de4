"""Which of many straight segments lie near a place, also after a few of them have moved."""

from collections.abc import Callable
from dataclasses import dataclass
from typing import Literal

import numpy as np
import shapely
from numpy.typing import NDArray

from enclosure_app.geometry.rims.rims import Bools, Floats, Ints
from enclosure_app.progress import go_on

Geometries = NDArray[np.object_]
STALE = 2000  # segments: when more have moved, the tree is made anew


@dataclass(frozen=True, slots=True, eq=False)
class SegmentIndex:
    """A `tree` over segments, of which the `stale` ones (n,) have moved since: these are in `few`."""

    tree: shapely.STRtree
    stale: Bools
    few: tuple[Ints, shapely.STRtree] | None = None

    @classmethod
    def of(cls, start: Floats, end: Floats) -> "SegmentIndex":
        """Return the index of the segments from `start` (n, 2) to `end` (n, 2)."""
        return cls(shapely.STRtree(segments(start, end)), np.zeros(len(start), dtype=bool))

    def again(self, rows: Ints, start: Floats, end: Floats) -> "SegmentIndex":
        """Return the index of the same segments, those in `rows` being elsewhere now."""
        stale = self.stale.copy()
        stale[rows] = True
        moved = np.flatnonzero(stale)
        if len(moved) > STALE:
            return SegmentIndex.of(start, end)
        few = shapely.STRtree(segments(start[moved], end[moved]))
        return SegmentIndex(self.tree, stale, (moved, few))

    def query(
        self, places: Geometries, predicate: Literal["intersects"] | None = None
    ) -> tuple[Ints, Ints]:
        """Return (place, segment) for what the extents of `places` meet, or what these intersect."""
        return self._found(lambda tree: tree.query(places, predicate=predicate))

    def within(self, places: Geometries, reach: float | Floats) -> tuple[Ints, Ints]:
        """Return (place, segment) for what is no further than `reach` from `places`."""
        return self._found(lambda tree: tree.query(places, predicate="dwithin", distance=reach))

    def _found(self, ask: Callable[[shapely.STRtree], NDArray[np.int64]]) -> tuple[Ints, Ints]:
        """Return what both trees answer, in order of the places and then of the segments."""
        go_on()  # whoever asks much asks here again and again
        place, found = ask(self.tree)
        if self.few is not None:
            kept = ~self.stale[found]
            moved, tree = self.few
            more = ask(tree)
            place = np.concatenate([place[kept], more[0]])
            found = np.concatenate([found[kept], moved[more[1]]])
        order = np.argsort(place * len(self.stale) + found, kind="stable")
        return place[order], found[order]


def segments(start: Floats, end: Floats) -> Geometries:
    """Return straight segments from `start` (n, 2) to `end` (n, 2) as shapely lines."""
    return np.asarray(shapely.linestrings(np.stack([start, end], axis=1)), dtype=object)
