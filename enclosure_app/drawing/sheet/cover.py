"""The cover of a set of sheets: which drawings there are, what was found, decided and signed."""

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import groupby
from pathlib import PurePath

from enclosure_app.drawing.marks import Label, Mark, Stroke
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.sheet.cover_tables import (
    Column,
    SetRow,
    Table,
    column_for,
    row_boxes,
    set_rows,
    shared_out,
    table_height,
    table_marks,
)
from enclosure_app.drawing.sheet.job import SheetJob, border, paper_size
from enclosure_app.drawing.sheet.sheet import Page
from enclosure_app.drawing.sheet.signatures import signatures, signed_of
from enclosure_app.drawing.sheet.title_block import caution_height, caution_marks
from enclosure_app.drawing.tags import Role, Tag
from enclosure_app.drawing.theme import Theme
from enclosure_app.drawing.typeface import shorten
from enclosure_app.drawing.verdict_words import state_word
from enclosure_app.language import say, say_count
from enclosure_app.model.finding import Finding, Severity
from enclosure_app.model.product import Control
from enclosure_app.model.report import Continuity, SectionResult
from enclosure_app.model.said.decision import State
from enclosure_app.model.standing.sign_offs import Signed

_LOUD = (Severity.FAULT, Severity.DOUBT, Severity.REMARK)
_JUDGED = (Continuity.CONTINUOUS, Continuity.BROKEN, Continuity.UNSURE, Continuity.ABSENT)
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
    entries, size = _entries(pages, job), paper_size(job.paper)
    listed, covers = _Listed(entries, several=len(_drawings(pages)) > 1), list[Cover]()
    while listed.left or not covers:
        box = border(size).inset(5.0)
        marks = [*_paper(size, theme), *_heading(pages, box, job, theme)]
        column = box.right - max(box.width * _COLUMN, _LEAST)
        right = box.right if covers else column - _GUTTER
        room = Box(box.left, box.bottom, right, box.top - _HEADING)
        more, links, listed = _list_marks(listed, room, theme)
        marks += more
        if not covers:
            marks += _sums(entries, Box(column, box.bottom, box.right, room.top), theme)
        covers.append(Cover(*size, tuple(marks), links))
    return tuple(covers)


@dataclass(frozen=True, slots=True)
class _Listed:
    """What of the list is still to be put onto a page; `over` is left of a row that was parted.

    With `several` drawings, each row names its own.
    """

    left: tuple[_Entry, ...]
    several: bool
    over: SetRow | None = None
    begun: bool = False


def _list_marks(
    listed: _Listed, room: Box, theme: Theme
) -> tuple[list[Mark], tuple[tuple[Box, int], ...], _Listed]:
    """Return the marks of as much of the list as `room` holds, what leads where, and what is left."""
    table = _list(listed)
    rows = set_rows(table, room.width, theme)
    if listed.over:
        rows = (listed.over, *rows[1:])
    shown, rest = shared_out(table, rows, room.height)
    places = zip(row_boxes(table, shown, room), listed.left, strict=False)
    links = tuple((place, entry.first - 1) for place, entry in places)
    parted = bool(rest) and rest[0] is not rows[-len(rest)]
    left = listed.left[len(listed.left) - len(rest) :]
    return (
        list(table_marks(table, shown, room, theme)),
        links,
        replace(listed, left=left, over=rest[0] if parted else None, begun=True),
    )


def _entries(pages: Sequence[Page], job: SheetJob) -> tuple[_Entry, ...]:
    numbered = enumerate(pages, 1)
    made = []
    for _, group in groupby(numbered, lambda each: (id(each[1].drawing), id(each[1].section))):
        sheets = list(group)
        page = sheets[0][1]
        name = page.section.section.name
        made.append(_Entry(page, sheets[0][0], sheets[-1][0], signed_of(job, name)))
    return tuple(made)


def _paper(size: tuple[float, float], theme: Theme) -> Iterator[Mark]:
    yield Stroke(border(size).ring, theme.pen("border"), "border", closed=True)


def _heading(pages: Sequence[Page], box: Box, job: SheetJob, theme: Theme) -> Iterator[Mark]:
    """Name the project, and say below who issues which revision of how many sheets, and when."""
    name = job.project or say("Marked-up sections of the enclosure")
    y = box.top - theme.large - 1.0
    title = shorten(name, theme.large, box.width, bold=True)
    tag = Tag(Role.HEADING, "title")
    yield Label(title, (box.left, y), theme.large, theme.ink, bold=True, tag=tag)
    drawings = _drawings(pages)
    told = [
        say("Marked-up sections of the enclosure") if job.project else "",
        *(drawings if len(drawings) == 1 and drawings != (job.project,) else ()),
        say_count(len(pages), "{count} sheet", "{count} sheets"),
        say("Revision {revision}", revision=job.revision) if job.revision else "",
        say("issued by {who}", who=job.who) if job.who else "",
        job.date,
    ]
    words = " · ".join(filter(None, told))
    y -= theme.medium + 3.2
    short, tag = shorten(words, theme.medium, box.width), Tag(Role.WORDS, "issue")
    yield Label(short, (box.left, y), theme.medium, theme.quiet, tag=tag)


def _drawings(pages: Sequence[Page]) -> tuple[str, ...]:
    """Return the names of the drawings of a set, in its order."""
    each = {(id(page.drawing), page.section.section.file): _drawing(page) for page in pages}
    return tuple(each.values())


def _drawing(page: Page) -> str:
    """Return the name of a sheet's drawing: of several in one project, that of its file."""
    file, drawing = page.section.section.file, page.drawing.drawing
    return PurePath(file).name if file else drawing.title or PurePath(drawing.file).name


def _list(listed: _Listed) -> Table:
    """Return the list of what is left; a set of one drawing has no column that names it."""
    columns = (
        Column(say("Sheet"), 0.07),
        *((Column(say("Drawing"), 0.17),) if listed.several else ()),
        Column(say("Section"), 0.22),
        Column(say("Scale"), 0.1),
        Column(say("faults"), 0.06, number=True),
        Column(say("doubts"), 0.065, number=True),
        Column(say("remarks"), 0.075, number=True),
        Column(say("open"), 0.06, number=True),
        Column(say("Signed off"), 0.25),
    )
    title = say("Sheets, continued") if listed.begun else say("Sheets")
    return Table(title, columns, tuple(_row(entry, listed.several) for entry in listed.left))


def _row(entry: _Entry, several: bool) -> tuple[str, ...]:
    page, result = entry.page, entry.result
    sheets = str(entry.first) if entry.first == entry.last else f"{entry.first}–{entry.last}"
    loud = _loudness(result.findings)
    counts = (*(loud[each] for each in _LOUD), len(result.undecided))
    figures = tuple(str(count) if count else "–" for count in counts)
    signed = "\n".join(signatures(entry.signed))
    drawing = (_drawing(page),) if several else ()
    return (sheets, *drawing, page.titles.section, page.titles.scale, *figures, signed)


def _sums(entries: Sequence[_Entry], box: Box, theme: Theme) -> Iterator[Mark]:
    """Yield what the whole set comes to, one table below the other, and the caution at the foot."""
    top = box.top
    for table in (_by_control(entries, theme), _by_verdict(entries), _signatures(entries)):
        rows = set_rows(table, box.width, theme)
        yield from table_marks(table, rows, Box(box.left, box.bottom, box.right, top), theme)
        top -= table_height(table, rows) + _GUTTER
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
        judged, loud = Counter(layer.continuity for layer in layers), _loudness(found)
        counts = (*(judged[each] for each in _JUDGED), *(loud[each] for each in _LOUD))
        name = say(control.value.capitalize()) if control else say("no layer")
        rows.append((name, *(str(count) if count else "–" for count in counts)))
    heads = (*(say(each.value) for each in _JUDGED), say("faults"), say("doubts"), say("remarks"))
    columns = Column(say("Control layer"), 14.0), *(column_for(head, theme) for head in heads)
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
