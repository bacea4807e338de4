"""What was said of a stop until now, in words, and the photographs that were put to it."""

from collections.abc import Mapping

from PySide6.QtCore import QCoreApplication

from enclosure_app.drawing.verdict_words import state_word
from enclosure_app.model.project import Project
from enclosure_app.model.said.decision import Decision
from enclosure_app.model.said.moment import shown
from enclosure_app.model.said.photograph import Photograph
from enclosure_app.model.said.remark import Remark
from enclosure_app.model.said.site_check import Seen, SiteCheck
from enclosure_app.model.standing.site_checks import contested_looks_in, looks_at
from enclosure_app.model.standing.verdicts import contested_in, history_of
from enclosure_app.planning.site_list.questions import Question
from enclosure_app.window.walk.looks import pictures_word, seen_word
from enclosure_app.window.walk.stops import Stop

Said = Decision | Remark | SiteCheck


def said_of(project: Project, section: str, stop: Stop) -> tuple[Said, ...]:
    """Return all that was ever said of a stop; of a place, question by question."""
    if stop.finding is not None:
        return history_of(project, stop.key, section)
    items = stop.place.items if stop.place else ()
    return tuple(check for key, _ in items for check in looks_at(project, key, section))


def contest(project: Project, section: str, stop: Stop) -> tuple[str, ...]:
    """Return what people who did not know of each other said differently, a line for each matter."""
    if stop.finding is not None:
        sides = contested_in(project, section).get(stop.key, ())
        told = "; ".join(f"{each.who}: {state_word(each.state)}" for each in sides)
        settle = say("Decided differently: {}. Decide again to settle it.")
        return (settle.format(told),) if sides else ()
    contested = contested_looks_in(project, section)
    items = stop.place.items if stop.place else ()
    return tuple(_seen_apart(each, contested[key]) for key, each in items if key in contested)


def _seen_apart(question: Question, looks: tuple[SiteCheck, ...]) -> str:
    told = "; ".join(f"{each.who}: {seen_word(each.seen)}" for each in looks)
    return say("Seen differently: {}. {} Look again to settle it.").format(told, question.text)


def said_lines(said: tuple[Said, ...], stop: Stop | None = None) -> tuple[str, ...]:
    """Return what was said, each in a line, but for what stands elsewhere on the page.

    Looks without a remark stand at their questions, and the only verdict stands above its buttons.
    Where a `stop` has several questions, each look names its own.
    """
    asked = dict(stop.place.items) if stop and stop.place and len(stop.place.items) > 1 else {}
    if len(said) == 1 and isinstance(said[0], Decision) and not said[0].photographs:
        return ()
    told = [each for each in said if not isinstance(each, SiteCheck) or _has_more(each)]
    return tuple(_line(each, asked) for each in told)


def photographs_of(project: Project, said: tuple[Said, ...]) -> tuple[Photograph, ...]:
    """Return the photographs that go with what was said, each once, the earliest first."""
    keys = dict.fromkeys(key for each in said for key in each.photographs)
    return tuple(project.photographs[key] for key in keys if key in project.photographs)


def _has_more(check: SiteCheck) -> bool:
    return bool(check.remark or check.photographs)


def _line(said: Said, asked: Mapping[str, Question]) -> str:
    about = asked[said.key].text if said.key in asked else ""
    words = [about, _what(said), said.remark, pictures_word(len(said.photographs))]
    told = " · ".join(word for word in words if word)
    return f"{shown(said.when)}, {said.who}: {told}"


def _what(said: Said) -> str:
    if isinstance(said, Decision):
        return state_word(said.state)
    seen = said.seen if isinstance(said, SiteCheck) else Seen.NOT_LOOKED_AT
    return "" if seen is Seen.NOT_LOOKED_AT else seen_word(seen)


def say(text: str) -> str:
    """Return a text in the window's language."""
    return QCoreApplication.translate("History", text)
