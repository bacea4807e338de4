"""Which piece of a section is which in the revised drawing: by place, by handle, by shape."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from enum import StrEnum

from enclosure_app.geometry.runs.likeness import lies_on
from enclosure_app.model.section import Piece
from enclosure_app.planning.revision.motions import Fit, certain, fits
from enclosure_app.planning.revision.outlines import SAME, Motion, Outline

_GROUPS = 4  # of pieces that were moved together within one section
_UNNAMED = 3  # pieces that moved together are believed without a handle
_HELD = 0.8  # of the handles: where fewer are kept, the drawing was renumbered


class How(StrEnum):
    """How a piece of an earlier drawing was recognised in a later one."""

    IN_PLACE = "lies where it lay"
    MOVED = "moved as a whole"
    PART = "lies on the same run, and begins or ends elsewhere"
    DOUBTFUL = "lies where it or another one lay, and nobody can tell which"
    HANDLE = "has the same handle, and another shape or product"
    GONE = "is not there any more"
    NEW = "was not there before"


@dataclass(frozen=True, slots=True)
class PieceMatch:
    """One piece and its partner: `old` is None for a new one, `new` for one that is gone.

    `motion` is how it came to lie where it lies, where it lies there as it is. A match in place,
    or moved, is certain; the others are for a person to look at.
    """

    how: How
    old: Piece | None
    new: Piece | None
    motion: Motion | None = None


@dataclass(frozen=True, slots=True)
class PiecesMatched:
    """All matches of a section. `ground` is the motion of most of it."""

    ground: Motion
    matches: tuple[PieceMatch, ...]
    _by_old: Mapping[str, tuple[PieceMatch, ...]] = field(
        init=False, repr=False, compare=False, default_factory=dict
    )

    def __post_init__(self) -> None:
        """Index the matches by the earlier piece."""
        held: dict[str, tuple[PieceMatch, ...]] = {}
        for match in self.matches:
            if match.old:
                held[match.old.name] = (*held.get(match.old.name, ()), match)
        object.__setattr__(self, "_by_old", held)

    def exact(self, name: str) -> PieceMatch | None:
        """Return the certain match of an earlier piece, if it has one."""
        return next((match for match in self._by_old.get(name, ()) if match.motion), None)

    def partners(self, name: str, *hows: How) -> tuple[str, ...]:
        """Return the names of the later pieces that an earlier one is matched with so."""
        found = self._by_old.get(name, ())
        return tuple(match.new.name for match in found if match.new and match.how in hows)


def pieces_matched(fit: Fit, old: Sequence[Outline], new: Sequence[Outline]) -> PiecesMatched:
    """Return how the pieces of a section are matched, given how most of it was moved."""
    found = _as(How.IN_PLACE, fit)
    found += [PieceMatch(How.DOUBTFUL, a.piece, b.piece) for a, b in fit.contested]
    held = _handles_hold(fit.pairs, old, new)
    for _ in range(_GROUPS):
        group = _moved_together(*_left(found, old, new), fit.motion.mirrored, held=held)
        if group is None:
            break
        found += _as(How.MOVED, group)
    rest = _left(found, old, new)
    parts = _parts(*rest, fit.motion)
    alike = _same_handles(*rest) if held else []
    return PiecesMatched(fit.motion, (*found, *parts, *alike, *_alone(*rest, [*parts, *alike])))


def _as(how: How, fit: Fit) -> list[PieceMatch]:
    return [PieceMatch(how, a.piece, b.piece, fit.motion) for a, b in fit.pairs]


def _left(
    found: Iterable[PieceMatch], old: Sequence[Outline], new: Sequence[Outline]
) -> tuple[list[Outline], list[Outline]]:
    """Return the pieces that nobody recognised yet."""
    olds = {match.old.name for match in found if match.old}
    news = {match.new.name for match in found if match.new}
    return (
        [each for each in old if each.piece.name not in olds],
        [each for each in new if each.piece.name not in news],
    )


def _handles_hold(
    pairs: Sequence[tuple[Outline, Outline]], old: Sequence[Outline], new: Sequence[Outline]
) -> bool:
    """Whether handles still mean what they meant: few pieces lie where they lay under others."""
    kept = sum(bool(a.names & b.names) for a, b in pairs)
    before = frozenset().union(*(each.names for each in old))
    after = frozenset().union(*(each.names for each in new))
    crossed = sum(
        not a.names & b.names and bool(a.names & after or b.names & before) for a, b in pairs
    )
    return not crossed and kept >= _HELD * len(pairs)


def _moved_together(
    old: Sequence[Outline], new: Sequence[Outline], mirrored: bool, *, held: bool
) -> Fit | None:
    """Return pieces that lie elsewhere, all moved alike: by three or more, or by their handles."""
    found = fits(old, new, flips=(mirrored,))
    best = certain(found, least=1, whole=-1)
    if best is None or (best.count < _UNNAMED and not (held and best.named == best.count)):
        return None
    return best if not held or 2 * best.named >= best.count else None


def _parts(old: Sequence[Outline], new: Sequence[Outline], ground: Motion) -> list[PieceMatch]:
    """Return lines of one product that lie on each other, as a sheet that was split or joined."""
    return [
        PieceMatch(How.PART, a.piece, b.piece)
        for a in old
        for b in new
        if a.kind == b.kind and not a.closed and _share_a_run(a, b, ground)
    ]


def _share_a_run(a: Outline, b: Outline, ground: Motion) -> bool:
    points = ground.places(a.points)
    return lies_on(points, b.points, SAME) or lies_on(b.points, points, SAME)


def _same_handles(old: Sequence[Outline], new: Sequence[Outline]) -> list[PieceMatch]:
    by_name: Mapping[str, Outline] = {name: each for each in new for name in each.names}
    return [
        PieceMatch(How.HANDLE, each.piece, by_name[name].piece)
        for each in old
        for name in sorted(each.names)
        if name in by_name
    ]


def _alone(
    old: Sequence[Outline], new: Sequence[Outline], matched: Sequence[PieceMatch]
) -> list[PieceMatch]:
    olds = {match.old.name for match in matched if match.old}
    news = {match.new.name for match in matched if match.new}
    gone = (PieceMatch(How.GONE, e.piece, None) for e in old if e.piece.name not in olds)
    fresh = (PieceMatch(How.NEW, None, e.piece) for e in new if e.piece.name not in news)
    return [*gone, *fresh]
