"""Checks the tables of a layer map and says everything that is wrong, each with its line."""

from collections.abc import Callable, Collection, Iterable, Mapping
from dataclasses import dataclass, field
from difflib import get_close_matches
from math import isfinite

from enclosure_app.errors import ListedError
from enclosure_app.files.maps.toml_lines import KeyPath, TomlLines
from enclosure_app.language import say

Check = Callable[[object], str]
"""Takes a value and returns what is wrong with it, to follow the key; "" for nothing."""

_ALIKE = 0.65
"""How alike a known word must be to be offered; at 0.6 "glued" would be taken for "fluid"."""


@dataclass(slots=True)
class Complaints:
    """What is wrong with one file, collected so that it can be said in one go."""

    file: str
    lines: TomlLines
    said: list[tuple[int, str]] = field(default_factory=list)

    def say(self, path: KeyPath, text: str) -> None:
        """Note that `text` is wrong at `path`."""
        line = self.lines.line_of(path)
        self.said.append(
            (line, say("{file}, line {line}: {text}", file=self.file, line=line, text=text))
        )

    def raise_if_any(self) -> None:
        """Raise everything that was said, in the order of the lines.

        Raises:
            ListedError: something was found wrong: all of it, in the order of the
                lines.
        """
        if self.said:
            self.said.sort(key=lambda one: one[0])
            raise ListedError(tuple(text for _, text in self.said))

    def fields(self, path: KeyPath, table: object, checks: Mapping[str, Check]) -> bool:
        """Check one table against the fields that it may have; whether it is sound.

        Args:
            path: Where the table stands.
            table: What was read there, which may be no table at all.
            checks: The fields by name.
        """
        before = len(self.said)
        if not isinstance(table, dict):
            self.say(path, say("{title} must be a table of its own.", title=title(path)))
            return False
        for key, value in table.items():
            if key not in checks:
                self.say(
                    (*path, key),
                    say(
                        "unknown key '{key}' in {title}{hint}",
                        key=key,
                        title=title(path),
                        hint=meant(key, checks),
                    ),
                )
            elif wrong := checks[key](value):
                self.say(
                    (*path, key),
                    say("'{key}' in {title} {wrong}", key=key, title=title(path), wrong=wrong),
                )
        return len(self.said) == before


def title(path: KeyPath) -> str:
    """Return how a person writes the table at `path`: ``[[layers]]``, ``[products.felt]``."""
    names = ".".join(key for key in path if isinstance(key, str))
    if not names:
        return say("the layer map")
    return f"[[{names}]]" if isinstance(path[-1], int) else f"[{names}]"


def meant(word: str, known: Iterable[str]) -> str:
    """Return the end of a sentence that offers the nearest known word, or lists a few."""
    known = list(known)
    close = get_close_matches(word.casefold(), known, n=1, cutoff=_ALIKE)
    if close:
        return say("; did you mean '{name}'?", name=close[0])
    return say("; use one of {names}.", names=", ".join(known)) if len(known) <= 30 else "."


def text(value: object) -> str:
    """A text that is not empty."""
    return "" if isinstance(value, str) and value.strip() else say("must be a text in quotes.")


def texts(value: object) -> str:
    """A list of texts."""
    sound = isinstance(value, list) and bool(value) and not any(map(text, value))
    return "" if sound else say("must be a list of texts in quotes.")


def number(value: object) -> str:
    """A finite number that is not negative."""
    if isinstance(value, bool) or not isinstance(value, int | float):
        return say("must be a number without quotes, not {shown}.", shown=_shown(value))
    if not isfinite(value):
        return say("is {value}; write a finite number.", value=value)
    return say("is {value}; it cannot be negative.", value=value) if value < 0 else ""


def positive(value: object) -> str:
    """A finite number above zero."""
    return number(value) or (say("is 0; it must be more than that.") if value == 0 else "")


def slope(value: object) -> str:
    """A slope as rise over run; one that looks like inches in 12 is refused."""
    wrong = number(value)
    if not wrong and isinstance(value, int | float) and value >= 3:
        wrong = say("is {value}; write a slope as rise over run (4:12 is 0.3333).", value=value)
    return wrong


def setting(value: object) -> str:
    """Yes or no, as a figure."""
    return number(value) or (
        "" if value in (0, 1) else say("is {value}; write 1 or 0.", value=value)
    )


def flag(value: object) -> str:
    """True or false."""
    return (
        ""
        if isinstance(value, bool)
        else say("must be true or false, not {shown}.", shown=_shown(value))
    )


def aci(value: object) -> str:
    """A colour index of the DXF format."""
    sound = isinstance(value, int) and not isinstance(value, bool) and 1 <= value <= 255
    return (
        ""
        if sound
        else say("must be a colour index from 1 to 255, not {shown}.", shown=_shown(value))
    )


def one_of(words: Collection[str]) -> Check:
    """Return a check for one of `words`."""

    def check(value: object) -> str:
        if isinstance(value, str) and value in words:
            return ""
        hint = (
            meant(value, words)
            if isinstance(value, str)
            else say("; use {words}.", words=", ".join(words))
        )
        return say("cannot be {shown}{hint}", shown=_shown(value), hint=hint)

    return check


def some_of(words: Collection[str]) -> Check:
    """Return a check for a list of `words`, which may be empty."""
    single = one_of(words)

    def check(value: object) -> str:
        if not isinstance(value, list):
            return say(
                'must be a list, such as ["{one}"], not {shown}.',
                one=next(iter(words)),
                shown=_shown(value),
            )
        return next(filter(None, map(single, value)), "")

    return check


def _shown(value: object) -> str:
    """The value as the person wrote it, cut short."""
    shown = f"'{value}'" if isinstance(value, str) else str(value)
    if isinstance(value, bool):
        shown = shown.lower()
    return shown if len(shown) <= 40 else f"{shown[:37]}..."
