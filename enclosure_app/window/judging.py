"""Judges the sections of a project: what did not change keeps its result.

A section that did not change is the very same object; one in which a few pieces moved is checked
from its last check.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from time import perf_counter
from types import MappingProxyType
from typing import TYPE_CHECKING

from enclosure_app.model.limits import Limits
from enclosure_app.model.project import Project
from enclosure_app.model.report import SectionResult
from enclosure_app.model.section import Section
from enclosure_app.progress import part

if TYPE_CHECKING:
    from enclosure_app.checker import Check


@dataclass(frozen=True, slots=True)
class Judged:
    """The result of one section, and by what check it was found, None where there was none.

    `whole` is how long it took to check it as a whole, `again` to check it again after a few pieces
    moved (s); None as long as that has not been tried.
    """

    result: SectionResult
    check: "Check | None" = None
    whole: float = 0.0
    again: float | None = None

    def expected(self, section: Section, limits: Limits) -> float:
        """Return how long it will take to check the section as it is now (s)."""
        if section is self.result.section and self.check and self.check.limits is limits:
            return 0.0
        quick = self.check is not None and _few_moved(self.check, section, limits)
        return self.again if quick and self.again is not None else self.whole


@dataclass(frozen=True, slots=True)
class Checked:
    """The results of one project, one for each section."""

    project: Project
    limits: Limits
    judged: tuple[Judged, ...] = ()

    @property
    def results(self) -> tuple[SectionResult, ...]:
        """The results alone."""
        return tuple(each.result for each in self.judged)


def unjudged(section: Section) -> SectionResult:
    """Return the result of a section of which nothing can be said yet."""
    return SectionResult(section, MappingProxyType({}))


def judge(project: Project, limits: Limits, last: Checked | None = None) -> Checked:
    """Check every section that is not the same as in `last`."""
    before = judged_before(project, last)
    known = {id(each.result.section): each for each in last.judged} if last else {}
    same = last is not None and last.limits is limits
    found, count = [], len(project.sections)
    for number, (section, old) in enumerate(zip(project.sections, before, strict=True)):
        with part(number / count, (number + 1) / count):
            kept = known.get(id(section)) if same else None
            found.append(kept or _judged(section, limits, old))
    return Checked(project, limits, tuple(found))


def judged_before(project: Project, last: Checked | None) -> Sequence[Judged | None]:
    """Return what was last said of each section of a project, None where nothing was."""
    if last is None or len(last.judged) != len(project.sections):
        return [None] * len(project.sections)
    return last.judged


def _few_moved(last: "Check", section: Section, limits: Limits) -> bool:
    from enclosure_app.checker import few_moved  # noqa: PLC0415  after the window is seen

    return few_moved(last, section, limits)


def _judged(section: Section, limits: Limits, before: Judged | None) -> Judged:
    from enclosure_app.checker import check  # noqa: PLC0415  as above

    if not section.can_be_judged:
        return Judged(unjudged(section))
    last = before.check if before else None
    quick = last is not None and _few_moved(last, section, limits)
    start = perf_counter()
    found = check(section, limits, last)
    took = perf_counter() - start
    if before is not None and quick:
        return Judged(found.result, found, before.whole, took)
    return Judged(found.result, found, took, before.again if before else None)
