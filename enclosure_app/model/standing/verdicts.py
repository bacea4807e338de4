"""What people decided about what was found: kept apart from the findings, which come and go.

A verdict belongs to a finding's key in a section of one revision of the drawing. It outlives every
check; where its finding is no longer found it is said so, and it is never dropped and never given
to another finding. Later words take the place of earlier ones, which stay in the history. Where
two people decided differently without knowing of each other, the more cautious verdict holds until
somebody settles it.
"""

from collections.abc import Iterable, Mapping
from dataclasses import replace
from types import MappingProxyType

from enclosure_app.model.finding import Finding
from enclosure_app.model.project import Project
from enclosure_app.model.report import SectionResult
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.model.said.moment import instant
from enclosure_app.model.said.remark import Remark
from enclosure_app.model.standing.whereabouts import Trail, Whereabouts, standing_in, subject_of

_CAUTION = (State.OPEN, State.TO_BE_MENDED, State.MENDED, State.ACCEPTED, State.NO_FAULT)


def verdicts_in(project: Project, section: str) -> Mapping[str, Decision]:
    """Return the verdict that counts about each finding of a section, by the finding's key.

    A verdict of an earlier drawing is given with the key and the section of the one now.
    """
    return MappingProxyType(
        {key: _counts(of) for key, of in _standing_in(project, section).items()}
    )


def contested_in(project: Project, section: str) -> Mapping[str, tuple[Decision, ...]]:
    """Return the verdicts that stand side by side about one finding, by the finding's key.

    They are of people who did not know of each other's: another verdict settles it.
    """
    found = _standing_in(project, section)
    return MappingProxyType(
        {key: of for key, of in found.items() if len({each.state for each in of}) > 1}
    )


def history_of(project: Project, key: str, section: str) -> tuple[Decision | Remark, ...]:
    """Return all that was ever said about a finding, earliest first: verdicts and remarks alone.

    Each is as it was said, with the key that the finding had then.
    """
    trail = Trail(project)
    told: list[Decision | Remark] = [*project.decisions, *project.remarks]
    told = [each for each in told if _is_about(trail, each, key, section)]
    return tuple(sorted(told, key=lambda each: instant(each.when)))


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


def remark_on(finding: Finding, who: str, when: str, remark: str = "") -> Remark:
    """Return a remark about a finding of a section, which decides nothing."""
    return Remark(
        key=finding.key,
        who=who.strip(),
        when=when,
        remark=remark.strip(),
        section=finding.section,
        about=finding.message,
    )


def _is_about(trail: Trail, said: Decision | Remark, key: str, section: str) -> bool:
    now = trail.now(subject_of(said))
    if isinstance(now, Whereabouts):
        return False
    return now.key == key and now.section in ("", section)


def _standing_in(project: Project, section: str) -> dict[str, tuple[Decision, ...]]:
    return standing_in(project.decisions, Trail(project), section)


def _counts(decisions: Iterable[Decision]) -> Decision:
    """Return the more cautious of verdicts that stand side by side, and of those the latest."""
    latest = sorted(decisions, key=lambda each: instant(each.when), reverse=True)
    return min(latest, key=lambda each: _CAUTION.index(each.state))
