"""Turns, scales and moves in one: what brings a picture to the place and size it should have."""

from cmath import phase, rect
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import islice
from math import degrees, radians

from enclosure_app.geometry.in_turns import listed, placed

Point = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Similarity:
    """Places seen as complex numbers: each is multiplied by `by`, then moved by `shift`."""

    by: complex = 1 + 0j
    shift: complex = 0j

    @classmethod
    def moving(cls, by: Point) -> "Similarity":
        """Return a move by a vector."""
        return cls(shift=complex(*by))

    @classmethod
    def about(cls, fixed: Point, factor: float, turn: float = 0.0) -> "Similarity":
        """Return a scaling by `factor` and a turn by degrees anticlockwise that leave a place."""
        quarter = {0.0: 1 + 0j, 90.0: 1j, 180.0: -1 + 0j, 270.0: -1j}.get(turn % 360.0)
        by = factor * (quarter if quarter is not None else rect(1.0, radians(turn)))
        return cls(by, complex(*fixed) * (1 - by))

    @classmethod
    def onto(cls, places: tuple[Point, Point], others: tuple[Point, Point]) -> "Similarity":
        """Return what lays two different places onto two others."""
        a, b = (complex(*place) for place in places)
        c, d = (complex(*place) for place in others)
        by = (d - c) / (b - a)
        return cls(by, c - by * a)

    @property
    def factor(self) -> float:
        """How much larger everything becomes."""
        return abs(self.by)

    @property
    def turn(self) -> float:
        """How far everything is turned, degrees anticlockwise."""
        return degrees(phase(self.by))

    def place(self, point: Point) -> Point:
        """Return where a place comes to lie."""
        to = self.by * complex(*point) + self.shift
        return (to.real, to.imag)

    def places(self, points: Sequence[Point]) -> tuple[Point, ...]:
        """Return where places come to lie."""
        (a, b), (x, y) = (self.by.real, self.by.imag), (self.shift.real, self.shift.imag)
        return tuple([(a * px - b * py + x, b * px + a * py + y) for px, py in points])

    def runs(self, runs: Sequence[Sequence[Point]]) -> list[tuple[Point, ...]]:
        """Return where the places of many runs come to lie, all in one go."""
        if not runs:
            return []
        counts = [len(run) for run in runs]
        flat = placed(runs)
        a, b = self.by.real, self.by.imag
        x = a * flat[:, 0] - b * flat[:, 1] + self.shift.real
        y = b * flat[:, 0] + a * flat[:, 1] + self.shift.imag
        places = iter(zip(listed(x), listed(y), strict=True))
        return [tuple(islice(places, count)) for count in counts]
