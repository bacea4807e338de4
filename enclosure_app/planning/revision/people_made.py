"""What people had made on an earlier section, laid over the later one as it lay over the earlier."""

from collections.abc import Iterable
from dataclasses import replace
from types import MappingProxyType

from enclosure_app.model.naming import named_apart
from enclosure_app.model.section import Break, Piece, Section
from enclosure_app.planning.revision.outlines import Motion, moved_shape
from enclosure_app.planning.revision.pieces import PiecesMatched, pieces_matched
from enclosure_app.planning.revision.sections import SectionPair


def laid_on(pair: SectionPair) -> Section:
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
    own = [p for p in old.pieces if not p.handles and not matched.exact(p.name)]
    for piece in named_apart(own, [p.name for p in new.pieces], "{name}-{number}"):
        yield replace(piece, shape=moved_shape(piece.shape, matched.ground))


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
