"""Checks the tables of a layer map and says everything that is wrong, each with its line."""

from collections.abc import Callable, Collection, Iterable, Mapping
from dataclasses import dataclass, field
from difflib import get_close_matches
from math import isfinite

from enclosure_app.errors import ListedError
from enclosure_app.files.toml_lines import KeyPath, TomlLines

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
        self.said.append((line, f"{self.file}, line {line}: {text}"))

    def raise_if_any(self) -> None:
        """Raise everything that was said, in the order of the lines."""
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
            self.say(path, f"{title(path)} must be a table of its own.")
            return False
        for key, value in table.items():
            if key not in checks:
                self.say((*path, key), f"unknown key '{key}' in {title(path)}{meant(key, checks)}")
            elif wrong := checks[key](value):
                self.say((*path, key), f"'{key}' in {title(path)} {wrong}")
        return len(self.said) == before


def title(path: KeyPath) -> str:
    """Return how a person writes the table at `path`: ``[[layers]]``, ``[products.felt]``."""
    names = ".".join(key for key in path if isinstance(key, str))
    if not names:
        return "the layer map"
    return f"[[{names}]]" if isinstance(path[-1], int) else f"[{names}]"


def meant(word: str, known: Iterable[str]) -> str:
    """Return the end of a sentence that offers the nearest known word, or lists a few."""
    known = list(known)
    close = get_close_matches(word.casefold(), known, n=1, cutoff=_ALIKE)
    if close:
        return f"; did you mean '{close[0]}'?"
    return f"; use one of {', '.join(known)}." if len(known) <= 30 else "."


def text(value: object) -> str:
    """A text that is not empty."""
    return "" if isinstance(value, str) and value.strip() else "must be a text in quotes."


def texts(value: object) -> str:
    """A list of texts."""
    sound = isinstance(value, list) and bool(value) and not any(map(text, value))
    return "" if sound else "must be a list of texts in quotes."


def number(value: object) -> str:
    """A finite number that is not negative."""
    if isinstance(value, bool) or not isinstance(value, int | float):
        return f"must be a number without quotes, not {_shown(value)}."
    if not isfinite(value):
        return f"is {value}; write a finite number."
    return f"is {value}; it cannot be negative." if value < 0 else ""


def positive(value: object) -> str:
    """A finite number above zero."""
    return number(value) or ("is 0; it must be more than that." if value == 0 else "")


def slope(value: object) -> str:
    """A slope as rise over run; one that looks like inches in 12 is refused."""
    wrong = number(value)
    if not wrong and isinstance(value, int | float) and value >= 3:
        wrong = f"is {value}; write a slope as rise over run (4:12 is 0.3333)."
    return wrong


def setting(value: object) -> str:
    """Yes or no, as a figure."""
    return number(value) or ("" if value in (0, 1) else f"is {value}; write 1 or 0.")


def flag(value: object) -> str:
    """True or false."""
    return "" if isinstance(value, bool) else f"must be true or false, not {_shown(value)}."


def aci(value: object) -> str:
    """A colour index of the DXF format."""
    sound = isinstance(value, int) and not isinstance(value, bool) and 1 <= value <= 255
    return "" if sound else f"must be a colour index from 1 to 255, not {_shown(value)}."


def one_of(words: Collection[str]) -> Check:
    """Return a check for one of `words`."""

    def check(value: object) -> str:
        if isinstance(value, str) and value in words:
            return ""
        hint = meant(value, words) if isinstance(value, str) else f"; use {', '.join(words)}."
        return f"cannot be {_shown(value)}{hint}"

    return check


def some_of(words: Collection[str]) -> Check:
    """Return a check for a list of `words`, which may be empty."""
    single = one_of(words)

    def check(value: object) -> str:
        if not isinstance(value, list):
            return f'must be a list, such as ["{next(iter(words))}"], not {_shown(value)}.'
        return next(filter(None, map(single, value)), "")

    return check


def _shown(value: object) -> str:
    """The value as the person wrote it, cut short."""
    shown = f"'{value}'" if isinstance(value, str) else str(value)
    if isinstance(value, bool):
        shown = shown.lower()
    return shown if len(shown) <= 40 else f"{shown[:37]}..."
