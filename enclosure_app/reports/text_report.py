"""The report as text, for a terminal, a file or a letter.

It answers in this order: how each control layer runs, then every finding in walking order with
its place, what was measured against what is required, and what to do, then the sum. Nothing is
said by colour alone: the severity and the control are always written out.
"""

import re
import textwrap
import unicodedata
from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

import click

from enclosure_app.drawing.lengths import format_length
from enclosure_app.drawing.unsure_words import why_unsure
from enclosure_app.model.drawing import Drawing, Note, NoteLevel, Units
from enclosure_app.model.finding import Finding, Severity, begun
from enclosure_app.model.product import Control
from enclosure_app.model.report import (
    Continuity,
    DrawingResult,
    LayerResult,
    Report,
    SectionResult,
)
from enclosure_app.reports.finding_words import lines_about

CAUTION = (
    "Caution: this check is an aid. Local codes, the makers' instructions and licensed practice "
    "decide. Figures marked (unconfirmed) have not been compared with their source by anyone "
    "here. Look at work at height only with protection against falls."
)
_NOTES_SHOWN = 8
_DECIMALS = {Units.MM: 1, Units.CM: 2, Units.M: 4, Units.IN: 3, Units.FT: 4}
_HUES = {
    Control.WATER: "blue",
    Control.AIR: "red",
    Control.VAPOUR: "green",
    Control.HEAT: "yellow",
}


def write_text(report: Report, *, width: int, colour: bool) -> str:
    """Return the report as lines no longer than `width` characters, ending in a line break.

    A single word that is longer than the line (a file's path) is left whole, so that it can be
    copied. With `colour` the text carries terminal colours.
    """
    page = _Page(width, colour)
    lines: list[str] = []
    for drawing in report.drawings:
        lines += [*_drawing(page, drawing), ""]
    lines += _sum(page, report)
    lines += ["", *page.wrapped(CAUTION, "")]
    return "\n".join(lines) + "\n"


def summary(report: Report) -> str:
    """Return in one sentence how many findings of each severity there are."""
    found = Counter(finding.severity for finding in report.findings)
    drawings = _counted(len(report.drawings), "drawing")
    unsure = _verdicts(report)[Continuity.UNSURE]
    if unsure and not found:
        return (
            f"{_counted(unsure, 'layer')} in {drawings} could not be judged; nothing else found."
        )
    if not found:
        return f"Nothing found in {drawings}."
    loudest_first = (Severity.FAULT, Severity.DOUBT, Severity.REMARK)
    words = [_counted(found[severity], severity.value) for severity in loudest_first]
    rest = f"; {_counted(unsure, 'layer')} could not be judged" if unsure else ""
    return f"{_listed(words)} in {drawings}{rest}."


@dataclass(frozen=True, slots=True)
class _Page:
    """Wraps and styles lines; wraps first, because styles have no width."""

    width: int
    colour: bool

    def bold(self, text: str, *, reverse: bool = False) -> str:
        return click.style(text, bold=True, reverse=reverse or None) if self.colour else text

    def hued(self, text: str, control: Control) -> str:
        return click.style(text, fg=_HUES[control]) if self.colour else text

    def wrapped(self, text: str, first: str, rest: str | None = None) -> list[str]:
        return textwrap.wrap(
            re.sub(" +", " ", _printable(text)),
            self.width,
            initial_indent=first,
            subsequent_indent=first if rest is None else rest,
            break_long_words=False,
            break_on_hyphens=False,
        )


def _printable(text: str) -> str:
    """Return `text` without control characters, which a layer's name may bring along."""
    return "".join(
        " " if unicodedata.category(character) == "Cc" else character for character in text
    )


def _drawing(page: _Page, result: DrawingResult) -> Iterator[str]:
    drawing = result.drawing
    yield page.bold(_printable(drawing.file))
    yield from page.wrapped(_about(drawing), "  ")
    yield from _notes(page, drawing.notes)
    for section in result.sections:
        yield ""
        yield page.bold(f"  {_printable(section.section.name)}")
        yield from _layers(page, section, drawing.units)
        for number, finding in enumerate(section.findings, 1):  # as on the section's sheet
            yield ""
            yield from _finding(page, number, finding, drawing.units)


def _about(drawing: Drawing) -> str:
    named = {
        Units.MM: "millimetres",
        Units.CM: "centimetres",
        Units.M: "metres",
        Units.IN: "inches",
        Units.FT: "feet",
    }
    title = f"{drawing.title}, " if drawing.title else ""
    return f"{title}drawn in {named[drawing.units]}"


def _notes(page: _Page, notes: Sequence[Note]) -> Iterator[str]:
    for level in NoteLevel:
        texts = [note.text for note in notes if note.level is level]
        for text in texts[:_NOTES_SHOWN]:
            yield from page.wrapped(f"{level.value}: {text}", "  ", "    ")
        if len(texts) > _NOTES_SHOWN:
            more = len(texts) - _NOTES_SHOWN
            yield f"  {level.value}: {more} more, all in the JSON report"


def _layers(page: _Page, section: SectionResult, units: Units) -> Iterator[str]:
    wide = max(len(control.value) for control in Control)
    for control in Control:
        if control in section.layers:
            said = [_continuity(section.layers[control], units), *_loud(section, control)]
            lines = page.wrapped("; ".join(said), " " * (wide + 6))
            name = page.hued(control.value.ljust(wide), control)
            yield f"    {name}  {lines[0].lstrip()}"
            yield from lines[1:]


def _continuity(layer: LayerResult, units: Units) -> str:
    """Say how a layer runs, and why where it is not simply continuous."""
    parts = [layer.continuity.value]
    widths = [lift.width for lift in layer.lifts]
    if layer.continuity is Continuity.BROKEN and widths:
        parts.append(
            f"{_counted(len(widths), 'gap')}, largest {format_length(max(widths), units)}"
        )
        if layer.opening is not None:
            parts.append(f"widest way in {format_length(layer.opening, units)}")
    if why := why_unsure(layer, units):
        parts.append(why)
    return f"{parts[0]}: {'; '.join(parts[1:])}" if parts[1:] else parts[0]


def _loud(section: SectionResult, control: Control) -> Iterator[str]:
    """Say how many faults and doubts a layer has: one that is continuous may still lap wrongly."""
    found = Counter(f.severity for f in section.findings if f.control is control)
    for severity in (Severity.FAULT, Severity.DOUBT):
        if found[severity]:
            yield _counted(found[severity], severity.value)


def _finding(page: _Page, number: int, finding: Finding, units: Units) -> Iterator[str]:
    heads = {
        Severity.FAULT: page.bold("FAULT", reverse=True),
        Severity.DOUBT: page.bold("DOUBT"),
    }
    word = heads.get(finding.severity, finding.severity.value.upper())
    control = f" ({finding.control.value})" if finding.control else ""
    x, y = (_coordinate(value, units) for value in finding.at)
    yield f"  {number:>3}  {word}  {finding.rule}{control} at {x}, {y} {units.value}"
    for text in lines_about(finding, units):
        yield from page.wrapped(text, " " * 7)


def _coordinate(mm: float, units: Units) -> str:
    """Return one coordinate as the program that drew it shows it."""
    text = f"{mm / units.in_mm:.{_DECIMALS[units]}f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text


def _sum(page: _Page, report: Report) -> Iterator[str]:
    yield from (page.bold(line) for line in page.wrapped(summary(report), ""))
    verdicts = _verdicts(report)
    counts = [
        f"{verdicts[verdict]} {verdict.value}" for verdict in Continuity if verdicts[verdict]
    ]
    yield from page.wrapped(f"Layers: {_listed(counts) or 'none'}.", "")


def _verdicts(report: Report) -> Counter[Continuity]:
    return Counter(
        layer.continuity
        for drawing in report.drawings
        for section in drawing.sections
        for layer in section.layers.values()
    )


def _counted(count: int, word: str) -> str:
    return f"{count or 'no'} {word}{'' if count == 1 else 's'}"


def _listed(words: Iterable[str]) -> str:
    *most, last = list(words) or [""]
    text = f"{', '.join(most)} and {last}" if most else last
    return begun(text)
