"""Edits of what people saw on site: looks at the items of the site list, and sign-offs."""

from collections.abc import Iterable
from dataclasses import astuple, replace

from enclosure_app.errors import EnclosureError
from enclosure_app.language import say
from enclosure_app.model.edits.looking_up import Which, section_of
from enclosure_app.model.edits.said import as_said, with_photographs
from enclosure_app.model.project import Project
from enclosure_app.model.said.carried import WHOLE, Subject
from enclosure_app.model.said.photograph import Photograph
from enclosure_app.model.said.sign_off import SignOff, drawn_sum
from enclosure_app.model.said.site_check import SiteCheck
from enclosure_app.model.standing.standing import new_id, standing
from enclosure_app.model.standing.whereabouts import Trail, subject_of


def tick(project: Project, check: SiteCheck, photographs: Iterable[Photograph] = ()) -> Project:
    """Put down what was seen of an item of the site list; earlier looks stay in the history.

    Its `revision`, `id` and `after` are given here, whatever it came with.

    Raises:
        EnclosureError: it is of nothing, or names unknown photographs.
    """
    pictures = tuple(photographs)
    if not check.key:
        raise EnclosureError(say("A look is at an item of the site list: pick one."))
    project = with_photographs(project, pictures)
    named = as_said(project, replace(check, after=_looks_before(project, check)), pictures)
    return replace(project, site_checks=(*project.site_checks, named))


def sign(project: Project, which: Which, who: str, when: str, remark: str = "") -> Project:
    """Put a name under a section as it is drawn now; it follows an earlier one of the same person.

    Raises:
        EnclosureError: there is no such section, or no name.
    """
    section = section_of(project, which)
    signing = SignOff(section.name, who.strip(), when, remark.strip(), drawn_sum(section))
    return _with_sign_off(project, signing)


def withdraw(project: Project, which: Which, who: str, when: str, remark: str = "") -> Project:
    """Take somebody's name under a section away again; that it was there stays in the history.

    Raises:
        EnclosureError: there is no such section, or the name is not under it.
    """
    section = section_of(project, which)
    taken = SignOff(section.name, who.strip(), when, remark.strip(), withdrawn=True)
    if all(each.withdrawn for each in _names_before(project, taken)):
        raise EnclosureError(
            say('{who} has not signed "{section}".', who=taken.who, section=section.name)
        )
    return _with_sign_off(project, taken)


def _with_sign_off(project: Project, new: SignOff) -> Project:
    if not new.who:
        raise EnclosureError(say("Type your name: a section is signed by a person."))
    past = tuple(sorted(each.id for each in _names_before(project, new)))
    named = replace(new, revision=project.revision, after=past)
    named = replace(named, id=new_id(project.id, "sign-off", *astuple(named)))
    return replace(project, sign_offs=(*project.sign_offs, named))


def _names_before(project: Project, new: SignOff) -> list[SignOff]:
    """Return the sign-offs of the same person that stand under the same section."""
    trail, who = Trail(project), new.who.casefold()
    here = Subject(project.revision, new.section, WHOLE)
    own = (each for each in standing(project.sign_offs) if each.who.casefold() == who)
    return [each for each in own if trail.now(subject_of(each)) == here]


def _looks_before(project: Project, check: SiteCheck) -> tuple[str, ...]:
    trail = Trail(project, on_list=True)
    about = Subject(project.revision, check.section, check.key)
    past = standing(project.site_checks)
    return tuple(sorted(each.id for each in past if trail.now(subject_of(each)) == about))
