"""A finding: one thing wrong, where, measured against required, and what to do."""

from dataclasses import dataclass
from enum import StrEnum

from enclosure_app.model.place import Point, Points
from enclosure_app.model.product import Control


class Severity(StrEnum):
    """How loud a finding is; a setting for each rule."""

    FAULT = "fault"
    DOUBT = "doubt"
    REMARK = "remark"
    OFF = "off"


def begun(words: str) -> str:
    """Return words as the beginning of a sentence; only the first letter changes ("OSB" stays)."""
    return words[:1].upper() + words[1:]


@dataclass(frozen=True, slots=True)
class Finding:
    """One thing wrong.

    `key` is made of rule and named places, never of coordinates. `at` and `extent` (the lines
    that show the fault: the two ends of a gap, the run of a lap over and then under) are mm in
    the drawing's coordinates. `measured` and `required` are mm, None where nothing is measured.
    `basis` says which figure was applied and whether it is confirmed. `along` orders findings as
    one walks the layer, in mm from its first cut end.
    """

    key: str
    rule: str
    control: Control | None
    severity: Severity
    at: Point
    pieces: tuple[str, ...]
    message: str
    advice: str
    measured: float | None = None
    required: float | None = None
    basis: str = ""
    extent: tuple[Points, ...] = ()
    along: float = 0.0
    drawing: str = ""
    section: str = ""
