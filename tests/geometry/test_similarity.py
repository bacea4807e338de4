"""Turns, scales and moves in one."""

from math import cos, dist, radians, sin

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from enclosure_app.geometry.similarity import Similarity

places = st.tuples(st.floats(-1e4, 1e4), st.floats(-1e4, 1e4))


def near(place: tuple[float, float]) -> object:
    return pytest.approx(place, abs=1e-6)


def test_a_move_moves_everything_alike() -> None:
    assert Similarity.moving((3, -2)).places(((0, 0), (1, 1))) == ((3, -2), (4, -1))


@given(st.lists(st.lists(places, max_size=4), max_size=4), st.floats(0.1, 9), st.floats(-99, 99))
def test_many_runs_go_where_each_alone_would(
    runs: list[list[tuple[float, float]]], factor: float, turn: float
) -> None:
    similar = Similarity.about((3.0, 4.0), factor, turn)
    assert similar.runs(runs) == [similar.places(run) for run in runs]


def test_quarter_turns_are_exact() -> None:
    assert Similarity.about((1, 1), 2.0, 90.0).place((3, 1)) == (1, 5)
    assert Similarity.about((0, 0), 1.0, -90.0).place((3, 1)) == (1, -3)


@given(places, places, st.floats(0.01, 100), st.floats(-360, 360))
def test_what_it_turns_about_stays_and_all_else_is_scaled_and_turned(
    fixed: tuple[float, float], other: tuple[float, float], factor: float, turn: float
) -> None:
    """Against the rotation written out in sines and cosines."""
    similar = Similarity.about(fixed, factor, turn)
    dx, dy = other[0] - fixed[0], other[1] - fixed[1]
    c, s = cos(radians(turn)), sin(radians(turn))
    there = fixed[0] + factor * (c * dx - s * dy), fixed[1] + factor * (s * dx + c * dy)
    assert similar.place(fixed) == near(fixed)
    assert similar.place(other) == pytest.approx(there, rel=1e-9, abs=1e-5)
    assert similar.factor == pytest.approx(factor)


@given(places, places, places, places)
def test_two_places_are_laid_onto_two_others(
    a: tuple[float, float], b: tuple[float, float], c: tuple[float, float], d: tuple[float, float]
) -> None:
    assume(dist(a, b) > 1 and dist(c, d) > 1)
    similar = Similarity.onto((a, b), (c, d))
    assert similar.places((a, b)) == (
        pytest.approx(c, abs=1e-5, rel=1e-6),
        pytest.approx(d, abs=1e-5, rel=1e-6),
    )
    assert similar.factor == pytest.approx(dist(c, d) / dist(a, b))
