"""The site list as a table: one row for each thing to look at, with what was seen of it."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from pathlib import PurePath
from types import MappingProxyType

from enclosure_app.language import say
from enclosure_app.model.drawing import Units
from enclosure_app.model.said.photograph import Photograph
from enclosure_app.model.said.site_check import Seen, SiteCheck
from enclosure_app.planning.site_list.listing import SiteList
from enclosure_app.planning.site_list.places import SitePlace
from enclosure_app.planning.site_list.questions import LIMITS, Question
from enclosure_app.reports.photograph_names import file_names
from enclosure_app.reports.tables.sayings import said_cells, said_columns
from enclosure_app.reports.tables.table import (
    Column,
    Table,
    Value,
    length,
    length_column,
    place_cells,
    place_columns,
)


@dataclass(frozen=True, slots=True)
class SeenList:
    """The site list of one section, and the look that counts at each of its items, by key.

    `file` is the drawing that the section is of.
    """

    asked: SiteList
    seen: Mapping[str, SiteCheck] = field(default_factory=lambda: MappingProxyType({}))
    file: str = ""


def site_table(
    lists: Sequence[SeenList], units: Units, photographs: Mapping[str, Photograph]
) -> Table:
    """Return what is to be looked at in all sections, in walking order, and what was seen."""
    names = file_names(photographs)
    rows = tuple(row for each in lists for row in _rows(each, units, names))
    return Table(say("Site list"), _columns(units), rows)


def _columns(units: Units) -> tuple[Column, ...]:
    return (
        Column(say("No."), 5),
        Column(say("Section"), 24),
        Column(say("Place"), 40),
        Column(say("Control"), 14),
        Column(say("What to look at"), 60),
        Column(say("Why"), 60),
        length_column(say("As drawn"), units),
        length_column(say("At least"), units),
        *said_columns(say("Seen")),
        Column(say("Beware"), 50),
        Column(say("Source"), 30),
        *place_columns(units),
        Column(say("Drawing"), 24),
        Column(say("Key"), 40),
    )


def _rows(listed: SeenList, units: Units, names: Mapping[str, str]) -> Iterator[tuple[Value, ...]]:
    file = PurePath(listed.file).name or None
    for number, place in enumerate(listed.asked.places, 1):
        for key, question in place.items:
            seen = _seen(listed.seen.get(key), names)
            about = (number, listed.asked.section, *_asked(place, question, units))
            yield (*about, *seen, *_rest(place, question, units), file, key)


def _asked(place: SitePlace, question: Question, units: Units) -> tuple[Value, ...]:
    return (
        place.title,
        ", ".join(say(control.value) for control in place.controls) or None,
        question.text,
        question.why,
        length(question.drawn, units),
        length(question.least, units),
    )


def _seen(check: SiteCheck | None, names: Mapping[str, str]) -> tuple[Value, ...]:
    seen = Seen.NOT_LOOKED_AT if check is None else check.seen
    return said_cells(say(seen.value), check, names)


def _rest(place: SitePlace, question: Question, units: Units) -> tuple[Value, ...]:
    cautions = " ".join(place.cautions) or None
    return cautions, question.source, *place_cells(place.at, units)


def limits_of_the_list() -> str:
    """Return what the list is not."""
    return say(LIMITS)
