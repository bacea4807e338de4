"""How a finding and its verdict are named in a PDF, so that the way back is certain.

A note's name (`NM`, ISO 32000-1, 12.5.2) holds the drawing, the section, the finding's key, the
drawing's revision, and a sum over what the note said when it was written: another one later tells
that somebody wrote in it.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from hashlib import sha256
from types import MappingProxyType
from typing import NamedTuple
from urllib.parse import quote, unquote

from enclosure_app.model.said.decision import State

_PROGRAM = "enclosure"
_FINDING, _VERDICT = "finding", "verdict"
_DIGITS = 12
_EVERY = "surrogatepass"  # damaged names come back as they were

REVIEW: Mapping[State, str] = MappingProxyType(
    {
        State.OPEN: "None",
        State.TO_BE_MENDED: "Accepted",
        State.MENDED: "Completed",
        State.ACCEPTED: "Cancelled",
        State.NO_FAULT: "Rejected",
    }
)
"""The state of the review model that says a verdict (ISO 32000-1, 12.5.6.3, from memory).

A note says what is wrong and what to do. To accept it is to agree, so that it is to be mended; to
reject it, to say that it is no fault; to cancel it, to let it stand; to complete it, to have done it.
"""

VERDICTS: Mapping[str, State] = MappingProxyType({word: state for state, word in REVIEW.items()})
"""The verdict that a state of the review model says."""


class About(NamedTuple):
    """What a note is about; `revision` as in `model.project.Project`, "" where nobody keeps one."""

    drawing: str
    section: str
    key: str
    revision: str = ""


@dataclass(frozen=True, slots=True)
class NoteName:
    """The name of a note of ours. `verdict` tells the note of a verdict from a finding's."""

    about: About
    digest: str
    verdict: bool = False

    def said(self, *words: str) -> bool:
        """Whether the note still says what it did when it was written."""
        return self.digest == digest_of(*words)


def note_name(about: About, *words: str, verdict: bool = False) -> str:
    """Return the name of a note.

    Args:
        about: What it is about.
        words: All that the note says.
        verdict: Whether it says a verdict.
    """
    parts = (quote(part, safe=" ,+.", errors=_EVERY) for part in about)
    kind = _VERDICT if verdict else _FINDING
    return ":".join((_PROGRAM, kind, *parts, digest_of(*words)))


def named(name: str) -> NoteName | None:
    """Return what a note of this name is about, None where it is none of ours."""
    match name.split(":"):
        case [program, kind, *about, digest] if program == _PROGRAM and len(about) == 4:
            told = About(*(unquote(part, errors=_EVERY) for part in about))
            if kind in (_FINDING, _VERDICT):
                return NoteName(told, digest, kind == _VERDICT)
    return None


def digest_of(*words: str) -> str:
    """Return a sum over words; how lines are broken, which readers change, is left out."""
    plain = "\n".join(" ".join(each.split()) for each in words)
    return sha256(plain.encode("utf-8", _EVERY)).hexdigest()[:_DIGITS]
