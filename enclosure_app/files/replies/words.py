"""What one note of a PDF says: a verdict, a remark, both, or nothing that is new."""

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace

from enclosure_app.files.replies.comments import Comment
from enclosure_app.files.replies.names import VERDICTS, NoteName, digest_of, named
from enclosure_app.language import say
from enclosure_app.model.said.decision import State

_END = re.compile(r"[ ]*(?:[.:,;!–—\n]|-\s|$)\s*")  # what may follow a verdict that begins a reply
_USUAL = "Unmarked"  # the state of every note that nobody marked
_AUTOMATIC = 25  # letters that readers put beside a name where somebody sets a state


@dataclass(frozen=True, slots=True)
class Said:
    """What one note says; `doubt` is one sentence, "" where it is certain."""

    who: str
    when: str
    order: int
    state: State | None = None
    remark: str = ""
    doubt: str = ""


def said_by(comment: Comment) -> Iterator[Said]:
    """Yield what a note says, nothing where it stands as this program wrote it."""
    about = named(comment.name)
    if about and about.verdict and about.said(comment.state, comment.contents):
        return
    if about and not about.verdict:
        if not about.said(comment.contents):
            yield _written_in(comment, about)
        if comment.state not in ("", _USUAL):
            yield _set_in(comment)
    elif comment.state == _USUAL:
        return
    elif comment.state:
        yield _state(comment)
    else:
        yield _reply(comment)


def _state(comment: Comment) -> Said:
    """Return a state that somebody set; "Marked" and what else there may be decides nothing."""
    state = VERDICTS.get(comment.state) if comment.model in ("Review", "") else None
    remark = "" if _is_automatic(comment) else comment.contents
    doubt = ""
    if state is None:
        doubt = say("It was set to “{word}”, which is no verdict.", word=comment.state)
    return Said(comment.author, comment.when, comment.order, state, remark, doubt)


def _set_in(comment: Comment) -> Said:
    """Return a state that stands in the note of a finding itself, not in a reply to it."""
    doubt = say("It was set in the note itself, which does not tell by whom.")
    return replace(_state(comment), who="", remark="", doubt=doubt)


def _is_automatic(comment: Comment) -> bool:
    """Whether the text is what readers write by themselves, such as "Rejected set by Ida"."""
    text, author = comment.contents, comment.author
    if text.casefold() == comment.state.casefold():
        return True
    return bool(author) and author in text and len(text) <= len(author) + _AUTOMATIC


def _reply(comment: Comment) -> Said:
    """Return a reply; one that begins with a verdict in plain words decides."""
    state, remark = in_plain_words(comment.contents)
    doubt = ""
    if state is None and not remark:
        doubt = say("It has no words ({kind}).", kind=comment.kind)
    return Said(comment.author, comment.when, comment.order, state, remark, doubt)


def in_plain_words(text: str) -> tuple[State | None, str]:
    """Return the verdict that a text begins with, if any, and the rest of the text.

    ``Not a fault: the sheet goes on behind.`` is a verdict with its reason; ``Mended?`` and
    ``Accepted by the office`` are only text. Words are English or of the language spoken.
    """
    for state in State:
        for word in {state.value, say(state.value.capitalize())}:
            end = _END.match(text, len(word))
            if end and text[: len(word)].casefold() == word.casefold():
                return state, text[end.end() :].strip()
    return None, text.strip()


def _written_in(comment: Comment, about: NoteName) -> Said:
    """Return what somebody wrote into the note of a finding, before or after its own words."""
    added = _added(comment.contents, about)
    if added is None:
        doubt, added = say("The note's own words were changed."), comment.contents
    else:
        doubt = say("It was written into the note itself, which does not tell by whom.")
    state, remark = in_plain_words(added)
    return Said(comment.author, comment.when, comment.order, state, remark, doubt)


def _added(text: str, about: NoteName) -> str | None:
    """Return what was added to a note's words, None where these were changed."""
    words = text.split()
    for count in range(len(words)):
        if about.digest == digest_of(" ".join(words[:count])):
            return " ".join(words[count:])
        if about.digest == digest_of(" ".join(words[count:])):
            return " ".join(words[:count])
    return None
