"""What is put to a page of a PDF besides its marks: the notes of findings, links and bookmarks.

Plain values; `annotations`, `issued` and `outline` write them.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import PurePath

from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.section.places import FindingPlace
from enclosure_app.drawing.sheet.findings_table import title
from enclosure_app.drawing.sheet.job import SheetJob
from enclosure_app.drawing.sheet.sheet import Page
from enclosure_app.drawing.theme import Pen, Theme
from enclosure_app.drawing.verdict_words import verdict_line
from enclosure_app.files.replies.names import REVIEW, About, note_name
from enclosure_app.language import say
from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Finding
from enclosure_app.model.place import Points
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.reports.finding_words import lines_about
from enclosure_app.reports.pdf.text import plain

PROGRAM = "Enclosure continuity check"
_AROUND = 30.0  # mm on paper that a bookmark shows around a finding


@dataclass(frozen=True, slots=True)
class StateNote:
    """What somebody decided about a finding: a word of the review model, who, when, and in words."""

    name: str
    state: str
    who: str
    when: str
    contents: str


@dataclass(frozen=True, slots=True)
class Note:
    """The note of one finding; places in mm on the page, y up.

    It is a ring in `box`, which has a rim around it, where `line` is empty, else that line, `closed`
    round an area. `when` is an ISO date or moment, "" where nobody knows. `number` is that of the
    finding on the sheet, `measured` what was measured, in mm.
    """

    name: str
    box: Box
    line: Points
    closed: bool
    pen: Pen
    author: str
    subject: str
    contents: str
    when: str = ""
    state: StateNote | None = None
    number: int = 0
    measured: float | None = None


@dataclass(frozen=True, slots=True)
class PageLink:
    """A place on a page, in mm, that leads to another page, counted from 0.

    `words` say where to, for whoever does not see the page.
    """

    box: Box
    page: int
    words: str = ""


@dataclass(frozen=True, slots=True)
class Bookmark:
    """A line of the outline: its words, the page from 0, what of it is shown, lines below it."""

    title: str
    page: int
    box: Box | None = None
    below: tuple["Bookmark", ...] = ()


def notes_on(page: Page, job: SheetJob, theme: Theme) -> tuple[Note, ...]:
    """Return the notes of the findings on a sheet, in walking order."""
    return tuple(_note(place, page, job, theme) for place in page.places)


def _note(place: FindingPlace, page: Page, job: SheetJob, theme: Theme) -> Note:
    finding, decision = place.finding, place.decision
    about = About(_file(page), page.section.section.name, finding.key, job.drawn)
    told = plain("\n".join(_sentences(finding, page.drawing.drawing.units, decision)))
    return Note(
        name=note_name(about, told),
        box=place.box,
        line=place.line,
        closed=place.closed,
        pen=theme.severity(finding.severity),
        author=job.who or PROGRAM,
        subject=say(finding.rule.replace("-", " ")),
        contents=told,
        when=job.date,
        state=_state(about, decision) if decision else None,
        number=place.number,
        measured=finding.measured,
    )


def _state(about: About, decision: Decision) -> StateNote | None:
    if decision.state is State.OPEN and not decision.who:
        return None
    state, told = REVIEW[decision.state], plain(verdict_line(decision))
    name = note_name(about, state, told, verdict=True)
    return StateNote(name, state, decision.who or PROGRAM, decision.when, told)


def _sentences(finding: Finding, units: Units, decision: Decision | None) -> Iterator[str]:
    yield from lines_about(finding, units)
    if decision and decision.state is not State.OPEN:
        yield say("Verdict: {verdict}", verdict=verdict_line(decision))


def bookmarks(pages: Sequence[Page], first: int = 0) -> tuple[Bookmark, ...]:
    """Return a bookmark for each section, with its findings below it.

    The sheets begin at page `first`; what comes before them is the cover, with a bookmark too.
    """
    made = [Bookmark(say("Cover"), 0)] if first else []
    before: Page | None = None
    for number, page in enumerate(pages, first):
        found = tuple(_found(place, number) for place in page.places)
        if before and (before.drawing, before.section) == (page.drawing, page.section):
            last = made.pop()
            made.append(Bookmark(last.title, last.page, None, (*last.below, *found)))
        else:
            made.append(Bookmark(_section_title(page, pages), number, None, found))
        before = page
    return tuple(made)


def _section_title(page: Page, pages: Sequence[Page]) -> str:
    """Return the section's name, after its drawing's where there are several drawings."""
    several = any(other.drawing is not page.drawing for other in pages)
    return f"{_file(page)} – {page.titles.section}" if several else page.titles.section


def _file(page: Page) -> str:
    """Return the name of the file that a sheet's section is of."""
    return PurePath(page.section.section.file or page.drawing.drawing.file).name


def _found(place: FindingPlace, page: int) -> Bookmark:
    x, y = place.at
    around = Box(x - _AROUND, y - _AROUND, x + _AROUND, y + _AROUND)
    return Bookmark(f"{place.number}  {title(place.finding)}", page, around)
