"""What people decided about what was found: kept apart from the findings, which come and go.

A verdict belongs to a finding's key in a section. It outlives every check; where its finding is no
longer found it is said so, and it is never dropped and never given to another finding.
"""

from collections.abc import Mapping
from dataclasses import replace
from types import MappingProxyType

from enclosure_app.model.finding import Finding
from enclosure_app.model.project import Decision, Project, State
from enclosure_app.model.report import SectionResult


def verdicts_in(project: Project, section: str) -> Mapping[str, Decision]:
    """Return the verdict that counts about each finding of a section, by the finding's key."""
    return MappingProxyType(
        {each.key: each for each in project.decisions if each.section in ("", section)}
    )


def with_verdicts(result: SectionResult, project: Project) -> SectionResult:
    """Return a result with what was decided about its findings, and about earlier ones."""
    decided = verdicts_in(project, result.section.name)
    return replace(result, decisions=decided) if decided else result


def verdict_on(finding: Finding, state: State, who: str, when: str, remark: str = "") -> Decision:
    """Return a verdict about a finding of a section."""
    return Decision(
        key=finding.key,
        state=state,
        who=who.strip(),
        when=when,
        remark=remark.strip(),
        section=finding.section,
        about=finding.message,
    )
