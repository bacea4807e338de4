"""Ways along drawn lines: the shortest, others, and what makes them clean."""

from itertools import pairwise
from math import dist, hypot
from time import process_time

import networkx as nx
import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from enclosure_app.geometry.linework.graph import LineworkGraph
from enclosure_app.geometry.linework.ways import cleaned, parting, ways

BOX = [((0, 0), (100, 0)), ((100, 0), (100, 60)), ((100, 60), (0, 60)), ((0, 60), (0, 0))]


def test_the_way_starts_and_ends_on_the_lines_nearest_to_the_clicks() -> None:
    (way,) = ways(LineworkGraph.of(BOX), (20, -3), (103, 30))
    assert way.points == ((20, 0), (100, 0), (100, 30))
    assert way.length == 110


def test_single_lines_of_one_straight_run_give_no_points_between() -> None:
    run = [((10.0 * i, 0.0), (10.0 * i + 10, 0.0)) for i in range(10)]
    (way,) = ways(LineworkGraph.of(run), (0, 0), (100, 0))
    assert way.points == ((0, 0), (100, 0))


def test_two_clicks_on_one_line_give_the_run_between_them() -> None:
    (way,) = ways(LineworkGraph.of(BOX), (80, 1), (20, 1))
    assert way.points == ((80, 0), (20, 0))


def test_the_other_way_round_comes_second() -> None:
    short, long = ways(LineworkGraph.of(BOX), (50, 0), (100, 30), count=3)
    assert short.points == ((50, 0), (100, 0), (100, 30))
    assert long.points == ((50, 0), (0, 0), (0, 60), (100, 60), (100, 30))


def test_the_other_way_between_two_clicks_on_one_line_goes_round() -> None:
    short, long = ways(LineworkGraph.of(BOX), (20, 0), (80, 0), count=2)
    assert short.points == ((20, 0), (80, 0))
    assert long.points == ((20, 0), (0, 0), (0, 60), (100, 60), (100, 0), (80, 0))


def test_a_way_that_differs_only_by_a_small_loop_is_no_other_way() -> None:
    """Two fixings drawn on a long line are no reason to offer the line twice."""
    line = [((0, 0), (1000, 0)), ((500, 0), (505, 5), (510, 0))]
    assert len(ways(LineworkGraph.of(line), (0, 0), (1000, 0), count=3)) == 1


def test_the_gap_that_was_bridged_is_told() -> None:
    lines = [((0, 0), (100, 0)), ((108, 0), (200, 0))]
    (way,) = ways(LineworkGraph.of(lines), (0, 0), (200, 0))
    assert way.points == ((0, 0), (200, 0))
    assert way.gaps == (((100, 0), (108, 0)),)


def test_a_drawn_line_is_taken_before_a_gap_is_bridged() -> None:
    round_it = ((100.0, 0.0), (104.0, -6.0), (108.0, 0.0))
    lines = [((0, 0), (100, 0)), ((108, 0), (200, 0)), round_it]
    (way,) = ways(LineworkGraph.of(lines), (0, 0), (200, 0))
    assert way.gaps == ()
    assert (104, -6) in way.points


def test_lines_that_only_nearly_meet_give_one_corner() -> None:
    lines = [((0, 0), (99.8, 0)), ((100, 0.2), (100, 50))]
    (way,) = ways(LineworkGraph.of(lines), (0, 0), (100, 50))
    assert [(round(x, 9), round(y, 9)) for x, y in way.points] == [(0, 0), (100, 0), (100, 50)]


def test_a_way_that_turns_back_sharply_gives_way_to_one_that_does_not() -> None:
    """A sheet is not folded back on itself to save a hand's breadth."""
    spike = [((0, 0), (100, 0)), ((100, 0), (10, 5)), ((10, 5), (10, 300))]
    around = [((100, 0), (150, 300)), ((150, 300), (10, 300))]
    (way,) = ways(LineworkGraph.of([*spike, *around]), (50, 0), (10, 300))
    assert way.points == ((50, 0), (100, 0), (150, 300), (10, 300))


def test_places_that_no_lines_join_have_no_way() -> None:
    graph = LineworkGraph.of([*BOX, ((300, 0), (400, 0))])
    assert ways(graph, (20, 0), (350, 0)) == ()
    assert parting(graph, (20, 0), (350, 0))[1] == (300, 0)


def test_a_small_step_between_level_runs_is_evened_out() -> None:
    assert cleaned([(0, 0), (50, 0), (50, 0.1), (100, 0.1)], 0.5) == ((0, 0), (100, 0.1))


lattice = st.lists(
    st.tuples(st.integers(0, 6), st.integers(0, 6), st.booleans()), min_size=4, max_size=60
)


@settings(max_examples=150, deadline=None)
@given(lattice)
def test_no_way_is_shorter_than_the_one_found(
    steps: list[tuple[int, int, bool]],
) -> None:
    """Its judge is a plain search of networkx over the same unit lattice."""
    lines = [
        ((40.0 * x, 40.0 * y), (40.0 * x + 40 * level, 40.0 * y + 40 * (not level)))
        for x, y, level in steps
    ]
    judge = nx.Graph()
    judge.add_weighted_edges_from((a, b, dist(a, b)) for a, b in lines)
    a, b = lines[0][0], lines[-1][1]
    found = ways(LineworkGraph.of(lines), a, b)
    if nx.has_path(judge, a, b):
        assert found[0].length == pytest.approx(nx.shortest_path_length(judge, a, b, "weight"))
    else:
        assert found == ()


@settings(max_examples=60, deadline=None)
@given(lattice)
def test_other_ways_run_along_drawn_lines_too(steps: list[tuple[int, int, bool]]) -> None:
    lines = [
        ((40.0 * x, 40.0 * y), (40.0 * x + 40 * level, 40.0 * y + 40 * (not level)))
        for x, y, level in steps
    ]
    drawn = {tuple(sorted(line)) for line in lines}
    for way in ways(LineworkGraph.of(lines), lines[0][0], lines[-1][1], count=3):
        for (ax, ay), (bx, by) in pairwise(way.points if way.length else ()):
            units = round(hypot(bx - ax, by - ay) / 40)
            places = [
                (ax + (bx - ax) * i / units, ay + (by - ay) * i / units) for i in range(units + 1)
            ]
            assert {tuple(sorted(pair)) for pair in pairwise(places)} <= drawn


def test_a_long_way_through_a_busy_drawing_is_found_at_once() -> None:
    """Measured at about 10 ms over 20 m of grid lines; the bound leaves room for a busy machine."""
    rng = np.random.default_rng(5)
    start = rng.random((20_000, 2)) * 20_000
    end = start + rng.normal(size=start.shape) * 60
    short = [((a, b), (c, d)) for (a, b), (c, d) in np.stack([start, end], axis=1).tolist()]
    grid = [((500.0 * i, 0.0), (500.0 * i, 20_000.0)) for i in range(41)]
    graph = LineworkGraph.of([*short, *grid, ((0.0, 20_000.0), (20_000.0, 20_000.0))])
    began = process_time()
    (way,) = ways(graph, (0, 0), (500, 0))
    assert process_time() - began < 0.25
    assert way.length <= 40_500
    assert (way.points[0], way.points[-1]) == ((0, 0), (500, 0))
