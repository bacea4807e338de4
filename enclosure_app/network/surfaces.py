"""The faces of a layer's pieces: both sides of each line, and the outlines of areas."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from enclosure_app.geometry.clipping import clip_area, clip_run, standing
from enclosure_app.geometry.faces import faces, ring_of_area, ring_of_line
from enclosure_app.geometry.falling import Surfaces
from enclosure_app.model.place import Area, Line, Points, Shape


@dataclass(frozen=True, slots=True, eq=False)
class LayerSurfaces:
    """The surfaces of a layer; an edge's owner is a place in `names`."""

    names: tuple[str, ...]
    surfaces: Surfaces


def surfaces_of(shapes: Mapping[str, Shape], frame: Points = ()) -> LayerSurfaces:
    """Return the surfaces of the pieces by name; with a `frame`, of what of them lies in it.

    A line is one thin sheet along its middle, whatever width it was drawn with.
    """
    rings = (
        (owner, ring, half)
        for owner, shape in _framed(tuple(shapes.values()), frame)
        for ring, half in _rings(shape)
    )
    return LayerSurfaces(tuple(shapes), Surfaces(faces(rings)))


def _framed(shapes: Sequence[Shape], frame: Points) -> Iterator[tuple[int, Shape]]:
    """Yield the parts of each shape in the frame, with the shape's number."""
    if not frame:
        yield from enumerate(shapes)
        return
    whole, _ = standing([_outline(shape) for shape in shapes], frame)
    for owner, (shape, inside) in enumerate(zip(shapes, whole.tolist(), strict=True)):
        if inside:
            yield owner, shape
        else:
            yield from ((owner, part) for part in _parts(shape, frame))


def _outline(shape: Shape) -> Points:
    if isinstance(shape, Line):
        return (*shape.points, shape.points[0]) if shape.closed else shape.points
    return (*shape.outer, shape.outer[0])


def _parts(shape: Shape, frame: Points) -> Iterator[Shape]:
    if isinstance(shape, Line):
        for points in clip_run(shape.points, frame, closed=shape.closed):
            yield Line(points, shape.width)
    else:
        for outer, holes in clip_area(shape.outer, shape.holes, frame):
            yield Area(outer, holes)


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
