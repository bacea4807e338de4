"""What belongs to every saying that is put into a project: its name, its place, its photographs."""

from collections.abc import Iterable
from dataclasses import astuple, replace
from types import MappingProxyType
from typing import TypeVar

from enclosure_app.model.project import Project
from enclosure_app.model.said.carried import Carried
from enclosure_app.model.said.decision import Decision
from enclosure_app.model.said.photograph import Photograph, missing
from enclosure_app.model.said.remark import Remark
from enclosure_app.model.said.sign_off import SignOff
from enclosure_app.model.said.site_check import SiteCheck
from enclosure_app.model.standing.standing import new_id

S = TypeVar("S", Decision, Remark, SiteCheck, SignOff)
K = TypeVar("K", Decision, Remark, SiteCheck)

_KINDS = {Decision: "decision", Remark: "remark", SiteCheck: "site check"}


def with_photographs(project: Project, photographs: Iterable[Photograph]) -> Project:
    """Keep photographs in the project, each once."""
    held = dict(project.photographs)
    for each in photographs:
        held.setdefault(each.key, each)
    if len(held) == len(project.photographs):
        return project
    return replace(project, photographs=MappingProxyType(held))


def as_said(project: Project, said: K, photographs: Iterable[Photograph]) -> K:
    """Return a saying as it is kept: with its photographs, its revision, and an id for good.

    `photographs` are named after those that it names itself, each once; they are in the project.

    Raises:
        EnclosureError: it names a photograph that is not in the project.
    """
    keys = tuple(dict.fromkeys((*said.photographs, *(each.key for each in photographs))))
    if lacking := tuple(key for key in keys if key not in project.photographs):
        raise missing(lacking)
    whole = replace(said, photographs=keys, revision=project.revision, id="")
    return replace(whole, id=new_id(project.id, _KINDS[type(said)], *astuple(whole)))


def said_of_renamed(project: Project, before: str, after: str) -> Project:
    """Return the project with everything said of a section said of its new name.

    What was said of earlier drawings keeps the names of its time.
    """
    now = project.revision
    return replace(
        project,
        decisions=tuple(_said_of(each, now, before, after) for each in project.decisions),
        remarks=tuple(_said_of(each, now, before, after) for each in project.remarks),
        site_checks=tuple(_said_of(each, now, before, after) for each in project.site_checks),
        sign_offs=tuple(_said_of(each, now, before, after) for each in project.sign_offs),
        carried=tuple(_leading_to(each, now, before, after) for each in project.carried),
    )


def _said_of(said: S, revision: str, before: str, after: str) -> S:
    here = (said.revision, said.section) == (revision, before)
    return replace(said, section=after) if here else said


def _leading_to(link: Carried, revision: str, before: str, after: str) -> Carried:
    here = link.later[:2] == (revision, before)
    return replace(link, later=link.later._replace(section=after)) if here else link
