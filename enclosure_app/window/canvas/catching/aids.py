"""What helps a hand to draw: the grid, how far sheets are drawn off boards, angles lines keep to.

They belong to the view: they are neither undone nor saved with the project.
"""

from dataclasses import dataclass
from math import atan2, degrees

from enclosure_app.geometry.runs.editing import turned
from enclosure_app.model.drawing import Units
from enclosure_app.model.place import Point
from enclosure_app.planning.tracing.guiding import Lay

STEP = 15.0  # degrees


@dataclass(frozen=True, slots=True)
class Aids:
    """How a hand is helped.

    `beside`: how far a sheet is drawn off a board, mm, 0 for not at all; `lay`: on which side of
    its line a traced sheet lies; `grid`: mm between its
    lines, 0 for what is usual in the drawing's units; `kept`: whether lines are kept to every
    `step` degrees; `bead`: the width of a bead whose product says none, mm.
    """

    beside: float = 3.0
    lay: Lay = Lay.ON
    grid: float = 0.0
    grid_shown: bool = False
    step: float = STEP
    kept: bool = False
    bead: float = 6.0

    def spacing(self, units: Units) -> float:
        """Return the spacing of the grid, mm."""
        return self.grid or (50.8 if units.imperial else 50.0)

    def nudge(self, units: Units, *, far: bool) -> float:
        """Return how far an arrow key moves things, mm: a little, or ten and sixteen times that."""
        little, much = (25.4 / 16, 25.4) if units.imperial else (1.0, 10.0)
        return much if far else little


@dataclass(frozen=True, slots=True)
class Ray:
    """The way a line is kept to: from a place, in the direction of a unit vector."""

    start: Point
    ahead: Point

    def foot(self, at: Point) -> Point:
        """Return the place of the line through the ray that is nearest to another."""
        size = (at[0] - self.start[0]) * self.ahead[0] + (at[1] - self.start[1]) * self.ahead[1]
        return self.start[0] + size * self.ahead[0], self.start[1] + size * self.ahead[1]


def kept_ray(anchor: Point, at: Point, step: float, along: float = 0.0) -> Ray:
    """Return the ray from `anchor` that passes nearest to `at`.

    Rays go every `step` degrees from the right, and square to and along the direction `along`
    (degrees) of what was drawn before.
    """
    angle = degrees(atan2(at[1] - anchor[1], at[0] - anchor[0]))
    step = max(step, 1.0)
    upright = round(angle / step) * step
    square = along + round((angle - along) / 90.0) * 90.0
    best = min((upright, square), key=lambda each: abs(each - angle))
    return Ray(anchor, turned([(1.0, 0.0)], (0.0, 0.0), best)[0])
