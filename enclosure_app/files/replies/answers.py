"""Holds what reviewers answered in a PDF against a project, and takes over what a person chose.

What was said is first followed to the drawing as it is now (`model.standing.whereabouts`), so that an answer
to an earlier revision is about the same finding or says that nobody can tell. What the project
knows already is left out: reading a PDF twice proposes everything once.
"""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from enum import StrEnum
from pathlib import PurePath

from enclosure_app.files.replies.proposal import Proposal
from enclosure_app.language import say
from enclosure_app.model.edits import add_remark, set_decision
from enclosure_app.model.finding import Finding
from enclosure_app.model.project import Project
from enclosure_app.model.said.carried import Subject
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.model.said.moment import instant
from enclosure_app.model.said.remark import Remark
from enclosure_app.model.standing.verdicts import verdicts_in
from enclosure_app.model.standing.whereabouts import Trail, Whereabouts, subject_of

_SAME = 0.05  # mm: what a measure may differ by and still be the same


class Outcome(StrEnum):
    """What an answer comes to in a project."""

    MATCHES = "matches"  # about a finding that is there: it can be taken over as it is
    CHANGED = "changed since"  # what it is about is another now, or somebody decided since
    SAID = "already said"
    UNSURE = "not sure"  # for the reason that its doubt gives
    NOTHING = "nothing new"  # it opens what nobody has decided


@dataclass(frozen=True, slots=True)
class Held:
    """An answer by the names of the drawing as it is now, with all doubts, and what it comes to."""

    proposal: Proposal
    outcome: Outcome


def held_against(
    project: Project, findings: Sequence[Finding], proposals: Iterable[Proposal]
) -> tuple[Held, ...]:
    """Return what each of `proposals` comes to.

    Args:
        project: The project as it is now.
        findings: All that is found in it now.
        proposals: What was read from a PDF.
    """
    trail, now = Trail(project), _Now(project, findings)
    return tuple(_held(each, trail, now) for each in proposals)


def answers_for(
    project: Project, findings: Sequence[Finding], proposals: Iterable[Proposal]
) -> tuple[Proposal, ...]:
    """Return what is new to a project in `proposals`, with all doubts about it."""
    held = held_against(project, findings, proposals)
    return tuple(
        each.proposal for each in held if each.outcome not in (Outcome.SAID, Outcome.NOTHING)
    )


def taken_over(project: Project, proposals: Iterable[Proposal]) -> Project:
    """Return the project with proposals put down in their writers' names and times.

    Raises:
        EnclosureError: one of them is about no finding, says nothing, or lacks its reason.
    """
    for each in proposals:
        about, *_ = each.note.splitlines() or [""]
        said = (each.who, each.when, each.remark, each.section, about)
        if each.state is None:
            project = add_remark(project, Remark(each.key, *said))
        else:
            project = set_decision(project, Decision(each.key, each.state, *said))
    return project


@dataclass(frozen=True, slots=True)
class _Now:
    """A project as it is, and what is found in it."""

    project: Project
    findings: Sequence[Finding]

    def finding(self, proposal: Proposal) -> Finding | None:
        """Return the finding that an answer is about."""
        place = (proposal.key, proposal.section)
        return next((f for f in self.findings if (f.key, f.section) == place), None)


def _held(proposal: Proposal, trail: Trail, now: _Now) -> Held:
    followed = _followed(proposal, trail, now.project)
    kept = followed or proposal
    if _known(kept, trail, now.project):
        return Held(kept, Outcome.SAID)
    kept = _reopening(kept, trail, now.project)
    if not (kept.state or kept.remark or kept.doubt):
        return Held(kept, Outcome.NOTHING)
    changes = tuple(_changes(kept, now, followed=followed is not None))
    doubts = (kept.doubt, *changes, _elsewhere(kept, now.project))
    kept = replace(kept, doubt=" ".join(filter(None, doubts)))
    outcome = Outcome.UNSURE if kept.doubt else Outcome.MATCHES
    return Held(kept, Outcome.CHANGED if changes else outcome)


def _followed(proposal: Proposal, trail: Trail, project: Project) -> Proposal | None:
    """Return a proposal by the names of the drawing as it is now, None if nobody can tell these."""
    if not proposal.key or proposal.revision == project.revision:
        return proposal
    now = trail.now(Subject(proposal.revision, proposal.section, proposal.key))
    if isinstance(now, Whereabouts):
        return None
    return replace(proposal, key=now.key, section=now.section, revision=now.revision)


def _changes(proposal: Proposal, now: _Now, *, followed: bool) -> Iterator[str]:
    """Yield what changed since the note was issued that a person should know of."""
    if not proposal.key:
        return
    if not followed:
        yield say("It answers another revision of the drawing.")
    finding = now.finding(proposal)
    if finding is None and not _elsewhere(proposal, now.project):
        yield say("What it is about is no longer found.")
    elif finding and _measured_otherwise(proposal, finding):
        yield say("It was measured otherwise then: look whether the answer still holds.")
    yield from _overtaken(proposal, now.project)


def _measured_otherwise(proposal: Proposal, finding: Finding) -> bool:
    if proposal.measured is None or finding.measured is None or proposal.lost:
        return False
    return abs(proposal.measured - finding.measured) > _SAME


def _overtaken(proposal: Proposal, project: Project) -> Iterator[str]:
    """Yield that somebody decided otherwise after the answer was written."""
    decided = verdicts_in(project, proposal.section).get(proposal.key)
    if proposal.state is None or decided is None or decided.state is proposal.state:
        return
    if instant(decided.when) > instant(proposal.when):
        who, word = decided.who or say("somebody"), say(decided.state.value.capitalize())
        yield say("{who} decided since: {verdict}.", who=who, verdict=word)


def _elsewhere(proposal: Proposal, project: Project) -> str:
    """Return that an answer is about another drawing, "" if it is not."""
    files = [project.source, *(s.file for s in project.sections if s.name == proposal.section)]
    drawings = {PurePath(file).name for file in files if file}
    if not (proposal.key and drawings) or proposal.revision != project.revision:
        return ""
    if proposal.drawing in drawings:
        return ""
    return say("It was written about the drawing {drawing}.", drawing=proposal.drawing)


def _known(proposal: Proposal, trail: Trail, project: Project) -> bool:
    """Whether the very same was said in the project already."""
    said: Iterable[Decision | Remark] = (*project.decisions, *project.remarks)
    return any(
        (_state(each), each.who) == (proposal.state, proposal.who)
        and (each.remark == proposal.remark or _same_moment(each, proposal))
        and _is_about(each, proposal, trail)
        for each in said
    )


def _same_moment(said: Decision | Remark, proposal: Proposal) -> bool:
    return bool(proposal.when) and instant(said.when) == instant(proposal.when)


def _state(said: Decision | Remark) -> State | None:
    return said.state if isinstance(said, Decision) else None


def _reopening(proposal: Proposal, trail: Trail, project: Project) -> Proposal:
    """Return a proposal that only opens what was decided before; readers write "None" freely."""
    decided = any(_is_about(each, proposal, trail) for each in project.decisions)
    if proposal.state is State.OPEN and not decided:
        return replace(proposal, state=None)
    return proposal


def _is_about(said: Decision | Remark, proposal: Proposal, trail: Trail) -> bool:
    now = trail.now(subject_of(said))
    if isinstance(now, Whereabouts):
        return False
    return now.key == proposal.key and now.section in ("", proposal.section)
