"""Brings over what people made on an earlier drawing: pieces, seals and marks of their own.

The office's drawing knows nothing of what was sketched over it. Where a section is surely the same
one, that is laid over the revised drawing as it lay over the earlier one; sections that were only
ever sketched stay.
"""

from collections.abc import Iterable, Sequence
from dataclasses import replace
from itertools import count
from types import MappingProxyType

from enclosure_app.model.drawing import Drawing
from enclosure_app.model.project import Project
from enclosure_app.model.said.sign_off import fingerprint
from enclosure_app.model.section import Break, Piece, Section
from enclosure_app.model.standing.standing import new_id
from enclosure_app.model.underlay import Underlay
from enclosure_app.planning.revision.outlines import Motion, moved_shape
from enclosure_app.planning.revision.pieces import PiecesMatched, pieces_matched
from enclosure_app.planning.revision.sections import SectionPair, section_pairs, sheet


def brought_over(before: Project, drawing: Drawing) -> Project:
    """Return the revised drawing as the next revision of a project.

    All that was said stays in it, of the earlier drawing; `compared` says what of it still holds.
    The same drawing brought over in two copies of a project gives the same revision.

    Args:
        before: The project of the earlier drawing.
        drawing: The revised drawing, read with the project's layers.
    """
    pairs = section_pairs([*map(sheet, before.sections)], [*map(sheet, drawing.sections)])
    by_new = {id(pair.new.section): pair for pair in pairs}
    sections = tuple(
        _over(by_new[id(section)]) if id(section) in by_new else section
        for section in drawing.sections
    )
    kept = _sketched(before.sections, {id(pair.old.section) for pair in pairs})
    return replace(
        before,
        units=drawing.units,
        source=drawing.file,
        notes=drawing.notes,
        layouts=drawing.layouts,
        sections=(*sections, *_named_apart(kept, sections)),
        underlays=tuple(_underlay(each, pairs) for each in before.underlays),
        revision=new_id(before.revision, *map(fingerprint, drawing.sections)),
    )


def _over(pair: SectionPair) -> Section:
    """Return a later section with what people had made on the earlier one."""
    old, new, motion = pair.old.section, pair.new.section, pair.fit.motion
    matched = pieces_matched(pair.fit, pair.old.outlines, pair.new.outlines)
    return replace(
        new,
        pieces=(*new.pieces, *_own_pieces(old, new, matched)),
        products=MappingProxyType({**old.products, **new.products}),
        inside=new.inside or motion.places(old.inside),
        outside=new.outside or motion.places(old.outside),
        gravity=new.gravity if motion.mirrored else old.gravity,
        breaks=new.breaks or tuple(_break(each, motion) for each in old.breaks),
        sealed=new.sealed | _seals(old, matched),
    )


def _own_pieces(old: Section, new: Section, matched: PiecesMatched) -> Iterable[Piece]:
    """Yield the pieces that were drawn by hand and that the revised drawing does not show."""
    taken = {piece.name for piece in new.pieces}
    for piece in old.pieces:
        if not piece.handles and not matched.exact(piece.name):
            name = _free(piece.name, taken)
            taken.add(name)
            yield replace(piece, name=name, shape=moved_shape(piece.shape, matched.ground))


def _free(name: str, taken: set[str]) -> str:
    if name not in taken:
        return name
    return next(each for n in count(2) if (each := f"{name}-{n}") not in taken)


def _seals(old: Section, matched: PiecesMatched) -> frozenset[tuple[str, str]]:
    """Return the joints that a person declared sealed, where both pieces are surely the same."""
    found: set[tuple[str, str]] = set()
    for one, other in old.sealed:
        a, b = matched.exact(one), matched.exact(other)
        if a and b and a.new and b.new and a.motion == b.motion:
            first, second = sorted((a.new.name, b.new.name))
            found.add((first, second))
    return frozenset(found)


def _break(each: Break, motion: Motion) -> Break:
    (a, b), (c, d) = each.near, each.far
    return Break((motion.place(a), motion.place(b)), (motion.place(c), motion.place(d)))


def _sketched(sections: Iterable[Section], paired: set[int]) -> list[Section]:
    """Return the sections that no drawing ever showed: every piece was drawn by hand."""
    return [
        each
        for each in sections
        if id(each) not in paired and not any(piece.handles for piece in each.pieces)
    ]


def _named_apart(kept: Iterable[Section], sections: Sequence[Section]) -> Iterable[Section]:
    taken = {each.name for each in sections}
    for each in kept:
        name = _free(each.name, taken)
        taken.add(name)
        yield each if name == each.name else replace(each, name=name)


def _underlay(each: Underlay, pairs: Iterable[SectionPair]) -> Underlay:
    """Return a picture where its section lies now; one under a mirrored section stays."""
    pair = next((p for p in pairs if p.old.section.name == each.section), None)
    if pair is None:
        return each
    at = each.at if pair.fit.motion.mirrored else pair.fit.motion.place(each.at)
    return replace(each, section=pair.new.section.name, at=at)
