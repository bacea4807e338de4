"""What became of each finding, as rows of a list, in the order in which a person looks at them."""

from collections.abc import Iterator
from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication

from enclosure_app.model.finding import Finding
from enclosure_app.model.report import SectionResult
from enclosure_app.model.said.carried import Subject
from enclosure_app.planning.revision import Fate, FindingMatch, SectionRevision
from enclosure_app.window.revising.laying import Laid

ORDER = (Fate.NOT_SURE, Fate.GONE, Fate.NEW, Fate.MOVED, Fate.STILL_THERE)
"""What is to be looked at first: what only a person knows, then what changed."""


@dataclass(frozen=True, slots=True)
class Row:
    """What became of one finding, in which section.

    `subject` is what was said about, None for one that is new.
    """

    match: FindingMatch
    section: SectionRevision
    subject: Subject | None

    @property
    def name(self) -> str:
        """The section's name, as it is now."""
        return self.section.new or self.section.old

    @property
    def message(self) -> str:
        """What is told of it in the list."""
        finding = self.match.old or self.match.new
        return finding.message if finding else ""

    @property
    def gone(self) -> tuple[str, str]:
        """What is said where it is gone: the section that lacks it, and no key."""
        return (self.section.new or self.section.old, "")


def rows_of(laid: Laid) -> tuple[Row, ...]:
    """Return a row for each finding, those that a person is asked about first."""
    return tuple(sorted(_rows(laid), key=lambda row: ORDER.index(row.match.fate)))


def _rows(laid: Laid) -> Iterator[Row]:
    for section in laid.revision.sections:
        for match in section.findings:
            old = match.old
            subject = Subject(laid.before.revision, section.old, old.key) if old else None
            yield Row(match, section, subject)


def number_in(results: tuple[SectionResult, ...], finding: Finding) -> int | None:
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
