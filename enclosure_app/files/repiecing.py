"""Makes pieces of the lines of an open section."""

from collections.abc import Callable, Collection, Sequence
from dataclasses import replace

from enclosure_app.files.chains import Drawn, pieces_from
from enclosure_app.files.drawn_lines import paths_of
from enclosure_app.files.frames import Frame
from enclosure_app.files.sections import clipped_to
from enclosure_app.model.section import Piece, Section, Stroke


def pieces_of(
    strokes: Sequence[Stroke],
    meant: Callable[[Stroke], str],
    wanted: Collection[str],
    there: Sequence[Piece],
    section: Section,
) -> tuple[Piece, ...]:
    """Return the pieces that lines of a section come to, with names that no other piece has.

    Args:
        strokes: All that is drawn in the section.
        meant: The key of the product that a line is of.
        wanted: The handles of the lines that are to be pieces.
        there: The pieces that the section has already.
        section: The section, for its products and its frame.
    """
    if not wanted:
        return ()
    products = {meant(stroke) for stroke in strokes if stroke.handle in wanted}
    alike = [s for s in strokes if s.handle and meant(s) in products & set(section.products)]
    key = {stroke.handle: meant(stroke) for stroke in alike}
    drawn = [Drawn(path, key[path.tag.handle]) for path in paths_of(alike)]
    made, _ = pieces_from(drawn, section.products)
    used = {handle for piece in there for handle in piece.handles}
    fresh = [p for p in made if wanted_of(p, wanted) and not used.intersection(p.handles)]
    if section.frame_drawn:
        fresh = clipped_to(Frame(section.frame), fresh)
    return renamed(fresh, {piece.name for piece in there})


def wanted_of(piece: Piece, wanted: Collection[str]) -> bool:
    """Whether one of the lines that a piece was made of is wanted."""
    return any(handle in wanted for handle in piece.handles)


def renamed(pieces: Sequence[Piece], taken: Collection[str]) -> tuple[Piece, ...]:
    """Return pieces of which none has a name that is taken."""
    names = set(taken)
    found = []
    for piece in pieces:
        name, number = piece.name, 1
        while name in names:
            number += 1
            name = f"{piece.name}-{number}"
        names.add(name)
        found.append(piece if name == piece.name else replace(piece, name=name))
    return tuple(found)
