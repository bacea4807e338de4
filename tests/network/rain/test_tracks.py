"""A way as it is shown: told whole, or from the way that it was taken up from."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.network.rain.tracks import last_outside, last_probes, track_again, track_of
from enclosure_app.network.rain.water import Course, Place
from tests.network.random_layers import profile

SPOTS = st.lists(
    st.tuples(st.integers(0, 3), st.sampled_from(["", "a", "b"])), min_size=1, max_size=12
)


def course(*spots: tuple[int, str]) -> Course:
    places = tuple(Place((float(x), 0.0), (float(x), 1.0), piece) for x, piece in spots)
    return Course(places, (), None)


def test_points_and_pieces_come_once_where_they_repeat() -> None:
    track = track_of(course((0, "a"), (0, "a"), (1, ""), (2, "a"), (2, "b"), (3, "")))
    assert [x for x, _ in track.points] == [0, 1, 2, 3]
    assert track.pieces == ("a", "b")


@profile(200)
@given(SPOTS, SPOTS, st.integers(0, 12), st.integers(0, 12))
def test_a_track_of_what_was_taken_up_is_the_one_told_whole(
    spots: list[tuple[int, str]], middle: list[tuple[int, str]], head: int, tail: int
) -> None:
    old = course(*spots)
    head = min(head, len(spots))
    tail = max(min(tail, len(spots) - head), 0)
    if not tail:
        return
    new = course(*spots[:head], *middle, *spots[len(spots) - tail :])
    again = track_again(replace(new, taken=(head, tail)), old, track_of(old))
    whole = track_of(new)
    assert (again.points, again.pieces) == (whole.points, whole.pieces)
    assert np.array_equal(again.turns, whole.turns)
    assert np.array_equal(again.passes, whole.passes)


@pytest.mark.parametrize("inside_from", [0, 1, 30, 64, 65, 700, 900])
def test_the_last_place_outside_is_found_from_the_end(inside_from: int) -> None:
    way = course(*((x, "a") for x in range(900)))
    asked: list[int] = []

    def is_outside(points: np.ndarray) -> np.ndarray:
        asked.append(len(points))
        return points[:, 0] < inside_from

    assert last_outside(way, is_outside) == max(inside_from - 1, 0)
    assert sum(asked) <= 900


def test_the_last_probe_tells_where_a_way_ends() -> None:
    ways = [course((1, "a"), (2, "a")), course((7, ""))]
    assert last_probes(ways).tolist() == [[2, 1], [7, 1]]
    assert last_probes([]).shape == (0, 2)
