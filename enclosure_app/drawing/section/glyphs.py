"""One glyph for each kind of fault: a small picture of the thing itself.

A glyph is drawn about a `Spot` on the sheet: u runs uphill along the layer, v outward, both in sheet mm.
The same functions draw the glyph in the drawing, where lengths are to scale, and the icon beside
the sentence in the table.
"""

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from enclosure_app.drawing.marks import Anchor, Fill, Label, Mark, Stroke
from enclosure_app.drawing.polylines import foot, length, mean, walk_to
from enclosure_app.drawing.section.laps import APART
from enclosure_app.drawing.shapes import arrow_head, barb, circle, drop, ellipse, smooth
from enclosure_app.drawing.theme import Theme
from enclosure_app.language import say
from enclosure_app.model.place import Point, Points


@dataclass(frozen=True, slots=True)
class Spot:
    """A place on the sheet with its uphill and outward directions (unit vectors)."""

    at: Point
    up: Point
    out: Point

    def to(self, u: float, v: float) -> Point:
        """Return the point `u` uphill and `v` outward of the place."""
        x = self.at[0] + u * self.up[0] + v * self.out[0]
        return x, self.at[1] + u * self.up[1] + v * self.out[1]

    def line(self, *steps: tuple[float, float]) -> Points:
        """Return the points at the given pairs of u and v."""
        return tuple(self.to(u, v) for u, v in steps)

    def label(self, text: str, v: float, theme: Theme, u: float = 0.0) -> Label:
        """Return an upright text that stands clear of the place on its outer side."""
        x, y = self.to(u, v)
        side = self.out[0] * (1 if v >= 0 else -1)
        anchor = Anchor.MIDDLE if abs(side) < 0.35 else Anchor.START if side > 0 else Anchor.END
        drop_by = theme.small / 2 - self.out[1] * theme.small * 0.6
        return Label(
            text, (x, y - drop_by), theme.small, theme.ink, anchor, bold=True, halo=theme.paper
        )


@dataclass(frozen=True, slots=True)
class Facts:
    """What a glyph shows: lengths in sheet mm, texts in the drawing's units.

    `length` is what is there (the width of a gap, the run of a lap), `needed` what is required.
    """

    length: float = 0.0
    needed: float = 0.0
    text: str = ""
    needed_text: str = ""
    way: Points = ()
    down: Point = (0.0, -1.0)
    source: str = ""


_BARBS = 9.0  # mm from one barb of a stream to the next

Glyph = Callable[[Spot, Facts, Theme], Iterator[Mark]]


def gap(spot: Spot, facts: Facts, theme: Theme) -> Iterator[Mark]:
    """Two blunt caps, and a bracket between them with the width."""
    half = facts.length / 2
    for u in (half, -half):
        yield Stroke(spot.line((u, -1.5), (u, 1.5)), theme.pen("cap"), facts.source)
    reach = -4.2  # on the inner side, where no lap's ruler stands
    thin = theme.pen("glyph")
    for u in (half, -half):
        yield Stroke(spot.line((u, -2.2), (u, reach - 0.7)), thin, facts.source)
    yield Stroke(spot.line((-half, reach), (half, reach)), thin, facts.source)
    if facts.text:
        yield spot.label(facts.text, reach - 1.5, theme)


def reverse_lap(spot: Spot, facts: Facts, theme: Theme) -> Iterator[Mark]:
    """A barbed stream that runs down the upper sheet and turns in behind the lower one."""
    half = max(facts.length / 2, 1.5)
    mid = APART / 2
    down = -spot.up[0], -spot.up[1]
    way = smooth(
        spot.line((half + 5.5, mid + 0.6), (half + 2.5, mid + 0.5), (half, mid), (-half, mid),
                  (-half - 1.6, mid - 0.4), (-half - 3.0, -1.9))
    )  # fmt: skip
    pen = theme.pen("stream")
    yield Stroke(way, theme.halo_pen(0.1), facts.source)
    yield Stroke(way, pen, facts.source)
    yield Stroke(arrow_head(way, 1.7), pen, facts.source)
    yield Stroke(barb(spot.to(half + 3.2, mid + 0.5), down, 1.2), pen, facts.source)
    for k in range(max(int(2 * half / _BARBS), 1)):
        yield Stroke(barb(spot.to(half - 0.6 - k * _BARBS, mid), down, 1.2), pen, facts.source)


def short_lap(spot: Spot, facts: Facts, theme: Theme) -> Iterator[Mark]:
    """A ruler along the lap: what is there is filled, what is missing at its lower end is hollow."""
    half = facts.length / 2
    missing = max(facts.needed - facts.length, 0.0)
    yield from _ruler(spot, (half, -half, -half - missing), facts, theme)


def short_cover(spot: Spot, facts: Facts, theme: Theme) -> Iterator[Mark]:
    """A ruler that stands on the lower end: what is there is filled, what is missing above is hollow."""
    half = facts.length / 2
    missing = max(facts.needed - facts.length, 0.0)
    yield from _ruler(spot, (-half, half, half + missing), facts, theme)


def _ruler(
    spot: Spot, stations: tuple[float, float, float], facts: Facts, theme: Theme
) -> Iterator[Mark]:
    """Draw a ruler outside the outer sheet: filled to the second station, hollow to the third."""
    start, there, end = stations
    low, high = APART + 1.4, APART + 2.7
    filled = spot.line((start, low), (start, high), (there, high), (there, low))
    hollow = spot.line((there, low), (there, high), (end, high), (end, low))
    yield Fill((hollow,), theme.paper, facts.source)
    yield Fill((filled,), theme.ink, facts.source)
    for ring in (filled, hollow):
        yield Stroke(ring, theme.pen("glyph"), facts.source, closed=True)
    for u in stations:
        yield Stroke(spot.line((u, low - 0.7), (u, high)), theme.pen("glyph"), facts.source)
    if facts.text:
        yield from _ruler_texts(spot, stations, high + 0.9, facts, theme)


def _ruler_texts(
    spot: Spot, stations: tuple[float, float, float], v: float, facts: Facts, theme: Theme
) -> Iterator[Mark]:
    """Write what is there beside its middle, and what is required beyond it, clear of each other."""
    start, there, end = stations
    u = (start + there) / 2
    yield spot.label(facts.text, v, theme, u=u)
    if facts.needed_text:
        sense = 1.0 if there >= start else -1.0
        apart = 3.0 if abs(spot.out[0]) >= 0.35 else 12.0  # under each other, or side by side
        beyond = max(abs((there + end) / 2 - u), apart)
        yield spot.label(
            say("of {length}", length=facts.needed_text), v, theme, u=u + sense * beyond
        )


def unsealed_joint(spot: Spot, facts: Facts, theme: Theme) -> Iterator[Mark]:
    """An open row of beads where the seal should be."""
    count = max(int(facts.length / 1.7), 3)
    for k in range(count):
        centre = spot.to((k - (count - 1) / 2) * 1.7, APART / 2)
        yield Fill((circle(centre, 0.6),), theme.paper, facts.source)
        yield Stroke(circle(centre, 0.6), theme.pen("glyph"), facts.source, closed=True)


def stops_short(spot: Spot, facts: Facts, theme: Theme) -> Iterator[Mark]:
    """A cap, and a trail that fades in the direction in which the layer should go on (uphill).

    Beside the trail stands how much of the layer is lacking.
    """
    yield Stroke(spot.line((0, -1.6), (0, 1.6)), theme.pen("cap"), facts.source)
    for k, pen in enumerate(("cap", "doubt", "glyph", "remark", "tick")):
        u = 1.5 + 2.0 * k
        yield Stroke(spot.line((u, 0), (u + 1.1, 0)), theme.pen(pen), facts.source)
    if facts.text:
        yield spot.label(facts.text, -2.6, theme, u=5.0)


def level_lap(spot: Spot, facts: Facts, theme: Theme) -> Iterator[Mark]:
    """A level bubble over the lap."""
    x, y = spot.to(0, APART + 2.2 if abs(spot.out[1]) > 0.5 else 4.5)
    vial = _vial((x, y), 3.4, 1.05)
    yield Fill((vial,), theme.paper, facts.source)
    yield Stroke(vial, theme.pen("glyph"), facts.source, closed=True)
    for dx in (-1.1, 1.1):
        yield Stroke(((x + dx, y - 1.05), (x + dx, y + 1.05)), theme.pen("glyph"), facts.source)
    yield Fill((ellipse((x, y + 0.15), 0.85, 0.55),), theme.ink, facts.source)


def _vial(centre: Point, half: float, radius: float) -> Points:
    x, y = centre
    ring = circle((0, 0), radius)
    return tuple((x + dx + (half - radius) * (1 if dx >= 0 else -1), y + dy) for dx, dy in ring)


def wet_route(spot: Spot, facts: Facts, theme: Theme) -> Iterator[Mark]:
    """Drops along the way that the water takes inside."""
    own = smooth(spot.line((4.4, 3.6), (1.2, 1.0), (-1.0, -1.0), (-4.0, -3.6)))
    way = facts.way if len(facts.way) > 1 else own
    yield Stroke(way, theme.pen("stream"), facts.source)
    yield Stroke(arrow_head(way, 1.7), theme.pen("stream"), facts.source)
    whole, here = length(way), foot(way, spot.at).along
    for along in (here - 3.0, here + 1.5, here + 6.0):
        if 0 < along < whole:
            at, _ = walk_to(way, along)
            tip = at[0] + spot.out[0] * 1.6, at[1] + spot.out[1] * 1.6
            yield Fill((drop(tip, 2.0, facts.down),), theme.ink, facts.source)


def ponding(spot: Spot, facts: Facts, theme: Theme) -> Iterator[Mark]:
    """A puddle from shore to shore with its depth."""
    x, y = spot.at
    half, top = 3.8, y + 1.5
    if len(facts.way) > 1 and abs(facts.way[-1][0] - facts.way[0][0]) > 2 * half:
        half, x = abs(facts.way[-1][0] - facts.way[0][0]) / 2, mean(facts.way)[0]
        top = max(mean(facts.way)[1], y + 1.0)  # the water's level, as far as it can be seen
    for k in range(3):
        part = half * (1 - 0.28 * k)
        level = top - 0.5 * k
        yield Stroke(((x - part, level), (x + part, level)), theme.pen("stream"), facts.source)
    if facts.text:
        at = (x, top + 1.0)
        yield Label(
            facts.text, at, theme.small, theme.ink, Anchor.MIDDLE, bold=True, halo=theme.paper
        )


def open_penetration(spot: Spot, facts: Facts, theme: Theme) -> Iterator[Mark]:
    """Open beads on both faces of what passes through, where the collar or seal should be."""
    for u in (-2.1, 2.1):
        for v in (-0.9, 0.9):
            yield Fill((circle(spot.to(u, v), 0.6),), theme.paper, facts.source)
            yield Stroke(circle(spot.to(u, v), 0.6), theme.pen("glyph"), facts.source, closed=True)
        way = spot.line((u * 1.7, 4.2), (u * 0.62, 1.6), (u * 0.62, -3.4))
        yield Stroke(way, theme.pen("stream"), facts.source)
        yield Stroke(arrow_head(way, 1.3), theme.pen("stream"), facts.source)


def no_drip(spot: Spot, facts: Facts, theme: Theme) -> Iterator[Mark]:
    """A drop that hangs back under the edge."""
    x, y = spot.at
    back = -1.0 if spot.out[0] > 0 else 1.0
    way = smooth(
        (
            (x - back * 0.9, y + 0.9),
            (x - back * 0.8, y - 0.5),
            (x + back * 0.9, y - 0.8),
            (x + back * 3.4, y - 0.5),
        )
    )
    yield Stroke(way, theme.pen("stream"), facts.source)
    yield Stroke(arrow_head(way, 1.5), theme.pen("stream"), facts.source)
    yield Fill((drop((x + back * 1.2, y - 1.1), 2.3, facts.down),), theme.ink, facts.source)


def lap_cycle(spot: Spot, facts: Facts, theme: Theme) -> Iterator[Mark]:
    """Sheets each of which lies over the next: a ring of arrows that never ends."""
    ring = circle(spot.to(0, 0.6), 2.6, 36)
    for first in (0, 12, 24):
        arc = ring[first : first + 10]
        yield Stroke(arc, theme.pen("stream"), facts.source)
        yield Stroke(arrow_head(arc, 1.3), theme.pen("stream"), facts.source)


GLYPHS: dict[str, Glyph] = {
    "gap": gap,
    "reverse-lap": reverse_lap,
    "short-lap": short_lap,
    "unsealed-joint": unsealed_joint,
    "stops-short": stops_short,
    "level-lap": level_lap,
    "wet-route": wet_route,
    "ponding": ponding,
    "no-drip": no_drip,
    "lap-cycle": lap_cycle,
    "edge-cover-short": short_cover,
    "upturn-short": short_cover,
    "open-penetration": open_penetration,
}


def glyph(rule: str, spot: Spot, facts: Facts, theme: Theme) -> Iterator[Mark]:
    """Yield the glyph of `rule`; a rule without one yields nothing (its ring and flag stand alone)."""
    draw = GLYPHS.get(rule)
    if draw:
        yield from draw(spot, facts, theme)
