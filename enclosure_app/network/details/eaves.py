"""Eaves: how far the eave membrane reaches up the roof, and where the wall below it stands."""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise
from math import hypot, radians, sqrt, tan

from enclosure_app.geometry.rims.sightline import level_crossings
from enclosure_app.model.limits import Limit, Limits
from enclosure_app.model.place import Area, Line, Point, Points
from enclosure_app.model.product import Control, Kind
from enclosure_app.model.section import Piece
from enclosure_app.network.details.drainage import DRAWN
from enclosure_app.network.fabric.bodies import solid_of
from enclosure_app.network.network import Network

WALL = frozenset(
    {Kind.BOARD, Kind.FRAMING, Kind.INSULATION, Kind.MASONRY, Kind.CONCRETE, Kind.AIR_SPACE}
)
FLATTEST, STEEPEST = tan(radians(2.0)), tan(radians(60.0))


@dataclass(frozen=True, slots=True)
class Eave:
    """An eave membrane on its slope, in mm.

    `edge` is the roof's edge and `top` the upper end of the membrane on the slope (rise over run);
    `inner` and `outer` are the x of the wall's two faces.
    """

    pieces: tuple[str, ...]
    edge: Point
    top: Point
    slope: float
    inner: float
    outer: float

    @property
    def reach(self) -> float:
        """How far the membrane goes up from the roof's edge, along the slope, mm."""
        return hypot(self.top[0] - self.edge[0], self.top[1] - self.edge[1])

    def required(self, limits: Limits) -> tuple[float, Limit]:
        """Return the reach required, mm along the slope, and the figure that decides it."""
        inside = limits.figure("eave-cover-inside")
        wall = self.inner if limits.figure("eave-wall-line").value else self.outer
        level = abs(wall - self.edge[0]) + inside.value
        lengths = [(level * sqrt(1 + self.slope**2), inside)]
        steep = self.slope >= limits.figure("eave-cover-steep-slope").value - DRAWN
        names = ["eave-cover-along", *(["eave-cover-steep-along"] if steep else [])]
        lengths += [(limits.figure(name).value, limits.figure(name)) for name in names]
        return max(lengths, key=lambda each: each[0])


@dataclass(frozen=True, slots=True)
class _Slope:
    """The part of an eave membrane that lies on the roof, from low to high."""

    piece: str
    low: Point
    high: Point


def eaves(network: Network) -> Iterator[Eave]:
    """Yield each eave that has an eave membrane and a wall below, seen from an inside mark."""
    if network.section.gravity is None or Kind.EAVE_MEMBRANE not in network.kinds:
        return
    for side in (1, -1):
        slopes = [slope for slope in _slopes(network) if (slope.high[0] - slope.low[0]) * side > 0]
        if not slopes:
            continue
        edge = min((slope.low for slope in slopes), key=lambda p: p[0] * side)
        top = max((slope.high for slope in slopes), key=lambda p: p[0] * side)
        faces = _wall_faces(network, edge, side)
        if faces is not None and top[0] != edge[0]:
            slope_of = abs((top[1] - edge[1]) / (top[0] - edge[0]))
            names = tuple(slope.piece for slope in slopes)
            yield Eave(names, edge, top, slope_of, *faces)


def _slopes(network: Network) -> Iterator[_Slope]:
    for piece in network.section.layer(Control.WATER):
        shape = piece.shape
        if network.section.product(piece).kind is Kind.EAVE_MEMBRANE and isinstance(shape, Line):
            on_roof = _on_roof(shape.points)
            if on_roof is not None:
                yield _Slope(piece.name, *on_roof)


def _on_roof(points: Points) -> tuple[Point, Point] | None:
    """Return the lower and the upper end of a membrane's longest stretch at a roof's slope."""
    stretches: list[list[Point]] = [[]]
    for a, b in pairwise(points):
        across, rise = abs(b[0] - a[0]), abs(b[1] - a[1])
        if FLATTEST * across <= rise <= STEEPEST * across and across > 0:
            stretches[-1] = [*(stretches[-1] or [a]), b]
        elif stretches[-1]:
            stretches.append([])
    longest = max(stretches, key=lambda s: abs(s[-1][0] - s[0][0]) if s else 0.0)
    if not longest:
        return None
    low, high = sorted((longest[0], longest[-1]), key=lambda point: point[1])
    return low, high


def _wall_faces(network: Network, edge: Point, side: int) -> tuple[float, float] | None:
    """Return the x of the inner and the outer face of the wall below an eave.

    `side` is 1 where the roof rises to the right of its edge. The wall is what a level look from
    an inside mark below the edge meets on the way out.
    """
    walls = [piece for piece in network.section.pieces if _is_wall(network, piece)]
    solids = [solid_of(piece.shape) for piece in walls]
    for x, y in network.section.inside:
        met = level_crossings(solids, y) * side if solids else ()
        between = [float(at) for at in met if edge[0] * side - 1.0 <= at <= x * side]
        if y < edge[1] and between:
            return max(between) * side, min(between) * side
    return None


def _is_wall(network: Network, piece: Piece) -> bool:
    return isinstance(piece.shape, Area) and network.section.product(piece).kind in WALL
