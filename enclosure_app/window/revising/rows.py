"""What became of each finding, as rows of a list, in the order in which a person looks at them."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication

from enclosure_app.model.finding import Finding
from enclosure_app.model.report import SectionResult
from enclosure_app.model.said.carried import Subject
from enclosure_app.model.standing.questions import open_questions
from enclosure_app.planning.revision import (
    Fate,
    FindingMatch,
    LookedAt,
    LookMatch,
    SectionRevision,
)
from enclosure_app.window.revising.laying import About, Laid
from enclosure_app.window.revising.said_words import Said

Told = Finding | LookedAt
"""What is shown at a place: a finding, or a place of the site list."""

Answer = Told | str | None
"""What a person says it is now, "" where it is gone, None where it is left open."""

ORDER = (Fate.NOT_SURE, Fate.GONE, Fate.NEW, Fate.MOVED, Fate.STILL_THERE)
"""What is to be looked at first: what only a person knows, then what changed."""


@dataclass(frozen=True, slots=True)
class Row:
    """What became of one finding, or of one place that somebody looked at, in which section.

    `abouts` are what something may have been said about, none for one that is new; `said` is what
    was said, "" for nothing.
    """

    match: FindingMatch | LookMatch
    section: SectionRevision
    abouts: tuple[About, ...] = ()
    said: str = ""

    @property
    def asks(self) -> bool:
        """Whether something was said of which only a person knows where it belongs."""
        return self.match.fate is Fate.NOT_SURE and bool(self.said)

    @property
    def name(self) -> str:
        """The section's name, as it is now."""
        return self.section.new or self.section.old

    @property
    def message(self) -> str:
        """What is told of it in the list."""
        told = self.match.old or self.match.new
        return told.message if told else ""

    def choices(self, answer: Answer) -> dict[About, tuple[str, str]]:
        """Return what an answer says of each thing; one that is left open says nothing."""
        if answer is None:
            return {}
        return {each: now_of(each, answer, self.name) for each in self.abouts}


def now_of(about: About, answer: Told | str, section: str) -> tuple[str, str]:
    """Return where an earlier thing is now, by an answer; `section` is the one that lacks it."""
    if isinstance(answer, str):
        return (section, "")
    if isinstance(answer, Finding):
        return (answer.section, answer.key)
    key = f"{answer.key}:{about.earlier.key.rpartition(':')[2]}"
    return (answer.section, key if key in answer.keys else "")  # nobody asks that there any more


def rows_of(laid: Laid) -> tuple[Row, ...]:
    """Return a row for each finding, and each place that somebody looked at; what is asked first."""
    return tuple(sorted(_rows(laid), key=_rank))


def unlisted(laid: Laid, rows: Iterable[Row]) -> int:
    """Return how much that was said has no row and will be asked: of what was not found any more."""
    listed = {about for row in rows for about in row.abouts}
    asked = open_questions(laid.revision.project)
    return sum(About(each.earlier, each.on_list) not in listed for each in asked)


def _rank(row: Row) -> tuple[bool, int, bool]:
    return (not row.asks, ORDER.index(row.match.fate), not row.said)


def _rows(laid: Laid) -> Iterator[Row]:
    for section in laid.revision.sections:
        if section.untouched:
            continue
        said = Said(laid.before, section.old)
        for match in section.findings:
            own = [match.old.key] if match.old else []
            told = said.of_finding(match.old.key) if match.old else ""
            yield Row(match, section, _abouts(laid, section, own), told)
        for look in section.looks:
            abouts = _abouts(laid, section, look.old.keys, on_list=True)
            yield Row(look, section, abouts, said.of_looks(look.old.keys))


def _abouts(
    laid: Laid, section: SectionRevision, keys: Iterable[str], *, on_list: bool = False
) -> tuple[About, ...]:
    revision = laid.before.revision
    return tuple(About(Subject(revision, section.old, key), on_list) for key in keys)


def number_in(results: tuple[SectionResult, ...], finding: Told) -> int | None:
    """Return the number that a finding bears on the drawing, None where it bears none."""
    for result in results:
        for number, each in enumerate(result.findings, 1):
            if each is finding:
                return number
    return None


def section_named(results: tuple[SectionResult, ...], name: str) -> SectionResult | None:
    """Return what was found in a section."""
    return next((each for each in results if each.section.name == name), None)


def fate_words(fate: Fate) -> str:
    """Return what became of a finding, in the window's language."""
    words = {
        Fate.STILL_THERE: say("Still there"),
        Fate.MOVED: say("Moved"),
        Fate.GONE: say("Gone"),
        Fate.NEW: say("New"),
        Fate.NOT_SURE: say("Not sure, please look"),
    }
    return words[fate]


def fate_count(fate: Fate, count: int) -> str:
    """Return how many findings something became of."""
    words = {
        Fate.STILL_THERE: say("{} still there"),
        Fate.MOVED: say("{} moved"),
        Fate.GONE: say("{} gone"),
        Fate.NEW: say("{} new"),
        Fate.NOT_SURE: say("{} not sure"),
    }
    return words[fate].format(count)


def say(text: str) -> str:
    """Return a text in the window's language."""
    return QCoreApplication.translate("RevisedRows", text)
