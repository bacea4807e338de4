"""Both sides of every surface, free side on the right."""

import numpy as np
import pytest

from enclosure_app.geometry.surfaces.faces import faces, ring_of_area, ring_of_line

SQUARE = [(0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (0.0, 10.0)]


def test_a_bare_line_has_two_sides() -> None:
    both = faces([(0, ring_of_line([(0, 0), (10, 0)]), 0.0)])
    assert both.normal.tolist() == [[0, -1], [0, 1]]
    assert both.after.tolist() == [1, 0]
    assert both.before.tolist() == [1, 0]


@pytest.mark.parametrize("ring", [SQUARE, SQUARE[::-1]], ids=["one way", "the other way"])
def test_the_free_side_of_an_area_is_outside_it_whichever_way_it_was_drawn(
    ring: list[tuple[float, float]],
) -> None:
    edges = faces([(0, ring_of_area(ring), 0.0)])
    middle = (edges.a + edges.b) / 2 + edges.normal
    assert np.all((middle < 0) | (middle > 10), axis=1).sum() == 0
    assert np.any((middle < 0) | (middle > 10), axis=1).tolist() == [True] * 4


def test_the_free_side_of_a_hole_is_within_it() -> None:
    edges = faces([(0, ring_of_area(SQUARE, hole=True), 0.0)])
    middle = (edges.a + edges.b) / 2 + edges.normal
    assert np.all((middle > 0) & (middle < 10))


def test_points_on_a_straight_run_and_repeated_points_are_needless() -> None:
    run = [(0.0, 0.0), (0.0, 0.0), (4.0, 0.0), (10.0, 0.0), (10.0, 5.0)]
    edges = faces([(3, ring_of_line(run), 1.5)])
    assert sorted(edges.length.tolist()) == [5, 5, 10, 10]
    assert edges.owner.tolist() == [3] * 4
    assert edges.half.tolist() == [1.5] * 4


def test_each_ring_closes_on_itself() -> None:
    two = faces([(0, ring_of_line([(0, 0), (1, 0)]), 0.0), (1, ring_of_area(SQUARE), 0.0)])
    assert two.after.tolist() == [1, 0, 3, 4, 5, 2]
    assert two.b.tolist() == two.a[two.after].tolist()
    assert two.before[two.after].tolist() == list(range(6))


def test_a_ring_without_extent_is_left_out() -> None:
    assert len(faces([(0, [(1, 1), (1, 1)], 0.0)]).a) == 0
