"""How a section stands: turned so that gravity points down the page, and moved near the origin.

Rules may then take y for up, and lengths keep their precision however far from the origin an
office draws (a drawing 10^6 m out has only some 1e-7 mm to spare for a millimetre).
"""

from collections.abc import Iterable
from dataclasses import dataclass, replace

from enclosure_app.model.place import Area, Line, Point, Points, Shape
from enclosure_app.model.section import DOWN, Break, Piece, Section


@dataclass(frozen=True, slots=True)
class Pose:
    """A turn about `origin` (mm) by the angle with the given cosine and sine."""

    origin: Point
    cosine: float = 1.0
    sine: float = 0.0

    def settled(self, point: Point) -> Point:
        """Return a place of the drawing as a place of the settled section."""
        x, y = point[0] - self.origin[0], point[1] - self.origin[1]
        if self.sine == 0.0 and self.cosine == 1.0:
            return (x, y)
        return (self.cosine * x - self.sine * y, self.sine * x + self.cosine * y)

    def drawn(self, point: Point) -> Point:
        """Return a place of the settled section as a place of the drawing."""
        x, y = point
        return (
            self.cosine * x + self.sine * y + self.origin[0],
            -self.sine * x + self.cosine * y + self.origin[1],
        )

    def all_drawn(self, points: Iterable[Point]) -> Points:
        """Return many places of the settled section as places of the drawing."""
        return tuple(self.drawn(point) for point in points)


def settle(section: Section) -> tuple[Section, Pose]:
    """Return the section with gravity along -y and its frame near the origin, and its pose."""
    down = section.gravity or DOWN
    # gravity (gx, gy) must come to (0, -1)
    xs, ys = zip(*section.frame, strict=True)
    # a turn too small to move anything by an atom's width is none
    pose = Pose((min(xs), min(ys)), cosine=round(-down[1], 15), sine=round(-down[0], 15))
    return _moved(section, pose), pose


def settle_again(section: Section, last: Section, settled: Section, pose: Pose) -> Section:
    """Return `settle(section)`, `settled` being the `last` one: it had the same pieces, elsewhere."""
    rows = zip(section.pieces, last.pieces, settled.pieces, strict=True)
    pieces = (old if new is was else _piece(new, pose) for new, was, old in rows)
    return replace(settled, name=section.name, pieces=tuple(pieces))


def _moved(section: Section, pose: Pose) -> Section:
    def places(points: Points) -> Points:
        return tuple(pose.settled(point) for point in points)

    return replace(
        section,
        frame=places(section.frame),
        inside=places(section.inside),
        outside=places(section.outside),
        pieces=tuple(_piece(piece, pose) for piece in section.pieces),
        gravity=DOWN if section.gravity else None,
        breaks=tuple(_break(each, pose) for each in section.breaks),
        strokes=(),
        texts=(),
    )


def _piece(piece: Piece, pose: Pose) -> Piece:
    return Piece(piece.name, piece.product, _shape(piece.shape, pose), piece.handles, piece.layer)


def _shape(shape: Shape, pose: Pose) -> Shape:
    settled = pose.settled
    if isinstance(shape, Line):
        return Line(tuple(settled(p) for p in shape.points), shape.width, shape.closed)
    holes = tuple(tuple(settled(p) for p in hole) for hole in shape.holes)
    return Area(tuple(settled(p) for p in shape.outer), holes)


def _break(each: Break, pose: Pose) -> Break:
    (a, b), (c, d) = each.near, each.far
    settled = pose.settled
    return Break((settled(a), settled(b)), (settled(c), settled(d)))
