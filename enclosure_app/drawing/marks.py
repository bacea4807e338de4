"""What is painted: marks with their pens resolved.

All marks are in **sheet millimetres**: mm on paper, x to the right, y up, from the lower left corner of
the page. A painter only paints them, in the order given; it decides nothing. `source` names what
a mark shows (a piece, a finding's key), for whoever points at it. `overlays` are those that it lies
on: it is seen while any of them is, and always if it lies on none; what lies on the findings and
on a layer is seen while both are. `tag` says what a mark is to whoever has a page read aloud; what
has none is ornament.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from enum import StrEnum

from enclosure_app.drawing.shapes import circle, verdict_shape
from enclosure_app.drawing.tags import Tag
from enclosure_app.drawing.theme import Pen
from enclosure_app.model.place import Point, Points
from enclosure_app.model.product import Control
from enclosure_app.model.said.decision import State
from enclosure_app.model.underlay import Underlay

BADGE = 1.35  # mm: the radius of the disc on a flag that tells the verdict
_BADGE_LINE, _BADGE_EDGE = 0.32, 0.25


class Overlay(StrEnum):
    """A transparent sheet over the paper that a reader of the PDF can take away."""

    LINEWORK = "linework"
    WATER = "water"
    AIR = "air"
    VAPOUR = "vapour"
    HEAT = "heat"
    FINDINGS = "findings"


Overlays = tuple[Overlay, ...]


def overlays_of(*controls: Control) -> Overlays:
    """Return the overlays of control layers."""
    return tuple(Overlay(control.value) for control in controls)


class Anchor(StrEnum):
    """Which end of a text stands at its place; texts stand on their base line."""

    START = "start"
    MIDDLE = "middle"
    END = "end"


@dataclass(frozen=True, slots=True)
class Stroke:
    """A line along `points`; a `closed` one joins its last point to its first."""

    points: Points
    pen: Pen
    source: str = ""
    closed: bool = False
    overlays: Overlays = ()
    tag: Tag | None = None


@dataclass(frozen=True, slots=True)
class Fill:
    """An area without an edge; rings inside rings are holes (even and odd)."""

    rings: tuple[Points, ...]
    colour: str
    source: str = ""
    overlays: Overlays = ()
    tag: Tag | None = None


@dataclass(frozen=True, slots=True)
class Label:
    """A text on its base line; `size` is the height of its capitals in mm.

    `angle` is in degrees anticlockwise about `at`. `halo` is a colour to paint around the
    letters so that they can be read over lines, "" for none.
    """

    text: str
    at: Point
    size: float
    colour: str
    anchor: Anchor = Anchor.START
    angle: float = 0.0
    bold: bool = False
    halo: str = ""
    source: str = ""
    overlays: Overlays = ()
    tag: Tag | None = None


@dataclass(frozen=True, slots=True)
class Flag:
    """A numbered flag at `at`: the ring of its shape, and the leader from its place, if it has one.

    What was decided about its finding stands on its upper right corner.
    """

    number: int
    at: Point
    shape: Points
    edge: Pen
    ground: str
    label: Label
    leader: Stroke | None = None
    source: str = ""
    state: State = State.OPEN
    overlays: Overlays = ()
    tag: Tag | None = None

    @property
    def parts(self) -> tuple["Part", ...]:
        """The strokes, fills and the label that make the flag, in painting order."""
        leader = (self.leader,) if self.leader else ()
        ring = Stroke(self.shape, self.edge, self.source, closed=True)
        body = (Fill((self.shape,), self.ground, self.source), ring, self.label)
        return (*leader, *body, *self._badge())

    def _badge(self) -> tuple["Part", ...]:
        corner = max(x for x, _ in self.shape), max(y for _, y in self.shape)
        return badge(self.state, corner, (self.label.colour, self.ground), self.source)


def badge(
    state: State, centre: Point, inks: tuple[str, str], source: str = ""
) -> tuple["Part", ...]:
    """Return the disc that tells a verdict by its shape, in the colours of the disc and the shape."""
    if state is State.OPEN:
        return ()
    dark, light = inks
    rings, lines = verdict_shape(state, centre)
    ring = circle(centre, BADGE)
    disc = (
        Fill((ring,), dark, source),
        Stroke(ring, Pen(light, _BADGE_EDGE), source, closed=True),
    )
    filled = tuple(Fill((ring,), light, source) for ring in rings)
    return (*disc, *filled, *(Stroke(line, Pen(light, _BADGE_LINE), source) for line in lines))


@dataclass(frozen=True, slots=True)
class Picture:
    """An underlay whose lower left corner stands at `at`, a pixel of it `pixel` mm large.

    It is turned by the underlay's angle, painted with a `share` of its strength, and seen only
    within the ring `within`.
    """

    underlay: Underlay
    at: Point
    pixel: float
    share: float
    within: Points
    source: str = ""
    overlays: Overlays = ()
    tag: Tag | None = None


Part = Stroke | Fill | Label
Mark = Part | Flag | Picture


def on(overlays: Overlays, marks: Iterable[Mark]) -> Iterator[Mark]:
    """Yield the marks laid on overlays, except those that lie on their own already."""
    for mark in marks:
        yield mark if mark.overlays else replace(mark, overlays=overlays)


def tagged(tag: Tag, marks: Iterable[Mark]) -> Iterator[Mark]:
    """Yield the marks with a tag, except those that have their own already."""
    for mark in marks:
        yield mark if mark.tag else replace(mark, tag=tag)


def points_of(mark: Mark) -> Iterable[Point]:
    """Return every point that a mark names (of a label only its place)."""
    match mark:
        case Stroke(points=points):
            return points
        case Fill(rings=rings):
            return [point for ring in rings for point in ring]
        case Label(at=at):
            return [at]
        case Picture(within=within):
            return within
        case Flag():
            return [point for part in mark.parts for point in points_of(part)]
