"""Bridges tied to the walls that they end on."""

import numpy as np

from enclosure_app.geometry.linework.linework import Linework
from enclosure_app.geometry.openings.bridges import tied

LINES = Linework(
    np.array([[0.0, 0.0], [100.0, 0.0], [0.0, 10.0], [100.0, 10.0]]), np.array([[0, 1], [2, 3]])
)


def test_walls_get_points_where_bridges_end() -> None:
    lines, ties = tied(LINES, np.array([[[40.0, 0.0], [40.0, 10.0]], [[60.0, 0.0], [60.0, 10.0]]]))
    assert lines.points[ties].tolist() == [[[40, 0], [40, 10]], [[60, 0], [60, 10]]]
    lower = sorted(
        tuple(sorted(lines.points[w, 0])) for w in lines.walls if not lines.points[w, 1].any()
    )
    assert lower == [(0, 40), (40, 60), (60, 100)]


def test_an_end_at_a_corner_or_off_the_wall_takes_the_nearest_point() -> None:
    lines, ties = tied(LINES, np.array([[[-1.0, -1.0], [0.0, 10.0]], [[50.0, 0.3], [50.0, 9.0]]]))
    assert ties[0].tolist() == [0, 2]
    assert lines.points[ties[1]].tolist() == [[50, 0], [50, 10]]


def test_without_bridges_nothing_changes() -> None:
    lines, ties = tied(LINES, np.empty((0, 2, 2)))
    assert lines is LINES
    assert ties.shape == (0, 2)
