"""Edges turned until the triangulation is Delaunay."""

import numpy as np

from enclosure_app.geometry.openings.flips import turned, wrong

KITE = np.array([[0.0, 0.0], [10.0, 0.0], [5.0, 1.0], [5.0, -1.0]])
NO_EDGES = np.empty((0, 2), dtype=np.int64)


def test_the_long_diagonal_of_a_flat_kite_is_wrong_and_the_short_one_right() -> None:
    a, b, c, d = KITE[:, None]
    assert wrong(a, b, c, d).tolist() == [True]
    assert wrong(d, c, a, b).tolist() == [False]


def test_four_points_on_a_circle_are_right_either_way() -> None:
    a, b, c, d = np.array([[0.0, 0.0], [1.0, 1.0], [0.0, 1.0], [1.0, 0.0]])[:, None]
    assert wrong(a, b, c, d).tolist() == [False]
    assert wrong(d, c, a, b).tolist() == [False]


def test_a_wrong_edge_is_turned() -> None:
    triangles = np.array([[0, 1, 2], [1, 0, 3]])
    found = turned(KITE, triangles, np.array([[0, 1]]), NO_EDGES)
    assert sorted(found.tolist()) == [[0, 3, 2], [1, 2, 3]]


def test_a_wall_is_never_turned() -> None:
    triangles = np.array([[0, 1, 2], [1, 0, 3]])
    found = turned(KITE, triangles, np.array([[0, 1]]), np.array([[0, 1]]))
    assert found.tolist() == triangles.tolist()


def test_a_flat_triangle_on_an_edge_is_turned_away() -> None:
    """Point 2 lies on the edge from 0 to 1; point 3 has to see it."""
    points = np.array([[0.0, 0.0], [10.0, 0.0], [4.0, 0.0], [5.0, -3.0]])
    found = turned(points, np.array([[0, 1, 2], [1, 0, 3]]), np.array([[0, 1]]), NO_EDGES)
    assert sorted(found.tolist()) == [[0, 3, 2], [1, 2, 3]]
