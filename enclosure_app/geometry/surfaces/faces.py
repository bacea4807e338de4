"""Both sides of every surface as closed runs of edges, each with its free side on the right.

A filled ring is walked with its material on the left. A bare polyline is walked there and back,
so that it has two sides; a closed polyline is walked once each way round.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import cached_property

import numpy as np
import numpy.typing as npt

from enclosure_app.geometry.outlines.chaining import signed_area

Floats = npt.NDArray[np.float64]
Ints = npt.NDArray[np.intp]
Bools = npt.NDArray[np.bool_]
Point = tuple[float, float]
_SAME = 1e-9


@dataclass(frozen=True, eq=False)
class Faces:
    """Edges of all rings one after another, mm.

    `a` and `b` are the edges' ends, shape (n, 2); `owner` the number of the piece each edge
    belongs to; `after` and `before` the neighbours on its ring; `half` half the drawn thickness.
    """

    a: Floats
    b: Floats
    owner: Ints
    after: Ints
    before: Ints
    half: Floats

    def again(self, few: "Faces", rows: Ints) -> "Faces":
        """Return the same edges, those in `rows` being where `few` has them now."""
        a, b = self.a.copy(), self.b.copy()
        a[rows], b[rows] = few.a, few.b
        faces = Faces(a, b, self.owner, self.after, self.before, self.half)
        for name in ("length", "along", "normal"):
            faces.__dict__[name] = getattr(self, name).copy()
            faces.__dict__[name][rows] = getattr(few, name)
        return faces

    def near(self, boxes: Floats, reach: float) -> Ints:
        """Return the edges whose extents come within `reach` of any of `boxes` (k, 2, 2)."""
        if not len(boxes):
            return np.zeros(0, dtype=np.intp)
        low, high = np.minimum(self.a, self.b) - reach, np.maximum(self.a, self.b) + reach
        some = _meeting((low, high), boxes[:, 0].min(axis=0), boxes[:, 1].max(axis=0))
        near = np.zeros(len(some), dtype=bool)
        for box_low, box_high in boxes:
            near[_meeting((low[some], high[some]), box_low, box_high)] = True
        return some[near]

    @cached_property
    def length(self) -> Floats:
        """Length of each edge, shape (n,)."""
        length: Floats = np.hypot(*(self.b - self.a).T)
        return length

    @cached_property
    def along(self) -> Floats:
        """Unit vector of each edge, shape (n, 2)."""
        unit: Floats = (self.b - self.a) / self.length[:, None]
        return unit

    @cached_property
    def normal(self) -> Floats:
        """Unit vector to the free side, to the right of the edge, shape (n, 2)."""
        return np.stack([self.along[:, 1], -self.along[:, 0]], axis=1)


def _meeting(extents: tuple[Floats, Floats], low: Floats, high: Floats) -> Ints:
    """Return which extents, from low to high corners (n, 2) each, meet a box."""
    lows, highs = extents
    met = (lows[:, 0] <= high[0]) & (highs[:, 0] >= low[0])
    return np.flatnonzero(met & (lows[:, 1] <= high[1]) & (highs[:, 1] >= low[1]))


def ring_of_line(points: Sequence[Point]) -> list[Point]:
    """Return an open polyline walked there and back."""
    return [*points, *points[-2:0:-1]]


def ring_of_area(points: Sequence[Point], *, hole: bool = False) -> list[Point]:
    """Return a ring walked with its material on the left."""
    ring = list(points)
    return ring if (signed_area(ring) > 0) != hole else ring[::-1]


def faces(rings: Iterable[tuple[int, Sequence[Point], float]]) -> Faces:
    """Build the faces of `rings`, each given as owner, points and half thickness."""
    points, owners, halves, sizes = [], [], [], []
    for owner, ring, half in rings:
        clean = _without_needless(ring)
        if len(clean) < 2:
            continue
        points.extend(clean)
        owners.append(owner)
        halves.append(half)
        sizes.append(len(clean))
    return _joined(np.asarray(points, dtype=float).reshape(-1, 2), owners, halves, sizes)


def _joined(a: Floats, owners: list[int], halves: list[float], sizes: list[int]) -> Faces:
    size = np.asarray(sizes, dtype=np.intp)
    first = np.repeat(np.cumsum(size) - size, size)
    count = np.repeat(size, size)
    place = np.arange(len(a)) - first
    after = first + (place + 1) % np.maximum(count, 1)
    before = first + (place - 1) % np.maximum(count, 1)
    owner = np.repeat(np.asarray(owners, dtype=np.intp), size)
    half = np.repeat(np.asarray(halves, dtype=float), size)
    return Faces(a, a[after], owner, after, before, half)


def _without_needless(ring: Sequence[Point]) -> list[Point]:
    """Drop points that repeat the one before or lie on a straight run."""
    clean: list[Point] = []
    for point in ring:
        if not clean or abs(point[0] - clean[-1][0]) + abs(point[1] - clean[-1][1]) > _SAME:
            clean.append(point)
    while len(clean) > 1 and _near(clean[0], clean[-1]):
        clean.pop()
    return [p for i, p in enumerate(clean) if not _straight(clean, i)] if len(clean) > 2 else clean


def _near(p: Point, q: Point) -> bool:
    return abs(p[0] - q[0]) + abs(p[1] - q[1]) <= _SAME


def _straight(ring: list[Point], i: int) -> bool:
    (x0, y0), (x1, y1), (x2, y2) = ring[i - 1], ring[i], ring[(i + 1) % len(ring)]
    ux, uy, vx, vy = x1 - x0, y1 - y0, x2 - x1, y2 - y1
    scale = (ux * ux + uy * uy) * (vx * vx + vy * vy)
    cross = ux * vy - uy * vx
    return cross * cross <= _SAME * _SAME * scale and ux * vx + uy * vy > 0
