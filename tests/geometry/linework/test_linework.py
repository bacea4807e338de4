"""Outlines broken into walls that meet at their ends only."""

import numpy as np
import pytest
import shapely

from enclosure_app.geometry.linework.linework import Linework, evened, noded, split

FRAME = [(100.0, 100.0), (200.0, 100.0), (200.0, 200.0), (100.0, 200.0)]


def as_pairs(lines: Linework) -> set[tuple[tuple[float, float], ...]]:
    return {tuple(sorted(map(tuple, lines.points[wall].tolist()))) for wall in lines.walls}


def test_lines_that_cross_get_a_point_there_in_coordinates_from_the_frames_first_point() -> None:
    cross = [
        shapely.LineString([(110, 150), (190, 150)]),
        shapely.LineString([(150, 110), (150, 190)]),
    ]
    walls = as_pairs(noded(FRAME, cross))
    assert ((10, 50), (50, 50)) in walls
    assert ((50, 50), (90, 50)) in walls
    assert ((50, 10), (50, 50)) in walls
    assert ((0, 0), (100, 0)) in walls


def test_what_lies_beyond_the_frame_is_left_out() -> None:
    line = shapely.LineString([(150, 50), (150, 150)])
    walls = as_pairs(noded(FRAME, [line]))
    assert ((50, 0), (50, 50)) in walls
    assert not any(y < 0 for wall in walls for _, y in wall)


def test_an_area_gives_its_rings_and_shared_edges_only_once() -> None:
    boards = [shapely.box(110, 110, 120, 120), shapely.box(120, 110, 130, 120)]
    walls = as_pairs(noded(FRAME, boards))
    assert ((20, 10), (20, 20)) in walls
    assert len(walls) == 4 + 7


def test_a_line_shorter_than_the_grid_is_gone() -> None:
    speck = shapely.LineString([(150, 150), (150 + 1e-9, 150)])
    assert len(noded(FRAME, [speck]).walls) == 4


def test_a_wall_is_split_in_order_and_points_at_one_place_are_one() -> None:
    lines = Linework(np.array([[0.0, 0.0], [10.0, 0.0], [0.0, 5.0]]), np.array([[0, 1], [0, 2]]))
    places = np.array([[7.0, 0.0], [2.0, 0.0], [7.0, 1e-8], [0.0, 0.0], [0.0, 4.0]])
    finer, at = split(lines, np.array([0, 0, 0, 0, 1]), places)
    assert at[0] == at[2]
    assert at[3] == 0
    assert finer.points[at[[0, 1, 4]]].tolist() == [[7, 0], [2, 0], [0, 4]]
    assert as_pairs(finer) == {
        ((0, 0), (2, 0)),
        ((2, 0), (7, 0)),
        ((7, 0), (10, 0)),
        ((0, 0), (0, 4)),
        ((0, 4), (0, 5)),
    }


def test_a_collection_of_collections_gives_all_its_outlines() -> None:
    boards = shapely.MultiPolygon(
        [shapely.box(110, 110, 120, 120), shapely.box(130, 110, 140, 120)]
    )
    mixed = shapely.GeometryCollection([boards, shapely.LineString([(150, 150), (160, 150)])])
    walls = as_pairs(noded(FRAME, [mixed]))
    assert {((10, 10), (20, 10)), ((30, 10), (40, 10)), ((50, 50), (60, 50))} <= walls


def test_a_very_long_wall_among_very_many_is_cut_into_equal_parts() -> None:
    x = np.arange(0.0, 2000.0)
    comb = np.stack([np.column_stack([x, x * 0 + 1]), np.column_stack([x, x * 0 + 2])], axis=1)
    points = np.concatenate([comb.reshape(-1, 2), [[0.0, 0.0], [2000.0, 0.0]]])
    walls = np.arange(len(points)).reshape(-1, 2)
    finer = evened(Linework(points, walls))
    mean = (2000 + 2000) / 2001
    parts = int(np.ceil(2000 / (10 * mean)))
    new = finer.points[len(points) :]
    assert new[:, 0].tolist() == pytest.approx((np.arange(1, parts) * 2000 / parts).tolist())
    assert len(finer.walls) == 2000 + parts
    few = Linework(points[-12:], walls[:6])
    assert evened(few) is few
