"""The findings as a table: one row each, with what was decided, by whom, when and why."""

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import chain, repeat
from pathlib import PurePath
from types import MappingProxyType

from enclosure_app.drawing.verdict_words import gone_line, state_word
from enclosure_app.language import say
from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Finding, begun
from enclosure_app.model.report import DrawingResult, SectionResult
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.model.said.photograph import Photograph
from enclosure_app.model.said.remark import Remark
from enclosure_app.reports.photograph_names import file_names
from enclosure_app.reports.tables.sayings import remarks_cell, said_cells, said_columns
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
Remarks = Callable[[str, str], Sequence[Remark]]
"""What was said of a finding without deciding, by its key and its section, earliest first."""


def _no_remarks(_key: str, _section: str) -> Sequence[Remark]:
    return ()


def findings_table(
    results: Sequence[DrawingResult],
    photographs: Photographs = _NONE,
    remarks: Sequence[Remarks] = (),
) -> Table:
    """Return the findings of all drawings in walking order, with what was said of them.

    After those of a section stand its verdicts whose finding is no longer found. Lengths are in the
    drawings' units, in mm where these differ. The names of photographs are those under which they
    are handed over. `remarks` has one for each of `results`.
    """
    units = units_of(results)
    names = file_names(photographs)
    rows = [
        row
        for result, said in zip(results, chain(remarks, repeat(_no_remarks)), strict=False)
        for section in result.sections
        for row in _Rows(_file(result), section, units, names, said).all()
    ]
    return Table(say("Findings"), _columns(units), tuple(rows))


def _file(result: DrawingResult) -> str:
    return PurePath(result.drawing.file).name


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
        Column(say("Also said"), 40),
        *place_columns(units),
        Column(say("Drawing"), 24),
        Column(say("Key"), 40),
    )


@dataclass(frozen=True, slots=True)
class _Rows:
    """The rows of one section."""

    file: str
    section: SectionResult
    units: Units
    names: Mapping[str, str]
    remarks: Remarks

    def all(self) -> Iterator[tuple[Value, ...]]:
        name = self.section.section.name
        for number, finding in enumerate(self.section.findings, 1):
            said = self._said(finding.key, self.section.decisions.get(finding.key))
            where = (*place_cells(finding.at, self.units), self.file, finding.key)
            yield (number, name, *_found(finding, self.units), *said, *where)
        for decision in self.section.no_longer_found:
            told = (say("no longer found"), None, None, gone_line(decision), *[None] * 4)
            where = (None, None, self.file, decision.key)
            yield (None, name, *told, *self._said(decision.key, decision), *where)

    def _said(self, key: str, decision: Decision | None) -> tuple[Value, ...]:
        remarks = remarks_cell(self.remarks(key, self.section.section.name), self.names)
        return (*_decided(decision, self.names), remarks)


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
