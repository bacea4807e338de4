"""Brings a revised drawing into a project, in the place of the one that it is a later issue of.

The office's drawing knows nothing of what was sketched over it. Where a section is surely the same
one, that is laid over the revised drawing as it lay over the earlier one; sections that were only
ever sketched stay, and so do those of the project's other drawings.
"""

from collections.abc import Collection
from dataclasses import dataclass, replace
from pathlib import PurePath

from enclosure_app.model.drawing import Drawing
from enclosure_app.model.naming import named_apart
from enclosure_app.model.project import Project
from enclosure_app.model.section import Section
from enclosure_app.model.standing.standing import new_id
from enclosure_app.model.states import drawn_as
from enclosure_app.model.underlay import Underlay
from enclosure_app.planning.revision.drawings import file_of, left_as_they_are, taken_place
from enclosure_app.planning.revision.people_made import laid_on
from enclosure_app.planning.revision.sections import SectionPair, outlined, section_pairs


def brought_over(
    before: Project, drawing: Drawing, kept: Collection[str] | None = None
) -> Project:
    """Return the revised drawing as the next revision of a project.

    All that was said stays in it, of the earlier drawing; `compared` says what of it still holds.
    The same drawing brought over in two copies of a project gives the same revision.

    Args:
        before: The project of the earlier drawing.
        drawing: The revised drawing, read with the project's layers.
        kept: The names of the sections that it leaves as they are; None: those of the project's
            other drawings.
    """
    if kept is None:
        places = taken_place(before, drawing).values()
        kept = left_as_they_are(before, (each.file for each in places))
    own = [each for each in before.sections if each.name not in kept]
    pairs = section_pairs([*map(outlined, own)], [*map(outlined, drawing.sections)])
    of = _Brought(before, drawing, frozenset(kept), pairs)
    return replace(
        _with_source(of),
        sections=of.beside_others() if kept else of.alone(),
        underlays=tuple(of.underlay(each) for each in before.underlays),
        revision=new_id(before.revision, *map(drawn_as, drawing.sections), *sorted(kept)),
    )


def _with_source(of: "_Brought") -> Project:
    """Return the earlier project with what the revised file says, as far as it is of it alone."""
    before, drawing = of.before, of.drawing
    if not of.kept:
        notes = drawing.notes
    else:
        notes = (*before.notes, *(each for each in drawing.notes if each not in before.notes))
    if any(file_of(before, each) == before.source for each in before.sections if of.keeps(each)):
        return replace(before, notes=notes)
    return replace(
        before,
        units=drawing.units,
        source=drawing.file,
        notes=notes,
        layouts=drawing.layouts,
    )


@dataclass(frozen=True, slots=True)
class _Brought:
    """A revised drawing, its sections that are surely earlier ones, and the names of what stays."""

    before: Project
    drawing: Drawing
    kept: frozenset[str]
    pairs: tuple[SectionPair, ...]

    def keeps(self, section: Section) -> bool:
        """Whether an earlier section stays as it is."""
        return section.name in self.kept

    def alone(self) -> tuple[Section, ...]:
        """Return the revised drawing's sections under its own names, and those only sketched."""
        by_new = {id(pair.new.section): pair for pair in self.pairs}
        sections = tuple(
            laid_on(by_new[id(each)]) if id(each) in by_new else each
            for each in self.drawing.sections
        )
        paired = {id(pair.old.section) for pair in self.pairs}
        kept = (e for e in self.before.sections if id(e) not in paired and _is_sketched(e))
        return (*sections, *named_apart(kept, [each.name for each in sections]))

    def beside_others(self) -> tuple[Section, ...]:
        """Return the sections of the next revision; what is known again keeps place and name."""
        by_old = {id(pair.old.section): pair for pair in self.pairs}
        stay: list[Section] = []
        for each in self.before.sections:
            if pair := by_old.get(id(each)):
                over = replace(laid_on(pair), name=each.name)
                stay.append(self._filed(over, self.drawing.file))
            elif self.keeps(each) or _is_sketched(each):
                stay.append(self._filed(each, self.before.source))
        known = {id(pair.new.section) for pair in self.pairs}
        fresh = (self._fresh(each) for each in self.drawing.sections if id(each) not in known)
        return (*stay, *named_apart(fresh, [each.name for each in stay]))

    def _fresh(self, section: Section) -> Section:
        file = section.file or self.drawing.file
        name = section.name if section.file else f"{PurePath(file).stem}: {section.name}"
        return self._filed(replace(section, name=name), file)

    @staticmethod
    def _filed(section: Section, file: str) -> Section:
        """Return a section that knows its drawing, whichever comes to be the project's first."""
        known = section.file or _is_sketched(section)
        return section if known else replace(section, file=file)

    def underlay(self, each: Underlay) -> Underlay:
        """Return a picture where its section lies now; one under a mirrored section stays."""
        pair = next((p for p in self.pairs if p.old.section.name == each.section), None)
        if pair is None:
            return each
        at = each.at if pair.fit.motion.mirrored else pair.fit.motion.place(each.at)
        return replace(each, section=each.section if self.kept else pair.new.section.name, at=at)


def _is_sketched(section: Section) -> bool:
    """Whether no drawing ever showed a section: every piece was drawn by hand."""
    return not any(piece.handles for piece in section.pieces)
