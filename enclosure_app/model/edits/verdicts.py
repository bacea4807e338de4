"""Edits of what people say about findings: everything is added, nothing is taken away."""

from collections.abc import Iterable
from dataclasses import astuple, replace

from enclosure_app.errors import EnclosureError
from enclosure_app.language import say
from enclosure_app.model.edits.said import as_said, with_photographs
from enclosure_app.model.project import Project
from enclosure_app.model.said.carried import Carried, Subject
from enclosure_app.model.said.decision import Decision
from enclosure_app.model.said.photograph import Photograph
from enclosure_app.model.said.remark import Remark
from enclosure_app.model.standing.standing import new_id, standing
from enclosure_app.model.standing.whereabouts import Trail, subject_of


def set_decision(
    project: Project, decision: Decision, photographs: Iterable[Photograph] = ()
) -> Project:
    """Put down a decision about a finding; what was decided before stays in the history.

    It is about the drawing as it is now, and takes the place of all that stands about the finding.
    Its `revision`, `id` and `after` are given here, whatever it came with.

    Raises:
        EnclosureError: it is about nothing, lacks a reason, or names unknown photographs.
    """
    pictures = tuple(photographs)
    if not decision.key:
        raise EnclosureError(say("A decision is about a finding: pick one."))
    if decision.state.needs_reason and not decision.remark.strip():
        raise EnclosureError(
            say("What was found may stand only for a reason: type why, so that others can follow.")
        )
    project = with_photographs(project, pictures)
    named = as_said(project, replace(decision, after=_before(project, decision)), pictures)
    return replace(project, decisions=(*project.decisions, named))


def add_remark(
    project: Project, remark: Remark, photographs: Iterable[Photograph] = ()
) -> Project:
    """Put words or photographs to a finding without deciding anything.

    Raises:
        EnclosureError: it is about nothing, says nothing, or names unknown photographs.
    """
    pictures = tuple(photographs)
    if not remark.key:
        raise EnclosureError(say("A remark is about a finding: pick one."))
    if not (remark.remark.strip() or remark.photographs or pictures):
        raise EnclosureError(say("The remark is empty: type some words or add a photograph."))
    project = with_photographs(project, pictures)
    named = as_said(project, remark, pictures)
    if any(each.id == named.id for each in project.remarks):
        return project  # the very same words in the very same second: a key that was held down
    return replace(project, remarks=(*project.remarks, named))


def say_where(
    project: Project,
    earlier: Subject,
    now: tuple[str, str],
    by: tuple[str, str],
    *,
    on_list: bool = False,
) -> Project:
    """Say which finding of the drawing now a finding of an earlier one is.

    Args:
        project: The project.
        earlier: What was said about, by the names of its own time.
        now: The section and the key of the finding now; key "": it is gone.
        by: Who says so, and when.
        on_list: Items of the site list are meant, not findings.

    Raises:
        EnclosureError: nobody says it.
    """
    who, when = by[0].strip(), by[1]
    if not who:
        raise EnclosureError(say("Type your name: it is put beside what you say."))
    past = [e for e in standing(project.carried) if e.earlier == earlier and e.on_list == on_list]
    later, after = Subject(project.revision, *now), tuple(sorted(each.id for each in past))
    link = Carried(earlier, later, on_list, who, when, after=after)
    link = replace(link, id=new_id(project.id, "carried", *astuple(link)))
    return replace(project, carried=(*project.carried, link))


def _before(project: Project, decision: Decision) -> tuple[str, ...]:
    """Return the verdicts that a new one takes the place of: all that stand about its finding."""
    trail = Trail(project)
    about = Subject(project.revision, decision.section, decision.key)
    found: list[str] = []
    for each in standing(project.decisions):
        now = trail.now(subject_of(each))
        if each.id and isinstance(now, Subject) and _same(now, about):
            found.append(each.id)
    return tuple(sorted(found))


def _same(one: Subject, other: Subject) -> bool:
    """Whether two subjects are one; that of any section ("") is that of each."""
    anywhere = "" in (one.section, other.section)
    return one.key == other.key and (anywhere or one.section == other.section)
