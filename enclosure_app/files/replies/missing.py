"""Finds the notes that a page was issued with and that are not there any more.

Somebody deleted them, or another program left them out. What that means is for a person to say.
"""

from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import groupby

from enclosure_app.files.replies.comments import Comment, Written
from enclosure_app.files.replies.issued import Issued
from enclosure_app.files.replies.names import named
from enclosure_app.files.replies.proposal import Proposal
from enclosure_app.language import say


def missing_notes(written: Written) -> tuple[Issued, ...]:
    """Return the notes that are in the file no more, by page; each once, on however many pages."""
    there = {comment.name for comment in written.comments}
    return tuple({each.name: each for each in written.issued if each.name not in there}.values())


def with_names_back(written: Written) -> Written:
    """Return what was written with our names on notes to which a program gave names of its own.

    Such a note is known where its words are those that were issued and no other is like it.
    """
    missing = missing_notes(written)
    strange = [each for each in written.comments if named(each.name) is None and not each.answers]
    back = {}
    for issued in missing:
        alike = [each for each in strange if issued.about.said(each.contents)]
        rivals = [each for each in missing if each.about.digest == issued.about.digest]
        if len(alike) == len(rivals) == 1:
            back[alike[0].order] = issued.name
    comments = tuple(
        replace(each, name=back.get(each.order, each.name)) for each in written.comments
    )
    return replace(written, comments=comments)


def stand_ins(missing: Sequence[Issued]) -> tuple[Comment, ...]:
    """Return notes that stand for missing ones, so that what was written beside them is placed."""
    return tuple(
        Comment((-1, k), each.page, 0, "", name=each.name, at=each.at)
        for k, each in enumerate(missing)
    )


def told_missing(missing: Sequence[Issued], issued: Sequence[Issued]) -> Iterator[Proposal]:
    """Yield what is told of missing notes: one by one, or of a whole page where all of them are."""
    for page, lost in groupby(missing, lambda each: each.page):
        those = list(lost)
        names = {each.name for each in issued if each.page == page}
        if len(those) == len(names) > 1:
            yield _told_of_page(those)
        else:
            yield from map(_told_of_one, those)


def _told_of_one(each: Issued) -> Proposal:
    about = each.about.about
    doubt = say(
        "The note of finding {number} is no longer in the file: ask whether that was meant.",
        number=each.number,
    )
    return Proposal(
        about.key, None, "", "", "", about.section, about.drawing, about.revision, each.page,
        doubt=doubt, measured=each.measured, lost=True,
    )  # fmt: skip


def _told_of_page(those: Sequence[Issued]) -> Proposal:
    about = those[0].about.about
    doubt = say(
        "None of the notes of findings {first} to {last} is in the file any more: it may have been "
        "printed anew or its notes painted into the page, and answers with them.",
        first=min(each.number for each in those),
        last=max(each.number for each in those),
    )
    return Proposal(
        "", None, "", "", "", about.section, about.drawing, about.revision, those[0].page,
        doubt=doubt, lost=True,
    )  # fmt: skip
