"""Makes pieces of the lines of an open section."""

from collections import defaultdict
from collections.abc import Callable, Collection, Mapping, Sequence
from dataclasses import replace

from enclosure_app.files.framing.chains import Drawn, pieces_from
from enclosure_app.files.framing.drawn_lines import paths_of
from enclosure_app.files.framing.frames import Frame
from enclosure_app.files.framing.sections import clipped_to
from enclosure_app.model.naming import named_apart
from enclosure_app.model.place import Area
from enclosure_app.model.section import Piece, Section, Stroke


def pieces_of(
    strokes: Sequence[Stroke],
    meant: Callable[[Stroke], str],
    wanted: Collection[str],
    there: Sequence[Piece],
    section: Section,
) -> tuple[tuple[Piece, ...], tuple[Piece, ...]]:
    """Return the pieces that are there, and those that lines of a section come to besides.

    A wanted outline that runs round a piece of the same product belongs to that piece from now
    on. New pieces have names that no other has.

    Args:
        strokes: All that is drawn in the section.
        meant: The key of the product that a line is of.
        wanted: The handles of the lines that are to be pieces.
        there: The pieces that the section has already.
        section: The section, for its products and its frame.
    """
    if not wanted:
        return tuple(there), ()
    products = {meant(stroke) for stroke in strokes if stroke.handle in wanted}
    alike = [s for s in strokes if s.handle and meant(s) in products & set(section.products)]
    key = {stroke.handle: meant(stroke) for stroke in alike}
    drawn = [Drawn(path, key[path.tag.handle]) for path in paths_of(alike)]
    made = [p for p in pieces_from(drawn, section.products)[0] if _has(p, wanted)]
    owner = {handle: piece.name for piece in there for handle in piece.handles}
    fresh = [piece for piece in made if not _has(piece, owner)]
    mixed = [piece for piece in made if _has(piece, owner)]
    twins = [piece for piece in mixed if _is_outline(piece)]
    loose = {h for piece in mixed if not _is_outline(piece) for h in piece.handles} - set(owner)
    again = [each for each in drawn if each.path.tag.handle in loose]
    fresh += pieces_from(again, section.products)[0]
    if section.frame_drawn:
        fresh = clipped_to(Frame(section.frame), fresh)
    named = named_apart(fresh, [piece.name for piece in there], "{name}-{number}")
    return _joined(there, twins, owner), named


def _has(piece: Piece, handles: Collection[str]) -> bool:
    return any(handle in handles for handle in piece.handles)


def _is_outline(piece: Piece) -> bool:
    return isinstance(piece.shape, Area) or piece.shape.closed


def _joined(
    there: Sequence[Piece], twins: Sequence[Piece], owner: Mapping[str, str]
) -> tuple[Piece, ...]:
    """Return pieces with the lines that turned out to be drawn round them."""
    more: dict[str, list[str]] = defaultdict(list)
    for twin in twins:
        name = next(owner[handle] for handle in twin.handles if handle in owner)
        more[name] += [handle for handle in twin.handles if handle not in owner]
    return tuple(
        replace(piece, handles=(*piece.handles, *more[piece.name]))
        if piece.name in more
        else piece
        for piece in there
    )
