"""A layer with open air on both sides of one branch: laps are told from the trace nearest to them.

A porch roof runs out from a wall to the edge of the drawing, with the outside above and below it.
"""

import pytest

from enclosure_app.network.layer import Layer
from tests.network.sections import section, sheet, water

PORCH = sheet("porch", (1000, 545), (510, 550), (510, 700))
HIGH = sheet("high", (515, 600), (515, 1000))
FRAME = ((0.0, 0.0), (1000.0, 0.0), (1000.0, 1000.0), (0.0, 1000.0))


def walls(low: float, mid: float) -> Layer:
    """Return the water layer with the lower wall sheet at x = low and the one above at x = mid."""
    return water(
        section(
            sheet("low", (low, 0), (low, 320)),
            sheet("mid", (mid, 220), (mid, 690)),
            PORCH,
            HIGH,
            frame=FRAME,
            inside=((100.0, 500.0),),
            outside=((800.0, 800.0), (800.0, 200.0)),
        )
    )


@pytest.mark.parametrize(("low", "mid", "outer"), [(503.0, 500.0, "low"), (500.0, 503.0, "mid")])
def test_the_outer_sheet_is_told_on_either_branch(low: float, mid: float, outer: str) -> None:
    (lap,) = (
        each
        for each in walls(low, mid).laps
        if {each.outer.name, each.inner.name} == {"low", "mid"}
    )
    assert lap.outward is not None
    assert lap.outer.name == outer
