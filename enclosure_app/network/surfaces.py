"""The faces of a layer's pieces: both sides of each line, and the outlines of areas."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from enclosure_app.geometry.faces import faces, ring_of_area, ring_of_line
from enclosure_app.geometry.falling import Surfaces
from enclosure_app.model.place import Line, Points, Shape


@dataclass(frozen=True, slots=True, eq=False)
class LayerSurfaces:
    """The surfaces of a layer; an edge's owner is a place in `names`."""

    names: tuple[str, ...]
    surfaces: Surfaces


def surfaces_of(shapes: Mapping[str, Shape]) -> LayerSurfaces:
    """Return the surfaces of the pieces by name.

    A line is one thin sheet along its middle, whatever width it was drawn with.
    """
    rings = (
        (owner, ring, half)
        for owner, shape in enumerate(shapes.values())
        for ring, half in _rings(shape)
    )
    return LayerSurfaces(tuple(shapes), Surfaces(faces(rings)))


def _rings(shape: Shape) -> Iterator[tuple[list[tuple[float, float]], float]]:
    if isinstance(shape, Line):
        yield from ((ring, shape.width / 2) for ring in _sides(shape))
        return
    yield ring_of_area(shape.outer), 0.0
    for hole in shape.holes:
        yield ring_of_area(hole, hole=True), 0.0


def _sides(line: Line) -> list[list[tuple[float, float]]]:
    points: Points = line.points
    if not line.closed:
        return [ring_of_line(points)]
    return [list(points), list(points[::-1])]
