"""The rule books with their figures, from ``resources/limits.toml``."""

import tomllib
from collections.abc import Mapping
from difflib import get_close_matches
from functools import cache
from math import radians, tan
from types import MappingProxyType
from typing import Any

from enclosure_app.errors import EnclosureError
from enclosure_app.language import say
from enclosure_app.model.limits import Limit, Limits, tolerances_of
from enclosure_app.resources import resource

FALLBACK = "practice"
"""The book that every other one falls back on."""


@cache
def load_limits(book: str = "irc-2021") -> Limits:
    """Return the figures of one book, filled up from the books that it follows.

    Raises:
        EnclosureError: there is no such book.
    """
    tables = _tables()
    if book not in tables["books"]:
        raise EnclosureError(unknown_book(book))
    figures: dict[str, Limit] = {}
    for name in reversed(_line_of_books(book)):
        figures.update(_figures(tables[name], tables["books"][name]["edition"]))
    return Limits(
        figures=MappingProxyType(figures),
        tolerances=tolerances_of(figures),
        book=book,
    )


@cache
def books() -> Mapping[str, str]:
    """Return the books to choose from: key to name."""
    return MappingProxyType({key: about["name"] for key, about in _tables()["books"].items()})


def limit_units() -> Mapping[str, str]:
    """Return the name of every figure, with its unit (``mm``, ``slope`` or ``setting``)."""
    return {name: figure.unit for name, figure in load_limits(FALLBACK).figures.items()}


@cache
def unused_figures() -> frozenset[str]:
    """Return the figures that no rule asks for yet; to change one would change nothing."""
    return frozenset(_tables()["unused"])


def unknown_book(book: str) -> str:
    """Return the sentence that says that there is no such book, and names those there are."""
    close = get_close_matches(book.casefold(), books(), n=1)
    hint = (
        say("; did you mean '{name}'?", name=close[0])
        if close
        else say(": use one of {names}.", names=", ".join(books()))
    )
    return say("There is no rule book '{book}'{hint}", book=book, hint=hint)


@cache
def _tables() -> dict[str, Any]:
    with resource("limits.toml").open("rb") as file:
        return tomllib.load(file)


def _line_of_books(book: str) -> list[str]:
    """The book itself, the one that it follows, and so on down to common practice."""
    line = [book]
    while line[-1] != FALLBACK:
        line.append(_tables()["books"][line[-1]].get("after", FALLBACK))
    return line


def _figures(table: Mapping[str, Any], edition: str) -> dict[str, Limit]:
    figures = {}
    for name, given in table.items():
        value, unit = _value(given)
        figures[name] = Limit(
            name=name,
            value=value,
            unit=unit,
            source=given["source"],
            edition=given.get("edition", edition),
            confirmed=given.get("confirmed", False),
            note=given.get("note", ""),
        )
    return figures


def _value(given: Mapping[str, Any]) -> tuple[float, str]:
    """The figure and its unit; a slope is written as rise and run, or in degrees."""
    if "slope" in given:
        rise, run = given["slope"]
        return rise / run, "slope"
    if "degrees" in given:
        return tan(radians(given["degrees"])), "slope"
    if "setting" in given:
        return float(given["setting"]), "setting"
    return float(given["mm"]), "mm"
