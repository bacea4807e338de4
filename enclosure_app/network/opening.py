"""The opening: the widest way from outside to inside that crosses no piece of a layer.

It proves continuity from the other side: the pen cannot follow the layer without a lift exactly
where something can get through it. By planar duality the width of the opening equals the smallest
largest lift that any trace can have.
"""

from collections.abc import Sequence
from dataclasses import dataclass, field

from enclosure_app.errors import EnclosureError
from enclosure_app.geometry.openings.cavities import CrossingError
from enclosure_app.geometry.openings.resealing import Rooms
from enclosure_app.geometry.openings.widest_way import MarkError, way_and_rooms
from enclosure_app.geometry.rims.solids import Solid, area_solid, line_solid
from enclosure_app.language import say
from enclosure_app.model.place import Area, Point, Points, Shape


@dataclass(frozen=True, slots=True)
class Opening:
    """The widest way in.

    `width` is mm, 0 where the layer is closed; `path` leads from an outside to an inside mark and
    `narrowest` holds the two ends of its narrowest passage. `rooms` are what a closed layer
    keeps apart, for the next time.
    """

    width: float
    path: Points = ()
    narrowest: tuple[Point, Point] | None = None
    rooms: Rooms | None = field(default=None, repr=False, compare=False)

    @property
    def unhindered(self) -> bool:
        """Whether the way in meets no passage: the marks stand in one and the same open space."""
        return self.width > 0 and self.narrowest is None


def find_opening(  # noqa: PLR0913, PLR0917  # what is drawn, the two sides, and one tolerance
    frame: Sequence[Point],
    shapes: Sequence[Shape],
    bridges: Sequence[tuple[Point, Point]],
    outside: Sequence[Point],
    inside: Sequence[Point],
    touch: float,
) -> Opening:
    """Return the widest way from `outside` to `inside` marks between `shapes`.

    Args:
        frame: the frame's ring without a repeated first point, mm.
        shapes: the pieces of one layer.
        bridges: chords between pieces, from face to face, that close a lap drawn apart.
        outside: the outside marks.
        inside: the inside marks.
        touch: passages this wide (mm) or narrower are closed.

    Raises:
        EnclosureError: a side has no mark, a mark lies in a piece or outside the frame, or the
            pieces lie over one another too closely to tell what is between them.
    """
    for side, marks in (("outside", outside), ("inside", inside)):
        if not marks:
            raise EnclosureError(
                say("There is no {side} mark in the frame: place one.", side=say(side))
            )
    solids = [_solid(shape) for shape in shapes]
    try:
        way, rooms = way_and_rooms(frame, solids, bridges, (outside, inside), touch)
    except MarkError as error:
        side = "inside" if error.place in inside else "outside"
        x, y = error.place
        raise EnclosureError(
            say(
                "The {side} mark at {x:.0f}, {y:.0f} lies on a piece or beyond the frame: move it"
                " into the open.",
                side=say(side),
                x=x,
                y=y,
            )
        ) from error
    except CrossingError as error:
        raise EnclosureError(
            say(
                "The pieces of this layer lie over one another so closely that the opening cannot"
                " be worked out: draw each piece once, and only what belongs to the layer."
            )
        ) from error
    return Opening(way.width, way.path, way.narrowest, rooms)


def _solid(shape: Shape) -> Solid:
    if isinstance(shape, Area):
        return area_solid(shape.outer, shape.holes)
    return line_solid(shape.points, shape.width, closed=shape.closed)
