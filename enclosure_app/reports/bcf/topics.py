"""What was found as topics of BCF, the open standard for exchanging issues between programs.

One topic for each finding, and for each verdict whose finding is no longer found. Names of topics
are made of the finding's key, so that an export of next week says more of the same topic and makes
no second one. Words that programs sort by (types, states, labels) are English in every language.
"""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime
from pathlib import PurePath
from uuid import UUID

from enclosure_app.drawing.lengths import format_length
from enclosure_app.drawing.sheet.findings_table import title
from enclosure_app.drawing.verdict_words import gone_line, verdict_line
from enclosure_app.language import say
from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Finding, Severity
from enclosure_app.model.product import Control
from enclosure_app.model.report import DrawingResult, SectionResult
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.model.said.moment import instant
from enclosure_app.model.said.remark import Remark
from enclosure_app.reports.finding_words import lines_about
from enclosure_app.reports.names import finding_guid, guid

PROGRAM = "Enclosure continuity check"
GONE = "No longer found"
TYPES = (*(each.value.capitalize() for each in Severity if each is not Severity.OFF), GONE)
STATES = tuple(state.value.capitalize() for state in State)
_UNNAMED = "Unnamed"

Said = Decision | Remark
History = Callable[[str, str], tuple[Said, ...]]
"""Everything that was said about a finding, by its key and its section, earliest first."""


def _nothing_said(_key: str, _section: str) -> tuple[Said, ...]:
    return ()


@dataclass(frozen=True, slots=True)
class Found:
    """What was found in one drawing, and what people said of it.

    `scope` is that of `names.finding_guid`: the `id` of its project.
    """

    result: DrawingResult
    scope: str = ""
    history: History = _nothing_said


@dataclass(frozen=True, slots=True)
class Comment:
    """Words that somebody put to a topic; `photographs` are keys of the project's."""

    guid: UUID
    at: datetime
    author: str
    text: str
    photographs: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Topic:
    """One topic; `finding` is None where it is no longer found, and there is nothing to show."""

    guid: UUID
    index: int
    title: str
    kind: str
    state: str
    labels: tuple[str, ...]
    created: datetime
    author: str
    description: str
    comments: tuple[Comment, ...]
    file: str
    section: SectionResult
    finding: Finding | None = None

    @property
    def view(self) -> UUID:
        """The name of its picture."""
        return guid("view", str(self.guid))


def topics_of(found: Sequence[Found], now: datetime) -> tuple[Topic, ...]:
    """Return the topics of all drawings, in walking order; `now` is when they are handed over.

    What is named twice, because a drawing was, is told once.
    """
    topics = (
        topic
        for each in found
        for section in each.result.sections
        for topic in _Topics(each, section, now).all()
    )
    return tuple({topic.guid: topic for topic in topics}.values())


@dataclass(frozen=True, slots=True)
class _Topics:
    """The topics of one section."""

    of: Found
    section: SectionResult
    now: datetime

    @property
    def name(self) -> str:
        return self.section.section.name

    def all(self) -> Iterator[Topic]:
        for number, finding in enumerate(self.section.findings, 1):
            yield self._found(number, finding)
        for number, decision in enumerate(self.section.no_longer_found, 1):
            yield self._gone(len(self.section.findings) + number, decision)

    def _found(self, number: int, finding: Finding) -> Topic:
        comments = self._comments(finding.key, self.section.decisions.get(finding.key))
        return Topic(
            guid=finding_guid(finding.key, self.name, self.of.scope),
            index=number,
            title=f"{number}  {title(finding)}: {self.name}",
            kind=finding.severity.value.capitalize(),
            state=self.section.state(finding).value.capitalize(),
            labels=labels_of(finding),
            created=self._since(comments),
            author=PROGRAM,
            description=described(finding, self.of.result.drawing.units),
            comments=comments,
            file=PurePath(self.of.result.drawing.file).name,
            section=self.section,
            finding=finding,
        )

    def _gone(self, number: int, decision: Decision) -> Topic:
        comments = self._comments(decision.key, decision)
        about = say("No longer found: {about}", about=gone_line(decision))
        return Topic(
            guid=finding_guid(decision.key, self.name, self.of.scope),
            index=number,
            title=f"{GONE}: {self.name}",
            kind=GONE,
            state=decision.state.value.capitalize(),
            labels=(decision.key.partition(":")[0],),
            created=self._since(comments),
            author=PROGRAM,
            description=about,
            comments=comments,
            file=PurePath(self.of.result.drawing.file).name,
            section=self.section,
        )

    def _comments(self, key: str, decision: Decision | None) -> tuple[Comment, ...]:
        said = self.of.history(key, self.name) or ((decision,) if decision else ())
        return tuple(_comment(each, self.now) for each in said)

    def _since(self, comments: Sequence[Comment]) -> datetime:
        """Return since when a topic is known: somebody spoke of it, or it is told now."""
        return min((self.now, *(comment.at for comment in comments)))


def labels_of(finding: Finding) -> tuple[str, ...]:
    """Return the words that a finding can be sorted by: its control and its rule."""
    control = (finding.control.value,) if finding.control else ()
    return (*control, finding.rule)


def described(finding: Finding, units: Units) -> str:
    """Return everything that is said of a finding, in lines."""
    x, y = (format_length(value, units) for value in finding.at)
    where = say("In the drawing at {x}, {y}.", x=x, y=y)
    return "\n".join((*lines_about(finding, units), where))


def _comment(said: Said, now: datetime) -> Comment:
    name = said.id or "\x1f".join((said.key, said.section, said.when, said.who, said.remark))
    at = instant(said.when)
    text = verdict_line(said) if isinstance(said, Decision) else said.remark
    return Comment(
        guid=guid("said", name),
        at=at if at.year > 1 else now,
        author=said.who or _UNNAMED,
        text=text or say("A photograph."),
        photographs=said.photographs,
    )


def all_labels() -> tuple[str, ...]:
    """Return every label that there may be, for the list that goes with the topics."""
    from enclosure_app.rules import RULES  # noqa: PLC0415  only an exchange needs their names

    return (*(control.value for control in Control), *(rule.name for rule in RULES))
