"""A piece as it is compared: its run or ring, where that lies, and what it may be taken for."""

from collections.abc import Iterable
from dataclasses import dataclass

from enclosure_app.geometry.runs.likeness import length, middle, same_run
from enclosure_app.model.place import Area, Point, Points, Shape
from enclosure_app.model.section import Piece

SAME = 0.5
"""Mm: how far apart two places may lie that are one. A drawing that was written with inches of two
decimals is off by a quarter of that."""


@dataclass(frozen=True, slots=True)
class Motion:
    """How a whole section came to lie elsewhere: mirrored about the plumb line or not, then moved."""

    shift: Point = (0.0, 0.0)
    mirrored: bool = False

    def place(self, point: Point) -> Point:
        """Return where a place of the earlier drawing lies in the later one."""
        x = -point[0] if self.mirrored else point[0]
        return (x + self.shift[0], point[1] + self.shift[1])

    def places(self, points: Iterable[Point]) -> Points:
        """Return where many places lie."""
        return tuple(map(self.place, points))

    @property
    def stays(self) -> bool:
        """Whether everything lies where it lay."""
        return not self.mirrored and max(map(abs, self.shift)) <= SAME


def moved_shape(shape: Shape, motion: Motion) -> Shape:
    """Return a shape where a motion brings it."""
    if isinstance(shape, Area):
        return Area(motion.places(shape.outer), tuple(map(motion.places, shape.holes)))
    return type(shape)(motion.places(shape.points), shape.width, shape.closed)


@dataclass(frozen=True, slots=True)
class Outline:
    """One piece, seen from outside. `names` are the handles it is drawn with, or its own name."""

    piece: Piece
    points: Points
    closed: bool
    centre: Point
    long: float
    names: frozenset[str]

    @property
    def kind(self) -> tuple[str, str, bool]:
        """What it can only be matched with: the same product, as a line, loop or area."""
        return (self.piece.product, type(self.piece.shape).__name__, self.closed)

    def lies_as(self, other: "Outline", motion: Motion) -> bool:
        """Whether it lies, once moved, where another lies: one piece, drawn again."""
        if self.kind != other.kind:
            return False
        if not same_run(motion.places(self.points), other.points, SAME, closed=self.closed):
            return False
        return _same_holes(self.piece.shape, other.piece.shape, motion)


def outline_points(shape: Shape) -> Points:
    """Return the run of a line, or the outer ring of an area."""
    return shape.outer if isinstance(shape, Area) else shape.points


def outline(piece: Piece) -> Outline:
    """Return a piece as it is compared."""
    shape = piece.shape
    points = outline_points(shape)
    closed = isinstance(shape, Area) or shape.closed
    names = frozenset(piece.handles or (piece.name,))
    return Outline(piece, points, closed, middle(points), length(points), names)


def _same_holes(one: Shape, other: Shape, motion: Motion) -> bool:
    if not isinstance(one, Area) or not isinstance(other, Area):
        return True
    if len(one.holes) != len(other.holes):
        return False
    return all(
        any(same_run(motion.places(hole), each, SAME, closed=True) for each in other.holes)
        for hole in one.holes
    )
