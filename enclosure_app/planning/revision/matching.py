"""What became of each finding of a section whose pieces are matched.

A finding is still there where the same thing is found at the same place of the same pieces, by the
same measure. Its name alone proves nothing: handles are given out again. What lies elsewhere is
the same only where its pieces moved there as a whole.
"""

from collections import Counter, defaultdict
from collections.abc import Iterable, Sequence
from math import dist

from enclosure_app.planning.revision.outlines import SAME, Motion
from enclosure_app.planning.revision.pieces import How, PiecesMatched
from enclosure_app.planning.revision.spots import Fate, Spot, SpotMatch, renamed_key

_PLACE = 2.0 * SAME  # mm: what is found at two places this near to each other is one thing
_FIGURE = 2.0 * SAME  # mm
_CHANGED = 0.1  # of a figure: what is said of the one is said of the other
_NEAR = 250.0  # mm: what is found this near may be the same thing
_SURE = (How.IN_PLACE, How.MOVED)


def spots_matched(
    old: Sequence[Spot], new: Sequence[Spot], pieces: PiecesMatched, *, near: bool = False
) -> tuple[SpotMatch, ...]:
    """Return what became of each spot, and which are new.

    With `near` one whose pieces are not all known again is asked about only where it may be one
    that is near to it or of its pieces; without it, one that is like it anywhere.
    """
    sure = _sure(old, new, pieces)
    left = [spot for spot in old if spot.key not in sure]
    taken = {match.new for match in sure.values()}
    free = [spot for spot in new if spot.key not in taken]
    rest = [_unsure(spot, free, pieces, near=near) for spot in left]
    asked = {key for match in rest for key in match.asked}
    fresh = [SpotMatch(Fate.NEW, "", spot.key) for spot in free if spot.key not in asked]
    return (*sure.values(), *rest, *fresh)


def _sure(old: Sequence[Spot], new: Sequence[Spot], pieces: PiecesMatched) -> dict[str, SpotMatch]:
    """Return the spots that are surely later ones, by their keys."""
    by_what: dict[tuple[str, ...], list[Spot]] = defaultdict(list)
    for spot in new:
        by_what[spot.what].append(spot)
    names = _names(pieces)
    rows = [
        (a, b, motion)
        for a in old
        if (motion := _motion_of(a, pieces))
        for b in by_what[a.what]
        if _is_one(a, b, motion, pieces)
    ]
    told = _told_apart(rows, names)
    return {a.key: SpotMatch(_fate(motion, pieces), a.key, b.key) for a, b, motion in told}


def _fate(motion: Motion, pieces: PiecesMatched) -> Fate:
    return Fate.STILL_THERE if motion == pieces.ground else Fate.MOVED


def _told_apart(
    rows: Sequence[tuple[Spot, Spot, Motion]], names: dict[str, str]
) -> list[tuple[Spot, Spot, Motion]]:
    """Return the rows whose two sides have no other partner; of several, those of the same key."""
    clear = _unrivalled(rows)
    olds, news = {a.key for a, _, _ in clear}, {b.key for _, b, _ in clear}
    rest = [row for row in rows if row[0].key not in olds and row[1].key not in news]
    keyed = [row for row in rest if renamed_key(row[0].key, names) == renamed_key(row[1].key, {})]
    return [*clear, *_unrivalled(keyed)]


def _unrivalled(
    rows: Sequence[tuple[Spot, Spot, Motion]],
) -> list[tuple[Spot, Spot, Motion]]:
    olds = Counter(a.key for a, _, _ in rows)
    news = Counter(b.key for _, b, _ in rows)
    return [row for row in rows if olds[row[0].key] == 1 and news[row[1].key] == 1]


def _names(pieces: PiecesMatched) -> dict[str, str]:
    sure = (m for m in pieces.matches if m.motion)
    return {m.old.name: m.new.name for m in sure if m.old and m.new}


def _motion_of(spot: Spot, pieces: PiecesMatched) -> Motion | None:
    """Return the one motion by which all pieces of a spot came to lie where they lie.

    A piece that was split or joined lies where it lay. One that is nowhere has none.
    """
    motions = {_piece_motion(name, pieces) for name in spot.pieces}
    return motions.pop() if len(motions) == 1 else None


def _piece_motion(name: str, pieces: PiecesMatched) -> Motion | None:
    if match := pieces.exact(name):
        return match.motion
    return pieces.ground if pieces.partners(name, How.PART) else None


def _is_one(a: Spot, b: Spot, motion: Motion, pieces: PiecesMatched) -> bool:
    """Whether two spots of one kind are one: the place, the pieces and the measure are the same."""
    return (
        dist(motion.place(a.at), b.at) <= _PLACE
        and _of_one_make(a, b, pieces)
        and _of_one_measure(a, b, pieces)
    )


def _of_one_measure(a: Spot, b: Spot, pieces: PiecesMatched) -> bool:
    """Whether two spots measure the same; where no piece of them was changed, much the same.

    What is beside them may have been: a gap that runs to the frame grows when that is widened.
    """
    if _near(a.measured, b.measured) and _near(a.required, b.required):
        return True
    if not all(pieces.exact(name) for name in a.pieces):
        return False
    return _much_the_same(a.measured, b.measured) and _much_the_same(a.required, b.required)


def _of_one_make(a: Spot, b: Spot, pieces: PiecesMatched) -> bool:
    """Whether each piece of one spot is a piece, or a part of one, of the other."""
    partners = [set(pieces.partners(name, *_SURE, How.PART)) for name in a.pieces]
    return b.pieces <= set().union(*partners) and all(b.pieces & each for each in partners)


def _near(one: float | None, other: float | None) -> bool:
    if one is None or other is None:
        return one is other
    return abs(one - other) <= _FIGURE


def _much_the_same(one: float | None, other: float | None) -> bool:
    if one is None or other is None:
        return one is other
    return abs(one - other) <= max(_FIGURE, _CHANGED * min(abs(one), abs(other)))


def _unsure(spot: Spot, free: Iterable[Spot], pieces: PiecesMatched, *, near: bool) -> SpotMatch:
    """Return a spot with the later ones that it may be; gone where it can be none of them."""
    alike = [other for other in free if other.what == spot.what]
    known = near or all(pieces.exact(name) for name in spot.pieces)
    asked = [other for other in alike if not known or _may_be(spot, other, pieces)]
    if not asked:
        return SpotMatch(Fate.GONE, spot.key)
    nearest = sorted(asked, key=lambda other: dist(pieces.ground.place(spot.at), other.at))
    return SpotMatch(Fate.NOT_SURE, spot.key, asked=tuple(other.key for other in nearest))


def _may_be(spot: Spot, other: Spot, pieces: PiecesMatched) -> bool:
    if dist(pieces.ground.place(spot.at), other.at) <= _NEAR:
        return True
    return any(other.pieces & {*pieces.partners(name, *How)} for name in spot.pieces)
