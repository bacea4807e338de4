"""Copies of pieces: where the originals stand, to be turned away from them, or put in elsewhere."""

from collections.abc import Collection, Mapping, Sequence
from dataclasses import replace
from types import MappingProxyType

from enclosure_app.geometry.runs.editing import moved
from enclosure_app.model.edits.looking_up import Which, finite, section_of, with_section
from enclosure_app.model.edits.pieces import add_pieces, copy_pieces
from enclosure_app.model.place import Area, Line, Point, Shape
from enclosure_app.model.product import Product
from enclosure_app.model.project import Project
from enclosure_app.model.section import Piece


def doubled(
    project: Project, which: Which, names: Collection[str]
) -> tuple[Project, tuple[str, ...]]:
    """Copy pieces where they stand; return the project and the names of the copies.

    Raises:
        EnclosureError: there is no such section or piece.
    """
    known = section_of(project, which).by_name
    after = copy_pieces(project, which, names, (0.0, 0.0))
    pieces = section_of(after, which).pieces
    return after, tuple(piece.name for piece in pieces if piece.name not in known)


def put_in(
    project: Project,
    which: Which,
    pieces: Sequence[Piece],
    products: Mapping[str, Product],
    by: Point = (0.0, 0.0),
) -> Project:
    """Put copies of pieces into a section, moved by a vector; they come last and get new names.

    Args:
        project: The project.
        which: The section that gets them.
        pieces: The pieces, of this section or of another.
        products: What the pieces are made of, by its key; what the section does not know is added.
        by: The vector, mm.
    """
    finite((by,))
    section = section_of(project, which)
    used = {piece.product for piece in pieces}
    new = {key: product for key, product in products.items() if key in used}
    if not new.keys() <= section.products.keys():
        known = MappingProxyType({**new, **section.products})
        project = with_section(project, which, replace(section, products=known))
    copies = [
        replace(p, name="copy", handles=(), layer="", shape=_moved(p.shape, by)) for p in pieces
    ]
    return add_pieces(project, which, copies)


def _moved(shape: Shape, by: Point) -> Shape:
    if isinstance(shape, Line):
        return replace(shape, points=moved(shape.points, by))
    return Area(moved(shape.outer, by), tuple(moved(hole, by) for hole in shape.holes))
