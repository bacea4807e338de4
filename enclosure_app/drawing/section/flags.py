"""Numbered flags in the margin lanes around the drawing, with leaders that never cross.

This is labelling on the boundary of a rectangle. Every flag belongs to one side. The rectangle is
divided into one convex part for each side, so that leaders of different sides cannot meet. Within
a side, places and slots are matched so that the sum of the leaders' lengths cannot be shortened by
swapping two of them; two straight leaders that crossed could be (triangle inequality), so none do.
Beyond the edge each leader runs square to it, in its own strip of the lane, up to its flag.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from enum import Enum
from math import dist

from enclosure_app.drawing.marks import Anchor, Flag, Label, Stroke
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.polylines import moved, unit
from enclosure_app.drawing.shapes import circle
from enclosure_app.drawing.theme import Theme
from enclosure_app.model.finding import Severity
from enclosure_app.model.place import Point, Points
from enclosure_app.model.said.decision import State

FLAG_WIDTH, FLAG_HEIGHT = 6.2, 5.0
LANE = 10.0  # the breadth of a margin lane, mm
_LANDING = 2.6  # from the edge of the drawing to the flag
_AIR = 1.3  # between two flags
_INSIDE = 0.05  # places stand at least so far inside the edge
_GAIN = 1e-9


@dataclass(frozen=True, slots=True)
class Site:
    """What a flag is for: its number, its place on the sheet, the ring around it, the verdict."""

    number: int
    at: Point
    severity: Severity
    ring: float = 0.0
    source: str = ""
    state: State = State.OPEN


class Side(Enum):
    """A side of the drawing: the direction outwards, and which coordinate runs along the lane."""

    LEFT = (-1.0, 0.0, 1)
    RIGHT = (1.0, 0.0, 1)
    TOP = (0.0, 1.0, 0)
    BOTTOM = (0.0, -1.0, 0)

    @property
    def out(self) -> Point:
        """The unit vector outwards."""
        return self.value[0], self.value[1]

    @property
    def axis(self) -> int:
        """0 where the lane runs along x, 1 where it runs along y."""
        return self.value[2]

    @property
    def pitch(self) -> float:
        """The least distance between the middles of two flags."""
        return (FLAG_HEIGHT if self.axis else FLAG_WIDTH) + _AIR

    def span(self, area: Box) -> tuple[float, float]:
        """Return the least and the greatest place of a flag's middle along the lane."""
        half = self.pitch / 2
        if self.axis:
            return area.bottom + half, area.top - half
        return area.left + half, area.right - half

    def room(self, area: Box) -> int:
        """Return how many flags the lane takes."""
        low, high = self.span(area)
        return int((high - low) / self.pitch + 1e-9) + 1 if high >= low else 0

    def edge(self, area: Box, along: float) -> Point:
        """Return the point of the side at `along`."""
        if self.axis:
            return (area.left if self is Side.LEFT else area.right), along
        return along, (area.bottom if self is Side.BOTTOM else area.top)

    def away(self, area: Box, place: Point) -> float:
        """Return how far `place`, inside the drawing, is from the side."""
        x, y = place
        far = {Side.LEFT: x - area.left, Side.RIGHT: area.right - x, Side.TOP: area.top - y}
        return far.get(self, y - area.bottom)


def capacity(area: Box) -> int:
    """Return how many flags are sure to find room around `area`."""
    return Side.LEFT.room(area) + Side.RIGHT.room(area)


def place_flags(sites: Sequence[Site], area: Box, theme: Theme) -> tuple[Flag, ...]:
    """Return a flag for each site, in the order of `sites`.

    Raises:
        ValueError: there are more sites than `capacity` allows.
    """
    inner = area.inset(_INSIDE)
    places = {i: inner.clamp(site.at) for i, site in enumerate(sites)}
    flags: dict[int, Flag] = {}
    for side, members in _sides(places, area).items():
        wanted = [places[i][side.axis] for i in members]
        slots = spaced(wanted, side.pitch, side.span(area))
        ends = [side.edge(area, s) for s in slots]
        for i, end in zip(members, untangled([places[i] for i in members], ends), strict=True):
            flags[i] = _flag(sites[i], places[i], end, side, theme)
    return tuple(flags[i] for i in range(len(sites)))


def _sides(places: dict[int, Point], area: Box) -> dict[Side, list[int]]:
    """Give every place to its nearest side, or, where a lane overflows, to left and right."""
    nearest: dict[Side, list[int]] = {side: [] for side in Side}
    for i, place in places.items():
        nearest[_nearest(place, area)].append(i)
    if any(len(members) > side.room(area) for side, members in nearest.items()):
        nearest = _left_and_right(places, area)
    return {side: sorted(m, key=lambda i: places[i][side.axis]) for side, m in nearest.items()}


def _nearest(place: Point, area: Box) -> Side:
    return min(Side, key=lambda side: side.away(area, place))


def _left_and_right(places: dict[int, Point], area: Box) -> dict[Side, list[int]]:
    order = sorted(places, key=lambda i: places[i])
    rooms = Side.LEFT.room(area), Side.RIGHT.room(area)
    if len(order) > sum(rooms):
        raise ValueError(f"{len(order)} flags do not fit into lanes for {sum(rooms)}.")
    middle = sum(places[i][0] < area.centre[0] for i in order)
    left = min(max(middle, len(order) - rooms[1]), rooms[0])
    return {Side.LEFT: order[:left], Side.RIGHT: order[left:]}


def spaced(wanted: Sequence[float], pitch: float, span: tuple[float, float]) -> list[float]:
    """Return places in the order of `wanted` (ascending), near to it, `pitch` apart, in `span`.

    Neighbours that are too close form a block that stands about its mean.
    """
    low, high = span
    blocks: list[list[float]] = []  # sum of wished first places, number of flags
    for k, want in enumerate(wanted):
        blocks.append([want - k * pitch, 1.0])
        while len(blocks) > 1 and blocks[-2][0] / blocks[-2][1] >= blocks[-1][0] / blocks[-1][1]:
            total, count = blocks.pop()
            blocks[-1][0] += total
            blocks[-1][1] += count
    last = high - (len(wanted) - 1) * pitch
    firsts = [min(max(s / n, low), max(last, low)) for s, n in blocks for _ in range(int(n))]
    return [first + k * pitch for k, first in enumerate(firsts)]


def untangled(places: Sequence[Point], ends: Sequence[Point]) -> list[Point]:
    """Return `ends` in such an order that straight leaders to `places` do not cross."""
    order = list(ends)
    swapped = True
    while swapped:
        swapped = False
        for i in range(len(order)):
            for k in range(i + 1, len(order)):
                now = dist(places[i], order[i]) + dist(places[k], order[k])
                then = dist(places[i], order[k]) + dist(places[k], order[i])
                if then < now - _GAIN:
                    order[i], order[k] = order[k], order[i]
                    swapped = True
    return order


def _flag(site: Site, place: Point, end: Point, side: Side, theme: Theme) -> Flag:
    half = FLAG_WIDTH / 2 if side.axis else FLAG_HEIGHT / 2
    landing = moved(end, side.out, _LANDING)
    centre = moved(landing, side.out, half)
    start = moved(place, unit(place, end), min(site.ring, dist(place, end)))
    leader = Stroke((start, end, landing), theme.pen("leader"), site.source)
    return flag_at(site, centre, theme, leader)


def flag_at(site: Site, centre: Point, theme: Theme, leader: Stroke | None = None) -> Flag:
    """Return the flag of a site standing about `centre`."""
    base = (centre[0], centre[1] - theme.medium / 2)
    label = Label(str(site.number), base, theme.medium, theme.ink, Anchor.MIDDLE, bold=True)
    edge = theme.severity(site.severity)
    shape = flag_shape(site.severity, centre)
    drawn = Flag(site.number, centre, shape, edge, theme.flag, label, leader, site.source)
    return replace(drawn, state=site.state)


def flag_shape(severity: Severity, centre: Point) -> Points:
    """Return the ring of a flag: a square for a fault, six corners for a doubt, round for a remark."""
    x, y = centre
    w, h = FLAG_WIDTH / 2, FLAG_HEIGHT / 2
    if severity is Severity.FAULT:
        return (x - w, y - h), (x + w, y - h), (x + w, y + h), (x - w, y + h)
    if severity is Severity.DOUBT:
        s = w - 1.5
        return (
            (x - w, y),
            (x - s, y - h),
            (x + s, y - h),
            (x + w, y),
            (x + s, y + h),
            (x - s, y + h),
        )
    return circle(centre, h)
