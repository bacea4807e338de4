"""What is painted: marks with their pens resolved.

All marks are in **sheet millimetres**: mm on paper, x to the right, y up, from the lower left corner of
the page. A painter only paints them, in the order given; it decides nothing. `source` names what
a mark shows (a piece, a finding's key), for whoever points at it.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum

from enclosure_app.drawing.theme import Pen
from enclosure_app.model.place import Point, Points


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


@dataclass(frozen=True, slots=True)
class Fill:
    """An area without an edge; rings inside rings are holes (even and odd)."""

    rings: tuple[Points, ...]
    colour: str
    source: str = ""


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


@dataclass(frozen=True, slots=True)
class Flag:
    """A numbered flag at `at`: the ring of its shape, and the leader from its place, if it has one."""

    number: int
    at: Point
    shape: Points
    edge: Pen
    ground: str
    label: Label
    leader: Stroke | None = None
    source: str = ""

    @property
    def parts(self) -> tuple["Part", ...]:
        """The strokes, fills and the label that make the flag, in painting order."""
        leader = (self.leader,) if self.leader else ()
        ring = Stroke(self.shape, self.edge, self.source, closed=True)
        return (*leader, Fill((self.shape,), self.ground, self.source), ring, self.label)


Part = Stroke | Fill | Label
Mark = Part | Flag


def points_of(mark: Mark) -> Iterable[Point]:
    """Return every point that a mark names (of a label only its place)."""
    match mark:
        case Stroke(points=points):
            return points
        case Fill(rings=rings):
            return [point for ring in rings for point in ring]
        case Label(at=at):
            return [at]
        case Flag():
            return [point for part in mark.parts for point in points_of(part)]
