"""Inside and outside of a closed curve, against shapely on random simple rings."""

import numpy as np
import pytest
import shapely
from hypothesis import assume, given
from hypothesis import strategies as st

from enclosure_app.geometry.rims.closed_curve import ClosedCurve, difference
from tests.network.random_layers import profile

WIDE = ClosedCurve(np.array([[0.0, 0.0], [100.0, 0.0], [100.0, 10.0], [0.0, 10.0]]))
BOW_TIE = ClosedCurve(np.array([[0.0, 0.0], [20.0, 20.0], [20.0, 0.0], [0.0, 20.0]]))


@pytest.mark.parametrize("swap", [False, True])
def test_a_rectangle_encloses_what_lies_in_it(swap: bool) -> None:
    turned = slice(None, None, -1 if swap else 1)
    places = np.array([[50.0, 5.0], [-1.0, 5.0], [101.0, 5.0], [50.0, 11.0], [50.0, -1.0]])
    curve = ClosedCurve(WIDE.points[:, turned])
    assert curve.encloses(places[:, turned]).tolist() == [True, False, False, False, False]


def test_a_curve_that_crosses_itself_encloses_each_of_its_loops() -> None:
    places = np.array([[5.0, 10.0], [15.0, 10.0], [10.0, 5.0], [10.0, 15.0]])
    assert BOW_TIE.encloses(places).tolist() == [True, True, False, False]


def test_what_is_walked_there_and_back_encloses_nothing() -> None:
    spur = ClosedCurve(np.array([[0.0, 0.0], [50.0, 30.0], [90.0, 0.0], [50.0, 30.0]]))
    assert spur.encloses(np.array([[50.0, 10.0], [50.0, 40.0]])).tolist() == [False, False]


def test_a_ray_through_corners_counts_each_once() -> None:
    diamond = ClosedCurve(np.array([[0.0, -10.0], [10.0, 0.0], [0.0, 10.0], [-10.0, 0.0]]))
    assert diamond.encloses(np.array([[0.0, 0.0], [-12.0, 0.0], [-3.0, 0.0]])).tolist() == [
        True,
        False,
        True,
    ]


def test_the_distance_is_taken_to_the_closing_side_too() -> None:
    found = WIDE.distance(np.array([[50.0, 4.0], [-3.0, 5.0], [103.0, 14.0]]))
    assert found.tolist() == [4, 3, 5]


@given(
    st.lists(st.tuples(st.integers(0, 40), st.integers(0, 40)), min_size=3, max_size=9),
    st.integers(0, 3),
)
def test_a_simple_ring_encloses_what_shapely_says_it_contains(
    points: list[tuple[int, int]], turns: int
) -> None:
    ring = shapely.Polygon(points)
    assume(ring.is_valid and ring.area > 0)
    x, y = np.meshgrid(np.arange(-3, 44, 4.0) + 0.5, np.arange(-3, 44, 4.0) + 0.25)
    places = np.column_stack([x.ravel(), y.ravel()])
    places = places[shapely.distance(ring.exterior, shapely.points(places)) > 1e-9]
    curve = ClosedCurve(np.roll(np.array(points, dtype=float), turns, axis=0))
    held = shapely.contains_xy(ring, places[:, 0], places[:, 1])
    assert curve.encloses(places).tolist() == held.tolist()


@profile(120)
@given(
    st.integers(0, 2**32 - 1), st.integers(3, 14), st.integers(0, 14), st.sampled_from([-1, 0, 1])
)
def test_what_differs_tells_of_a_curve_what_it_tells_itself(
    seed: int, count: int, at: int, more: int
) -> None:
    """Some points moved, one put in or taken out, and the curve begun elsewhere."""
    chance = np.random.default_rng(seed)
    last = ClosedCurve(chance.integers(0, 20, (count, 2)).astype(float))
    points = last.points.copy()
    points[at % count] += chance.normal(size=2) * 4
    if more > 0:
        points = np.insert(points, at % count, chance.integers(0, 20, 2), axis=0)
    elif more < 0 and count > 3:
        points = np.delete(points, at % count, axis=0)
    curve = ClosedCurve(np.roll(points, int(chance.integers(0, count)), axis=0))
    changed = difference(last, curve)
    if changed is None:
        assert last.lies != curve.lies or count < 9
        return
    places = chance.integers(-2, 22, (40, 2)) + chance.choice([0.0, 0.25])
    assert np.array_equal(changed.encloses(places, last.encloses(places)), curve.encloses(places))
    assert np.array_equal(changed.distance(places, last.distance(places)), curve.distance(places))


def test_of_two_curves_that_are_the_same_nothing_differs() -> None:
    changed = difference(WIDE, ClosedCurve(WIDE.points.copy()))
    assert changed is not None
    assert len(changed.gone) == len(changed.new) == 0
