"""What reviewers answered in a marked-up PDF, as text for a terminal: English, like all reports."""

import textwrap
from collections.abc import Iterator, Sequence
from itertools import groupby

from enclosure_app.files.replies.replies import Proposal
from enclosure_app.model.said.moment import shown


def replies_text(proposals: Sequence[Proposal], *, width: int) -> str:
    """Return the proposals by section, in lines no longer than `width`, ending in a line break."""
    lines: list[str] = []
    for (drawing, section), told in groupby(proposals, _place):
        lines += _wrapped(f"{section} ({drawing})" if section else "At no finding", width, "")
        for proposal in told:
            lines += ["", *_lines(proposal, width)]
        lines.append("")
    return "\n".join([*lines, *_wrapped(_sum(proposals), width, "")]) + "\n"


def _place(proposal: Proposal) -> tuple[str, str]:
    return proposal.drawing, proposal.section


def _lines(proposal: Proposal, width: int) -> Iterator[str]:
    about, *_ = proposal.note.splitlines() or [""]
    told = proposal.key or f"page {proposal.page}"
    yield from _wrapped(f"{told}: {about}" if about else told, width, "  ")
    yield from _wrapped(_said(proposal), width, "    ")
    if proposal.doubt:
        yield from _wrapped(f"Not sure: {proposal.doubt}", width, "    ")


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


def _sum(proposals: Sequence[Proposal]) -> str:
    if not proposals:
        return "Nobody answered anything."
    verdicts = sum(proposal.state is not None for proposal in proposals)
    unsure = sum(not proposal.sure for proposal in proposals)
    count = f"{len(proposals)} answer{'s' if len(proposals) > 1 else ''}"
    return f"{count}: {verdicts} with a verdict, {unsure} not sure. Nothing was taken over."
