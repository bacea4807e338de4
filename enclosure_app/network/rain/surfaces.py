"""The faces of a layer's pieces: both sides of each line, and the outlines of areas."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from enclosure_app.geometry.outlines.clipping import clip_area, clip_run, standing
from enclosure_app.geometry.surfaces.faces import Floats, Ints, faces, ring_of_area, ring_of_line
from enclosure_app.geometry.surfaces.falling import Surfaces
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


@dataclass(frozen=True, slots=True, eq=False)
class SurfacesAgain:
    """Surfaces of which the edges in `rows` are elsewhere now: `few` are the surfaces of these alone.

    `boxes` (k, 2, 2) are the extents of each of them, where it was and where it is.
    """

    layer: LayerSurfaces
    few: LayerSurfaces
    rows: Ints
    boxes: Floats


def surfaces_again(
    last: LayerSurfaces, moved: Mapping[str, Shape], frame: Points = ()
) -> SurfacesAgain | None:
    """Return the surfaces after some pieces have moved; None where their edges are others in number."""
    owners = [number for number, name in enumerate(last.names) if name in moved]
    few = surfaces_of({last.names[number]: moved[last.names[number]] for number in owners}, frame)
    old, new = last.surfaces.faces, few.surfaces.faces
    rows = np.flatnonzero(np.isin(old.owner, owners))
    owner = np.array(owners, dtype=np.intp)[new.owner]
    if not np.array_equal(owner, old.owner[rows]) or not np.array_equal(
        rows[new.after], old.after[rows]
    ):
        return None
    both = np.stack([np.concatenate([old.a[rows], new.a]), np.concatenate([old.b[rows], new.b])])
    boxes = np.stack([both.min(axis=0), both.max(axis=0)], axis=1)
    surfaces = last.surfaces.again(old.again(new, rows), rows)
    return SurfacesAgain(LayerSurfaces(last.names, surfaces), few, rows, boxes)


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
