"""Wanted edges put into a triangulation."""

import numpy as np
import pytest
import shapely

from enclosure_app.geometry.openings.cavities import Cavities, CrossingError

NONE_KEPT = np.zeros((0, 2), dtype=np.int64)
#  A lens of six points whose Delaunay triangles run across its long way from 0 to 1.
LENS = np.array([(0.0, 0.0), (60.0, 0.0), (20.0, 5.0), (20.0, -5.0), (40.0, 5.0), (40.0, -5.0)])
ACROSS = np.array([(0, 3, 2), (2, 3, 5), (2, 5, 4), (4, 5, 1)], dtype=np.int64)


def edges_of(triangles: np.ndarray) -> set[tuple[int, int]]:
    pairs = np.concatenate([triangles, np.roll(triangles, -1, axis=1)]).reshape(2, -1).T
    return {(min(pair), max(pair)) for pair in pairs.tolist()}


def area_of(points: np.ndarray, triangles: np.ndarray) -> float:
    return sum(shapely.Polygon(points[row]).area for row in triangles)


def test_an_edge_across_several_triangles_is_put_in() -> None:
    cavities = Cavities(LENS, ACROSS, NONE_KEPT)
    became = cavities.insert(np.array([(0, 1)]))
    assert became.tolist() == [[0, 1]]
    assert (0, 1) in edges_of(cavities.triangles())


def test_the_holes_are_filled_again_without_overlap() -> None:
    cavities = Cavities(LENS, ACROSS, NONE_KEPT)
    cavities.insert(np.array([(0, 1)]))
    filled = cavities.triangles()
    assert len(filled) == len(ACROSS)
    assert area_of(LENS, filled) == pytest.approx(area_of(LENS, ACROSS))
    turns = [shapely.LinearRing(LENS[row]).is_ccw for row in filled]
    assert all(turns)


def test_an_edge_that_is_there_already_changes_nothing() -> None:
    cavities = Cavities(LENS, ACROSS, NONE_KEPT)
    assert cavities.insert(np.array([(2, 5)])).tolist() == [[2, 5]]
    assert edges_of(cavities.triangles()) == edges_of(ACROSS)


def test_an_edge_through_a_corner_becomes_two() -> None:
    points = np.vstack([LENS, [(30.0, 0.0)]])
    around = np.array(
        [(0, 3, 2), (2, 3, 6), (3, 5, 6), (6, 5, 4), (2, 6, 4), (4, 5, 1)], dtype=np.int64
    )
    cavities = Cavities(points, around, NONE_KEPT)
    assert cavities.insert(np.array([(0, 1)])).tolist() == [[0, 6], [1, 6]]
    assert {(0, 6), (1, 6)} <= edges_of(cavities.triangles())


def test_an_edge_that_crosses_a_kept_one_is_refused() -> None:
    cavities = Cavities(LENS, ACROSS, np.array([(2, 3)], dtype=np.int64))
    with pytest.raises(CrossingError):
        cavities.insert(np.array([(0, 1)]))


def test_two_points_on_one_place_are_refused() -> None:
    """Noding on a grid mends that; a division by nothing would stop the program."""
    points = LENS.copy()
    points[1] = points[0]
    cavities = Cavities(points, ACROSS, NONE_KEPT)
    with pytest.raises(CrossingError):
        cavities.insert(np.array([(0, 1)]))
