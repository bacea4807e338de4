"""What the program's exit status says."""

from collections.abc import Iterable
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from enclosure_app.model.report import DrawingResult

NOTHING_WRONG, FAULTS, UNUSABLE = 0, 1, 2
STOPPED = 130  # what shells report for a program that was stopped from the keyboard


def status(results: Iterable["DrawingResult"]) -> int:
    """Return whether any finding is at fault level."""
    found = (f for result in results for section in result.sections for f in section.findings)
    return FAULTS if any(finding.severity == "fault" for finding in found) else NOTHING_WRONG
