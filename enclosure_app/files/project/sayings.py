"""The forms of what people said in a project: verdicts, remarks, looks on site, sign-offs."""

from collections.abc import Iterator, Sequence
from typing import Any

from enclosure_app.files.project import forms as form
from enclosure_app.files.project.forms import Form, Place, brief, record, several
from enclosure_app.language import say
from enclosure_app.model.project import Project
from enclosure_app.model.said.carried import Carried, Subject
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.model.said.photograph import Photograph
from enclosure_app.model.said.question import Question
from enclosure_app.model.said.remark import Remark
from enclosure_app.model.said.sign_off import SignOff
from enclosure_app.model.said.site_check import Seen, SiteCheck


def _read_subject(value: object) -> Subject:
    names = several(form.text).read(value)
    if len(names) != 3:
        raise form.wrong(say("must hold a revision, a section and a key."))
    return Subject(*names)


def _read_dots(value: object) -> tuple[int, int]:
    dots = several(form.whole).read(value)
    if len(dots) != 2:
        raise form.wrong(say("must be a width and a height in dots."))
    return (dots[0], dots[1])


_SAID: dict[str, Form[Any]] = {
    "who": form.text,
    "when": form.text,
    "remark": form.text,
    "section": form.text,
    "about": form.text,
    "photographs": several(form.text),
    "revision": form.text,
    "id": form.text,
}
_AFTER = several(form.text)
_SUBJECT = Form[Subject](_read_subject, list)

DECISION = brief(Decision, key=form.text, state=form.word(State), **_SAID, after=_AFTER)
REMARK = brief(Remark, key=form.text, **_SAID)
SITE_CHECK = brief(SiteCheck, key=form.text, seen=form.word(Seen), **_SAID, after=_AFTER)
SIGN_OFF = brief(
    SignOff,
    section=form.text,
    who=form.text,
    when=form.text,
    remark=form.text,
    drawn=form.text,
    withdrawn=form.flag,
    revision=form.text,
    id=form.text,
    after=_AFTER,
)
CARRIED = brief(
    Carried,
    earlier=_SUBJECT,
    later=_SUBJECT,
    on_list=form.flag,
    who=form.text,
    when=form.text,
    id=form.text,
    after=_AFTER,
)
QUESTION = brief(
    Question,
    earlier=_SUBJECT,
    about=form.text,
    revision=form.text,
    section=form.text,
    at=form.maybe(form.point),
    asked=several(form.text),
    id=form.text,
    on_list=form.flag,
)
PHOTOGRAPH = record(
    Photograph,
    name=form.text,
    size=Form[tuple[int, int]](_read_dots, list),
    taken=form.text,
    data=form.base64,
)


def amiss(project: Project) -> list[tuple[Place, str]]:
    """Name the photographs that something was said of and that are not in the file."""
    return [
        *_lacking(project, "decisions", project.decisions),
        *_lacking(project, "remarks", project.remarks),
        *_lacking(project, "site_checks", project.site_checks),
    ]


def _lacking(
    project: Project, name: str, sayings: Sequence[Decision | Remark | SiteCheck]
) -> Iterator[tuple[Place, str]]:
    for at, said in enumerate(sayings):
        for number, key in enumerate(said.photographs):
            if key not in project.photographs:
                text = say("names a photograph that is not in the file: remove it here.")
                yield (name, at, "photographs", number), text
