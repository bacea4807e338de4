"""What a drawing shows of its units, and whether it is usual so in one of them.

Text heights: details are plotted at 1:1 to 1:50 with letters some 1.8 to 5 mm high (ISO 3098-1
gives 1.8, 2.5, 3.5 and 5 mm; the range of scales is common practice, no source). Sections are
between 0.3 m and 60 m across; one that shows furniture is of a room, which is 2.1 m high at the
least (common practice, no source).
"""

from dataclasses import dataclass

import numpy as np

from enclosure_app.files.dxf.raw import RawDimension
from enclosure_app.model.drawing import Units

ACROSS = (300.0, 60_000.0)  # mm
ROOM = 2100.0  # mm
ACROSS_SHEET = (50.0, 1_000_000.0)  # mm, where the letters confirm the unit
LETTERS = (1.5, 260.0)  # mm, as they stand on a detail drawn full size
SURE_LETTERS = (8.0, 200.0)  # mm, at the usual 1:5 to 1:50
_ENOUGH = 3  # texts, from which on their height says something


@dataclass(frozen=True, slots=True)
class Evidence:
    """What a drawing shows of its units; lengths in drawing units.

    `thicknesses` holds pairs of a drawn thickness and the product's in mm. `extent` is the
    larger side of what was mapped, `high` how high that is. `metric` is $MEASUREMENT, None where
    absent. `furniture` is a layer that furniture is drawn on, "" without one, and `drawn_high` how
    high all is that is drawn, mapped or not.
    """

    file: str
    insunits: int = 0
    metric: bool | None = None
    dimensions: tuple[RawDimension, ...] = ()
    heights: tuple[float, ...] = ()
    thicknesses: tuple[tuple[float, float], ...] = ()
    extent: float = 0.0
    high: float = 0.0
    furniture: str = ""
    drawn_high: float = 0.0

    def across(self, unit: Units) -> float:
        """Return how far across it is, mm, if it is drawn in `unit`."""
        return self.extent * unit.in_mm

    def letters(self, unit: Units) -> float | None:
        """Return how high its letters are, mm, if it is drawn in `unit`; None of a few only."""
        if len(self.heights) < _ENOUGH:
            return None
        return float(np.median(self.heights)) * unit.in_mm


def is_usual(evidence: Evidence, unit: Units) -> bool:
    """Whether a section is usual in `unit`; several on one sheet are when their letters are."""
    if has_odd_letters(evidence, unit):
        return False
    across, high = evidence.across(unit), evidence.letters(unit)
    lettered = high is not None and lies_in(high, SURE_LETTERS)
    return has_usual_extent(evidence, unit) or (lettered and lies_in(across, ACROSS_SHEET))


def has_usual_extent(evidence: Evidence, unit: Units) -> bool:
    """Whether it is as large as sections are, if it is drawn in `unit`."""
    return lies_in(evidence.across(unit), ACROSS) and not is_too_small_a_room(evidence, unit)


def is_too_small_a_room(evidence: Evidence, unit: Units) -> bool:
    """Whether it shows furniture in a room that nobody could stand in, if it is drawn in `unit`."""
    return bool(evidence.furniture) and evidence.drawn_high * unit.in_mm < ROOM


def has_odd_letters(evidence: Evidence, unit: Units) -> bool:
    """Whether its letters would be too low to be read in `unit`, or as high as doors."""
    high = evidence.letters(unit)
    return high is not None and not lies_in(high, LETTERS)


def lies_in(length: float, bounds: tuple[float, float]) -> bool:
    """Whether a length lies between the least and the most of what is usual."""
    return bounds[0] <= length <= bounds[1]
