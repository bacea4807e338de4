"""The cover of a set of sheets: which drawings there are, what was found, decided and signed."""

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import groupby
from pathlib import PurePath

from enclosure_app.drawing.marks import Label, Mark, Stroke
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.sheet.cover_tables import (
    Column,
    Table,
    column_for,
    row_boxes,
    rows_in,
    table_marks,
)
from enclosure_app.drawing.sheet.job import SheetJob, border, paper_size
from enclosure_app.drawing.sheet.sheet import Page
from enclosure_app.drawing.sheet.title_block import caution_height, caution_marks
from enclosure_app.drawing.theme import Theme
from enclosure_app.drawing.typeface import shorten
from enclosure_app.drawing.verdict_words import state_word
from enclosure_app.language import say, say_count
from enclosure_app.model.finding import Finding, Severity
from enclosure_app.model.product import Control
from enclosure_app.model.report import SectionResult, Verdict
from enclosure_app.model.said.decision import State
from enclosure_app.model.standing.sign_offs import Signed

_LOUD = (Severity.FAULT, Severity.DOUBT, Severity.REMARK)
_JUDGED = (Verdict.CONTINUOUS, Verdict.BROKEN, Verdict.UNSURE, Verdict.ABSENT)
_COLUMN = 0.3  # of the breadth: what the sums take beside the list
_LEAST = 100.0  # mm, what these have at least
_GUTTER = 8.0
_HEADING = 17.0


@dataclass(frozen=True, slots=True)
class Cover:
    """One page of the cover: its size in mm, its marks, and which places lead to which sheet.

    A sheet is counted from 0, without the cover.
    """

    width: float
    height: float
    marks: tuple[Mark, ...]
    links: tuple[tuple[Box, int], ...] = ()


@dataclass(frozen=True, slots=True)
class _Entry:
    """One section of the set, and the first and the last of its sheets, counted from 1."""

    page: Page
    first: int
    last: int
    signed: tuple[Signed, ...]

    @property
    def result(self) -> SectionResult:
        return self.page.section


def compose_cover(pages: Sequence[Page], job: SheetJob, theme: Theme) -> tuple[Cover, ...]:
    """Return the cover of a set: one page, or more where the list of its sections is long.

    Raises:
        EnclosureError: the paper is not known.
    """
    entries = _entries(pages, job)
    size = paper_size(job.paper)
    left, covers = list(entries), list[Cover]()
    while left or not covers:
        box = border(size).inset(5.0)
        marks = [*_paper(size, theme), *_heading(pages, box, job, theme)]
        column = box.right - max(box.width * _COLUMN, _LEAST)
        right = box.right if covers else column - _GUTTER
        room = Box(box.left, box.bottom, right, box.top - _HEADING)
        if not covers:
            marks += _sums(entries, Box(column, box.bottom, box.right, room.top), theme)
        shown = left[: max(rows_in(room.height, title=True), 1)]
        left = left[len(shown) :]
        table = _list(shown)
        marks += table_marks(table, room, theme)
        places = zip(row_boxes(table, room), shown, strict=True)
        links = tuple((place, entry.first - 1) for place, entry in places)
        covers.append(Cover(*size, tuple(marks), links))
    return tuple(covers)


def _entries(pages: Sequence[Page], job: SheetJob) -> tuple[_Entry, ...]:
    numbered = enumerate(pages, 1)
    made = []
    for _, group in groupby(numbered, lambda each: (id(each[1].drawing), id(each[1].section))):
        sheets = list(group)
        page = sheets[0][1]
        name = page.section.section.name
        signed = tuple(each for section, each in job.signed if section == name)
        made.append(_Entry(page, sheets[0][0], sheets[-1][0], signed))
    return tuple(made)


def _paper(size: tuple[float, float], theme: Theme) -> Iterator[Mark]:
    yield Stroke(border(size).ring, theme.pen("border"), "border", closed=True)


def _heading(pages: Sequence[Page], box: Box, job: SheetJob, theme: Theme) -> Iterator[Mark]:
    """Name the project, and say below who issues which revision of how many sheets, and when."""
    name = job.project or say("Marked-up sections of the enclosure")
    y = box.top - theme.large - 1.0
    yield Label(shorten(name, theme.large, box.width, bold=True), (box.left, y), theme.large, theme.ink, bold=True)  # fmt: skip
    told = [
        say("Marked-up sections of the enclosure") if job.project else "",
        say_count(len(pages), "{count} sheet", "{count} sheets"),
        say("Revision {revision}", revision=job.revision) if job.revision else "",
        say("issued by {who}", who=job.who) if job.who else "",
        job.date,
    ]
    words = " · ".join(filter(None, told))
    y -= theme.medium + 3.2
    yield Label(shorten(words, theme.medium, box.width), (box.left, y), theme.medium, theme.quiet)


def _list(entries: Sequence[_Entry]) -> Table:
    columns = (
        Column(say("Sheet"), 0.07),
        Column(say("Drawing"), 0.17),
        Column(say("Section"), 0.23),
        Column(say("Scale"), 0.1),
        Column(say("faults"), 0.06, number=True),
        Column(say("doubts"), 0.065, number=True),
        Column(say("remarks"), 0.075, number=True),
        Column(say("open"), 0.06, number=True),
        Column(say("Signed off"), 0.19),
    )
    return Table(say("Sheets"), columns, tuple(_row(entry) for entry in entries))


def _row(entry: _Entry) -> tuple[str, ...]:
    page, result = entry.page, entry.result
    sheets = str(entry.first) if entry.first == entry.last else f"{entry.first}–{entry.last}"
    drawing = PurePath(page.drawing.drawing.file).name
    name = page.drawing.drawing.title or drawing
    loud = _loudness(result.findings)
    counts = (*(loud[each] for each in _LOUD), len(result.undecided))
    figures = tuple(str(count) if count else "–" for count in counts)
    return (
        sheets, name, result.section.name, page.titles.scale, *figures, _signed_words(entry.signed)
    )  # fmt: skip


def _signed_words(signed: Sequence[Signed]) -> str:
    if not signed:
        return say("not signed")
    told = []
    for each in signed:
        words = ", ".join(filter(None, (each.sign_off.who, each.sign_off.when[:10])))
        told.append(say("{signed} (changed since)", signed=words) if each.changed else words)
    return "; ".join(told)


def _sums(entries: Sequence[_Entry], box: Box, theme: Theme) -> Iterator[Mark]:
    """Yield what the whole set comes to, one table below the other, and the caution at the foot."""
    top = box.top
    for table in (_by_control(entries, theme), _by_verdict(entries), _signatures(entries)):
        yield from table_marks(table, Box(box.left, box.bottom, box.right, top), theme)
        top -= table.height + _GUTTER
    height = caution_height(box.width, theme)
    yield from caution_marks(Box(box.left, box.bottom, box.right, box.bottom + height), theme)


def _by_control(entries: Sequence[_Entry], theme: Theme) -> Table:
    """Return how the layers run, by section, and what was found in each."""
    rows = []
    for control in (*Control, None):
        found = [f for e in entries for f in e.result.findings if f.control is control]
        layers = [e.result.layers[control] for e in entries if control in e.result.layers]
        if not found and not layers:
            continue
        judged, loud = Counter(layer.verdict for layer in layers), _loudness(found)
        counts = (*(judged[each] for each in _JUDGED), *(loud[each] for each in _LOUD))
        name = say(control.value.capitalize()) if control else say("no layer")
        rows.append((name, *(str(count) if count else "–" for count in counts)))
    heads = (*(say(each.value) for each in _JUDGED), say("faults"), say("doubts"), say("remarks"))
    columns = Column(say("Layer"), 14.0), *(column_for(head, theme) for head in heads)
    return Table(say("Sections and findings, by layer"), columns, tuple(rows))


def _by_verdict(entries: Sequence[_Entry]) -> Table:
    states = Counter(e.result.state(f) for e in entries for f in e.result.findings)
    rows = tuple((state_word(state), str(states[state] or "–")) for state in State)
    columns = Column(say("Verdict"), 3.0), Column(say("findings"), 1.0, number=True)
    return Table(say("What was decided"), columns, rows)


def _signatures(entries: Sequence[_Entry]) -> Table:
    signed = [e for e in entries if e.signed]
    changed = [e for e in signed if any(each.changed for each in e.signed)]
    rows = (
        (say("signed off"), str(len(signed) - len(changed) or "–")),
        (say("signed, then changed"), str(len(changed) or "–")),
        (say("not signed"), str(len(entries) - len(signed) or "–")),
    )
    columns = Column(say("Sign-off"), 3.0), Column(say("sections"), 1.0, number=True)
    return Table(say("What was signed"), columns, rows)


def _loudness(findings: Sequence[Finding]) -> Counter[Severity]:
    return Counter(finding.severity for finding in findings)
