"""The title block, the caution above it, and the scale bar."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from math import floor, log10

from enclosure_app.drawing.lengths import format_length
from enclosure_app.drawing.marks import Anchor, Fill, Label, Mark, Stroke
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.scales import Scale
from enclosure_app.drawing.sheet.findings_table import LINE
from enclosure_app.drawing.sheet.job import SheetJob
from enclosure_app.drawing.tags import Role, Tag, cell
from enclosure_app.drawing.theme import Theme
from enclosure_app.drawing.typeface import shorten, text_width, wrap
from enclosure_app.language import later, say
from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Severity
from enclosure_app.model.report import SectionResult

CAUTION = later(
    "This sheet is an aid to judgement. It shows what a program found in a drawing, not what is built. "
    "Local codes, the makers' instructions and the decision of licensed professionals come first. "
    "Work at height needs fall protection. Where rot or mould may be hidden, have the structure "
    "looked at and protect yourself before anything is opened."
)
ROW = 8.2
_BLOCK = "title block"
_AIR = 1.6  # left and right of the words in a cell
_SIGNED_LINES = 12  # of signatures at most; the cover of the set holds all of them


@dataclass(frozen=True, slots=True)
class Titles:
    """What is written in the title block; `signed` has a text for each sign-off of the section."""

    job: SheetJob
    drawing: str
    section: str
    scale: str
    units: str
    signed: tuple[str, ...] = ()
    sheet: int = 1
    sheets: int = 1


def title_height(titles: Titles, width: float, theme: Theme) -> float:
    """Return the height of the title block in a column `width` mm wide."""
    return 5 * ROW + _signed_height(titles, width, theme)


def _signed_height(titles: Titles, width: float, theme: Theme) -> float:
    size, lines = _signed_lines(titles, width, theme)
    return ROW + (len(lines) - 1) * size * LINE


def _signed_lines(titles: Titles, width: float, theme: Theme) -> tuple[float, tuple[str, ...]]:
    """Return who signed as one line, or smaller and on several, and how high its capitals are."""
    words, room = "; ".join(titles.signed) or say("not signed"), width - 2 * _AIR
    if text_width(words, theme.medium, bold=True) <= room:
        return theme.medium, (words,)
    lines = wrap(words, theme.small, room, bold=True)
    if len(lines) > _SIGNED_LINES:
        kept = shorten(lines[_SIGNED_LINES - 1] + " …", theme.small, room, bold=True)
        lines = (*lines[: _SIGNED_LINES - 1], kept)
    return theme.small, lines


def title_marks(box: Box, titles: Titles, theme: Theme) -> Iterator[Mark]:
    """Yield the title block at the foot of `box`, ruled in rows of cells."""
    job, top = titles.job, box.bottom + title_height(titles, box.width, theme)
    signed = top - 3 * ROW
    rest = signed - _signed_height(titles, box.width, theme)
    sheets = say("{sheet} of {sheets}", sheet=titles.sheet, sheets=titles.sheets)
    whole = ((say("Project"), job.project), (say("Drawing"), titles.drawing), (say("Section"), titles.section))  # fmt: skip
    how = ((say("Scale"), titles.scale, 0.42), (say("Units"), titles.units, 0.33), (say("Revision"), job.revision, 0.25))  # fmt: skip
    who = ((say("By"), job.who, 0.42), (say("Date"), job.date, 0.33), (say("Sheet"), sheets, 0.25))
    for k, (name, value) in enumerate(whole):
        yield from _row(((name, value, 1.0),), box, top - k * ROW, theme, "rule" if k else "table")
    yield from _signed_row(titles, Box(box.left, rest, box.right, signed), theme)
    yield from _row(how, box, rest, theme)
    yield from _row(who, box, rest - ROW, theme)


def _row(
    cells: Iterable[tuple[str, str, float]], box: Box, top: float, theme: Theme, pen: str = "rule"
) -> Iterator[Mark]:
    """Yield a row of cells: the name of each, what stands in it, and its share of the breadth."""
    yield Stroke(((box.left, top), (box.right, top)), theme.pen(pen))
    left = box.left
    for name, value, share in cells:
        right = left + share * box.width
        if left > box.left:
            yield Stroke(((left, top), (left, top - ROW)), theme.pen("rule"))
        yield from _cell(name, value, Box(left, top - ROW, right, top), theme)
        left = right


def _cell(name: str, value: str, box: Box, theme: Theme) -> Iterator[Mark]:
    left = box.left + _AIR
    yield _cell_name(name, box, theme)
    text = shorten(value or "–", theme.medium, box.right - left - 0.8, bold=True)
    at, tag = (left, box.bottom + 1.3), cell(_BLOCK, name, 1)
    yield Label(text, at, theme.medium, theme.ink, bold=True, tag=tag)


def _cell_name(name: str, box: Box, theme: Theme) -> Label:
    at = (box.left + _AIR, box.top - theme.small - 0.9)
    return Label(name, at, theme.small, theme.quiet, tag=cell(_BLOCK, name, 0, scope="Row"))


def _signed_row(titles: Titles, box: Box, theme: Theme) -> Iterator[Mark]:
    yield Stroke(((box.left, box.top), (box.right, box.top)), theme.pen("rule"))
    name = say("Signed off")
    yield _cell_name(name, box, theme)
    size, lines = _signed_lines(titles, box.width, theme)
    y = box.bottom + 1.3 + (len(lines) - 1) * size * LINE
    for k, line in enumerate(lines):
        at, tag = (box.left + _AIR, y - k * size * LINE), cell(_BLOCK, name, 1)
        yield Label(line, at, size, theme.ink, bold=True, tag=tag)


def heading_marks(result: SectionResult, box: Box, theme: Theme) -> Iterator[Mark]:
    """Yield the section's name, and beside it how much was found, at the top of the sheet."""
    y = box.top - theme.large - 1.5
    words = tally(result)
    room = box.width - text_width(words, theme.medium) - 6.0
    name = shorten(result.section.name, theme.large, room, bold=True)
    tag = Tag(Role.HEADING, "section")
    yield Label(name, (box.left, y), theme.large, theme.ink, bold=True, tag=tag)
    at = (box.left + text_width(name, theme.large, bold=True) + 5.0, y)
    yield Label(words, at, theme.medium, theme.quiet, tag=Tag(Role.WORDS, "tally"))


def tally(result: SectionResult) -> str:
    """Return how many findings there are of each severity, and what could not be judged, in words."""
    found = []
    for severity in (Severity.FAULT, Severity.DOUBT, Severity.REMARK):
        count = sum(f.severity is severity for f in result.findings)
        if count:
            found.append(f"{count} {say(severity.value if count == 1 else severity.value + 's')}")
    decided = len(result.findings) - len(result.undecided)
    if decided:
        found.append(say("{count} decided", count=decided))
    unsure = [say(layer.control.value) for layer in result.unjudged]
    if unsure:
        found.append(say("{layers} could not be judged", layers=say(" and ").join(unsure)))
    return ", ".join(found) or say("nothing found")


def caution_lines(width: float, theme: Theme) -> tuple[str, ...]:
    """Return the caution in lines that fit."""
    return wrap(say(CAUTION), theme.small, width)


def caution_height(width: float, theme: Theme) -> float:
    """Return the height that the caution takes."""
    return len(caution_lines(width, theme)) * theme.small * LINE + 3.2


def caution_marks(box: Box, theme: Theme) -> Iterator[Mark]:
    """Yield the caution, filling `box` from the top."""
    yield Stroke(((box.left, box.top), (box.right, box.top)), theme.pen("table"))
    y = box.top - 1.9 - theme.small
    for line in caution_lines(box.width, theme):
        tag = Tag(Role.WORDS, "caution")
        yield Label(line, (box.left, y), theme.small, theme.ink, tag=tag)
        y -= theme.small * LINE


def scale_bar(
    left: float, bottom: float, scale: Scale, units: Units, theme: Theme
) -> Iterator[Mark]:
    """Yield a bar of four parts, alternately filled, and the scale in words."""
    step = _step(scale, units)
    part = step / scale.ratio
    for k in range(4):
        ring = Box(left + k * part, bottom + 3.2, left + (k + 1) * part, bottom + 4.6).ring
        yield Fill((ring,), theme.paper if k % 2 else theme.ink, "scale")
        yield Stroke(ring, theme.pen("tick"), "scale", closed=True)
    for k in (0, 2, 4):
        text = format_length(k * step, units) if k else "0"
        yield Label(
            text,
            (left + k * part, bottom),
            theme.small,
            theme.quiet,
            Anchor.MIDDLE if k else Anchor.START,
        )
    at = (left + 4 * part + 8.0, bottom + 2.9)
    yield Label(scale.text, at, theme.medium, theme.ink, bold=True)


def _step(scale: Scale, units: Units) -> float:
    """Return the length of one part in mm: a round one that is 8 to 20 mm on paper."""
    wanted = 9.0 * scale.ratio
    if units.imperial:
        inches = (0.5, 1, 2, 3, 6, 12, 24, 36, 60, 120, 240, 600)
        return next((n * 25.4 for n in inches if n * 25.4 >= wanted), 1200 * 25.4)
    power = 10.0 ** floor(log10(wanted))
    return next((n * power for n in (1, 2, 5) if n * power >= wanted), 10 * power)
