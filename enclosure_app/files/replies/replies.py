"""Reads what reviewers answered in a marked-up PDF, and proposes verdicts; it applies none.

The way back is the name of each note (`files.replies.names`). For each finding and each person who wrote
about it there is one proposal: the last state that the person set, and all that they wrote. What is
not certain says why in its `doubt` and is for a person to look at. `files.replies.answers` holds them against
a project.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import groupby
from math import dist
from pathlib import Path

from enclosure_app.errors import EnclosureError
from enclosure_app.files.replies.comments import Comment, Identity, Written, read_written
from enclosure_app.files.replies.issued import Issued
from enclosure_app.files.replies.missing import (
    missing_notes,
    stand_ins,
    told_missing,
    with_names_back,
)
from enclosure_app.files.replies.names import About, NoteName, named
from enclosure_app.files.replies.proposal import Proposal
from enclosure_app.files.replies.words import Said, said_by
from enclosure_app.language import say
from enclosure_app.model.said.decision import State
from enclosure_app.model.said.moment import instant

_NEAR = 45.0  # points on paper (16 mm) within which a free note stands at a finding


def read_replies(path: Path) -> tuple[Proposal, ...]:
    """Return what is proposed in a PDF, page by page, in walking order.

    Raises:
        EnclosureError: the file cannot be read, or no note in it is one of this program.
    """
    written = with_names_back(read_written(path))
    if not written.issued and not any(named(comment.name) for comment in written.comments):
        raise EnclosureError(
            say(
                "{path} holds no notes of this program: take the PDF that it wrote, saved with its "
                "notes (printing a PDF anew leaves them out).",
                path=path,
            )
        )
    missing = missing_notes(written)
    said = [each for each in _proposals(written, missing) if _tells(each)]
    told = (*_contradicting(said), *told_missing(missing, written.issued))
    return tuple(sorted(told, key=lambda each: each.page))


def _tells(proposal: Proposal) -> bool:
    return bool(proposal.state or proposal.remark or proposal.doubt)


@dataclass(frozen=True, slots=True)
class _Root:
    """What a thread of replies is about: one of our notes, or a reviewer's own."""

    comment: Comment
    about: NoteName | None
    doubt: str = ""

    @property
    def thread(self) -> object:
        """What is told as one: all about one finding, also where copies of a page were united."""
        about = self.about.about if self.about else self.comment.identity
        return about, self.doubt


def _proposals(written: Written, missing: Sequence[Issued]) -> Iterator[Proposal]:
    comments, measured = written.comments, {each.name: each.measured for each in written.issued}
    by_identity = {comment.identity: comment for comment in comments}
    ours = [comment for comment in comments if _is_finding(comment)] + list(stand_ins(missing))
    threads: dict[object, tuple[_Root, list[Comment]]] = {}
    for comment in comments:
        root = _rooted(_top(comment, by_identity), ours)
        threads.setdefault(root.thread, (root, []))[1].append(comment)
    for root, thread in threads.values():
        for proposal in _by_person(root, thread):
            yield replace(proposal, measured=measured.get(root.comment.name))


def _is_finding(comment: Comment) -> bool:
    about = named(comment.name)
    return about is not None and not about.verdict


def _top(comment: Comment, by_identity: Mapping[Identity, Comment]) -> Comment:
    """Return what a reply is about in the end; a circle of replies ends where it began."""
    passed = {comment.identity}
    while comment.answers and comment.answers not in passed:
        if comment.answers not in by_identity:
            break
        comment = by_identity[comment.answers]
        passed.add(comment.identity)
    return comment


def _rooted(top: Comment, ours: Sequence[Comment]) -> _Root:
    about = named(top.name)
    if about:
        return _Root(top, about)
    near = [each for each in ours if each.page == top.page and dist(each.at, top.at) <= _NEAR]
    if near:
        nearest = min(near, key=lambda each: dist(each.at, top.at))
        doubt = say("This is a note of its own that stands near a finding, and answers none.")
        return _Root(nearest, named(nearest.name), doubt)
    return _Root(top, None, say("This is a note of its own that stands at no finding."))


def _by_person(root: _Root, thread: Sequence[Comment]) -> Iterator[Proposal]:
    """Yield a proposal for each person who said something in a thread."""
    said = [each for comment in thread for each in said_by(comment)]
    for who, parts in groupby(sorted(said, key=lambda each: each.who), lambda each: each.who):
        yield _proposed(
            root, who, sorted(parts, key=lambda each: (instant(each.when), each.order))
        )


def _proposed(root: _Root, who: str, said: Sequence[Said]) -> Proposal:
    states = [each for each in said if each.state is not None]
    state = states[-1].state if states else None
    remark = "\n".join(dict.fromkeys(each.remark for each in said if each.remark))
    doubts = [root.doubt, *(each.doubt for each in said), _unfounded(state, remark)]
    about = root.about.about if root.about else About("", "", "")
    return Proposal(
        key=about.key,
        state=state,
        who=who,
        when=max((each.when for each in said), key=instant),
        remark=remark,
        section=about.section,
        drawing=about.drawing,
        revision=about.revision,
        page=root.comment.page,
        note=root.comment.contents if root.about else "",
        doubt=" ".join(dict.fromkeys(filter(None, doubts))),
    )


def _unfounded(state: State | None, remark: str) -> str:
    if state is None or not state.needs_reason or remark:
        return ""
    return say("It lets the finding stand and gives no reason.")


def _contradicting(listed: Sequence[Proposal]) -> Iterator[Proposal]:
    """Yield the proposals; where two people decided differently, each says so of the other."""
    for each in listed:
        others = [
            other.who or say("somebody")
            for other in listed
            if _same_place(each, other)
            and None not in (each.state, other.state)
            and other.state is not each.state
        ]
        if others:
            told = say("{others} decided otherwise.", others=", ".join(others))
            yield replace(each, doubt=f"{each.doubt} {told}".strip())
        else:
            yield each


def _same_place(one: Proposal, other: Proposal) -> bool:
    about = [(each.drawing, each.section, each.key) for each in (one, other)]
    return bool(one.key) and about[0] == about[1]
