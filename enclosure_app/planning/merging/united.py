"""What people said in two copies of a project, united: nothing is lost, nothing stands twice.

The order that the copies come in does not matter, nor how often they are united, nor in which
order three of them are: every saying has a name of its own, and the same sayings are always put in
the same order.
"""

from collections.abc import Iterable, Mapping
from dataclasses import replace
from itertools import chain
from types import MappingProxyType
from typing import TypeVar

from enclosure_app.model.project import Project
from enclosure_app.model.said.carried import Carried
from enclosure_app.model.said.decision import Decision
from enclosure_app.model.said.moment import instant
from enclosure_app.model.said.photograph import Photograph
from enclosure_app.model.said.question import Question
from enclosure_app.model.said.remark import Remark
from enclosure_app.model.said.sign_off import SignOff
from enclosure_app.model.said.site_check import SiteCheck
from enclosure_app.model.standing.standing import in_order

S = TypeVar("S", Decision, Remark, SiteCheck, SignOff, Carried)
T = TypeVar("T", Decision, SiteCheck, SignOff, Carried)


def united(ours: Project, theirs: Project) -> Project:
    """Return our project with all that was said in either; its drawing and settings stay."""
    return replace(
        ours,
        decisions=_in_order(_all(ours.decisions, theirs.decisions)),
        remarks=_by_moment(_all(ours.remarks, theirs.remarks)),
        site_checks=_in_order(_all(ours.site_checks, theirs.site_checks)),
        sign_offs=_in_order(_all(ours.sign_offs, theirs.sign_offs)),
        carried=_in_order(_all(ours.carried, theirs.carried)),
        questions=_questions(ours.questions, theirs.questions),
        photographs=_photographs(ours.photographs, theirs.photographs),
        id=min(ours.id, theirs.id),
    )


def _all(ours: Iterable[S], theirs: Iterable[S]) -> list[S]:
    """Return the sayings of both. One that reads differently in two copies is kept in one reading.

    Only the name of its section can differ, where one of the two renamed it.
    """
    found: dict[str, S] = {}
    nameless: dict[S, None] = {}
    for each in chain(ours, theirs):
        if not each.id:
            nameless[each] = None
        elif each.id not in found or repr(each) < repr(found[each.id]):
            found[each.id] = each
    every = sorted(nameless, key=repr)
    every.extend(found.values())
    return every


def _in_order(sayings: list[T]) -> tuple[T, ...]:
    every = [each for each in sayings if not each.id]
    every.extend(in_order([each for each in sayings if each.id]))
    return tuple(every)


def _by_moment(remarks: list[Remark]) -> tuple[Remark, ...]:
    return tuple(sorted(remarks, key=lambda each: (instant(each.when), each.id, repr(each))))


def _questions(ours: Iterable[Question], theirs: Iterable[Question]) -> tuple[Question, ...]:
    named = {each.id or repr(each): each for each in chain(ours, theirs)}
    return tuple(named[name] for name in sorted(named))


def _photographs(
    ours: Mapping[str, Photograph], theirs: Mapping[str, Photograph]
) -> Mapping[str, Photograph]:
    """Return the photographs of both; of two files of one picture the name that comes first."""
    both = [(key, each) for held in (ours, theirs) for key, each in held.items()]
    last = sorted(both, key=lambda row: (row[0], row[1].name, row[1].taken), reverse=True)
    return MappingProxyType(dict(sorted(dict(last).items())))
