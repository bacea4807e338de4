"""Why a layer could not be judged is said in the drawing's units."""

import pytest

from enclosure_app.drawing.unsure_words import why_unsure
from enclosure_app.model.drawing import Units
from enclosure_app.model.product import Control
from enclosure_app.model.report import Continuity, LayerResult


def unsure(trace: float, opening: float, why: str = "") -> LayerResult:
    return LayerResult(Control.AIR, Continuity.UNSURE, bottleneck=trace, opening=opening, why=why)


@pytest.mark.parametrize(
    ("trace", "opening", "units", "told"),
    [
        (30.0, 35.0, Units.MM, "is 30 mm, the opening that it is 5 mm wider:"),
        (30.0, 25.0, Units.M, "is 0.030 m, the opening that it is 0.005 m narrower:"),
        (6451.6, 6464.4, Units.IN, 'is 21\' 2", the opening that it is 1/2" wider:'),
        (30.0, 30.2, Units.MM, "is 30 mm, the opening that it is <1 mm wider:"),
        (30.0, 0.0, Units.FT, 'is 1 3/16", the opening that it is 1 3/16" narrower:'),
    ],
)
def test_by_how_much_the_two_proofs_differ_is_said_in_the_units_of_the_drawing(
    trace: float, opening: float, units: Units, told: str
) -> None:
    said = why_unsure(unsure(trace, opening), units)
    assert told in said
    assert said.startswith("The trace says that the widest gap")
    assert said.endswith(": one of them is wrong, so look at this layer yourself.")


def test_another_reason_is_said_as_it_is() -> None:
    assert why_unsure(unsure(30.0, 35.0, "Because."), Units.MM) == "Because."


def test_where_nothing_is_known_nothing_is_said() -> None:
    assert why_unsure(LayerResult(Control.AIR, Continuity.UNSURE), Units.MM) == ""
    assert (
        why_unsure(
            LayerResult(Control.AIR, Continuity.BROKEN, bottleneck=3.0, opening=3.0), Units.MM
        )
        == ""
    )
