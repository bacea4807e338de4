"""Which finding of the drawing as it is now something was said about, if anybody can tell."""

from collections.abc import Iterable, Mapping
from dataclasses import replace
from enum import StrEnum
from typing import TypeVar

from enclosure_app.model.project import Project
from enclosure_app.model.said.carried import EVERYTHING, WHOLE, Carried, Subject
from enclosure_app.model.said.decision import Decision
from enclosure_app.model.said.remark import Remark
from enclosure_app.model.said.sign_off import SignOff
from enclosure_app.model.said.site_check import SiteCheck
from enclosure_app.model.standing.standing import standing

Said = Decision | Remark | SiteCheck | SignOff
D = TypeVar("D", Decision, SiteCheck)


class Whereabouts(StrEnum):
    """Why something was said about nothing in the drawing as it is now."""

    UNTOLD = "nobody said yet which finding it is now"
    CONTESTED = "people say different things of which finding it is now"
    GONE = "it is gone from the revised drawing"


def subject_of(said: Said) -> Subject:
    """Return what something was said about, by the names of its own time."""
    if isinstance(said, SignOff):
        return Subject(said.revision, said.section, WHOLE)
    return Subject(said.revision, said.section, said.key)


class Trail:
    """Follows subjects of earlier drawings to the drawing as it is now.

    Links to a revision that the drawing of now does not come from are of another copy's drawing,
    which was not chosen when the copies were made one: they lead nowhere.
    """

    def __init__(self, project: Project, *, on_list: bool = False) -> None:
        self._revision = project.revision
        self._links: dict[Subject, list[Carried]] = {}
        leading = _leading_to(project)
        for each in standing(project.carried):
            wanted = each.on_list == on_list or each.earlier.key == EVERYTHING
            if wanted and each.later.revision in leading:
                self._links.setdefault(each.earlier, []).append(each)

    def now(self, subject: Subject) -> Subject | Whereabouts:
        """Return the subject as it is named in the drawing now, or why it is nowhere there."""
        passed: set[Subject] = set()
        while subject.revision != self._revision:
            step = self._step(subject)
            if isinstance(step, Whereabouts):
                return step
            if step in passed:  # only in a file that was written by hand
                return Whereabouts.CONTESTED
            passed.add(step)
            subject = step
        return subject

    def _step(self, subject: Subject) -> Subject | Whereabouts:
        links = self._links.get(subject) or self._untouched(subject)
        people = [each for each in links if each.who]
        later = {each.later for each in people or links}
        if not later:
            return Whereabouts.UNTOLD
        if len(later) > 1:
            return Whereabouts.CONTESTED
        (only,) = later
        return only if only.key else Whereabouts.GONE

    def _untouched(self, subject: Subject) -> list[Carried]:
        """Return the links of a section that a revision did not touch, as those of one thing in it."""
        links = self._links.get(subject._replace(key=EVERYTHING), [])
        return [replace(e, later=e.later._replace(key=subject.key)) for e in links]


def _leading_to(project: Project) -> set[str]:
    """Return the drawing of now and all those that it comes from, by their revisions."""
    steps = {(each.earlier.revision, each.later.revision) for each in project.carried}
    found, ends = set[str](), {project.revision}
    while ends:
        found |= ends
        ends = {earlier for earlier, later in steps if later in ends} - found
    return found


def standing_in(sayings: Iterable[D], trail: Trail, section: str) -> dict[str, tuple[D, ...]]:
    """Return what stands about each thing in a section, by the key that the thing has now.

    What was said of an earlier drawing is given with the key and the section of the one now.
    """
    found: dict[str, list[D]] = {}
    for each in standing(sayings):
        now = trail.now(subject_of(each))
        if not isinstance(now, Whereabouts) and now.section in ("", section):
            found.setdefault(now.key, []).append(_renamed(each, now))
    return {key: tuple(of) for key, of in found.items()}


def _renamed(said: D, now: Subject) -> D:
    if (said.section, said.key) == (now.section, now.key):
        return said
    return replace(said, key=now.key, section=now.section)


def homeless(project: Project, *, on_list: bool = False) -> Mapping[Subject, Whereabouts]:
    """Return what was said of earlier drawings that nobody can place yet, with the reason.

    These are to be asked about: nothing of it is shown at a finding, and nothing of it is lost.
    With `on_list` it is what was seen of items of the site list.
    """
    trail = Trail(project, on_list=on_list)
    told: list[Said] = (
        [*project.site_checks] if on_list else [*project.decisions, *project.remarks]
    )
    found: dict[Subject, Whereabouts] = {}
    for said in told:
        at = trail.now(subject_of(said))
        if at is Whereabouts.UNTOLD or at is Whereabouts.CONTESTED:
            found[subject_of(said)] = at
    return found
