"""Slots of sky between edges, held against many straight ways cast by another library's crossing test."""

from math import atan, cos, degrees, radians, sin, tan

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from enclosure_app.geometry.surfaces.faces import Point, faces, ring_of_line
from enclosure_app.geometry.surfaces.falling import Surfaces
from enclosure_app.geometry.surfaces.slots import Lookout, sees_sky

BOX = np.array([(-1000.0, 0.0), (1000.0, 2000.0)])
Ends = tuple[Point, Point]


def drawn(*lines: Ends) -> Surfaces:
    return Surfaces(faces((n, ring_of_line(line), 0.0) for n, line in enumerate(lines)))


def sees(
    *lines: Ends,
    low: float = -30.0,
    high: float = 30.0,
    slop: float = 0.0,
    far: float = 20_000.0,
    place: Point = (0.0, 0.0),
) -> bool:
    """Return whether a place sees sky between two angles, degrees."""
    asked = np.array([place]), np.array([radians(low)]), np.array([radians(high)])
    return bool(sees_sky([drawn(*lines)], Lookout(*asked, BOX, far, slop))[0])


def roof(left: float, right: float, y: float = 1000.0) -> Ends:
    return ((left, y), (right, y))


REACH = 1000 * tan(radians(30))  # how far to each side the sky is seen at y = 1000


def test_a_place_under_the_open_sky_sees_it() -> None:
    assert sees(roof(700, 900))


def test_a_roof_from_one_angle_to_the_other_hides_the_sky() -> None:
    assert not sees(roof(-REACH - 1, REACH + 1))
    assert sees(roof(-REACH - 1, REACH - 1))


@pytest.mark.parametrize("at", [-520.0, -100.0, 3.0, 333.0, 560.0])
@pytest.mark.parametrize("width", [0.1, 1.0, 10.0])
def test_a_slot_is_found_wherever_it_is_and_however_narrow(at: float, width: float) -> None:
    assert sees(roof(-700, at), roof(at + width, 700))
    assert not sees(roof(-700, at), roof(at, 700))


def test_what_lies_above_a_slot_closes_it() -> None:
    """Seen from below, the slot from 100 to 110 leads on to 150 to 165 half as high again."""
    below = (roof(-700, 100), roof(110, 700))
    assert not sees(*below, roof(149, 166, y=1500))
    assert sees(*below, roof(151, 166, y=1500))
    assert sees(*below, roof(149, 166, y=1500), place=(-40, 0))


def test_slits_of_drawing_slop_are_closed_from_one_rim_to_the_other() -> None:
    assert not sees(roof(-700, 100), roof(101.9, 700), slop=2.0)
    assert sees(roof(-700, 100), roof(102.1, 700), slop=2.0)
    assert not sees(roof(-700, 100), roof(99, 700, y=1001.5), slop=2.0)


def test_an_upright_wall_beyond_the_box_hides_nothing() -> None:
    wall = ((-1001.0, 100.0), (-1001.0, 900.0))
    assert sees(wall, low=-30, high=-29, place=(-900, 0))
    assert not sees(((-999.0, 100.0), (-999.0, 900.0)), low=-30, high=-29, place=(-900, 0))


def test_only_the_angles_asked_for_count() -> None:
    slot = (roof(-700, 100), roof(110, 700))
    angle = degrees(atan(100 / 1000))
    assert not sees(*slot, high=angle - 0.01)
    assert sees(*slot, high=angle + 0.01)
    assert not sees(low=10, high=10)


def test_what_is_beside_below_or_beyond_the_box_hides_nothing() -> None:
    assert sees(((-500, -10), (500, -10)), ((5, -20), (700, 0)), place=(0, 1))
    assert sees(roof(-2000, 2000, y=2001))
    assert sees(roof(-2000, 2000), far=999)
    assert not sees(roof(-2000, 2000), far=1001)
    assert sees(roof(-5000, -1000), roof(-900, 900, y=1990), low=-29, high=-26)


def test_an_edge_right_beside_a_place_hides_its_own_side_only() -> None:
    wall = ((-0.25, -500.0), (-0.25, 1990.0))
    assert not sees(wall, low=-30, high=-0.1)
    assert sees(wall, low=0.1, high=30)
    assert not sees(wall, roof(-100, 700), low=0.1, high=30)


coordinates = st.tuples(st.integers(-600, 600), st.integers(1, 1900))


@settings(max_examples=60, deadline=None)
@given(st.lists(st.tuples(coordinates, coordinates), min_size=1, max_size=12), coordinates)
def test_sky_is_seen_where_one_of_many_ways_up_meets_nothing(
    lines: list[Ends], place: Point
) -> None:
    """Two ways lie up to 1.2 mm apart at the top: slop of 6 mm closes what none of them finds."""
    lines = [line for line in lines if line[0] != line[1]]
    edges = shapely.union_all([shapely.LineString(line) for line in lines])
    x, y = place[0] + 0.37, place[1] + 0.41
    angles = [radians(30 * n / 1000) for n in range(-1000, 1001)]
    ways = [((x, y), (x + 5000 * sin(a), y + 5000 * cos(a))) for a in angles]
    free = ~shapely.intersects(shapely.linestrings(ways), edges)
    if free.any():
        assert sees(*lines, place=(x, y))
    else:
        assert not sees(*lines, place=(x, y), slop=6.0)
