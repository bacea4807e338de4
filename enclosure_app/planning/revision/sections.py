"""Which section of the revised drawing is which: by what is drawn in it, then by name and place."""

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass

from enclosure_app.model.section import Section
from enclosure_app.planning.revision.motions import Anchors, Fit, certain, fits, without_contested
from enclosure_app.planning.revision.outlines import Outline, outline

_LIKENESS = 0.3  # of the pieces: sections that share fewer are not one
_RIVAL = 0.75  # of the pieces shared with the best: less is no rival
_ALL = 3  # handles with name or place: that outweighs how many pieces are alike


@dataclass(frozen=True, slots=True)
class Outlined:
    """A section with its pieces as they are compared."""

    section: Section
    outlines: tuple[Outline, ...]
    kinds: Counter[object]

    @property
    def anchors(self) -> Anchors:
        """What is fixed to it besides its pieces."""
        return Anchors((self.section.frame,), (self.section.inside, self.section.outside))


@dataclass(frozen=True, slots=True)
class SectionPair:
    """An earlier section and the later one that it surely is, with how it was moved."""

    old: Outlined
    new: Outlined
    fit: Fit


def outlined(section: Section) -> Outlined:
    """Return a section as it is compared."""
    outlines = tuple(map(outline, section.pieces))
    return Outlined(section, outlines, Counter((e.kind, round(e.long, -1)) for e in outlines))


def section_pairs(old: Sequence[Outlined], new: Sequence[Outlined]) -> tuple[SectionPair, ...]:
    """Return the sections that are surely the same ones."""
    rows = [
        SectionPair(a, b, fit)
        for a in old
        for b in new
        if a.outlines and b.outlines and _overlap(a, b) and (fit := _fit(a, b))
    ]
    return tuple(
        row
        for row in rows
        if all(_outdoes(row, other) for other in rows if _shares_one_side(row, other))
    )


def _fit(a: Outlined, b: Outlined) -> Fit | None:
    fewer, more = sorted((len(a.outlines), len(b.outlines)))
    found = fits(a.outlines, b.outlines, (a.anchors, b.anchors))
    whole = fewer if fewer == more else -1
    best = certain(found, least=max(min(2, fewer), _LIKENESS * fewer), whole=whole)
    return best and without_contested(_ground(best, found), found)


def _ground(best: Fit, found: Sequence[Fit]) -> Fit:
    """Return the fit that keeps frame and marks, if there is one beside the best: the rest moved."""
    beside = (fit for fit in found if fit.anchored > best.anchored and not fit.gainsays(best))
    return max(beside, key=lambda fit: (fit.anchored, fit.count), default=best)


def _overlap(a: Outlined, b: Outlined) -> bool:
    """Whether enough pieces are of one make and length that they may be one section."""
    fewer = min(len(a.outlines), len(b.outlines))
    return sum((a.kinds & b.kinds).values()) >= 0.5 * _LIKENESS * fewer


def _shares_one_side(row: SectionPair, other: SectionPair) -> bool:
    return other is not row and (other.old is row.old or other.new is row.new)


def _outdoes(row: SectionPair, other: SectionPair) -> bool:
    """Whether two sections are one far more likely than two others are."""
    speaks = _evidence(row, other) - _evidence(other, row)
    if abs(speaks) >= _ALL:
        return speaks > 0
    if other.fit.count < _RIVAL * row.fit.count:
        return True
    return speaks >= 2 and row.fit.count >= _RIVAL * other.fit.count


def _evidence(row: SectionPair, other: SectionPair) -> int:
    """Count what speaks for a pair besides its pieces: handles, twice; its name; its place."""
    handles = row.fit.named >= 2 * other.fit.named + 2
    named = row.old.section.name == row.new.section.name
    return 2 * handles + named + row.fit.motion.stays
