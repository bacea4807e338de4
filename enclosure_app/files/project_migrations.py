"""Brings project files of older formats up to the newest one, step by step."""

from collections.abc import Callable, Mapping
from types import MappingProxyType
from typing import Any

FORMAT = 1
"""The format that this program writes."""

Step = Callable[[dict[str, Any]], dict[str, Any]]

STEPS: Mapping[int, Step] = MappingProxyType({})
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
