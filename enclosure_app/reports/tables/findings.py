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
from enclosure_app.reports.tables.table import (
    Column,
    Table,
    Value,
    length,
    length_column,
    moment_value,
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
        Column(say("Verdict"), 14),
        Column(say("By whom"), 16),
        Column(say("When (UTC)"), 17),
        Column(say("Remark"), 40),
        Column(say("Photographs"), 30),
        length_column("x", units),
        length_column("y", units),
        Column(say("Drawing"), 24),
        Column(say("Key"), 40),
    )


def _section(
    result: DrawingResult, section: SectionResult, units: Units, names: Mapping[str, str]
) -> Iterator[tuple[Value, ...]]:
    file = PurePath(result.drawing.file).name
    for number, finding in enumerate(section.findings, 1):
        decided = _decided(section.decisions.get(finding.key), names)
        where = (length(finding.at[0], units), length(finding.at[1], units), file, finding.key)
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
    if decision is None:
        return state_word(State.OPEN), None, None, None, None
    shown = ", ".join(names.get(key, key) for key in decision.photographs)
    when = moment_value(decision.when)
    return (
        state_word(decision.state),
        decision.who or None,
        when,
        decision.remark or None,
        shown or None,
    )
