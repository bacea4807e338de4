"""The triangulation holds every wall and is Delaunay as far as the walls let it."""

import numpy as np
import pytest
import shapely
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from enclosure_app.geometry.linework.linework import Linework, noded
from enclosure_app.geometry.openings.cavities import CrossingError
from enclosure_app.geometry.openings.triangles import Mesh, triangulate

FRAME = [(0.0, 0.0), (300.0, 0.0), (300.0, 200.0), (0.0, 200.0)]
PLACES = st.tuples(st.integers(0, 300), st.integers(0, 200))
LINES = st.lists(st.lists(PLACES, min_size=2, max_size=6, unique=True), min_size=1, max_size=8)


def mesh_of(runs: list[list[tuple[int, int]]]) -> tuple[Linework, Mesh]:
    lines = noded(FRAME, [shapely.LineString(run) for run in runs])
    return lines, triangulate(lines)


@settings(
    max_examples=60, derandomize=True, deadline=None, suppress_health_check=list(HealthCheck)
)
@given(LINES)
def test_random_lines(runs: list[list[tuple[int, int]]]) -> None:
    lines, mesh = mesh_of(runs)
    corners = mesh.points[mesh.triangles]
    one, two = corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0]
    area = (one[:, 0] * two[:, 1] - one[:, 1] * two[:, 0]) / 2
    assert area.min() > -1e-6
    assert area.sum() == pytest.approx(shapely.MultiPoint(mesh.points).convex_hull.area)
    pairs = mesh.twin >= 0
    assert (mesh.starts[mesh.twin[pairs]] == mesh.ends[pairs]).all()
    drawn = shapely.union_all(shapely.linestrings(lines.points[lines.walls]))
    walls = mesh.points[mesh.linework.walls]
    assert shapely.linestrings(walls).size > 0
    assert shapely.length(shapely.linestrings(walls)).sum() == pytest.approx(
        drawn.length, abs=1e-4
    )
    assert_locally_delaunay(mesh)


def assert_locally_delaunay(mesh: Mesh) -> None:
    """No corner beyond an open edge lies in the circle of the triangle on this side of it."""
    free = np.flatnonzero(~mesh.wall & (mesh.twin >= 0))
    a, b = mesh.points[mesh.starts[free]], mesh.points[mesh.ends[free]]
    c = mesh.points[mesh.starts[3 * (free // 3) + (free + 2) % 3]]
    twin = mesh.twin[free]
    d = mesh.points[mesh.starts[3 * (twin // 3) + (twin + 2) % 3]]
    at_c, at_d = angle(a - c, b - c), angle(b - d, a - d)
    assert (at_c + at_d).max() < np.pi + 1e-6


def angle(one: np.ndarray, two: np.ndarray) -> np.ndarray:
    cross = one[:, 0] * two[:, 1] - one[:, 1] * two[:, 0]
    return np.arctan2(cross, (one * two).sum(axis=1))


def test_a_place_is_found_in_its_triangle() -> None:
    _, mesh = mesh_of([[(100, 100), (200, 100)]])
    triangle = mesh.triangle_at(np.array([150.0, 101.0]))
    corners = mesh.points[mesh.triangles[triangle]]
    assert shapely.contains_xy(shapely.Polygon(corners), 150.0, 101.0)


def test_walls_that_cross_without_a_point_are_refused() -> None:
    points = np.array([[0.0, 0.0], [10.0, 10.0], [0.0, 10.0], [10.0, 0.0]])
    with pytest.raises(CrossingError):
        triangulate(Linework(points, np.array([[0, 1], [2, 3]])))


def test_a_wall_over_a_point_ends_there_and_goes_on() -> None:
    points = np.array([[0.0, 0.0], [10.0, 0.0], [5.0, 1e-9], [5.0, 8.0], [4.0, -6.0]])
    mesh = triangulate(Linework(points, np.array([[0, 1]])))
    walls = {tuple(sorted(wall)) for wall in mesh.linework.walls.tolist()}
    assert walls == {(0, 2), (1, 2)}


def test_a_long_wall_between_two_rows_of_points_is_put_in() -> None:
    x = np.arange(0.0, 100.0, 7.0)
    rows = [
        np.column_stack([x, np.full_like(x, 1.0)]),
        np.column_stack([x, np.full_like(x, -1.5)]),
    ]
    points = np.vstack([[[-5.0, 0.0], [120.0, 0.0]], *rows])
    mesh = triangulate(Linework(points, np.array([[0, 1]])))
    assert mesh.linework.walls.tolist() == [[0, 1]]
    assert_locally_delaunay(mesh)
