"""The nearest segment is the same one, to the last bit, whether few or many places are asked for."""

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.geometry.rims import nearest
from enclosure_app.geometry.rims.nearest import nearest_segments
from tests.network.random_layers import profile

START = np.array([[0.0, 0.0], [0.0, 0.0], [0.0, 1000.0]])
END = np.array([[10.0, 0.0], [0.0, 10.0], [10.0, 1000.0]])


def test_segment_foot_and_distance_are_told() -> None:
    segment, foot, away = nearest_segments(START, END, np.array([[4.0, 3.0], [-2.0, 5.0]]))
    assert segment.tolist() == [0, 1]
    assert foot.tolist() == [[4.0, 0.0], [0.0, 5.0]]
    assert away.tolist() == [3.0, 2.0]


def test_of_several_that_are_as_near_it_is_the_first() -> None:
    segment, _, away = nearest_segments(START[::-1], END[::-1], np.array([[3.0, 3.0]]))
    assert (segment.tolist(), away.tolist()) == ([1], [3.0])


def test_what_is_far_is_found_as_well() -> None:
    segment, _, away = nearest_segments(START, END, np.array([[5.0, 90_000.0]]))
    assert (segment.tolist(), away.tolist()) == ([2], [89_000.0])


def test_no_places_have_no_segments() -> None:
    assert [len(each) for each in nearest_segments(START, END, np.zeros((0, 2)))] == [0, 0, 0]


@profile(60)
@given(st.integers(0, 2**32 - 1), st.integers(2, 60), st.integers(1, 30))
def test_looking_around_and_a_tree_say_the_same(seed: int, segments: int, places: int) -> None:
    chance = np.random.default_rng(seed)
    ends = chance.integers(0, 12, (2, segments, 2)).astype(float)
    start, end = ends[:, (ends[0] != ends[1]).any(axis=1)]
    if not len(start):
        return
    asked = chance.integers(-3, 15, (places, 2)) + chance.choice([0.0, 0.5, 1 / 3])
    few = nearest_segments(start, end, asked)
    with pytest.MonkeyPatch.context() as patched:
        patched.setattr(nearest, "FEW", 0)
        many = nearest_segments(start, end, asked)
    for one, other in zip(few, many, strict=True):
        assert np.array_equal(one, other)
    lines = shapely.linestrings(np.stack([start, end], axis=1))
    by_shapely = shapely.distance(shapely.points(asked)[:, None], lines).min(axis=1)
    assert few[2] == pytest.approx(by_shapely, abs=1e-9)
