"""Edits of pieces: adding, removing, moving, turning, mirroring, copying, products, points.

Each takes a project and gives a new one. `which` is the section's name or place. A piece that an
edit does not name stays the very same object. Every edit raises `EnclosureError`, in the user's
words, for a section or piece that does not exist and for what cannot be done.
"""

from collections.abc import Callable, Collection, Sequence
from dataclasses import replace
from functools import partial
from math import isfinite

from enclosure_app.errors import EnclosureError
from enclosure_app.geometry.runs.editing import mirrored, moved, sound_ring, tidy, turned
from enclosure_app.language import say
from enclosure_app.model.edits.looking_up import (
    Which,
    finite,
    new_names,
    piece_of,
    same_place,
    section_of,
    with_pieces,
    with_section,
)
from enclosure_app.model.edits.sealing import forgotten
from enclosure_app.model.place import Area, Line, Point, Points, Shape
from enclosure_app.model.project import Project
from enclosure_app.model.section import Piece, Section

_ON_TOP = 1e-9  # mm: an axis needs two points that are further apart


def add_piece(
    project: Project, which: Which, product: str, shape: Shape, *, stem: str = "drawn"
) -> Project:
    """Add a piece; it comes last in its section and gets a name such as ``drawn-1``."""
    return add_pieces(project, which, [Piece(stem, product, shape)])


def add_pieces(project: Project, which: Which, pieces: Sequence[Piece]) -> Project:
    """Add pieces in order; the name of each is taken as the stem of its new name."""
    section = section_of(project, which)
    for piece in pieces:
        _must_have_product(section, piece.product)
    names = new_names(section, [piece.name for piece in pieces])
    named = [
        replace(piece, name=name, shape=_sound(piece.shape))
        for piece, name in zip(pieces, names, strict=True)
    ]
    return with_section(project, which, replace(section, pieces=(*section.pieces, *named)))


def remove_pieces(project: Project, which: Which, names: Collection[str]) -> Project:
    """Remove pieces, and what was declared about their joints."""
    for name in names:
        piece_of(project, which, name)
    without = with_pieces(project, which, dict.fromkeys(names, ()))
    return forgotten(without, which, names)


def replace_shape(project: Project, which: Which, name: str, shape: Shape) -> Project:
    """Give a piece another shape."""
    piece = piece_of(project, which, name)
    return with_pieces(project, which, {name: [replace(piece, shape=_sound(shape))]})


def set_product(project: Project, which: Which, names: Collection[str], product: str) -> Project:
    """Make pieces of another product, which must be one of the section's."""
    _must_have_product(section_of(project, which), product)
    return _each(project, which, names, lambda piece: replace(piece, product=product))


def move_pieces(project: Project, which: Which, names: Collection[str], by: Point) -> Project:
    """Move pieces by a vector, mm."""
    finite((by,))
    return _reshaped(project, which, names, partial(moved, by=by))


def rotate_pieces(
    project: Project, which: Which, names: Collection[str], about: Point, degrees: float
) -> Project:
    """Turn pieces about a point, degrees anticlockwise."""
    finite((about, (degrees, 0.0)))
    return _reshaped(project, which, names, partial(turned, about=about, degrees=degrees))


def mirror_pieces(
    project: Project, which: Which, names: Collection[str], axis: tuple[Point, Point]
) -> Project:
    """Mirror pieces in the line through two points, which must be apart.

    Raises:
        EnclosureError: a piece is missing, or the two points are one.
    """
    a, b = finite(axis)
    if same_place(a, b, _ON_TOP):
        raise EnclosureError(
            say("The two points of the mirror line are the same: give two places.")
        )
    return _reshaped(project, which, names, partial(mirrored, a=a, b=b))


def copy_pieces(project: Project, which: Which, names: Collection[str], by: Point) -> Project:
    """Copy pieces, moved by a vector; the copies come last, in the order of the originals.

    A copy is nothing of the drawing that was read, so it has no handles.
    """
    finite((by,))
    for name in names:
        piece_of(project, which, name)
    chosen = [piece for piece in section_of(project, which).pieces if piece.name in names]
    copies = [
        replace(
            piece, name="copy", handles=(), shape=_every_run(piece.shape, partial(moved, by=by))
        )
        for piece in chosen
    ]
    return add_pieces(project, which, copies)


def move_point(
    project: Project, which: Which, name: str, at: int | tuple[int, int], to: Point
) -> Project:
    """Move one point of a piece.

    Args:
        project: The project.
        which: The section.
        name: The piece.
        at: Which point, from 0; for an area a pair of ring and point, ring 0 being the outer one.
        to: Its new place, mm.
    """

    def change(points: Points, index: int) -> Points:
        return (*points[:index], to, *points[index + 1 :])

    return _with_point(project, which, name, at, change)


def insert_point(
    project: Project, which: Which, name: str, at: int | tuple[int, int], place: Point
) -> Project:
    """Add a point to a piece just after one that it has (see `move_point` for `at`)."""

    def change(points: Points, index: int) -> Points:
        return (*points[: index + 1], place, *points[index + 1 :])

    return _with_point(project, which, name, at, change)


def delete_point(project: Project, which: Which, name: str, at: int | tuple[int, int]) -> Project:
    """Take one point out of a piece, which must keep enough of them (see `move_point`)."""

    def change(points: Points, index: int) -> Points:
        return (*points[:index], *points[index + 1 :])

    return _with_point(project, which, name, at, change)


def _with_point(
    project: Project,
    which: Which,
    name: str,
    at: int | tuple[int, int],
    change: Callable[[Points, int], Points],
) -> Project:
    shape = piece_of(project, which, name).shape
    ring, index = at if isinstance(at, tuple) else (0, at)
    rings = [shape.points] if isinstance(shape, Line) else [shape.outer, *shape.holes]
    if not (0 <= ring < len(rings) and 0 <= index < len(rings[ring])):
        raise EnclosureError(say('"{name}" has no such point: pick one of its points.', name=name))
    rings[ring] = change(rings[ring], index)
    changed: Shape
    if isinstance(shape, Line):
        changed = replace(shape, points=rings[0])
    else:
        changed = Area(rings[0], tuple(rings[1:]))
    return replace_shape(project, which, name, changed)


def _reshaped(
    project: Project,
    which: Which,
    names: Collection[str],
    change: Callable[[Points], Points],
) -> Project:
    return _each(
        project,
        which,
        names,
        lambda piece: replace(piece, shape=_every_run(piece.shape, change)),
    )


def _each(
    project: Project, which: Which, names: Collection[str], change: Callable[[Piece], Piece]
) -> Project:
    pieces = [piece_of(project, which, name) for name in names]
    return with_pieces(project, which, {piece.name: [change(piece)] for piece in pieces})


def _every_run(shape: Shape, change: Callable[[Points], Points]) -> Shape:
    if isinstance(shape, Line):
        return replace(shape, points=change(shape.points))
    return Area(change(shape.outer), tuple(change(hole) for hole in shape.holes))


def _must_have_product(section: Section, product: str) -> None:
    if product not in section.products:
        raise EnclosureError(
            say(
                'There is no product "{product}" in section "{section}": choose one of the list, or '
                "add it there first.",
                product=product,
                section=section.name,
            )
        )


def _sound(shape: Shape) -> Shape:
    """Return a shape that a person may have drawn badly, or say what is wrong with it."""
    if isinstance(shape, Line):
        _must_be_line(shape)
    else:
        for ring in (shape.outer, *shape.holes):
            if not sound_ring(finite(ring)):
                raise EnclosureError(
                    say(
                        "An area needs three corners or more, and its outline must not cross itself: move"
                        " or add a point."
                    )
                )
    return shape


def _must_be_line(line: Line) -> None:
    if len(tidy(finite(line.points)) if line.points else ()) < (3 if line.closed else 2):
        if line.closed:
            raise EnclosureError(
                say("A line needs at least three points that are apart: give another place.")
            )
        raise EnclosureError(
            say("A line needs at least two points that are apart: give another place.")
        )
    if not (isfinite(line.width) and line.width >= 0):
        raise EnclosureError(
            say("A line cannot be {width:g} mm thick: give 0 or more.", width=line.width)
        )
