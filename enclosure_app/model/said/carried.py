"""That a finding of an earlier drawing is a finding of a later one.

What was said about a finding is never rewritten. Where a revised drawing names its pieces anew,
this says which finding is which; where nobody can tell, nothing is said, and a person is asked.
"""

from dataclasses import dataclass
from typing import NamedTuple

WHOLE = "section"
"""The key of a section as a whole: what was signed."""

EVERYTHING = "*"
"""The key of whatever is in a section that a revision did not touch: all of it is what it was."""


class Subject(NamedTuple):
    """What something was said about: a key in a section of one revision of the drawing."""

    revision: str
    section: str
    key: str


@dataclass(frozen=True, slots=True)
class Carried:
    """That the `earlier` subject is the `later` one, whose key is "" where it is gone.

    `who` said so; "" is the program, which only says what is certain. `on_list` tells items of the
    site list from findings. A later answer names the ones that it takes the place of in `after`.
    """

    earlier: Subject
    later: Subject
    on_list: bool = False
    who: str = ""
    when: str = ""
    id: str = ""
    after: tuple[str, ...] = ()
