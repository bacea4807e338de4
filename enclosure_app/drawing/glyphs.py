"""One glyph for each kind of fault: a small picture of the thing itself.

A glyph is drawn about a `Spot` on the sheet: u runs uphill along the layer, v outward, both in sheet mm.
The same functions draw the glyph in the drawing, where lengths are to scale, and the icon beside
the sentence in the table.
"""

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from enclosure_app.drawing.laps import APART
from enclosure_app.drawing.marks import Anchor, Fill, Label, Mark, Stroke
from enclosure_app.drawing.polylines import dot, unit
from enclosure_app.drawing.shapes import arrow_head, barb, circle, drop, ellipse, smooth
from enclosure_app.drawing.theme import Theme
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
    way = smooth(
        spot.line((half + 5.5, mid + 0.6), (half + 2.5, mid + 0.5), (half, mid), (-half, mid),
                  (-half - 1.6, mid - 0.4), (-half - 3.0, -1.9))
    )  # fmt: skip
    yield Stroke(way, theme.halo_pen(0.1), facts.source)
    yield Stroke(way, theme.pen("stream"), facts.source)
    yield Stroke(arrow_head(way, 1.7), theme.pen("stream"), facts.source)
    for u in (half + 3.2, half + 0.6):
        head = barb(spot.to(u, mid + 0.4), (-spot.up[0], -spot.up[1]), 1.2)
        yield Stroke(head, theme.pen("stream"), facts.source)


def short_lap(spot: Spot, facts: Facts, theme: Theme) -> Iterator[Mark]:
    """A ruler along the lap: what is there is filled, what is missing is hollow."""
    half = facts.length / 2
    low, high = APART + 1.4, APART + 2.7
    missing = max(facts.needed - facts.length, 0.0)
    there = spot.line((half, low), (half, high), (-half, high), (-half, low))
    rest = spot.line((-half, low), (-half, high), (-half - missing, high), (-half - missing, low))
    yield Fill((rest,), theme.paper, facts.source)
    yield Fill((there,), theme.ink, facts.source)
    for ring in (there, rest):
        yield Stroke(ring, theme.pen("glyph"), facts.source, closed=True)
    for u in (half, -half, -half - missing):
        yield Stroke(spot.line((u, low - 0.7), (u, high)), theme.pen("glyph"), facts.source)
    if facts.text:
        yield spot.label(facts.text, high + 0.9, theme, u=0.5)
        if facts.needed_text:
            side = (
                min(-half - missing / 2, -2.6) if abs(spot.out[0]) >= 0.35 else -half - missing - 5
            )
            yield spot.label(f"of {facts.needed_text}", high + 0.9, theme, u=side)


def unsealed_joint(spot: Spot, facts: Facts, theme: Theme) -> Iterator[Mark]:
    """An open row of beads where the seal should be."""
    count = max(int(facts.length / 1.7), 3)
    for k in range(count):
        centre = spot.to((k - (count - 1) / 2) * 1.7, APART / 2)
        yield Fill((circle(centre, 0.6),), theme.paper, facts.source)
        yield Stroke(circle(centre, 0.6), theme.pen("glyph"), facts.source, closed=True)


def stops_short(spot: Spot, facts: Facts, theme: Theme) -> Iterator[Mark]:
    """A cap, and a trail that fades in the direction in which the layer should go on (uphill)."""
    yield Stroke(spot.line((0, -1.6), (0, 1.6)), theme.pen("cap"), facts.source)
    for k, pen in enumerate(("cap", "doubt", "glyph", "remark", "tick")):
        u = 1.5 + 2.0 * k
        yield Stroke(spot.line((u, 0), (u + 1.1, 0)), theme.pen(pen), facts.source)


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
    way = facts.way if len(facts.way) > 1 else spot.line((3.0, 1.0), (0.0, 0.4), (-3.0, -1.6))
    yield Stroke(way, theme.pen("stream"), facts.source)
    yield Stroke(arrow_head(way, 1.7), theme.pen("stream"), facts.source)
    for tip in spot.line((4.2, 1.4), (1.6, 2.0), (-1.4, 1.2)):
        yield Fill((drop(tip, 1.9, facts.down),), theme.ink, facts.source)


def ponding(spot: Spot, facts: Facts, theme: Theme) -> Iterator[Mark]:
    """A puddle with its depth."""
    x, y = spot.at
    for k in range(3):
        half, rise = 3.6 - 0.9 * k, 1.3 - 0.5 * k
        yield Stroke(
            ((x - half, y + rise), (x + half, y + rise)), theme.pen("stream"), facts.source
        )
    yield Stroke(
        ((x - 4.6, y + 1.6), (x, y + 0.1), (x + 4.6, y + 1.6)), theme.pen("glyph"), facts.source
    )
    if facts.text:
        at = (x, y + 2.4)
        yield Label(
            facts.text, at, theme.small, theme.ink, Anchor.MIDDLE, bold=True, halo=theme.paper
        )


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
}


def glyph(rule: str, spot: Spot, facts: Facts, theme: Theme) -> Iterator[Mark]:
    """Yield the glyph of `rule`; a rule without one yields nothing (its ring and flag stand alone)."""
    draw = GLYPHS.get(rule)
    if draw:
        yield from draw(spot, facts, theme)


def spot_along(way: Points, at: Point, up: Point, out: Point) -> Spot:
    """Return the spot at `at` whose uphill direction follows `way` where it has one."""
    if len(way) < 2 or way[0] == way[-1]:
        return Spot(at, up, out)
    along = unit(way[0], way[-1])
    along = along if dot(along, up) >= 0 else (-along[0], -along[1])
    return Spot(at, along, out)
