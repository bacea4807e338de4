"""What reviewers answered in a marked-up PDF, as text for a terminal: English, like all reports."""

import textwrap
from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from itertools import groupby, zip_longest
from types import MappingProxyType

from enclosure_app.files.replies.answers import Outcome
from enclosure_app.files.replies.proposal import Proposal
from enclosure_app.model.said.moment import shown

_OUTCOMES: Mapping[Outcome, str] = MappingProxyType(
    {
        Outcome.MATCHES: "it matches, and can be taken over as it is",
        Outcome.CHANGED: "changed since; look before it is taken over",
        Outcome.SAID: "already said; nothing would change",
        Outcome.UNSURE: "look before it is taken over",
        Outcome.NOTHING: "nothing new; nobody decided that it should open again",
    }
)
_COUNTED: Mapping[Outcome, str] = MappingProxyType(
    {
        Outcome.MATCHES: "can be taken over",
        Outcome.CHANGED: "changed since",
        Outcome.SAID: "already said",
        Outcome.UNSURE: "to be looked at",
        Outcome.NOTHING: "with nothing new",
    }
)


def replies_text(
    proposals: Sequence[Proposal], *, width: int, outcomes: Sequence[Outcome] | None = None
) -> str:
    """Return the proposals by section, in lines no longer than `width`, ending in a line break.

    `outcomes`, where they were held against a project, say what each of them comes to there.
    """
    lines: list[str] = []
    told = zip_longest(proposals, outcomes or ())
    for (drawing, section), group in groupby(told, lambda each: _place(each[0])):
        lines += _wrapped(f"{section} ({drawing})" if section else "At no finding", width, "")
        for proposal, outcome in group:
            lines += ["", *_lines(proposal, outcome, width)]
        lines.append("")
    for sentence in _sums(proposals, outcomes):
        lines += _wrapped(sentence, width, "")
    return "\n".join(lines) + "\n"


def _place(proposal: Proposal) -> tuple[str, str]:
    return proposal.drawing, proposal.section


def _lines(proposal: Proposal, outcome: Outcome | None, width: int) -> Iterator[str]:
    about, *_ = proposal.note.splitlines() or [""]
    told = proposal.key or f"page {proposal.page}"
    yield from _wrapped(f"{told}: {about}" if about else told, width, "  ")
    if not proposal.lost:
        yield from _wrapped(_said(proposal), width, "    ")
    if proposal.doubt:
        yield from _wrapped(f"{_reserve(proposal, outcome)}: {proposal.doubt}", width, "    ")
    if outcome:
        yield from _wrapped(f"In the project: {_OUTCOMES[outcome]}.", width, "    ")


def _reserve(proposal: Proposal, outcome: Outcome | None) -> str:
    """Return how a doubt is headed: where the project knows the answer, nobody has to look again."""
    if proposal.lost:
        return "Please look"
    return "Note" if outcome is Outcome.SAID else "Not sure"


def _said(proposal: Proposal) -> str:
    """Return the verdict or that it is a remark, by whom, when, and the words."""
    what = proposal.state.value.capitalize() if proposal.state else "Remark"
    who = f" by {proposal.who}" if proposal.who else ""
    when = f", {shown(proposal.when)}" if proposal.when else ""
    words = " ".join(proposal.remark.split())
    return f"{what}{who}{when}{f': {words}' if words else ''}"


def _wrapped(text: str, width: int, indent: str) -> list[str]:
    printable = "".join(letter if letter.isprintable() else " " for letter in text)
    return textwrap.wrap(
        printable, width, initial_indent=indent, subsequent_indent=indent,
        break_long_words=False, break_on_hyphens=False,
    )  # fmt: skip


def _sums(proposals: Sequence[Proposal], outcomes: Sequence[Outcome] | None) -> Iterator[str]:
    """Yield what all of it comes to."""
    answers = [proposal for proposal in proposals if not proposal.lost]
    yield _sum(answers)
    if len(answers) < len(proposals):
        yield "Notes are no longer in the file: ask whether that was meant."
    if outcomes:
        counted = Counter(outcomes)
        told = (f"{counted[each]} {_COUNTED[each]}" for each in Outcome if counted[each])
        yield f"Held against the project: {', '.join(told)}."


def _sum(answers: Sequence[Proposal]) -> str:
    if not answers:
        return "Nobody answered anything."
    verdicts = sum(proposal.state is not None for proposal in answers)
    unsure = sum(not proposal.sure for proposal in answers)
    count = f"{len(answers)} answer{'s' if len(answers) > 1 else ''}"
    return f"{count}: {verdicts} with a verdict, {unsure} not sure. Nothing was taken over."
