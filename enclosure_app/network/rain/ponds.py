"""How high water stands at a low point before it runs over."""

from dataclasses import dataclass
from functools import cached_property
from itertools import pairwise

import numpy as np

from enclosure_app.geometry.surfaces.faces import Point
from enclosure_app.model.place import Points
from enclosure_app.network.rain.edges import Off, Spot, fall_from, next_face, side_of
from enclosure_app.network.rain.runs import LEVEL, Bar, Ground


@dataclass(frozen=True, slots=True)
class Pond:
    """Water that stands: its lowest place, depth (mm), the pieces that hold it, its surface.

    `bounded` is False where the drawing ends before the water would run over: it stands at least
    that deep.
    """

    place: Point
    depth: float
    pieces: tuple[str, ...]
    extent: Points
    bounded: bool = True


@dataclass(frozen=True, slots=True)
class Basin:
    """A pond, how a drop runs over its lower side, and the runs up that side."""

    pond: Pond
    over: Off
    side: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class Low:
    """A low point and the runs up its two flanks."""

    place: Point
    up: tuple[Spot, Spot]


@dataclass(frozen=True, slots=True)
class _Climb:
    """The way up from a low point to where the surface falls again.

    `way` holds the places and `runs` the runs between them; `over` is the run beyond the lip;
    `shut` says that the surface goes on beyond the drawing.
    """

    way: tuple[Point, ...]
    runs: tuple[int, ...]
    over: Spot | None
    shut: bool

    @property
    def height(self) -> float:
        return max(y for _, y in self.way)


@dataclass(frozen=True, eq=False)
class Basins:
    """Finds ponds on the ground."""

    ground: Ground

    @cached_property
    def _bars(self) -> dict[int, list[Bar]]:
        return {}

    def fill(self, low: Low) -> Basin:
        """Return the basin round a low point."""
        climbs = [self._climb(low, spot) for spot in low.up]
        climbs.sort(key=lambda climb: (climb.height, climb.shut))
        lip = climbs[0]
        level = lip.height
        extent = tuple(sorted(_shore(climb, level) for climb in climbs))
        pieces = {self.ground.name(run // 2): None for c in climbs for run in _wet(c, level)}
        pond = Pond(low.place, max(level - low.place[1], 0.0), tuple(pieces), extent, not lip.shut)
        return Basin(pond, self._runs_over(lip), lip.runs)

    def _runs_over(self, lip: _Climb) -> Off:
        place = lip.way[-1]
        if lip.shut:
            return Off(place, leaves=place if self._cut(place) else None)
        if lip.over is not None:
            return Off(place, (lip.over,))
        run = lip.runs[-1]
        return fall_from(self.ground, run, place, self._far_side(run))

    def _far_side(self, run: int) -> float:
        upright = abs(float(self.ground.heading[run, 0])) <= LEVEL
        return -side_of(self.ground, run) if upright else side_of(self.ground, run)

    def _climb(self, low: Low, spot: Spot) -> _Climb:
        ground, way, runs = self.ground, [low.place], []
        seen: set[int] = set()
        while spot.run not in seen:
            seen.add(spot.run)
            runs.append(spot.run)
            bar = self._next_bar(spot)
            if bar is not None:
                way.append(bar.corner)
                spot = Spot(bar.run, bar.onto)
            else:
                way.append(ground.at(spot.run, ground.length(spot.run // 2)))
                onto = self._beyond(spot.run)
                if onto is None:
                    return _Climb(tuple(way), tuple(runs), None, self._cut(way[-1]))
                spot = onto
            if ground.heading[spot.run, 1] * ground.length(spot.run // 2) < -LEVEL:
                over = spot if ground.wets[spot.run] else None
                return _Climb(tuple(way), tuple(runs), over, shut=bar is not None)
        return _Climb(tuple(way), tuple(runs), None, shut=True)

    def _beyond(self, run: int) -> Spot | None:
        """Return where the surface goes on at the end of a run, None at a free end."""
        ground = self.ground
        end = ground.end[run : run + 1]
        reach = np.array([ground.tolerances.touch + ground.layer.surfaces.faces.half[run // 2]])
        onto = next_face(ground, run, ground.layer.surfaces.touching(end, reach)[1].tolist())
        follower = int(ground.follower[run])
        turned = float(ground.heading[run] @ ground.heading[follower]) < -1 + 1e-9
        return onto or (None if turned else Spot(follower, 0.0))

    def _cut(self, place: Point) -> bool:
        """Whether a place lies on the frame, where the drawing ends."""
        ring = np.asarray(self.ground.frame, dtype=float)
        side = np.roll(ring, -1, axis=0) - ring
        to = np.asarray(place) - ring
        share = np.clip(np.sum(to * side, axis=1) / np.sum(side * side, axis=1), 0.0, 1.0)
        away = np.hypot(*(to - share[:, None] * side).T)
        return bool(away.min() <= self.ground.tolerances.touch)

    def _next_bar(self, spot: Spot) -> Bar | None:
        if spot.run not in self._bars:
            found = self.ground.find_bars(np.array([spot.run]))
            self._bars[spot.run] = found.get(spot.run, [])
        past = spot.station + self.ground.tolerances.touch
        return next((bar for bar in self._bars[spot.run] if bar.station > past), None)


def _shore(climb: _Climb, level: float) -> Point:
    """Return the first place on a climb that is as high as the water."""
    for (x0, y0), (x1, y1) in pairwise(climb.way):
        if y1 >= level - LEVEL and y1 > y0:
            share = min(max((level - y0) / (y1 - y0), 0.0), 1.0)
            return x0 + share * (x1 - x0), level
    return climb.way[-1][0], level


def _wet(climb: _Climb, level: float) -> list[int]:
    """Return the runs of a climb that lie under the water."""
    return [run for run, low in zip(climb.runs, climb.way, strict=False) if low[1] <= level]
