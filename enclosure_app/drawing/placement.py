"""Where things stand on the sheet: boxes in sheet mm, and the way from section mm to them."""

from collections.abc import Iterable
from dataclasses import dataclass

from enclosure_app.model.place import Point, Points


@dataclass(frozen=True, slots=True)
class Box:
    """An upright rectangle in mm."""

    left: float
    bottom: float
    right: float
    top: float

    @property
    def width(self) -> float:
        """From left to right."""
        return self.right - self.left

    @property
    def height(self) -> float:
        """From bottom to top."""
        return self.top - self.bottom

    @property
    def centre(self) -> Point:
        """The point in the middle."""
        return (self.left + self.right) / 2, (self.bottom + self.top) / 2

    @property
    def ring(self) -> Points:
        """The four corners, anticlockwise from the lower left one."""
        left, bottom, right, top = self.left, self.bottom, self.right, self.top
        return (left, bottom), (right, bottom), (right, top), (left, top)

    def inset(self, sides: float, ends: float | None = None) -> "Box":
        """Return the box made smaller by `sides` left and right and by `ends` above and below."""
        v = sides if ends is None else ends
        return Box(self.left + sides, self.bottom + v, self.right - sides, self.top - v)

    def holds(self, point: Point, slack: float = 1e-6) -> bool:
        """Whether `point` lies in the box or on its edge."""
        x, y = point
        across = self.left - slack <= x <= self.right + slack
        return across and self.bottom - slack <= y <= self.top + slack

    def clamp(self, point: Point) -> Point:
        """Return the place in the box that is nearest to `point`."""
        x, y = point
        return min(max(x, self.left), self.right), min(max(y, self.bottom), self.top)


def box_around(points: Iterable[Point]) -> Box:
    """Return the smallest box that holds all `points`, of which there is at least one."""
    xs, ys = zip(*points, strict=True)
    return Box(min(xs), min(ys), max(xs), max(ys))


@dataclass(frozen=True, slots=True)
class Placement:
    """The way from section mm to sheet mm: 1:`scale`, with section point `origin` put at `at`."""

    scale: float
    origin: Point = (0.0, 0.0)
    at: Point = (0.0, 0.0)

    def point(self, place: Point) -> Point:
        """Return where a point of the section stands on the sheet."""
        x = self.at[0] + (place[0] - self.origin[0]) / self.scale
        return x, self.at[1] + (place[1] - self.origin[1]) / self.scale

    def points(self, places: Iterable[Point]) -> Points:
        """Return where points of the section stand on the sheet."""
        return tuple(self.point(place) for place in places)

    def length(self, mm: float) -> float:
        """Return how long `mm` of the section are on the sheet."""
        return mm / self.scale

    def back(self, place: Point) -> Point:
        """Return the point of the section that stands at `place` on the sheet."""
        x = self.origin[0] + (place[0] - self.at[0]) * self.scale
        return x, self.origin[1] + (place[1] - self.at[1]) * self.scale
