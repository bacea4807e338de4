"""The project: everything that a person has made of one drawing, as one immutable value."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import StrEnum
from types import MappingProxyType

from enclosure_app.model.drawing import Note, Units
from enclosure_app.model.finding import Severity
from enclosure_app.model.place import Point
from enclosure_app.model.section import Section


class State(StrEnum):
    """What a person decided about a finding."""

    OPEN = "open"
    TO_BE_MENDED = "to be mended"
    MENDED = "mended"
    ACCEPTED = "accepted"
    NO_FAULT = "not a fault"


@dataclass(frozen=True, slots=True)
class Decision:
    """One verdict about the finding with `key`: what, by whom, when (UTC, ISO 8601), and why."""

    key: str
    state: State
    who: str = ""
    when: str = ""
    remark: str = ""


@dataclass(frozen=True, slots=True)
class Underlay:
    """A picture under the drawing: `data` is the file's bytes, `kind` ``png``, ``jpeg`` or ``pdf``.

    It is drawn with its lower left corner `at` (mm), `mm_per_pixel` large, turned by `angle`
    degrees anticlockwise.
    """

    name: str
    kind: str
    data: bytes
    at: Point = (0.0, 0.0)
    mm_per_pixel: float = 1.0
    angle: float = 0.0
    page: int = 0


@dataclass(frozen=True, slots=True)
class Project:
    """One project. Every edit is a pure function from project to project.

    `source` names the drawing it was read from, "" for one sketched from nothing. `figures` and
    `severities` are the project's own over the rule book `book`. `decisions` are kept in the order
    they were made; the last one about a key counts.
    """

    title: str
    units: Units
    sections: tuple[Section, ...]
    source: str = ""
    notes: tuple[Note, ...] = ()
    book: str = ""
    figures: Mapping[str, float] = field(default_factory=lambda: MappingProxyType({}))
    severities: Mapping[str, Severity] = field(default_factory=lambda: MappingProxyType({}))
    decisions: tuple[Decision, ...] = ()
    underlays: tuple[Underlay, ...] = ()
