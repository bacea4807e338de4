"""Verdicts outlive checks: they stay with their finding, and are listed where it is gone."""

from dataclasses import replace
from types import MappingProxyType

from enclosure_app.model import edits
from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Finding, Severity
from enclosure_app.model.project import Project, State
from enclosure_app.model.report import SectionResult
from enclosure_app.model.section import Section
from enclosure_app.model.verdicts import verdict_on, verdicts_in, with_verdicts

EAVE = Section("Eave", ((0, 0), (9, 0), (9, 9)), (), {})
GAP, LAP = (
    Finding(f"{rule}:a+b", rule, None, Severity.FAULT, (0, 0), ("a", "b"), f"A {rule}.", "Mend it.",
            section="Eave")
    for rule in ("gap", "lap")
)  # fmt: skip
WHEN = "2026-03-02T08:15:00+00:00"
MENDED = verdict_on(GAP, State.MENDED, " Ida ", WHEN, " Taped. ")
PROJECT = Project("House", Units.MM, (EAVE,))


def result(*findings: Finding) -> SectionResult:
    return SectionResult(EAVE, MappingProxyType({}), findings=findings)


def test_a_verdict_says_about_what_where_by_whom_and_when() -> None:
    made = verdict_on(GAP, State.MENDED, " Ida ", WHEN, " Taped. ")
    assert (made.key, made.state, made.who, made.when) == ("gap:a+b", State.MENDED, "Ida", WHEN)
    assert (made.remark, made.section, made.about) == ("Taped.", "Eave", "A gap.")


def test_a_finding_without_a_verdict_is_open() -> None:
    shown = with_verdicts(result(GAP, LAP), edits.set_decision(PROJECT, MENDED))
    assert [shown.state(f) for f in shown.findings] == [State.MENDED, State.OPEN]
    assert shown.undecided == (LAP,)
    assert with_verdicts(result(GAP), PROJECT).state(GAP) is State.OPEN


def test_the_last_verdict_counts_and_the_others_stay_in_the_history() -> None:
    again = replace(MENDED, state=State.OPEN, remark="")
    project = edits.set_decision(edits.set_decision(PROJECT, MENDED), again)
    assert with_verdicts(result(GAP), project).state(GAP) is State.OPEN
    assert project.decisions == (MENDED, again)


def test_a_verdict_whose_finding_is_gone_is_listed_until_a_person_closes_it() -> None:
    project = edits.set_decision(PROJECT, MENDED)
    assert with_verdicts(result(LAP), project).no_longer_found == (MENDED,)
    assert with_verdicts(result(GAP, LAP), project).no_longer_found == ()
    closed = edits.set_decision(project, replace(MENDED, state=State.OPEN))
    assert with_verdicts(result(LAP), closed).no_longer_found == ()


def test_a_finding_of_the_same_key_in_another_section_is_another_finding() -> None:
    project = edits.set_decision(PROJECT, MENDED)
    assert verdicts_in(project, "Ridge") == {}
    everywhere = edits.set_decision(PROJECT, replace(MENDED, section=""))
    assert verdicts_in(everywhere, "Ridge") == {"gap:a+b": replace(MENDED, section="")}


def test_a_section_that_is_renamed_keeps_its_verdicts() -> None:
    project = edits.rename_section(edits.set_decision(PROJECT, MENDED), "Eave", "North eave")
    assert verdicts_in(project, "North eave")["gap:a+b"].state is State.MENDED
    assert verdicts_in(project, "Eave") == {}
