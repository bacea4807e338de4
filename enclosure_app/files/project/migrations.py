"""Brings project files of older formats up to the newest one, step by step."""

from collections.abc import Callable, Mapping
from types import MappingProxyType
from typing import Any

from enclosure_app.model.standing.standing import new_id

FORMAT = 3
"""The format that this program writes."""

Step = Callable[[dict[str, Any]], dict[str, Any]]


def _with_names(table: dict[str, Any]) -> dict[str, Any]:
    """Return a table of format 1 with a name for the project and for each verdict.

    They are made of what stands there, so that two copies of one file have the same names. Each
    verdict takes the place of the one before it about the same finding.
    """
    named: list[Any] = []
    for at, each in enumerate(_decisions(table)):
        if not isinstance(each, dict):
            return table  # the reader says what is wrong with it
        name = new_id(at, *(f"{key}={each[key]}" for key in sorted(each)))
        past = [held["id"] for held in named if _about_one(held, each)]
        named.append({**each, "id": name, "after": past})
    project = new_id(*(table.get(key) for key in ("title", "source", "units")))
    return {"id": project, **table, **({"decisions": named} if named else {})}


def _about_one(one: dict[str, Any], other: dict[str, Any]) -> bool:
    """Whether two verdicts are about one finding; one of no section is of any."""
    sections = {str(one.get("section", "")), str(other.get("section", ""))}
    return one.get("key") == other.get("key") and (len(sections) == 1 or "" in sections)


def _decisions(table: dict[str, Any]) -> list[Any]:
    held = table.get("decisions")
    return held if isinstance(held, list) else []


def _as_it_is(table: dict[str, Any]) -> dict[str, Any]:
    """Return a table of format 2, which only lacks what may be left out: `past`, a section's `file`."""
    return table


STEPS: Mapping[int, Step] = MappingProxyType({1: _with_names, 2: _as_it_is})
"""From each older format to the next: takes the whole table of a file and returns a new one.

Every version that was ever given away keeps its step, so that its files open for good. The format
is raised for any change, an added field too: an older program then says that it is too old.
"""


def migrated(
    table: dict[str, Any], version: int, newest: int = FORMAT, steps: Mapping[int, Step] = STEPS
) -> dict[str, Any]:
    """Return the table of a file of format `version` as one of the newest format."""
    for step in range(version, newest):
        table = steps[step](table)
    return table
