"""Planes and placements, by hand."""

import math

import pytest
from ezdxf.math import OCS, Matrix44, Vec3
from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.files.dxf.placement import FLAT, Placement, Plane

TURNED = Plane((0.0, 2.0), (-2.0, 0.0), (10.0, 0.0))
NUMBERS = st.floats(-1000, 1000)


def test_a_plane_moves_points_but_not_directions() -> None:
    assert TURNED.point(1, 0) == (10.0, 2.0)
    assert TURNED.points([(0, 1)]) == [(8.0, 0.0)]
    assert TURNED.direction(1, 1) == (-2.0, 2.0)


def test_a_plane_tells_angles_and_scales() -> None:
    assert TURNED.angle(30) == pytest.approx(120)
    assert TURNED.scale == pytest.approx(2)
    assert Plane((3, 0), (0, 1)).stretch == pytest.approx(3)
    assert Plane((-1.0, 0.0), (0.0, 1.0)).angle(0) == pytest.approx(180)


def test_an_upright_plane_in_the_layout_changes_nothing() -> None:
    assert Placement(0.1).plane(Vec3(0, 0, 1), 5.0) is FLAT
    assert FLAT.points([(1, 2)]) == [(1, 2)]


@given(st.tuples(NUMBERS, NUMBERS, NUMBERS), NUMBERS, NUMBERS, NUMBERS)
def test_an_extrusion_direction_means_what_the_library_says(
    direction: tuple[float, float, float], x: float, y: float, elevation: float
) -> None:
    extrusion = Vec3(direction) + Vec3(0, 0, 1e-3)
    if extrusion.magnitude < 1e-6:
        return
    expected = OCS(extrusion).to_wcs(Vec3(x, y, elevation))
    found = Placement(0.1).plane(extrusion, elevation).point(x, y)
    assert found == pytest.approx((expected.x, expected.y), abs=1e-6)


def test_a_placement_applies_its_matrix_last() -> None:
    placement = Placement(0.1, Matrix44.z_rotate(math.pi / 2) @ Matrix44.translate(5, 0, 0))
    assert placement.world([Vec3(1, 0, 3)])[0] == pytest.approx((5, 1))
    assert placement.plane(Vec3(0, 0, -1)).point(1, 0) == pytest.approx((5, -1))


def test_handles_tell_inserts_and_copies() -> None:
    assert Placement(0.1).handle("3A") == "3A"
    assert Placement(0.1, prefix="2F/").handle("3A") == "2F/3A"
    assert Placement(0.1, prefix="2F/", copy=4).handle("3A") == "2F/3A#4"
