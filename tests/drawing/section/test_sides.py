"""Outward and uphill are known from the marks, not from how things were drawn."""

from dataclasses import replace

import pytest

from enclosure_app.drawing.placement import Placement
from enclosure_app.drawing.section.sides import Sides, sides_of
from enclosure_app.model.place import Point
from enclosure_app.model.product import Control
from enclosure_app.model.report import Run, SectionResult
from tests.drawing import eave

VIEW = Placement(20.0)


def sides(**changes: object) -> Sides:
    return sides_of(eave.result(**changes), VIEW)


@pytest.mark.parametrize("direction", [(0.0, 1.0), (0.0, -1.0)])
def test_outward_does_not_depend_on_the_direction_in_which_a_sheet_was_drawn(
    direction: Point,
) -> None:
    assert sides().outward(VIEW.point((160, 600)), direction) == pytest.approx((1.0, 0.0))


def test_outward_does_not_depend_on_the_direction_of_the_walk() -> None:
    back = tuple(
        Run(s.piece, s.points[::-1]) for s in reversed(eave.WATER.walk) if isinstance(s, Run)
    )
    turned = sides(layers={Control.WATER: replace(eave.WATER, walk=back)})
    assert turned.outward(VIEW.point((160, 600)), (0.0, 1.0)) == pytest.approx((1.0, 0.0))


def test_on_a_roof_outward_is_up_and_out() -> None:
    x, y = sides().outward(VIEW.point(eave.roof(300)), (-0.866, 0.5), Control.WATER)
    assert x > 0
    assert y > 0.8


def test_where_the_walk_steps_across_a_lap_outward_stays_outward() -> None:
    """The walk goes from sheet to sheet in the middle of a lap, square to both."""
    assert sides().outward(VIEW.point((161, 940)), (0.0, 1.0)) == pytest.approx((1.0, 0.0))


def test_without_a_walk_the_nearest_mark_tells() -> None:
    bare = sides(layers={})
    assert bare.outward(VIEW.point((160, 600)), (0.0, 1.0)) == pytest.approx((1.0, 0.0))
    only_inside = replace(eave.section(), outside=())
    told = sides(layers={}, section=only_inside)
    assert told.outward(VIEW.point((160, 600)), (0.0, 1.0)) == pytest.approx((1.0, 0.0))


def test_without_marks_something_is_drawn_all_the_same() -> None:
    nothing = SectionResult(replace(eave.section(), inside=(), outside=()), {})
    assert sides_of(nothing, VIEW).outward((0.0, 0.0), (0.0, 1.0)) == (1.0, 0.0)


def test_uphill_is_against_gravity() -> None:
    assert sides().up((0.0, -1.0)) == (0.0, 1.0)
    assert sides().up((-0.866, 0.5)) == (-0.866, 0.5)
