"""Rings become regions, and wide polylines become outlines, with areas known beforehand."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.files.dxf.regions import Vertex, outline, regions, run_points
from enclosure_app.model.place import Points


def square(x: float, y: float, size: float) -> Points:
    return ((x, y), (x + size, y), (x + size, y + size), (x, y + size))


def area(ring: Points) -> float:
    pairs = zip(ring, (*ring[1:], ring[0]), strict=True)
    return abs(sum(x * v - u * y for (x, y), (u, v) in pairs)) / 2


def test_each_hole_belongs_to_the_smallest_ring_around_it() -> None:
    left, right = square(0, 0, 10), square(20, 0, 10)
    left_hole, right_hole = square(1, 1, 2), square(22, 2, 3)
    found = list(regions([left_hole, right_hole, left, right]))
    assert sorted(found) == [(left, (left_hole,)), (right, (right_hole,))]


def test_rings_side_by_side_are_no_holes() -> None:
    one, two = square(0, 0, 10), square(10, 0, 9)
    assert sorted(regions([two, one])) == [(one, ()), (two, ())]


def test_a_hole_may_touch_the_ring_around_it() -> None:
    ring, hole = square(0, 0, 10), square(0, 0, 4)
    assert list(regions([hole, ring])) == [(ring, (hole,))]


def test_rings_without_area_are_no_regions() -> None:
    assert list(regions([((0, 0), (1, 1)), ((0, 0), (5, 0), (9, 0)), ()])) == []


@given(st.lists(st.integers(1, 40), min_size=1, max_size=8, unique=True))
def test_nested_squares_fill_every_second_ring(sizes: list[int]) -> None:
    rings = [square(-size, -size, 2 * size) for size in sizes]
    filled = sum(area(ring) - sum(map(area, holes)) for ring, holes in regions(rings))
    ordered = sorted((4 * size * size for size in sizes), reverse=True)
    assert filled == pytest.approx(sum(ordered[::2]) - sum(ordered[1::2]))


def test_a_run_follows_its_bulges_round_to_its_start() -> None:
    points = run_points([Vertex(-1, 0, bulge=1), Vertex(1, 0, bulge=1)], 0.001, closed=True)
    assert points[0] == points[-1] == (-1, 0)
    assert {round(math.hypot(*point), 9) for point in points} == {1.0}


def test_a_run_of_nothing_is_empty() -> None:
    assert run_points([], 0.1, closed=True) == []


def test_a_taper_is_a_trapezium() -> None:
    region = outline([Vertex(0, 0, 2, 4), Vertex(10, 0)], 0.1, closed=False)
    assert region is not None
    assert set(region[0]) == {(0, 1), (10, 2), (10, -2), (0, -1)}
    assert area(region[0]) == pytest.approx(30)


def test_a_mitred_corner_keeps_the_width_of_both_legs() -> None:
    """Legs of 10 and 10, 2 and then 2.0001 wide, outer sides 11: area about 2 * 10 + 2 * 10."""
    region = outline(
        [Vertex(0, 0, 2, 2), Vertex(10, 0, 2, 2.0001), Vertex(10, 10)], 0.1, closed=False
    )
    assert region is not None
    assert area(region[0]) == pytest.approx(40, rel=1e-3)
    assert any(point == pytest.approx((11, -1)) for point in region[0])


def test_a_closed_wide_run_is_a_ring_with_a_hole() -> None:
    corners = square(0, 0, 10)
    vertices = [Vertex(x, y, 2, 2) for x, y in corners]
    region = outline(vertices, 0.1, closed=True)
    assert region is not None
    outer, (hole,) = region
    assert (area(outer), area(hole)) == (pytest.approx(144), pytest.approx(64))


def test_a_wide_arc_is_as_wide_along_its_way() -> None:
    region = outline([Vertex(0, 0, 2, 2, 1), Vertex(20, 0, 2, 2)], 0.0001, closed=False)
    assert region is not None
    assert area(region[0]) == pytest.approx(math.pi * (11**2 - 9**2) / 2, rel=1e-3)


def test_a_run_without_length_has_no_outline() -> None:
    assert outline([Vertex(1, 1, 2, 3), Vertex(1, 1)], 0.1, closed=False) is None
