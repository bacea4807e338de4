"""Where a drop on a face may run, and what it comes to at the end of each straight run.

A *run* is one edge walked one way: twice the edge's number, plus one where it goes against the
edge's direction. Numbers of runs and edges, and stations (mm from a run's start), are the
positions of a drop.
"""

from collections import defaultdict
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from enum import Enum
from functools import cached_property

import numpy as np

from enclosure_app.geometry.surfaces.faces import Bools, Floats, Ints, Point
from enclosure_app.geometry.surfaces.falling import STEEP, Beside, near_ring, out_of_ring
from enclosure_app.model.limits import Tolerances
from enclosure_app.model.place import Points
from enclosure_app.network.rain.surfaces import LayerSurfaces

IsOutside = Callable[[Floats], Bools]
_PAST = 0.5  # mm past the drafting slop, where the side of a face is asked for
_LEG = 200.0  # a longer face under its own sheet's overhang is a wall, mm
LEVEL = 1e-6  # a run that falls or rises by less is level


class Foot(Enum):
    """What a drop finds at the foot of a run."""

    FACE = "face"  # the surface goes on downhill
    LOW = "low"  # the surface rises again
    EDGE = "edge"  # the surface ends or turns under


FEET = (Foot.FACE, Foot.LOW, Foot.EDGE)


@dataclass(frozen=True, slots=True)
class Bar:
    """A surface in the way on a run: where, and the run up or down it."""

    station: float
    run: int
    onto: float
    corner: Point


@dataclass(frozen=True, slots=True)
class Flank:
    """Another piece's edge beside one edge, from `low` to `high` along that edge.

    `hides` says that it lies in front, so that a drop on the edge runs on behind it.
    """

    edge: int
    low: float
    high: float
    apart: float
    hides: bool


@dataclass(frozen=True, eq=False)
class Ground:
    """The layer's faces as a drop sees them.

    `over` names the outer piece of a pair (in sorted order); `glued` are the tapes, beads and
    coatings that water runs over, since nothing gets in behind them. `rained_on` tells for points
    whether rain that lands there is to be followed; None: everywhere outside.
    """

    layer: LayerSurfaces
    frame: Points
    tolerances: Tolerances
    is_outside: IsOutside
    over: Mapping[tuple[str, str], str]
    glued: frozenset[str] = frozenset()
    rained_on: IsOutside | None = None

    @cached_property
    def start(self) -> Floats:
        """Start of each run, shape (2 n, 2)."""
        faces = self.layer.surfaces.faces
        return np.stack([faces.a, faces.b], axis=1).reshape(-1, 2)

    @cached_property
    def end(self) -> Floats:
        """End of each run, shape (2 n, 2)."""
        faces = self.layer.surfaces.faces
        return np.stack([faces.b, faces.a], axis=1).reshape(-1, 2)

    @cached_property
    def heading(self) -> Floats:
        """Unit vector along each run, shape (2 n, 2)."""
        along = self.layer.surfaces.faces.along
        return np.stack([along, -along], axis=1).reshape(-1, 2)

    @cached_property
    def normals(self) -> list[list[float]]:
        """The unit vector to the free side of each edge."""
        normals: list[list[float]] = self.layer.surfaces.faces.normal.tolist()
        return normals

    @cached_property
    def follower(self) -> Ints:
        """The run that goes on at the end of each run on the same piece."""
        faces = self.layer.surfaces.faces
        return np.stack([2 * faces.after, 2 * faces.before + 1], axis=1).reshape(-1)

    @cached_property
    def cut(self) -> Bools:
        """Whether each edge is where the frame cuts its piece, which goes on beyond: no face."""
        faces, touch = self.layer.surfaces.faces, self.tolerances.touch
        cut = self._near_frame[::2] & self._near_frame[1::2]
        which = np.flatnonzero(cut)
        middle = (faces.a[which] + faces.b[which]) / 2
        along = near_ring(self.frame, middle, touch)
        beyond = middle + faces.normal[which] * 2 * touch
        cut[which] = along & out_of_ring(self.frame, beyond)
        return cut

    @cached_property
    def goes_on(self) -> Bools:
        """Whether a run ends where the frame cuts its piece: the drop leaves along it."""
        ends = self._near_frame & ~self._turns_on
        which = np.flatnonzero(ends)
        beyond = self.end[which] + self.heading[which] * 2 * self.tolerances.touch
        ends[which] = out_of_ring(self.frame, beyond)
        return ends | (self.cut[self.follower // 2] & self._turns_on)

    @cached_property
    def _near_frame(self) -> Bools:
        """Whether each run ends on the frame."""
        faces = self.layer.surfaces.faces
        near = near_ring(self.frame, faces.a, self.tolerances.touch)
        return np.stack([near[faces.after], near], axis=1).reshape(-1)

    @cached_property
    def _turns_on(self) -> Bools:
        """Whether the piece goes on after each run, in another direction than back."""
        turned = np.sum(self.heading * self.heading[self.follower], axis=1)
        back: Bools = turned > -1 + 1e-9
        return back

    @cached_property
    def wets(self) -> Bools:
        """Whether a drop runs along each run: downhill or level, on a face that keeps it."""
        keeps = np.repeat((self.layer.surfaces.faces.normal[:, 1] >= -STEEP) & ~self.cut, 2)
        return keeps & (self.end[:, 1] - self.start[:, 1] <= LEVEL)

    @cached_property
    def feet(self) -> Ints:
        """What a drop finds at the foot of each run: a place in `FEET`."""
        normal = np.repeat(self.layer.surfaces.faces.normal, 2, axis=0)
        turn = np.sum(self.heading[self.follower] * normal, axis=1)
        return np.where(self.wets[self.follower], 0, np.where(turn > 1e-9, 1, 2))

    def foot(self, run: int) -> Foot:
        """Return what a drop finds at the foot of a run."""
        return FEET[self.feet[run]]

    @cached_property
    def sheltered(self) -> Bools:
        """Whether a run is the inner face of a leg that hangs under its own sheet."""
        faces = self.layer.surfaces.faces
        normal = np.repeat(faces.normal, 2, axis=0)
        above = np.stack([2 * faces.before, 2 * faces.after + 1], axis=1).reshape(-1)
        roofed = normal[above, 1] < -STEEP
        concave = np.sum(self.heading * normal[above], axis=1) > 1e-9
        leg = np.repeat(faces.length <= _LEG, 2)
        sheltered: Bools = roofed & concave & (self.feet == FEET.index(Foot.EDGE)) & leg
        return sheltered

    @cached_property
    def flanks(self) -> Mapping[int, list[Flank]]:
        """What lies beside each edge that a drop may run on."""
        return self.find_flanks(np.unique(np.flatnonzero(self.wets) // 2))

    def find_flanks(self, edges: Ints) -> dict[int, list[Flank]]:
        """Return what lies beside `edges`."""
        pairs = self.layer.surfaces.beside(edges, self.tolerances.lap_reach)
        table: dict[int, list[Flank]] = defaultdict(list)
        hides = self._hides(pairs)
        columns = (pairs.e, pairs.f, pairs.low, pairs.high, pairs.apart, hides)
        for e, *flank in zip(*(c.tolist() for c in columns), strict=True):
            table[e].append(Flank(*flank))
        return table

    def _hides(self, pairs: Beside) -> Bools:
        """Whether `f` lies in front of `e`: as drawn, or as told where they are drawn as one."""
        hides: Bools = pairs.apart > LEVEL
        close = np.flatnonzero(np.abs(pairs.apart) <= self.tolerances.touch)
        if not self.over or not len(close):
            return hides
        for pair, faces_out in zip(close.tolist(), self._faces_out(pairs, close), strict=True):
            one, other = self.name(int(pairs.e[pair])), self.name(int(pairs.f[pair]))
            outer = self.over.get((one, other) if one < other else (other, one))
            if outer is not None:
                hides[pair] = outer == (other if faces_out else one)
        return hides

    def _faces_out(self, pairs: Beside, which: Ints) -> list[bool]:
        """Whether the free side of `e` looks to the outside, seen past a sheet drawn too near."""
        faces, e = self.layer.surfaces.faces, pairs.e[which]
        middle = (pairs.low[which] + pairs.high[which]) / 2
        probe = faces.a[e] + faces.along[e] * middle[:, None]
        out: list[bool] = self.is_outside(
            probe + faces.normal[e] * (self.tolerances.touch + _PAST)
        ).tolist()
        return out

    @cached_property
    def bars(self) -> Mapping[int, list[Bar]]:
        """What stands in the way on each run that a drop may take, in the order it meets them."""
        return self.bars_on(np.flatnonzero(self.wets))

    def bars_on(self, runs: Ints) -> dict[int, list[Bar]]:
        """Return what stands in the way along `runs`, and where they come to what is glued on."""
        table = self.find_bars(runs)
        for run in runs.tolist() if self.glued else ():
            table[run] = sorted(
                [*table.get(run, ()), *self._ramps(run)], key=lambda bar: bar.station
            )
        return table

    def _ramps(self, run: int) -> Iterator[Bar]:
        """Yield where a drop on a run comes on to a glued piece that begins in front of it."""
        e, length = run // 2, self.length(run // 2)
        for flank in self.flanks.get(e, ()):
            station = flank.low if run % 2 == 0 else length - flank.high
            onto = 2 * flank.edge + run % 2
            if (
                flank.hides
                and self.name(flank.edge) in self.glued
                and self.wets[onto]
                and station > self.tolerances.touch
            ):
                corner = self.at(onto, self.station(onto, self.at(run, station)))
                yield Bar(station, onto, self.station(onto, corner), corner)

    def find_bars(self, runs: Ints) -> dict[int, list[Bar]]:
        """Return what stands in the way along `runs`."""
        table: dict[int, list[Bar]] = defaultdict(list)
        faces = self.layer.surfaces.faces
        height = self.tolerances.touch + faces.half[runs // 2]
        # A piece that starts just where this one turns away stands past the end of the run.
        past = self.heading[runs] * (height * self._turns_away(runs))[:, None]
        found = self.layer.surfaces.bars(runs, self.start[runs], self.end[runs] + past, height)
        columns = (found.run, found.f, found.station, found.corner)
        for run, f, station, corner in zip(*(c.tolist() for c in columns), strict=True):
            onto, (x, y) = 2 * f + run % 2, corner
            bar = Bar(station, onto, self.station(onto, (x, y)), (x, y))
            if not self._passes_behind(run, station, f):
                table[run].append(bar)
        for bars in table.values():
            bars.sort(key=lambda bar: bar.station)
        return table

    def _turns_away(self, runs: Ints) -> Bools:
        normal = self.layer.surfaces.faces.normal[runs // 2]
        away: Bools = np.sum(self.heading[self.follower[runs]] * normal, axis=1) <= 1e-9
        return away

    def _passes_behind(self, run: int, station: float, f: int) -> bool:
        """Whether the piece of `f` hides this run just above: the drop is behind it already."""
        e, owner = run // 2, self.owner(f)
        above = station - 2 * self.tolerances.touch
        here = above if run % 2 == 0 else self.length(e) - above
        return any(
            flank.hides and self.owner(flank.edge) == owner and flank.low <= here <= flank.high
            for flank in self.flanks.get(e, ())
        )

    # One drop asks for one number at a time, which plain lists answer much faster than arrays.

    @cached_property
    def _lines(self) -> list[list[float]]:
        lines: list[list[float]] = np.concatenate([self.start, self.heading], axis=1).tolist()
        return lines

    @cached_property
    def _lengths(self) -> list[float]:
        lengths: list[float] = self.layer.surfaces.faces.length.tolist()
        return lengths

    @cached_property
    def _owners(self) -> list[int]:
        owners: list[int] = self.layer.surfaces.faces.owner.tolist()
        return owners

    def owner(self, edge: int) -> int:
        """Return the number of the piece that an edge belongs to."""
        return self._owners[edge]

    def name(self, edge: int) -> str:
        """Return the name of the piece that an edge belongs to."""
        return self.layer.names[self.owner(edge)]

    def length(self, edge: int) -> float:
        """Return an edge's length."""
        return self._lengths[edge]

    def station(self, run: int, place: Point) -> float:
        """Return how far along a run the foot of `place` lies."""
        x, y, dx, dy = self._lines[run]
        along = (place[0] - x) * dx + (place[1] - y) * dy
        return min(max(along, 0.0), self.length(run // 2))

    def at(self, run: int, station: float) -> Point:
        """Return the place at a station of a run."""
        x, y, dx, dy = self._lines[run]
        return x + dx * station, y + dy * station
