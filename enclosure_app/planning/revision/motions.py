"""How the pieces of an earlier drawing came to lie where those of a later one lie.

Every two pieces of one make and size vote for the motion that brings one onto the other; what many
vote for is tried on all. A motion is only taken where no other one explains nearly as much: sheets
of a wall are alike, and a wall moved on by one sheet looks much like a wall that was not moved.
"""

from collections import Counter, defaultdict
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from functools import partial
from math import dist, floor
from statistics import median

from enclosure_app.model.place import Point, Points
from enclosure_app.planning.revision.outlines import SAME, Motion, Outline

MOST_VOTES = 20_000  # pairs of like pieces that are looked at
_TRIED = 12  # motions that are tried on all pieces
_NAMED = 3  # and of those that pieces of the same handle vote for
_CELL = 4.0 * SAME  # votes within this are one vote
_LENGTH = 2.0  # mm: pieces whose lengths differ by more are not alike
_RIVAL = 0.75  # of what the best explains: less is no rival
_GROUP = 3  # pieces that moved together are believed without a handle
_ANCHORS = 3  # a frame, marks inside and marks outside
_ALIKE = 2.0 * SAME  # mm: motions nearer to each other are one and the same
_APART = 0.3 * SAME  # mm: motions nearer to each other need not both be tried

Pair = tuple[Outline, Outline]


@dataclass(frozen=True, slots=True)
class Anchors:
    """What is fixed to a section besides its pieces: the ring of its frame and its marks."""

    rings: tuple[Points, ...] = ()
    marks: tuple[Points, ...] = ()


@dataclass(frozen=True, slots=True)
class Fit:
    """A motion, and what it explains.

    `pairs` are the pieces that it brings onto each other, `named` how many of them are drawn with
    the same handles, and `anchored` how many of frame and marks it brings where they are. Of
    `contested` pieces nobody can tell which they are: they may have been moved otherwise.
    """

    motion: Motion
    pairs: tuple[Pair, ...]
    named: int
    anchored: int = 0
    contested: tuple[Pair, ...] = ()

    @property
    def count(self) -> int:
        """How many pieces it explains."""
        return len(self.pairs)

    def gainsays(self, other: "Fit") -> bool:
        """Whether it brings a piece elsewhere than another fit does, or another piece there."""
        olds = {a.piece.name for a, _ in other.pairs}
        news = {b.piece.name for _, b in other.pairs}
        return any(a.piece.name in olds or b.piece.name in news for a, b in self.pairs)


def fits(
    old: Sequence[Outline],
    new: Sequence[Outline],
    anchors: tuple[Anchors, Anchors] = (Anchors(), Anchors()),
    *,
    flips: Sequence[bool] = (False, True),
) -> list[Fit]:
    """Return the motions that explain something, what explains most first."""
    found: list[Fit] = []
    ground = _Ground(new)
    for motion in _motions(old, new, flips):
        pairs = ground.pairs(old, motion)
        named = sum(bool(a.names & b.names) for a, b in pairs)
        if pairs:
            found.append(Fit(motion, pairs, named, _anchored(*anchors, motion)))
    return sorted(
        found, key=lambda fit: (-fit.count - fit.anchored, -fit.named, fit.motion.mirrored)
    )


def certain(found: Sequence[Fit], *, least: float, whole: int) -> Fit | None:
    """Return the fit that cannot be mistaken, None where there is none.

    Args:
        found: The fits, what explains most first.
        least: How many pieces it has to explain.
        whole: How many pieces there are where it explains everything there is.
    """
    if not found or found[0].count < least:
        return None
    best, *others = found
    # what gainsays nothing may have happened, too: some pieces were moved so, others so
    rivals = (fit for fit in others if fit.gainsays(best) and not _is_one(fit, best))
    return best if all(_is_beaten(fit, best, whole) for fit in rivals) else None


def _is_one(fit: Fit, best: Fit) -> bool:
    """Whether two fits say the same: nearly one motion, or the very same pieces onto each other."""
    return _is_same(fit.motion, best.motion, _ALIKE) or _names(fit) == _names(best)


def _names(fit: Fit) -> set[tuple[str, str]]:
    return {(a.piece.name, b.piece.name) for a, b in fit.pairs}


def _is_beaten(fit: Fit, best: Fit, whole: int) -> bool:
    """Whether a fit is clearly less likely than the best one."""
    if best.count == whole > fit.count and best.anchored == _ANCHORS > fit.anchored:
        return True  # nothing was changed at all
    if fit.named >= 2 and fit.named > best.named and 2 * fit.named >= best.count:
        return False  # the handles say otherwise
    if fit.count < _RIVAL * best.count and fit.anchored <= best.anchored:
        return True
    if best.anchored > fit.anchored and best.count >= fit.count:
        return True
    if best.named >= 2 * fit.named + 2 and 2 * best.named >= best.count:
        return best.anchored >= fit.anchored
    return best.count == whole > fit.count and best.anchored >= fit.anchored


def without_contested(best: Fit, found: Iterable[Fit]) -> Fit:
    """Return a fit without the pieces that may as well have been moved otherwise.

    Some sheets of a wall that were moved on by one lie where others lay, and what was not moved
    speaks for all of them. Handles tell it, or that more pieces are known again if they were moved.
    """
    bare = [pair for pair in best.pairs if not _of_one_handle(pair)]
    beside = [fit for fit in found if not fit.gainsays(best) and fit.count >= _GROUP]
    known = [*best.pairs, *(pair for fit in beside for pair in fit.pairs)]
    said = [pair for fit in found if fit is not best for pair in _spoken(fit, known)]
    pairs = tuple(pair for pair in bare if any(_clash(pair, other) for other in said))
    if not pairs:
        return best
    others = tuple(pair for pair in said if any(_clash(pair, other) for other in pairs))
    kept = tuple(pair for pair in best.pairs if pair not in pairs)
    return replace(best, pairs=kept, contested=(*pairs, *dict.fromkeys(others)))


def _spoken(fit: Fit, known: Sequence[Pair]) -> Iterable[Pair]:
    """Return the pairs for which a fit speaks, against those that are known without it."""
    lost = sum(any(_clash(pair, other) for other in fit.pairs) for pair in known)
    if fit.count >= _GROUP and fit.count > lost:
        return fit.pairs
    by_handles = fit.named >= 2 and 2 * fit.named >= fit.count
    return filter(_of_one_handle, fit.pairs) if by_handles else ()


def _of_one_handle(pair: Pair) -> bool:
    return bool(pair[0].names & pair[1].names)


def _clash(one: Pair, other: Pair) -> bool:
    """Whether two pairs have one piece in common, and not both."""
    return (one[0] is other[0]) != (one[1] is other[1])


class _Ground:
    """The later pieces by where they lie."""

    def __init__(self, new: Sequence[Outline]) -> None:
        self._cells: dict[tuple[int, int], list[int]] = defaultdict(list)
        self._new = new
        for at, each in enumerate(new):
            self._cells[_cell(each.centre, 2.0 * SAME)].append(at)

    def pairs(self, old: Sequence[Outline], motion: Motion) -> tuple[Pair, ...]:
        """Return the pieces that a motion brings onto each other, where each has one partner."""
        rows = [(n, at) for n, each in enumerate(old) for at in self._onto(each, motion)]
        return tuple(
            (old[n], self._new[at]) for n, at in _one_to_one(rows, partial(self._named, old))
        )

    def _named(self, old: Sequence[Outline], row: tuple[int, int]) -> bool:
        return bool(old[row[0]].names & self._new[row[1]].names)

    def _onto(self, each: Outline, motion: Motion) -> Iterator[int]:
        centre = motion.place(each.centre)
        column, row = _cell(centre, 2.0 * SAME)
        for dx in (-1, 0, 1):
            for dy in (-1, 0, 1):
                for at in self._cells.get((column + dx, row + dy), ()):
                    near = dist(self._new[at].centre, centre) <= 1.5 * SAME
                    if near and each.lies_as(self._new[at], motion):
                        yield at


def _one_to_one(
    rows: Sequence[tuple[int, int]], named: "partial[bool]"
) -> Iterator[tuple[int, int]]:
    """Yield the rows whose two sides have no other partner; of several, one of the same handle."""
    clear = _unrivalled(rows)
    yield from clear
    taken = {a for a, _ in clear}, {b for _, b in clear}
    rest = [row for row in rows if row[0] not in taken[0] and row[1] not in taken[1]]
    yield from _unrivalled([row for row in rest if named(row)])


def _unrivalled(rows: Sequence[tuple[int, int]]) -> list[tuple[int, int]]:
    lefts, rights = Counter(a for a, _ in rows), Counter(b for _, b in rows)
    return [(a, b) for a, b in rows if lefts[a] == 1 and rights[b] == 1]


def _motions(
    old: Sequence[Outline], new: Sequence[Outline], flips: Sequence[bool]
) -> list[Motion]:
    """Return the motions that most pairs of like pieces vote for, and that nothing moved.

    Pieces with the same handle vote a second time, among themselves.
    """
    pairs, named = list(_alike(old, new)), list(_of_one_name(old, new))
    tried: list[Motion] = []
    for flip in flips:
        for voting, most in ((pairs, _TRIED), (named, _NAMED)):
            for motion in _voted(voting, flip, most):
                if not any(_is_same(motion, each, _APART) for each in tried):
                    tried.append(motion)
    unmoved = Motion()
    known = any(_is_same(unmoved, each, _APART) for each in tried)
    return tried if known or False not in flips else [unmoved, *tried]


def _of_one_name(old: Sequence[Outline], new: Sequence[Outline]) -> Iterator[Pair]:
    """Yield the pieces of one make and length that have a handle in common."""
    by_name = {name: each for each in new for name in each.names}
    for each in old:
        for name in sorted(each.names & by_name.keys()):
            other = by_name[name]
            if other.kind == each.kind and abs(other.long - each.long) <= _LENGTH:
                yield each, other


def _voted(pairs: Iterable[Pair], flip: bool, most: int) -> Iterator[Motion]:
    votes: dict[tuple[int, int], list[Point]] = defaultdict(list)
    for a, b in pairs:
        x = -a.centre[0] if flip else a.centre[0]
        shift = (b.centre[0] - x, b.centre[1] - a.centre[1])
        votes[_cell(shift, _CELL)].append(shift)
    for cell in sorted(votes, key=lambda cell: (-len(votes[cell]), cell))[:most]:
        yield Motion(_middle_of(_round(cell, votes)), flip)


def _alike(old: Sequence[Outline], new: Sequence[Outline]) -> Iterator[Pair]:
    """Yield pairs of pieces of one make and length, the rarest kinds first, up to a number."""
    by_size: dict[tuple[object, int], list[Outline]] = defaultdict(list)
    for each in new:
        by_size[each.kind, floor(each.long / _LENGTH)].append(each)
    rows = [(each, _like(each, by_size)) for each in old]
    left = MOST_VOTES
    for each, like in sorted(rows, key=lambda row: len(row[1])):
        yield from ((each, other) for other in like)
        left -= len(like)
        if left < 0:
            return


def _like(each: Outline, by_size: dict[tuple[object, int], list[Outline]]) -> list[Outline]:
    size = floor(each.long / _LENGTH)
    near = (other for n in (size - 1, size, size + 1) for other in by_size.get((each.kind, n), ()))
    return [other for other in near if abs(other.long - each.long) <= _LENGTH]


def _round(cell: tuple[int, int], votes: dict[tuple[int, int], list[Point]]) -> list[Point]:
    """Return the votes in a cell, and those in its neighbours that lie near to them."""
    own = votes[cell]
    at = _middle_of(own)
    beside = [(cell[0] + dx, cell[1] + dy) for dx in (-1, 0, 1) for dy in (-1, 0, 1) if dx or dy]
    return own + [
        each for other in beside for each in votes.get(other, ()) if dist(each, at) <= _ALIKE
    ]


def _middle_of(shifts: Iterable[Point]) -> Point:
    xs, ys = zip(*shifts, strict=True)
    return (median(xs), median(ys))


def _is_same(one: Motion, other: Motion, reach: float) -> bool:
    return one.mirrored == other.mirrored and dist(one.shift, other.shift) <= reach


def _cell(point: Point, size: float) -> tuple[int, int]:
    return (floor(point[0] / size), floor(point[1] / size))


def _anchored(old: Anchors, new: Anchors, motion: Motion) -> int:
    """Return how many of frame and marks a motion brings where they are."""
    rings = zip(old.rings, new.rings, strict=True)
    marks = zip(old.marks, new.marks, strict=True)
    return sum(_all_near(motion.places(a), b) for pair in (rings, marks) for a, b in pair)


def _all_near(one: Points, other: Points) -> bool:
    if not one or len(one) != len(other):
        return False
    return all(min(dist(a, b) for b in other) <= 2.0 * SAME for a in one)
