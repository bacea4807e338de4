"""Puts a ready-made part into a section that is being drawn, at a place, or turned to the other hand."""

from collections.abc import Callable
from dataclasses import replace
from functools import partial
from types import MappingProxyType

from enclosure_app.geometry.runs.editing import mirrored, moved
from enclosure_app.model.edits import Which, add_pieces, replace_section, section_of
from enclosure_app.model.place import Area, Line, Point, Points, Shape
from enclosure_app.model.project import Project
from enclosure_app.model.section import Section

Change = Callable[[Points], Points]


def other_hand(part: Section) -> Section:
    """Return a part with its outside on the other side: mirrored in the upright line through 0."""
    flip = partial(mirrored, a=(0.0, 0.0), b=(0.0, 1.0))
    return _changed(part, lambda points: tuple(flip(points)))


def put_part(project: Project, which: Which, part: Section, at: Point) -> Project:
    """Put the pieces of a part into a section, with the part's 0, 0 at a place (mm).

    An empty section takes over the part's frame and marks too; one that is drawn in keeps its frame,
    and takes a mark only of a side that it has no mark of.
    """
    section = section_of(project, which)
    there = _changed(part, lambda points: tuple(moved(points, at)))
    used = {piece.product for piece in there.pieces}
    own = {key: product for key, product in there.products.items() if key in used}
    taken = replace(
        section,
        products=MappingProxyType({**own, **section.products}),
        inside=section.inside or there.inside,
        outside=section.outside or there.outside,
    )
    if not section.pieces and not section.strokes:
        taken = replace(
            taken,
            frame=there.frame,
            frame_drawn=True,
            inside=there.inside,
            outside=there.outside,
        )
    if own.keys() <= section.products.keys():
        taken = replace(taken, products=section.products)
    return add_pieces(replace_section(project, which, taken), which, there.pieces)


def _changed(part: Section, change: Change) -> Section:
    pieces = tuple(replace(p, shape=_reshaped(p.shape, change)) for p in part.pieces)
    return replace(
        part,
        frame=change(part.frame),
        inside=change(part.inside),
        outside=change(part.outside),
        pieces=pieces,
    )


def _reshaped(shape: Shape, change: Change) -> Shape:
    if isinstance(shape, Line):
        return replace(shape, points=change(shape.points))
    return Area(change(shape.outer), tuple(change(hole) for hole in shape.holes))
