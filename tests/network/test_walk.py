"""The trace as a person follows it."""

import numpy as np
import pytest
from hypothesis import given

from enclosure_app.model.limits import Tolerances
from enclosure_app.model.product import Control
from enclosure_app.model.report import Lift, Run
from enclosure_app.model.section import Break, Piece, Section
from enclosure_app.network.layer import Layer, trace_layer
from enclosure_app.network.walk import Walk, along_walk
from tests.network.random_layers import RandomLayer, layers, profile
from tests.network.sections import PRODUCTS, air, area, ring, section, sheet


def walk(layer: Layer) -> Walk:
    assert layer.walk is not None
    return layer.walk


def told(layer: Layer) -> list[str]:
    """Return the walk in short: piece names, and lifts as their widths."""
    return [
        step.piece if isinstance(step, Run) else f"{step.width:g}" for step in walk(layer).steps
    ]


def test_it_leads_from_the_lower_cut_end_to_the_upper_one() -> None:
    (step,) = walk(air(section(sheet("a", (0, 500), (0, -500))))).steps
    assert step == Run("a", ((0, -500), (0, 500)))


def test_level_ends_are_walked_from_left_to_right() -> None:
    drawn = section(sheet("a", (500, 0), (-500, 0)), outside=[(0, 250)], inside=[(0, -250)])
    assert walk(air(drawn)).steps == (Run("a", ((-500, 0), (500, 0))),)


def test_a_gap_is_a_lift_between_two_runs_with_its_two_ends() -> None:
    layer = air(section(sheet("b", (0, 500), (0, 20)), sheet("a", (0, -500), (0, -10))))
    assert told(layer) == ["a", "30", "b"]
    assert walk(layer).steps[1] == Lift("a", "b", (0, -10), (0, 20))


def test_a_layer_that_stops_short_is_lifted_to_the_frame_at_either_end() -> None:
    layer = air(section(sheet("a", (0, -460), (0, 470))))
    assert told(layer) == ["40", "a", "30"]
    first, last = walk(layer).steps[0], walk(layer).steps[-1]
    assert first == Lift("", "a", (0, -500), (0, -460))
    assert last == Lift("a", "", (0, 470), (0, 500))


def test_at_a_lap_the_pen_changes_sheets_in_the_middle_without_a_lift() -> None:
    layer = air(section(sheet("a", (0, -500), (0, 100)), sheet("b", (-10, 40), (-10, 500))))
    assert walk(layer).steps == (
        Run("a", ((0, -500), (0, 70))),
        Run("b", ((-10, 70), (-10, 500))),
    )


def test_a_closed_sheet_is_walked_once_round() -> None:
    points = ((200.0, -50.0), (300.0, -50.0), (300.0, 50.0), (200.0, 50.0))
    assert walk(air(section(ring("a", *points)))).steps == (Run("a", (*points, points[0])),)


def test_a_round_off_the_frame_starts_at_its_lift() -> None:
    loop = ((200, 0), (200, 50), (300, 50), (300, -50), (200, -50), (200, -7))
    layer = air(section(sheet("a", *loop)))
    assert told(layer) == ["7", "a"]


def test_the_pen_goes_round_an_area_on_the_side_that_keeps_the_marks_apart() -> None:
    """A block between two sheets: either way round it is a trace, a way through it is not drawn."""
    block = area("b", (-20, -20), (20, -20), (20, 20), (-20, 20), of="concrete")
    layer = air(section(sheet("a", (0, -500), (0, -20)), block, sheet("c", (0, 20), (0, 500))))
    assert told(layer) == ["a", "b", "c"]
    step = walk(layer).steps[1]
    assert isinstance(step, Run)
    assert {abs(x) for x, _ in step.points} == {0, 20}
    assert (step.points[0], step.points[-1]) == ((0, -20), (0, 20))


def test_a_sheet_drawn_with_a_width_is_followed_along_its_middle() -> None:
    layer = air(section(sheet("a", (0, -500), (0, -10), width=8), sheet("b", (0, 10), (0, 500))))
    step = walk(layer).steps[0]
    assert isinstance(step, Run)
    assert (0, -490) not in step.points
    assert {x for x, _ in step.points[1:-1]} == {0}


def test_a_break_strip_is_crossed_without_a_lift_and_is_no_piece() -> None:
    strip = Break(near=((-200, 0), (200, 0)), far=((-200, 60), (200, 60)))
    pieces = [sheet("a", (0, -500), (0, 0)), sheet("b", (0, 60), (0, 500))]
    drawn = section(*pieces, breaks=[strip], outside=[(-100, 200)], inside=[(100, 200)])
    layer = air(drawn)
    assert told(layer) == ["a", "b"]
    assert layer.lifts == ()
    assert layer.opening is not None
    assert layer.opening.width == 0


def test_places_are_told_along_the_walk() -> None:
    layer = air(section(sheet("b", (0, 500), (0, 20)), sheet("a", (0, -500), (0, -10))))
    at = along_walk(walk(layer).steps, np.array([[5.0, -400.0], [0.0, 5.0], [-9.0, 120.0]]))
    assert at.tolist() == [100, 505, 620]


@profile(40)
@given(layers())
def test_every_walk_hangs_together_and_parts_the_marks(layer: RandomLayer) -> None:
    """Each step starts where the one before ended (within a joint), and the curve separates."""
    pieces = tuple(Piece(f"p{n}", "loose", shape) for n, shape in enumerate(layer.shapes))
    drawn = Section(
        "random",
        layer.frame,
        pieces,
        PRODUCTS,
        inside=(layer.inside,),
        outside=(layer.outside,),
    )
    found = trace_layer(drawn, Control.AIR, Tolerances())
    if found.walk is None:
        assert found.why  # a mark on a piece, or both in one open space
        return
    held = found.walk.curve.encloses(np.array([layer.outside, layer.inside]))
    assert held[0] != held[1]
    assert found.trace is not None
    total = sum(step.width for step in found.walk.steps if isinstance(step, Lift))
    assert total == pytest.approx(found.trace.round.lift, abs=1e-6)
    for before, after in zip(found.walk.steps, found.walk.steps[1:], strict=False):
        end = before.points[-1] if isinstance(before, Run) else before.end
        start = after.points[0] if isinstance(after, Run) else after.start
        if isinstance(before, Lift) or isinstance(after, Lift):
            assert start == pytest.approx(end, abs=1e-6)
