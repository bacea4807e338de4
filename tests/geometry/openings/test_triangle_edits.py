"""Triangles taken out and put in by hand."""

import numpy as np

from enclosure_app.geometry.openings.triangle_edits import GONE, Triangles

SQUARE = np.array([[0, 1, 2], [0, 2, 3]])


def test_the_third_corner_left_of_an_edge() -> None:
    square = Triangles(SQUARE, 4)
    assert square.apex(0, 2) == 3
    assert square.apex(2, 0) == 1
    assert square.apex(1, 0) == GONE


def test_a_flipped_diagonal() -> None:
    square = Triangles(SQUARE, 4)
    square.remove(2, 0, 1)
    square.remove(0, 2, 3)
    assert square.apex(0, 2) == GONE
    square.add(1, 2, 3)
    square.add(3, 0, 1)
    assert square.apex(3, 1) == 2
    assert square.apex(1, 3) == 0
    assert sorted(square.rows().tolist()) == [[0, 1, 3], [1, 2, 3]]
    assert square.spoke(2) in {1, 3}


def test_a_triangle_put_in_can_be_taken_out_again() -> None:
    square = Triangles(SQUARE, 5)
    square.add(1, 0, 4)
    square.remove(0, 4, 1)
    assert square.rows().tolist() == SQUARE.tolist()
