"""Copies of pieces that stand where the originals do, to be turned or flipped away from them."""

from collections.abc import Collection

from enclosure_app.model.edits.looking_up import Which, section_of
from enclosure_app.model.edits.pieces import copy_pieces
from enclosure_app.model.project import Project


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
