"""Edits of the project as a whole: its title, and its own figures and severities."""

from collections.abc import Mapping
from dataclasses import replace
from math import isfinite
from types import MappingProxyType
from typing import TypeVar

from enclosure_app.errors import EnclosureError
from enclosure_app.language import say
from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Severity
from enclosure_app.model.project import Project

Value = TypeVar("Value")


def rename(project: Project, title: str) -> Project:
    """Give the project another title."""
    return replace(project, title=title.strip())


def set_units(project: Project, units: Units) -> Project:
    """Show lengths in other units; no length changes."""
    return replace(project, units=units)


def set_severity(project: Project, rule: str, severity: Severity | None) -> Project:
    """Make a rule as loud as this in the project, or with None as the rule itself says."""
    return replace(project, severities=_with(project.severities, rule, severity))


def set_figure(project: Project, name: str, value: float | None) -> Project:
    """Require another figure than the rule book's, or with None the rule book's own.

    Raises:
        EnclosureError: the figure is below 0.
    """
    if value is not None and not (isfinite(value) and value >= 0):
        raise EnclosureError(
            say('The figure "{name}" cannot be {value:g}: give 0 or more.', name=name, value=value)
        )
    return replace(project, figures=_with(project.figures, name, value))


def set_book(project: Project, book: str) -> Project:
    """Take required figures from another rule book, "" for the program's usual one."""
    return replace(project, book=book)


def _with(mapping: Mapping[str, Value], key: str, value: Value | None) -> Mapping[str, Value]:
    rest = {name: held for name, held in mapping.items() if name != key}
    return MappingProxyType(rest if value is None else {**rest, key: value})
