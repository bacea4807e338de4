"""The findings as a table: one row each, with what was decided, by whom, when and why."""

from collections.abc import Iterator, Mapping, Sequence
from pathlib import PurePath
from types import MappingProxyType

from enclosure_app.drawing.verdict_words import gone_line, state_word
from enclosure_app.language import say
from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Finding, begun
from enclosure_app.model.report import DrawingResult, SectionResult
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.model.said.photograph import Photograph
from enclosure_app.reports.photograph_names import file_names
from enclosure_app.reports.tables.sayings import said_cells, said_columns
from enclosure_app.reports.tables.table import (
    Column,
    Table,
    Value,
    length,
    length_column,
    place_cells,
    place_columns,
)

Photographs = Mapping[str, Photograph]
_NONE: Photographs = MappingProxyType({})


def findings_table(results: Sequence[DrawingResult], photographs: Photographs = _NONE) -> Table:
    """Return the findings of all drawings in walking order, then verdicts of what is found no more.

    Lengths are in the drawings' units, in mm where these differ. The names of photographs are those
    under which they are handed over.
    """
    units = units_of(results)
    names = file_names(photographs)
    rows = [
        row
        for result in results
        for section in result.sections
        for row in _section(result, section, units, names)
    ]
    return Table(say("Findings"), _columns(units), tuple(rows))


def units_of(results: Sequence[DrawingResult]) -> Units:
    """Return the units that all drawings have, else mm."""
    used = {result.drawing.units for result in results}
    return used.pop() if len(used) == 1 else Units.MM


def _columns(units: Units) -> tuple[Column, ...]:
    return (
        Column(say("No."), 5),
        Column(say("Section"), 24),
        Column(say("Severity"), 10),
        Column(say("Control"), 9),
        Column(say("Rule"), 18),
        Column(say("What was found"), 60),
        length_column(say("Measured"), units),
        length_column(say("Required"), units),
        Column(say("What to do"), 60),
        Column(say("Figure from"), 30),
        *said_columns(say("Verdict")),
        *place_columns(units),
        Column(say("Drawing"), 24),
        Column(say("Key"), 40),
    )


def _section(
    result: DrawingResult, section: SectionResult, units: Units, names: Mapping[str, str]
) -> Iterator[tuple[Value, ...]]:
    file = PurePath(result.drawing.file).name
    for number, finding in enumerate(section.findings, 1):
        decided = _decided(section.decisions.get(finding.key), names)
        where = (*place_cells(finding.at, units), file, finding.key)
        yield (number, section.section.name, *_found(finding, units), *decided, *where)
    for decision in section.no_longer_found:
        told = (say("no longer found"), None, None, gone_line(decision), None, None, None, None)
        where = (None, None, file, decision.key)
        yield (None, section.section.name, *told, *_decided(decision, names), *where)


def _found(finding: Finding, units: Units) -> tuple[Value, ...]:
    return (
        say(finding.severity.value),
        say(finding.control.value) if finding.control else None,
        say(finding.rule.replace("-", " ")),
        begun(finding.message),
        length(finding.measured, units),
        length(finding.required, units),
        finding.advice or None,
        finding.basis or None,
    )


def _decided(decision: Decision | None, names: Mapping[str, str]) -> tuple[Value, ...]:
    state = State.OPEN if decision is None else decision.state
    return said_cells(state_word(state), decision, names)
