"""Holds what reviewers answered in a PDF against a project, and takes over what a person chose.

What was said is first followed to the drawing as it is now (`model.standing.whereabouts`), so that an answer
to an earlier revision is about the same finding or says that nobody can tell. What the project
knows already is left out: reading a PDF twice proposes everything once.
"""

from collections.abc import Iterable, Sequence
from dataclasses import replace
from pathlib import PurePath

from enclosure_app.files.replies.replies import Proposal
from enclosure_app.language import say
from enclosure_app.model.edits import add_remark, set_decision
from enclosure_app.model.finding import Finding
from enclosure_app.model.project import Project
from enclosure_app.model.said.carried import Subject
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.model.said.moment import instant
from enclosure_app.model.said.remark import Remark
from enclosure_app.model.standing.whereabouts import Trail, Whereabouts, subject_of


def answers_for(
    project: Project, findings: Sequence[Finding], proposals: Iterable[Proposal]
) -> tuple[Proposal, ...]:
    """Return what is new to a project in `proposals`, with all doubts about it.

    Args:
        project: The project as it is now.
        findings: All that is found in it now.
        proposals: What was read from a PDF.
    """
    trail = Trail(project)
    followed = (_followed(each, trail, project) for each in proposals)
    fresh = (each for each in followed if not _known(each, trail, project))
    said = (_reopening(each, trail, project) for each in fresh)
    told = (each for each in said if each.state or each.remark or each.doubt)
    return tuple(_held_against(each, findings, project) for each in told)


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


def _followed(proposal: Proposal, trail: Trail, project: Project) -> Proposal:
    """Return a proposal by the names of the drawing as it is now, or with the doubt which it is."""
    if not proposal.key or proposal.revision == project.revision:
        return proposal
    now = trail.now(Subject(proposal.revision, proposal.section, proposal.key))
    if isinstance(now, Whereabouts):
        return _doubted(proposal, say("It answers another revision of the drawing."))
    return replace(proposal, key=now.key, section=now.section, revision=now.revision)


def _held_against(proposal: Proposal, findings: Sequence[Finding], project: Project) -> Proposal:
    """Return a proposal that says if it is about nothing that is found now, or another drawing."""
    if not proposal.key:
        return proposal
    drawing = PurePath(project.source).name
    if drawing and proposal.drawing != drawing and proposal.revision == project.revision:
        told = say("It was written about the drawing {drawing}.", drawing=proposal.drawing)
        return _doubted(proposal, told)
    place = (proposal.key, proposal.section)
    if any((finding.key, finding.section) == place for finding in findings):
        return proposal
    return _doubted(proposal, say("What it is about is no longer found."))


def _doubted(proposal: Proposal, told: str) -> Proposal:
    return replace(proposal, doubt=f"{proposal.doubt} {told}".strip())


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
