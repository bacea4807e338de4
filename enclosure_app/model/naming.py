"""Names apart: a piece or a section whose name is taken gets a number behind it."""

from collections.abc import Collection, Iterable
from dataclasses import replace
from itertools import chain, count
from typing import TypeVar

from enclosure_app.model.section import Piece, Section

Named = TypeVar("Named", Piece, Section)


def free_name(wish: str, taken: Collection[str], form: str = "{name} {number}") -> str:
    """Return the wished name, or where it is taken the first of ``wish 2``, ``wish 3`` ... that is free.

    Args:
        wish: The name that is wished for.
        taken: The names that others have.
        form: How a name is written with its number.
    """
    numbered = (form.format(name=wish, number=number) for number in count(2))
    return next(name for name in chain([wish], numbered) if name not in taken)


def named_apart(
    things: Iterable[Named], taken: Iterable[str] = (), form: str = "{name} {number}"
) -> tuple[Named, ...]:
    """Return pieces or sections of which no two have one name, nor one that is taken.

    The first of several keeps its name; `form` is how the others are written with their number.
    """
    names = set(taken)
    apart: list[Named] = []
    for thing in things:
        name = free_name(thing.name, names, form)
        names.add(name)
        apart.append(thing if name == thing.name else replace(thing, name=name))
    return tuple(apart)
