"""The title block, the caution above it, and the scale bar."""

from collections.abc import Iterator
from dataclasses import dataclass
from math import floor, log10

from enclosure_app.drawing.lengths import format_length
from enclosure_app.drawing.marks import Anchor, Fill, Label, Mark, Stroke
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.scales import Scale
from enclosure_app.drawing.sheet.findings_table import LINE
from enclosure_app.drawing.sheet.job import SheetJob
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


@dataclass(frozen=True, slots=True)
class Titles:
    """What is written in the title block."""

    job: SheetJob
    drawing: str
    section: str
    scale: str
    units: str
    sheet: int = 1
    sheets: int = 1


def title_height() -> float:
    """Return the height of the title block."""
    return 5 * ROW


def title_marks(box: Box, titles: Titles, theme: Theme) -> Iterator[Mark]:
    """Yield the title block at the foot of `box`, ruled in rows of cells."""
    job = titles.job
    sheets = say("{sheet} of {sheets}", sheet=titles.sheet, sheets=titles.sheets)
    table = (
        ((say("Project"), job.project, 1.0),),
        ((say("Drawing"), titles.drawing, 1.0),),
        ((say("Section"), titles.section, 1.0),),
        ((say("Scale"), titles.scale, 0.42), (say("Units"), titles.units, 0.33), (say("Revision"), job.revision, 0.25)),
        ((say("By"), job.who, 0.42), (say("Date"), job.date, 0.33), (say("Sheet"), sheets, 0.25)),
    )  # fmt: skip
    top = box.bottom + title_height()
    for i, cells in enumerate(table):
        upper = top - i * ROW
        yield Stroke(((box.left, upper), (box.right, upper)), theme.pen("rule" if i else "table"))
        left = box.left
        for k, (name, value, share) in enumerate(cells):
            right = left + share * box.width
            if k:
                yield Stroke(((left, upper), (left, upper - ROW)), theme.pen("rule"))
            yield from _cell(name, value, Box(left, upper - ROW, right, upper), theme)
            left = right


def _cell(name: str, value: str, box: Box, theme: Theme) -> Iterator[Mark]:
    left = box.left + 1.6
    yield Label(name, (left, box.top - theme.small - 0.9), theme.small, theme.quiet)
    text = shorten(value or "–", theme.medium, box.right - left - 0.8, bold=True)
    yield Label(text, (left, box.bottom + 1.3), theme.medium, theme.ink, bold=True)


def heading_marks(result: SectionResult, box: Box, theme: Theme) -> Iterator[Mark]:
    """Yield the section's name, and beside it how much was found, at the top of the sheet."""
    y = box.top - theme.large - 1.5
    words = tally(result)
    room = box.width - text_width(words, theme.medium) - 6.0
    name = shorten(result.section.name, theme.large, room, bold=True)
    yield Label(name, (box.left, y), theme.large, theme.ink, bold=True)
    at = (box.left + text_width(name, theme.large, bold=True) + 5.0, y)
    yield Label(words, at, theme.medium, theme.quiet)


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
        yield Label(line, (box.left, y), theme.small, theme.ink)
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
