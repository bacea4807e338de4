"""Where an entity's own coordinates come to lie in the world, through extrusions and inserts."""

import math
from collections.abc import Iterable
from dataclasses import dataclass

from ezdxf.math import OCS, Matrix44, Vec3

from enclosure_app.files.dxf.curves import stretch
from enclosure_app.files.dxf.styles import Style
from enclosure_app.model.place import Point


@dataclass(frozen=True, slots=True)
class Plane:
    """The map of an entity's own flat coordinates to the world: ``x * u + y * v + origin``."""

    u: Point = (1.0, 0.0)
    v: Point = (0.0, 1.0)
    origin: Point = (0.0, 0.0)

    def point(self, x: float, y: float) -> Point:
        """Return one point in the world."""
        return (
            self.u[0] * x + self.v[0] * y + self.origin[0],
            self.u[1] * x + self.v[1] * y + self.origin[1],
        )

    def points(self, places: Iterable[Point]) -> list[Point]:
        """Return points in the world."""
        if self is FLAT:
            return list(places)
        return [self.point(x, y) for x, y in places]

    def direction(self, x: float, y: float) -> Point:
        """Return a vector in the world."""
        return self.u[0] * x + self.v[0] * y, self.u[1] * x + self.v[1] * y

    def angle(self, degrees: float) -> float:
        """Return the direction (degrees, 0 to 360) that an angle in the plane has in the world."""
        radians = math.radians(degrees)
        x, y = self.direction(math.cos(radians), math.sin(radians))
        return round(math.degrees(math.atan2(y, x)), 9) % 360.0

    @property
    def stretch(self) -> float:
        """The largest factor by which a length grows."""
        return stretch(self.u, self.v)

    @property
    def scale(self) -> float:
        """The factor by which lengths grow on average: the root of the area's factor."""
        return math.sqrt(abs(self.u[0] * self.v[1] - self.u[1] * self.v[0]))


FLAT = Plane()
_UP = Vec3(0, 0, 1)


@dataclass(frozen=True, slots=True)
class Placement:
    """How the content of a layout or of one insert is placed, and what it takes over.

    `sagitta` is in world units; `style` is the insert's, for layer 0 and ByBlock; `block` is the
    outermost block; `prefix` holds the handles of the inserts; `copy` counts repeats in arrays.
    """

    sagitta: float
    matrix: Matrix44 | None = None
    style: Style | None = None
    block: str = ""
    prefix: str = ""
    copy: int = 1

    def handle(self, own: str) -> str:
        """Return the handle that is unique in this reading."""
        name = f"{self.prefix}{own}"
        return name if self.copy == 1 else f"{name}#{self.copy}"

    def world(self, points: Iterable[Vec3]) -> list[Point]:
        """Return points given in three dimensions as the drawing shows them from above."""
        if self.matrix is not None:
            points = self.matrix.transform_vertices(points)
        return [(point.x, point.y) for point in points]

    def plane(self, extrusion: Vec3 | None = None, elevation: float = 0.0) -> Plane:
        """Return the plane of entities whose coordinates are along an extrusion direction."""
        upright = extrusion is None or extrusion == _UP
        if upright and self.matrix is None:
            return FLAT
        ocs = OCS(_UP if upright or extrusion is None else extrusion)
        u, v, origin = ocs.ux, ocs.uy, ocs.uz * elevation
        if self.matrix is not None:
            u, v = self.matrix.transform_direction(u), self.matrix.transform_direction(v)
            origin = self.matrix.transform(origin)
        return Plane((u.x, u.y), (v.x, v.y), (origin.x, origin.y))
