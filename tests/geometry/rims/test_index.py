"""An index of segments of which some have moved answers as a new one does."""

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.geometry.rims import index
from enclosure_app.geometry.rims.index import SegmentIndex, segments
from tests.network.random_layers import profile


def drawn(chance: np.random.Generator, count: int) -> tuple[np.ndarray, np.ndarray]:
    start = chance.uniform(0, 100, (count, 2))
    return start, start + chance.uniform(1, 9, (count, 2))


def test_pairs_come_in_order_of_the_places_and_then_of_the_segments() -> None:
    start = np.array([[9.0, 0.0], [0.0, 0.0], [3.0, 0.0]])
    found = SegmentIndex.of(start, start + np.array([2.0, 0.0]))
    place, segment = found.query(segments(np.array([[0.0, 0.0]]), np.array([[20.0, 0.0]])))
    assert (place.tolist(), segment.tolist()) == ([0, 0, 0], [0, 1, 2])


@profile(40)
@given(st.integers(0, 2**32 - 1), st.integers(1, 40), st.integers(1, 6))
def test_moved_segments_are_found_where_they_are_and_no_more_where_they_were(
    seed: int, count: int, rounds: int
) -> None:
    chance = np.random.default_rng(seed)
    start, end = drawn(chance, count)
    found = SegmentIndex.of(start, end)
    for _ in range(rounds):
        rows = np.unique(chance.integers(0, count, 3))
        start[rows], end[rows] = drawn(chance, len(rows))
        found = found.again(rows, start, end)
    fresh = SegmentIndex.of(start, end)
    lines = segments(*drawn(chance, 12))
    for again, anew in (
        (found.query(lines), fresh.query(lines)),
        (found.query(lines, "intersects"), fresh.query(lines, "intersects")),
        (found.within(lines, 7.0), fresh.within(lines, 7.0)),
        (found.within(lines, np.full(12, 3.0)), fresh.within(lines, np.full(12, 3.0))),
    ):
        assert [each.tolist() for each in again] == [each.tolist() for each in anew]


def test_when_too_many_have_moved_the_tree_is_made_anew(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(index, "STALE", 2)
    chance = np.random.default_rng(1)
    start, end = drawn(chance, 9)
    found = SegmentIndex.of(start, end)
    assert found.again(np.arange(2), start, end).few is not None
    again = found.again(np.arange(3), start, end)
    assert again.few is None
    assert isinstance(again.tree, shapely.STRtree)
    assert again.tree is not found.tree
