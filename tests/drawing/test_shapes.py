"""The small shapes of glyphs."""

from math import dist

import pytest

from enclosure_app.drawing.marks import BADGE
from enclosure_app.drawing.shapes import (
    arrow_head,
    barb,
    circle,
    drop,
    ellipse,
    smooth,
    verdict_shape,
)
from enclosure_app.model.said.decision import State


def test_a_circle_is_round() -> None:
    assert all(dist(p, (3.0, 4.0)) == pytest.approx(2.0) for p in circle((3.0, 4.0), 2.0))
    ring = ellipse((0.0, 0.0), 3.0, 1.0)
    assert max(x for x, _ in ring) == pytest.approx(3.0)
    assert max(y for _, y in ring) == pytest.approx(1.0)


def test_a_drop_hangs_from_its_tip_and_is_as_long_as_it_is() -> None:
    ring = drop((10.0, 10.0), 2.0)
    assert ring[0] == (10.0, 10.0)
    assert min(y for _, y in ring) == pytest.approx(8.0)
    assert max(y for _, y in ring) == 10.0
    assert min(x for x, _ in ring) + max(x for x, _ in ring) == pytest.approx(20.0)


def test_a_drop_falls_the_way_gravity_acts() -> None:
    assert min(x for x, _ in drop((0.0, 0.0), 2.0, (-1.0, 0.0))) == pytest.approx(-2.0)


def test_a_barb_points_where_it_flies() -> None:
    left, tip, right = barb((5.0, 0.0), (1.0, 0.0), 2.0)
    assert tip == (5.0, 0.0)
    assert left[0] == right[0] == 3.0
    assert left[1] == -right[1] > 0
    assert arrow_head(((0.0, 0.0), (5.0, 0.0)), 2.0) == (left, tip, right)


def test_a_smooth_curve_goes_through_all_its_points() -> None:
    points = ((0.0, 0.0), (5.0, 3.0), (9.0, -2.0), (14.0, 0.0))
    curve = smooth(points)
    assert (curve[0], curve[-1]) == (points[0], points[-1])
    assert all(min(dist(p, q) for q in curve) < 1e-9 for p in points)
    assert smooth(points[:2]) == points[:2]


def test_every_verdict_but_open_has_a_shape_of_its_own_within_its_disc() -> None:
    shapes = {state: verdict_shape(state, (10.0, 20.0)) for state in State}
    assert shapes.pop(State.OPEN) == ((), ())
    assert len({str(shape) for shape in shapes.values()}) == 4
    for rings, lines in shapes.values():
        points = [point for part in (*rings, *lines) for point in part]
        assert points
        assert all(dist(point, (10.0, 20.0)) < BADGE for point in points)
