"""Follows drops over the ground, one straight run after the other."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from functools import cached_property

from enclosure_app.geometry.surfaces.faces import Point
from enclosure_app.model.report import RouteEnd
from enclosure_app.network.rain.edges import Off, Spot, fall_from, lower_edges, offs, side_of
from enclosure_app.network.rain.ponds import Basins, Low, Pond
from enclosure_app.network.rain.runs import LEVEL, Foot, Ground

_CLEAR = 0.25  # how far from a face a place is asked for its side, mm
_BACK = 0.5  # and how far from the ends of a run

Node = tuple[int, int]  # a run, and how many of its bars the drop has passed


@dataclass(frozen=True, slots=True)
class Step:
    """What comes after a run: where the drop leaves it and where it goes on."""

    station: float
    spots: tuple[Spot, ...] = ()
    leaves: Point | None = None
    pond: Pond | None = None
    via: tuple[Point, ...] = ()
    off: Off | None = None


@dataclass(frozen=True, slots=True)
class Place:
    """A place on a drop's way: `probe` lies on the drop's side of the face; `piece` "" is air."""

    point: Point
    probe: Point
    piece: str


@dataclass(frozen=True, slots=True)
class Course:
    """A drop's way. `end` is None where the drop leaves the drawing, on whichever side.

    `visits` tells where it came on to each of its nodes, and after how many places. `joins` is the
    number of the course that it ends like, where it is told no further; `known` are its nodes, by
    place, that were told before. `forks` are the other ways where the drop spread, each with the
    number of places before it. `rounds` says that it came to one of its own nodes again. `taken`
    are the numbers of places at both ends that are those of the course that was taken up.
    """

    places: tuple[Place, ...]
    nodes: tuple[Node, ...]
    end: RouteEnd | None
    pond: Pond | None = None
    joins: int | None = None
    forks: tuple[tuple[Spot, int], ...] = ()
    visits: tuple[tuple[Spot, int], ...] = ()
    known: tuple[int, ...] = ()
    rounds: bool = False
    taken: tuple[int, int] | None = field(default=None, compare=False)


@dataclass(slots=True)
class Walked:
    """How far a drop has been followed."""

    spot: Spot
    places: list[Place] = field(default_factory=list)
    nodes: dict[Node, None] = field(default_factory=dict)
    forks: list[tuple[Spot, int]] = field(default_factory=list)
    visits: list[tuple[Spot, int]] = field(default_factory=list)
    known: list[int] = field(default_factory=list)


@dataclass(frozen=True, eq=False)
class Water:
    """The ways of all drops; `drains` holds the pieces that take water away.

    Of the `steps` worked out so far, `stood` are those at low points, and `fell` those off a bar.
    """

    ground: Ground
    drains: frozenset[str] = frozenset()
    steps: dict[Node, Step] = field(default_factory=dict)
    stood: set[Node] = field(default_factory=set)
    fell: dict[Node, Off] = field(default_factory=dict)

    @cached_property
    def _basins(self) -> Basins:
        return Basins(self.ground)

    @cached_property
    def offs(self) -> dict[int, Off]:
        """How a drop leaves each lower edge, by the run that ends at it."""
        return offs(self.ground, lower_edges(self.ground))

    def node(self, spot: Spot) -> Node:
        """Return the stretch of a run that a drop is on."""
        past = spot.station + self.ground.tolerances.touch
        bars = self.ground.bars.get(spot.run, ())
        return spot.run, sum(1 for bar in bars if bar.station <= past)

    def step(self, node: Node) -> Step:
        """Return what a drop does after the stretch `node`."""
        if node not in self.steps:
            self.steps[node] = self._step(*node)
        return self.steps[node]

    def follow(self, spot: Spot, known: Mapping[Node, int], more: int) -> Course:
        """Follow a drop from `spot` until it leaves or stands.

        `known` tells which course came to a node before; `more` runs after the first of these
        nodes the way is told no further.
        """
        walked = Walked(spot)
        while True:
            course = self.go_on(walked, known, more)
            if course is not None:
                return course

    def go_on(self, walked: Walked, known: Mapping[Node, int], more: int) -> Course | None:
        """Follow a drop over one more stretch; return its course where it ends there."""
        spot = walked.spot
        node = self.node(spot)
        step = self.step(node)
        again = node in walked.nodes
        if not again:
            walked.visits.append((spot, len(walked.places)))
            if node in known:
                walked.known.append(len(walked.nodes))
        walked.nodes[node] = None
        end = self._reach(spot, step, walked.places)
        if not again:
            walked.forks.extend((fork, len(walked.places)) for fork in step.spots[1:])
        ended = end is not None or step.leaves is not None or again
        if not ended and len(walked.known) <= more:
            walked.spot = step.spots[0]
            return None
        return Course(
            tuple(walked.places),
            tuple(walked.nodes),
            RouteEnd.STANDS if again else end,
            step.pond,
            None if ended else known[node],
            tuple(walked.forks),
            tuple(walked.visits),
            tuple(walked.known),
            again,
        )

    def _reach(self, spot: Spot, step: Step, places: list[Place]) -> RouteEnd | None:
        """Add the places of one stretch; return how the way ends on it, None where it does not."""
        piece = self.ground.name(spot.run // 2)
        if piece in self.drains:
            places.append(self._place(spot.run, spot.station, piece, _BACK))
            return RouteEnd.OUTSIDE
        places.extend(self._places(spot, step))
        if step.spots or step.leaves is not None:
            return None
        held = step.pond.pieces if step.pond else ()
        return RouteEnd.STANDS if self.drains.isdisjoint(held) else RouteEnd.OUTSIDE

    def _step(self, run: int, passed: int) -> Step:
        ground = self.ground
        bars = ground.bars.get(run, ())
        if passed < len(bars):
            return self._barred(run, passed)
        length = ground.length(run // 2)
        if ground.goes_on[run]:
            return Step(length, leaves=ground.at(run, length))
        follower = int(ground.follower[run])
        foot = ground.foot(run)
        if foot is Foot.FACE:
            return Step(length, (Spot(follower, 0.0),))
        if foot is Foot.LOW:
            return self._stand((run, passed), length, Spot(follower, 0.0))
        off = self.offs[run]
        if off.rises is not None:
            return self._stand((run, passed), length, off.rises)
        return Step(length, off.spots, off.leaves, off=off)

    def _barred(self, run: int, passed: int) -> Step:
        ground, bar = self.ground, self.ground.bars[run][passed]
        if ground.wets[bar.run]:
            return Step(bar.station, (Spot(bar.run, bar.onto),))
        if ground.heading[bar.run, 1] > LEVEL:
            return self._stand((run, passed), bar.station, Spot(bar.run, bar.onto), bar.corner)
        off = self.fell[run, passed] = fall_from(
            ground, run, ground.at(run, bar.station), side_of(ground, run)
        )
        return Step(bar.station, off.spots, off.leaves, off=off)

    def _stand(self, node: Node, station: float, rises: Spot, corner: Point | None = None) -> Step:
        """Fill the low point at `station`; slop that only holds a film runs over."""
        self.stood.add(node)
        ground, run = self.ground, node[0]
        back = Spot(run ^ 1, ground.length(run // 2) - station)
        basin = self._basins.fill(Low(corner or ground.at(run, station), (back, rises)))
        pond, over = basin.pond, basin.over
        film = max(ground.tolerances.touch, self._drawn_apart(basin.side))
        if pond.depth > film or (not over.spots and over.leaves is None):
            return Step(station, pond=pond)
        return Step(station, over.spots, over.leaves, via=(over.edge,), off=over)

    def _drawn_apart(self, side: tuple[int, ...]) -> float:
        """Return how far apart the sheets on one side of a low point are drawn.

        They are drawn apart only to be told apart: a step of that height is none on site.
        """
        edges = {run // 2 for run in side}
        flanks = (flank for edge in edges for flank in self.ground.flanks.get(edge, ()))
        return max((abs(flank.apart) for flank in flanks), default=0.0) + LEVEL

    def _places(self, spot: Spot, step: Step) -> Iterator[Place]:
        ground, edge = self.ground, spot.run // 2
        piece = ground.name(edge)
        yield self._place(spot.run, spot.station, piece, _BACK)
        if abs(step.station - spot.station) > LEVEL:
            yield self._place(spot.run, step.station, piece, -_BACK)
        for point in step.via:
            yield Place(point, (point[0], point[1] + _BACK), piece)
        if step.leaves is not None:
            yield Place(step.leaves, self._last_probe(spot, step, step.leaves), "")

    def _place(self, run: int, station: float, piece: str, back: float) -> Place:
        ground = self.ground
        length = ground.length(run // 2)
        inner = min(max(station + back, 0.0), length) if length > 2 * _BACK else length / 2
        (x, y), (nx, ny) = ground.at(run, inner), ground.normals[run // 2]
        return Place(ground.at(run, station), (x + nx * _CLEAR, y + ny * _CLEAR), piece)

    def _last_probe(self, spot: Spot, step: Step, leaves: Point) -> Point:
        """Return a place to ask for the side of a drop that leaves the drawing."""
        foot = self.ground.at(spot.run, step.station)
        if foot[1] - leaves[1] <= self.ground.tolerances.touch:
            return self._place(spot.run, step.station, "", -_BACK).probe
        hung = side_of(self.ground, spot.run) * self.ground.tolerances.touch / 2
        return leaves[0] + hung, leaves[1] + _BACK
