"""Upturns: where a roof sheet or its flashing turns up a wall, and how high it goes."""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise
from math import dist, hypot, inf, radians, tan

import numpy as np

from enclosure_app.model.place import Line, Point, Points
from enclosure_app.model.product import Control, Kind
from enclosure_app.model.section import Piece
from enclosure_app.network.details.drainage import STEEP
from enclosure_app.network.network import Network

ROOF = frozenset({Kind.ROOFING, Kind.UNDERLAYMENT, Kind.EAVE_MEMBRANE})
SHALLOW = tan(radians(45.0))
LEAST_DECK = 25.0  # mm on the roof before the fold; less is a hem or a drip
SAME_FOLD = 60.0  # mm: sheets folded this near to each other turn up at one joint
LOOK = 8.0  # mm into the corner, to see that it is the outside


@dataclass(frozen=True, slots=True)
class Upturn:
    """A leg that ends up a wall: its piece, the fold, its top, and the slope of the roof below."""

    piece: str
    fold: Point
    top: Point
    slope: float
    leg: Points

    @property
    def height(self) -> float:
        """How far the leg goes up from the fold, mm."""
        return self.top[1] - self.fold[1]


def upturns(network: Network) -> list[Upturn]:
    """Return the highest leg at each place where the water layer turns up from a roof to a wall."""
    if network.section.gravity is None or network.layers[Control.WATER].walk is None:
        return []
    if network.kinds.isdisjoint(ROOF | {Kind.FLASHING}):
        return []
    pieces = network.section.layer(Control.WATER)
    legs = [leg for piece in pieces if _on_roof(network, piece) for leg in _legs(piece)]
    legs = [leg for leg in legs if _faces_out(network, leg)]
    highest: list[Upturn] = []
    for leg in sorted(legs, key=lambda each: -each.height):
        if all(dist(leg.fold, other.fold) > SAME_FOLD for other in highest):
            highest.append(leg)
    return highest


def _on_roof(network: Network, piece: Piece) -> bool:
    """Whether a piece belongs to a roof: a roof sheet, or a flashing that laps one."""
    kind = network.section.product(piece).kind
    if kind in ROOF:
        return True
    if kind is not Kind.FLASHING:
        return False
    return any(
        piece.name in names
        and network.product(next(iter(names - {piece.name}))).kind in ROOF
        and any(_slope(a, b) < SHALLOW for a, b in pairwise(lap.inner.run))
        for lap in network.layers[Control.WATER].laps
        for names in [{lap.outer.name, lap.inner.name}]
    )


def _legs(piece: Piece) -> Iterator[Upturn]:
    shape = piece.shape
    if isinstance(shape, Line) and not shape.closed:
        for points in (shape.points, shape.points[::-1]):
            leg = _leg(piece.name, points)
            if leg is not None:
                yield leg


def _leg(name: str, points: Points) -> Upturn | None:
    """Return the leg that the last point of `points` is the top of, if there is one."""
    fold = len(points) - 1
    while fold > 0 and _slope(points[fold - 1], points[fold]) >= STEEP:
        fold -= 1
    if fold in (0, len(points) - 1) or points[-1][1] <= points[fold][1]:
        return None
    before, at = points[fold - 1], points[fold]
    slope = _slope(before, at)
    if slope >= SHALLOW or abs(at[0] - before[0]) < LEAST_DECK:
        return None
    return Upturn(name, at, points[-1], slope, points[fold:])


def _slope(a: Point, b: Point) -> float:
    across = abs(b[0] - a[0])
    return abs(b[1] - a[1]) / across if across > 0 else inf


def _faces_out(network: Network, leg: Upturn) -> bool:
    """Whether the corner between roof and leg is on the outside: a wall, not a sill's back."""
    section = network.section
    shape = section.by_name[leg.piece].shape
    assert isinstance(shape, Line)  # noqa: S101  # only lines have legs
    neighbour = _roof_neighbour(shape.points, leg.fold)
    x, y = neighbour[0] - leg.fold[0], neighbour[1] - leg.fold[1]
    length = hypot(x, y) or 1.0
    corner = (leg.fold[0] + LOOK * x / length, leg.fold[1] + LOOK * y / length + LOOK)
    return bool(network.layers[Control.WATER].is_outside(np.array([corner]))[0])


def _roof_neighbour(points: Points, fold: Point) -> Point:
    place = points.index(fold)
    sides = [points[n] for n in (place - 1, place + 1) if 0 <= n < len(points)]
    return min(sides, key=lambda point: _slope(point, fold))
