"""What a person decided about a finding: a report tells it, a project keeps it."""

from dataclasses import dataclass
from enum import StrEnum


class State(StrEnum):
    """What a person decided about a finding."""

    OPEN = "open"
    TO_BE_MENDED = "to be mended"
    MENDED = "mended"
    ACCEPTED = "accepted"
    NO_FAULT = "not a fault"

    @property
    def needs_reason(self) -> bool:
        """Whether it lets stand what was found, so that somebody has to say why."""
        return self in (State.ACCEPTED, State.NO_FAULT)


@dataclass(frozen=True, slots=True)
class Decision:
    """One verdict about the finding with `key`: what, by whom, when (`model.said.moment`), and why.

    `section` is the name of the section it was found in, since two sections may have pieces of the
    same name ("": any); `about` the finding's sentence as it was then, for when it is gone.
    `photographs` are keys of the project's. `revision` is that of the drawing it was found in.

    `id` is its own for good, in every copy of the project; `after` are the verdicts that were
    known when it was made and that it takes the place of. `edits.set_decision` gives all three.
    """

    key: str
    state: State
    who: str = ""
    when: str = ""
    remark: str = ""
    section: str = ""
    about: str = ""
    photographs: tuple[str, ...] = ()
    revision: str = ""
    id: str = ""
    after: tuple[str, ...] = ()
