"""Drawn lines as a net: where one may turn off, and over which gaps one may go on."""

from time import process_time

import numpy as np
import pytest

from enclosure_app.geometry.linework.graph import TOLL, LineworkGraph


def links_of(graph: LineworkGraph) -> dict[tuple[tuple[float, float], tuple[float, float]], float]:
    """Every link as its two places, rounded, with its cost."""
    found = {}
    for spot in range(len(graph.spots)):
        for k in range(graph.first[spot], graph.first[spot + 1]):
            ends = [graph.places[i] for i in (spot, graph.target[k])]
            a, b = sorted((round(x, 3), round(y, 3)) for x, y in ends)
            found[a, b] = round(graph.cost[k], 3)
    return found


def test_lines_that_cross_can_be_changed_at_the_crossing() -> None:
    graph = LineworkGraph.of([((0, 0), (100, 0)), ((40, -30), (40, 30))])
    assert links_of(graph) == {
        ((0, 0), (40, 0)): 40,
        ((40, 0), (100, 0)): 60,
        ((40, -30), (40, 0)): 30,
        ((40, 0), (40, 30)): 30,
    }


def test_an_end_that_stops_on_a_line_joins_it() -> None:
    graph = LineworkGraph.of([((0, 0), (100, 0)), ((40, 0), (40, 30))])
    assert links_of(graph)[(40, 0), (40, 30)] == 30
    assert links_of(graph)[(0, 0), (40, 0)] == 40


def test_ends_within_the_snap_are_joined_by_the_little_step_between_them() -> None:
    graph = LineworkGraph.of([((0, 0), (100, 0)), ((100, 0.4), (100, 50))], snap=0.5)
    assert links_of(graph)[(100, 0), (100, 0.4)] == 0.4


def test_lines_drawn_over_each_other_are_one_way() -> None:
    graph = LineworkGraph.of([((0, 0), (100, 0)), ((60, 0), (160, 0))])
    assert links_of(graph) == {
        ((0, 0), (60, 0)): 60,
        ((60, 0), (100, 0)): 40,
        ((100, 0), (160, 0)): 60,
    }


def test_a_loose_end_is_carried_over_a_small_gap_at_a_toll() -> None:
    graph = LineworkGraph.of([((0, 0), (100, 0)), ((110, -20), (110, 20))], gap=12)
    assert links_of(graph)[(100, 0), (110, 0)] == 10 * TOLL


def test_a_gap_wider_than_allowed_stays_a_gap() -> None:
    graph = LineworkGraph.of([((0, 0), (100, 0)), ((113, -20), (113, 20))], gap=12)
    assert set(links_of(graph)) == {((0, 0), (100, 0)), ((113, -20), (113, 20))}


def test_lines_side_by_side_are_not_joined_along_the_way() -> None:
    """Sheets stand 3 mm apart on purpose: only loose ends may be carried over."""
    two = [((0, 0), (100, 0), (100, 50)), ((-20, 3), (80, 3), (80, 50))]
    joined = links_of(LineworkGraph.of(two))
    assert [pair for pair in joined if pair[0][0] == pair[1][0] and joined[pair] < 10] == [
        ((0, 0), (0, 3))
    ]


def test_the_nearest_stretch_is_told_with_the_place_on_it() -> None:
    graph = LineworkGraph.of([((0, 0), (100, 0)), ((0, 50), (0, 150))])
    stretch, at, away = graph.nearest((30, 4))
    assert graph.place(stretch, at) == (30, 0)
    assert away == 4


def test_lines_far_from_the_origin_meet_as_well() -> None:
    x, y = -3.03e8, 4.1e7
    graph = LineworkGraph.of([((x, y), (x + 100, y)), ((x + 40, y), (x + 40, y + 30))])
    assert len(links_of(graph)) == 3


def test_a_line_without_length_is_no_line() -> None:
    assert len(LineworkGraph.of([((5, 5), (5, 5))]).start) == 0


def test_no_lines_make_an_empty_net() -> None:
    graph = LineworkGraph.of([])
    assert (len(graph.spots), graph.target) == (0, [])


@pytest.fixture(scope="module")
def busy() -> list[tuple[tuple[float, float], tuple[float, float]]]:
    """50 000 strokes: a grid of walls, with short lines scattered all over."""
    rng = np.random.default_rng(5)
    start = rng.random((49_800, 2)) * 30_000
    end = start + rng.normal(size=start.shape) * 60
    short = [((a, b), (c, d)) for (a, b), (c, d) in np.stack([start, end], axis=1).tolist()]
    upright = [((300.0 * i, 0.0), (300.0 * i, 30_000.0)) for i in range(100)]
    level = [((0.0, 300.0 * i), (30_000.0, 300.0 * i)) for i in range(100)]
    return [*short, *upright, *level]


def test_fifty_thousand_strokes_are_one_net_in_good_time(
    busy: list[tuple[tuple[float, float], tuple[float, float]]],
) -> None:
    """Measured at 0.8 s; the bound leaves room for a busy machine."""
    began = process_time()
    graph = LineworkGraph.of(busy)
    assert process_time() - began < 3.0
    assert len(graph.start) == 50_000
