"""Places on the sheet and the two shapes that a piece can have.

Lengths are millimetres, x to the right, y up.
"""

from dataclasses import dataclass

Point = tuple[float, float]
Points = tuple[Point, ...]


@dataclass(frozen=True, slots=True)
class Line:
    """The run of a sheet: a polyline with the thickness it was drawn with.

    `points` holds two or more points; `width` is the drawn thickness in mm (0 for a bare line);
    a `closed` line joins its last point to its first and has no ends.
    """

    points: Points
    width: float = 0.0
    closed: bool = False


@dataclass(frozen=True, slots=True)
class Area:
    """A filled region: an outer ring and rings around holes, none repeating its first point."""

    outer: Points
    holes: tuple[Points, ...] = ()


Shape = Line | Area
