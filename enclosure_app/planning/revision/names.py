"""Names that no two share, and what the names of two issues of one drawing have in common."""

import re
from collections.abc import Collection, Iterable, Iterator
from dataclasses import replace
from itertools import count
from pathlib import PureWindowsPath

from enclosure_app.model.section import Section

_DATE = re.compile(r"[\s_.-]*(19|20)\d\d[-_.]?[01]\d[-_.]?[0-3]\d$")
_MARKED = re.compile(r"[\s_.-]+(rev|revision|index|issue)[\s_.-]*\w{1,3}$")
_LETTER = re.compile(r"[\s_.-]+[a-z]$")


def issue_name(file: str) -> str:
    """Return a file's name without what tells one issue of a drawing from another."""
    name = PureWindowsPath(file).stem.casefold()  # a project may come from another system
    for mark in (_DATE, _MARKED, _LETTER):
        name = mark.sub("", name) or name
    return name


def free_name(name: str, taken: Collection[str]) -> str:
    """Return a name that is not taken: it, or it with the first free number."""
    if name not in taken:
        return name
    return next(each for n in count(2) if (each := f"{name}-{n}") not in taken)


def named_apart(sections: Iterable[Section], others: Iterable[Section]) -> Iterator[Section]:
    """Yield sections under names that none of them shares with another, or with any of `others`."""
    taken = {each.name for each in others}
    for each in sections:
        name = free_name(each.name, taken)
        taken.add(name)
        yield each if name == each.name else replace(each, name=name)
