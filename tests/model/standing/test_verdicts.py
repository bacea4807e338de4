"""Verdicts outlive checks: they stay with their finding, and are listed where it is gone."""

from dataclasses import replace
from types import MappingProxyType

from enclosure_app.model import edits
from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Finding, Severity
from enclosure_app.model.project import Project
from enclosure_app.model.report import SectionResult
from enclosure_app.model.said.carried import Carried, Subject
from enclosure_app.model.said.decision import State
from enclosure_app.model.section import Section
from enclosure_app.model.standing.verdicts import (
    contested_in,
    history_of,
    remark_on,
    verdict_on,
    verdicts_in,
    with_verdicts,
)

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
    assert [each.state for each in project.decisions] == [State.MENDED, State.OPEN]


def test_a_verdict_whose_finding_is_gone_is_listed_until_a_person_closes_it() -> None:
    project = edits.set_decision(PROJECT, MENDED)
    assert with_verdicts(result(LAP), project).no_longer_found == project.decisions
    assert with_verdicts(result(GAP, LAP), project).no_longer_found == ()
    closed = edits.set_decision(project, replace(MENDED, state=State.OPEN))
    assert with_verdicts(result(LAP), closed).no_longer_found == ()


def test_a_finding_of_the_same_key_in_another_section_is_another_finding() -> None:
    project = edits.set_decision(PROJECT, MENDED)
    assert verdicts_in(project, "Ridge") == {}
    everywhere = edits.set_decision(PROJECT, replace(MENDED, section=""))
    assert verdicts_in(everywhere, "Ridge") == {"gap:a+b": everywhere.decisions[0]}


def test_a_section_that_is_renamed_keeps_its_verdicts() -> None:
    project = edits.rename_section(edits.set_decision(PROJECT, MENDED), "Eave", "North eave")
    assert verdicts_in(project, "North eave")["gap:a+b"].state is State.MENDED
    assert verdicts_in(project, "Eave") == {}


def test_the_history_is_everything_that_was_said_earliest_first() -> None:
    remark = remark_on(GAP, "Jon", "2026-03-02T09:00:00+02:00", "Behind the gutter.")
    project = edits.add_remark(edits.set_decision(PROJECT, MENDED), remark)
    again = replace(MENDED, state=State.TO_BE_MENDED, when="2026-03-03T08:15:00+00:00")
    project = edits.set_decision(project, again)
    told = history_of(project, "gap:a+b", "Eave")
    assert told == (project.remarks[0], *project.decisions)
    assert [each.about for each in told] == ["A gap."] * 3
    assert history_of(project, "lap:a+b", "Eave") == history_of(project, "gap:a+b", "Ridge") == ()


def test_of_two_verdicts_side_by_side_the_more_cautious_holds_until_one_settles_it() -> None:
    first = edits.set_decision(PROJECT, MENDED)
    mine = edits.set_decision(first, replace(MENDED, state=State.TO_BE_MENDED))
    theirs = edits.set_decision(
        first, verdict_on(GAP, State.NO_FAULT, "Jon", "2026-03-09T08:15:00+00:00", "Drawn short.")
    )
    both = replace(first, decisions=(*mine.decisions, theirs.decisions[-1]))
    assert contested_in(first, "Eave") == {}
    ((key, sides),) = contested_in(both, "Eave").items()
    assert (key, {each.state for each in sides}) == (
        "gap:a+b",
        {State.TO_BE_MENDED, State.NO_FAULT},
    )
    assert verdicts_in(both, "Eave")["gap:a+b"].state is State.TO_BE_MENDED
    settled = edits.set_decision(both, theirs.decisions[-1])
    assert contested_in(settled, "Eave") == {}
    assert verdicts_in(settled, "Eave")["gap:a+b"].state is State.NO_FAULT
    assert len(settled.decisions) == 4


def test_a_verdict_of_an_earlier_drawing_is_shown_where_it_was_carried_and_nowhere_else() -> None:
    project = replace(edits.set_decision(PROJECT, MENDED), revision="B")
    assert verdicts_in(project, "Eave") == {}  # although a finding may have its very key
    link = Carried(Subject("", "Eave", "gap:a+b"), Subject("B", "Eave", "gap:7+8"), id="x")
    carried = replace(project, carried=(link,))
    assert verdicts_in(carried, "Eave")["gap:7+8"].state is State.MENDED
    assert history_of(carried, "gap:7+8", "Eave") == project.decisions
    later = edits.set_decision(carried, replace(MENDED, key="gap:7+8", state=State.OPEN))
    assert verdicts_in(later, "Eave")["gap:7+8"].state is State.OPEN
    assert [each.state for each in history_of(later, "gap:7+8", "Eave")] == [
        State.MENDED,
        State.OPEN,
    ]
