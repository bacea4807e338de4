"""Chords between segments with hand-computed lengths, and against shapely on random segments."""

import numpy as np
import pytest
import shapely

from enclosure_app.geometry.rims.closest import (
    chords_between,
    crossings,
    foot,
    near_extents,
    near_pairs,
)
from enclosure_app.geometry.rims.rims import Rims, rims_of
from enclosure_app.geometry.rims.solids import line_solid

Ends = tuple[tuple[float, float], tuple[float, float]]


def table(*lines: Ends) -> Rims:
    return rims_of([line_solid(line) for line in lines])


def between(one: Ends, other: Ends) -> list[tuple[list[float], list[float], float]]:
    chords = chords_between(table(one, other), np.array([0]), np.array([1]))
    return list(
        zip(chords.at_a.tolist(), chords.at_b.tolist(), chords.length.tolist(), strict=True)
    )


def test_two_sheets_end_to_end_are_as_far_apart_as_their_ends() -> None:
    found = between(((0, 0), (100, 0)), ((103, 4), (200, 4)))
    assert ([100, 0], [103, 4], 5) in found
    assert min(length for *_, length in found) == 5


def test_a_corner_facing_a_wall_gives_the_foot_on_it() -> None:
    found = between(((0, 0), (100, 0)), ((40, 7), (60, 90)))
    assert ([40, 0], [40, 7], 7) in found


def test_parallel_sheets_give_a_chord_at_each_end_of_their_run() -> None:
    found = between(((0, 0), (100, 0)), ((20, 6), (150, 6)))
    assert ([20, 0], [20, 6], 6) in found
    assert ([100, 0], [100, 6], 6) in found


def test_crossing_lines_meet_where_they_cross() -> None:
    found = between(((0, 0), (10, 10)), ((0, 10), (10, 0)))
    assert found == [([5, 5], [5, 5], 0)] * 4


def test_lines_that_share_an_end_meet_in_it_unrounded() -> None:
    corner = (1 / 3, 1e6 + 1 / 7)
    found = between(((0.0, 0.0), corner), (corner, (70.1, 3.3)))
    assert min(length for *_, length in found) == 0
    assert (list(corner), list(corner), 0) in found


def test_a_foot_beyond_the_end_is_the_end() -> None:
    start, end = np.array([[0.0, 0.0]]), np.array([[10.0, 0.0]])
    assert foot(np.array([[15.0, 5.0]]), start, end).tolist() == [[10, 0]]
    assert foot(np.array([[-15.0, 5.0]]), start, end).tolist() == [[0, 0]]
    assert foot(np.array([[4.0, 5.0]]), start, end).tolist() == [[4, 0]]


def test_parallel_lines_do_not_cross_even_on_top_of_each_other() -> None:
    p, q = np.array([[0.0, 0.0]]), np.array([[10.0, 0.0]])
    hit, _ = crossings(p, q, np.array([[2.0, 0.0]]), np.array([[8.0, 0.0]]))
    assert hit.tolist() == [False]


@pytest.mark.parametrize(
    ("start", "step"),
    [((372, -41), (-80, -263)), ((-43, 141), (162, 211)), ((173, 10), (288, 151))],
)
def test_two_sheets_in_one_sloping_line_are_as_far_apart_as_their_gap(
    start: tuple[float, float], step: tuple[float, float]
) -> None:
    """A sheet with a gap in it is two segments of one line, to within rounding."""
    places = np.array(start) + np.array(step) * np.array([[0.0], [0.4], [0.6], [1.0]])
    a, b, c, d = (tuple(place) for place in places.tolist())
    shortest = min(length for *_, length in between((a, b), (c, d)))
    assert shortest == pytest.approx(0.2 * np.hypot(*step))


def test_segments_further_apart_than_the_reach_are_no_candidates() -> None:
    rims = table(((0, 0), (10, 0)), ((0, 30), (10, 30)), ((14, 0), (20, 0)))
    assert [tuple(pair) for pair in np.transpose(near_pairs(rims, 5)).tolist()] == [(0, 2)]
    found = {tuple(pair) for pair in np.transpose(near_pairs(rims, 31)).tolist()}
    assert found == {(0, 1), (0, 2), (1, 2)}


def test_chords_agree_with_shapely_and_none_is_missed() -> None:
    """Three hundred random segments: every near pair is found and measured right."""
    random = np.random.default_rng(7)
    start = random.uniform(-500, 500, (300, 2))
    end = start + random.uniform(-60, 60, (300, 2))
    rims = table(*(tuple(map(tuple, pair)) for pair in np.stack([start, end], axis=1).tolist()))
    a, b = near_pairs(rims, 25.0)
    chords = chords_between(rims, a, b)
    shortest = chords.length.reshape(4, -1).min(axis=0)
    lines = shapely.linestrings(np.stack([start, end], axis=1))
    assert shortest == pytest.approx(shapely.distance(lines[a], lines[b]), abs=1e-9)
    every_a, every_b = np.triu_indices(300, 1)
    near = shapely.distance(lines[every_a], lines[every_b]) <= 25.0
    missed = set(zip(every_a[near].tolist(), every_b[near].tolist(), strict=True)) - set(
        zip(a.tolist(), b.tolist(), strict=True)
    )
    assert not missed


def test_extents_within_reach_are_found_each_with_itself() -> None:
    low, high = (
        np.array([(0.0, 0.0), (15.0, 0.0), (0.0, 40.0)]),
        np.array([(10.0, 5.0), (20.0, 5.0), (9.0, 41.0)]),
    )
    found = {tuple(pair) for pair in np.transpose(near_extents(low, high, 5.0)).tolist()}
    assert found == {(0, 0), (1, 1), (2, 2), (0, 1)}
