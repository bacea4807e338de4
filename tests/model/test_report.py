"""A walk along a layer: its lifts and the pieces that the pen follows."""

from enclosure_app.model.drawing import Drawing, Units
from enclosure_app.model.finding import Finding, Severity
from enclosure_app.model.product import Control
from enclosure_app.model.report import (
    Continuity,
    DrawingResult,
    LayerResult,
    Lift,
    Report,
    Run,
    SectionResult,
)
from enclosure_app.model.section import Section

SECTION = Section("S", ((0, 0), (9, 0), (9, 9)), (), {})


def test_a_lift_is_as_wide_as_its_ends_are_apart() -> None:
    assert Lift("1", "2", (1, 2), (4, 6)).width == 5


def test_runs_and_lifts_are_told_in_walking_order() -> None:
    first, second = Lift("1", "2", (0, 1), (0, 2)), Lift("2", "", (0, 3), (0, 4))
    walk = (Run("1", ((0, 0), (0, 1))), first, Run("2", ((0, 2), (0, 3))), second)
    layer = LayerResult(Control.AIR, Continuity.BROKEN, walk=walk)
    assert layer.lifts == (first, second)
    assert layer.pieces == ("1", "2")


def test_a_report_has_the_findings_of_all_its_sections_in_order() -> None:
    found = [
        Finding(f"gap:{n}", "gap", None, Severity.FAULT, (0, 0), (), "Open.", "Close it.")
        for n in range(3)
    ]
    drawing = Drawing("a.dxf", Units.MM, (SECTION,))
    one = DrawingResult(
        drawing,
        (
            SectionResult(SECTION, {}, findings=(found[0],)),
            SectionResult(SECTION, {}, findings=(found[1],)),
        ),
    )
    two = DrawingResult(drawing, (SectionResult(SECTION, {}, findings=(found[2],)),))
    assert Report((one, two)).findings == tuple(found)


def test_a_layer_of_which_nothing_can_be_said_is_told_apart() -> None:
    unsure = LayerResult(Control.AIR, Continuity.UNSURE, why="The proofs differ.")
    layers = {
        Control.WATER: LayerResult(Control.WATER, Continuity.CONTINUOUS),
        Control.AIR: unsure,
        Control.HEAT: LayerResult(Control.HEAT, Continuity.ABSENT),
    }
    assert SectionResult(SECTION, layers).unjudged == (unsure,)
    del layers[Control.AIR]
    assert SectionResult(SECTION, layers).unjudged == ()
