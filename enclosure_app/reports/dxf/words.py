"""The words of what was found, as lines of text beside each section of a drawing."""

import textwrap
from collections.abc import Iterator, Sequence

from enclosure_app.drawing.placement import Box, box_around
from enclosure_app.drawing.section.flags import LANE
from enclosure_app.drawing.sheet.findings_table import title
from enclosure_app.drawing.sheet.title_block import CAUTION
from enclosure_app.drawing.verdict_words import verdict_line
from enclosure_app.language import say
from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Finding
from enclosure_app.model.report import SectionResult
from enclosure_app.model.said.decision import State
from enclosure_app.reports.dxf.entities import Told, Words
from enclosure_app.reports.dxf.layers import WORDS
from enclosure_app.reports.dxf.room import LETTER, Room
from enclosure_app.reports.dxf.scale import scale_of
from enclosure_app.reports.dxf.section import Look, told_of
from enclosure_app.reports.dxf.tags import fits_a_line, plain
from enclosure_app.reports.finding_words import lines_about

_LETTERS = 60  # in a line
_SHORTER = 30  # in a line of letters that a file of an old version has to spell out
_LINE = 1.75  # of the height of letters, from one line to the next


def columns(results: Sequence[SectionResult], look: Look, room: Room) -> Iterator[Words]:
    """Yield the words about the sections of a layout, in mm, where they cover nothing.

    What is to be borne in mind of all of them stands once, below the first.
    """
    spoken_of = [result for result in results if result.findings]
    for number, result in enumerate(spoken_of):
        lines = list(_lines(result, look))
        yield from _column(
            result, [*lines, *(_caution(result) if number == 0 else ())], look, room
        )


def _column(
    result: SectionResult, lines: list[tuple[str, Told]], look: Look, room: Room
) -> Iterator[Words]:
    ratio = scale_of(result, look.units, room)
    height = look.theme.small * ratio
    size = (_LETTERS * LETTER * height, len(lines) * height * _LINE)
    frame = box_around(result.section.frame).inset(-2 * LANE * ratio)
    box = room.nearest(frame, size, LANE * ratio)
    room.take(box)
    yield from _written(lines, box, height)


def _written(lines: list[tuple[str, Told]], box: Box, height: float) -> Iterator[Words]:
    for number, (line, told) in enumerate(lines):
        if line:
            at = (box.left, box.top - height - number * height * _LINE)
            yield Words(WORDS, line, at, height, told)


def _lines(result: SectionResult, look: Look) -> Iterator[tuple[str, Told]]:
    """Yield every line and what it tells of; an empty one stands between two findings."""
    for line in _wrapped(result.section.name.upper()):
        yield line, _about(result)
    for number, finding in enumerate(result.findings, 1):
        told = told_of(finding, result, look)
        yield "", told
        for text in _said(number, finding, result, look.units):
            for line in _wrapped(text):
                yield line, told


def _caution(result: SectionResult) -> Iterator[tuple[str, Told]]:
    for line in ("", *_wrapped(say(CAUTION))):
        yield line, _about(result)


def _about(result: SectionResult) -> Told:
    return Told(f"words {result.section.name}")


def _wrapped(text: str) -> list[str]:
    lines = textwrap.wrap(plain(text), _LETTERS)
    return lines if all(map(fits_a_line, lines)) else textwrap.wrap(plain(text), _SHORTER)


def _said(number: int, finding: Finding, result: SectionResult, units: Units) -> Iterator[str]:
    """Yield what is said of a finding: its number and kind, its words, what was decided."""
    yield f"{number}  {title(finding)}"
    yield from lines_about(finding, units)
    decision = result.decisions.get(finding.key)
    if decision and decision.state is not State.OPEN:
        yield verdict_line(decision)
