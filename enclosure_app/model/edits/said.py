"""What belongs to every saying that is put into a project: its name, its place, its photographs."""

from collections.abc import Iterable
from dataclasses import replace
from types import MappingProxyType
from typing import TypeVar

from enclosure_app.model.project import Project
from enclosure_app.model.said.carried import Carried
from enclosure_app.model.said.decision import Decision
from enclosure_app.model.said.photograph import Photograph, missing
from enclosure_app.model.said.remark import Remark
from enclosure_app.model.said.sign_off import SignOff
from enclosure_app.model.said.site_check import SiteCheck

S = TypeVar("S", Decision, Remark, SiteCheck, SignOff)


def with_photographs(project: Project, photographs: Iterable[Photograph]) -> Project:
    """Keep photographs in the project, each once."""
    held = dict(project.photographs)
    for each in photographs:
        held.setdefault(each.key, each)
    if len(held) == len(project.photographs):
        return project
    return replace(project, photographs=MappingProxyType(held))


def named_photographs(
    project: Project, names: tuple[str, ...], photographs: Iterable[Photograph]
) -> tuple[str, ...]:
    """Return the keys of a saying's photographs, those of `photographs` last, each once.

    Raises:
        EnclosureError: one is not in the project.
    """
    every = tuple(dict.fromkeys((*names, *(each.key for each in photographs))))
    if lacking := tuple(name for name in every if name not in project.photographs):
        raise missing(lacking)
    return every


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
