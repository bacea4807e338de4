"""What people read, in their language: English, until the window hands over another.

The command line and the reports for programs never do, and stay English. A text is a whole
sentence with named places, so that another language may put its words in its own order:
``say("The {layer} stops at {name}.", layer=..., name=...)``.
"""

from collections.abc import Callable
from dataclasses import dataclass
from string import Formatter
from typing import Any


@dataclass(frozen=True, slots=True)
class Language:
    """How one language says things.

    `translate` gives a text in it; `capitals` says whether names keep theirs within a sentence;
    `groups` and `point` stand between thousands and before decimals; `code` is its name in BCP 47.
    """

    translate: Callable[[str], str]
    capitals: bool = False
    groups: str = ","
    point: str = "."
    code: str = "en"


ENGLISH = Language(str)
_spoken = [ENGLISH]


def speak(language: Language) -> None:
    """Say everything in this language from now on."""
    _spoken[0] = language


def spoken() -> str:
    """Return the code of the language spoken, such as ``de``."""
    return _spoken[0].code


def say(text: str, /, **values: object) -> str:
    """Return a text in the language spoken, with the values in their places."""
    said = _spoken[0].translate(text)
    return _WRITER.vformat(said, (), values) if values else said


def say_count(count: int, one: str, many: str, /, **values: object) -> str:
    """Return `one` or `many` in the language spoken; both may hold ``{count}``."""
    return say(one if count == 1 else many, count=count, **values)


def later(text: str) -> str:
    """Mark a text that `say` is given later, so that it is found where texts are gathered."""
    return text


def in_sentence(name: str) -> str:
    """Return a name as it stands within a sentence: English ones begin small ("OSB" does not)."""
    said = say(name)
    kept = _spoken[0].capitals or said[:2].isupper()
    return said if kept else said[:1].lower() + said[1:]


def written(number: str) -> str:
    """Return a number that Python wrote (``1,234.5``) as the language spoken writes it."""
    spoken = _spoken[0]
    return number.translate({ord(","): spoken.groups, ord("."): spoken.point})


class _Writer(Formatter):
    """Puts values into a text, numbers with the marks of the language spoken."""

    def format_field(self, value: Any, format_spec: str) -> str:  # noqa: ANN401  as in Formatter
        text: str = super().format_field(value, format_spec)
        return written(text) if isinstance(value, int | float) else text


_WRITER = _Writer()
