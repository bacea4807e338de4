"""Where the numbered flags of a section stand in the office's drawing, so that they cover nothing."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from math import dist

from enclosure_app.drawing.marks import Flag, Stroke
from enclosure_app.drawing.placement import Box, box_around
from enclosure_app.drawing.polylines import length, moved, unit
from enclosure_app.drawing.section.flags import (
    FLAG_HEIGHT,
    FLAG_WIDTH,
    LANE,
    Site,
    flag_at,
    place_flags,
)
from enclosure_app.drawing.theme import Theme
from enclosure_app.model.place import Point
from enclosure_app.reports.dxf.room import Room

_LANES = 8  # how many lanes farther out flags may stand, where the nearer ones are drawn full
_FAR = 100.0  # mm on paper: a longer leader crosses what it has nothing to do with
_AIR = 0.3  # mm on paper around a flag


@dataclass(frozen=True, slots=True)
class Flags:
    """How flags of a section are placed: in sheet mm, of which one is `ratio` mm of the drawing."""

    ratio: float
    theme: Theme
    room: Room

    def placed(self, sites: Sequence[Site], area: Box) -> list[Flag]:
        """Return a flag for each site: in the lanes around an area, or near to its place inside.

        A side moves outwards as a whole, to where its flags cover nothing.
        """
        flags = place_flags(sites, area, self.theme)
        for site in sites:
            self.room.take(self._around(site))
        found = {}
        for site, flag in zip(sites, flags, strict=True):
            near = self._near(site) if _reach(flag) > _FAR else None
            if near:
                self.room.take(self._box(near.at))
                found[flag.number] = near
        lanes = [flag for flag in flags if flag.number not in found]
        found.update({flag.number: flag for flag in self._in_free_lanes(lanes)})
        return [found[flag.number] for flag in flags]

    def _near(self, site: Site) -> Flag | None:
        """Return a flag that stands on free paper near to its place, None where there is none."""
        size = self._drawn(Box(0, 0, FLAG_WIDTH + 2 * _AIR, FLAG_HEIGHT + 2 * _AIR))
        free = self.room.nearest(self._around(site), (size.right, size.top), LANE / 2 * self.ratio)
        at = free.centre[0] / self.ratio, free.centre[1] / self.ratio
        if dist(at, site.at) > _FAR:
            return None
        start = moved(site.at, unit(site.at, at), site.ring)
        leader = Stroke((start, _shape(at).clamp(start)), self.theme.pen("leader"), site.source)
        return flag_at(site, at, self.theme, leader)

    def _around(self, site: Site) -> Box:
        """Return the box of the ring around a place in the drawing, in mm."""
        x, y = site.at
        return self._drawn(Box(x, y, x, y).inset(-site.ring))

    def _in_free_lanes(self, flags: Sequence[Flag]) -> Iterator[Flag]:
        by_side: dict[Point, list[Flag]] = {}
        for flag in flags:
            by_side.setdefault(_outwards(flag), []).append(flag)
        for out, side in by_side.items():
            tried = ([_moved(flag, out, LANE * far) for flag in side] for far in range(_LANES))
            free = next((each for each in tried if all(map(self._is_free, each))), side)
            for flag in free:
                self.room.take(self._box(flag.at))
                yield flag

    def _is_free(self, flag: Flag) -> bool:
        return self.room.is_free(self._box(flag.at))

    def _box(self, at: Point) -> Box:
        """Return the box of a flag in the drawing, in mm."""
        return self._drawn(_shape(at).inset(-_AIR))

    def _drawn(self, box: Box) -> Box:
        return box_around(tuple((x * self.ratio, y * self.ratio) for x, y in box.ring))


def _shape(at: Point) -> Box:
    return Box(at[0], at[1], at[0], at[1]).inset(-FLAG_WIDTH / 2, -FLAG_HEIGHT / 2)


def _reach(flag: Flag) -> float:
    return length(flag.leader.points) if flag.leader else 0.0


def _outwards(flag: Flag) -> Point:
    """Return the direction in which a flag stands from the drawing."""
    if flag.leader is None:
        return 0.0, 0.0
    x, y = unit(*flag.leader.points[-2:])
    return float(round(x)), float(round(y))


def _moved(flag: Flag, out: Point, far: float) -> Flag:
    """Return a flag that stands farther out, at the end of a longer leader."""
    leader = flag.leader
    if leader:
        end = moved(leader.points[-1], out, far)
        leader = replace(leader, points=(*leader.points[:-1], end))
    shape = tuple(moved(point, out, far) for point in flag.shape)
    return replace(flag, at=moved(flag.at, out, far), shape=shape, leader=leader)
