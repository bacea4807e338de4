"""Every entity that draws a line comes out where it is drawn, checked by hand calculation."""

import math
from collections.abc import Callable
from itertools import pairwise

import ezdxf
import pytest
from ezdxf.document import Drawing

from enclosure_app.files.dxf.content import Content
from enclosure_app.files.dxf.raw import RawPath
from enclosure_app.model.place import Points

Reread = Callable[..., Content]
RELEASES = ["R12", "R2000", "R2010", "R2018"]


@pytest.fixture
def drawing() -> Drawing:
    return ezdxf.new("R2010")


def only(read: Content) -> RawPath:
    (item,) = read.items
    assert isinstance(item, RawPath)
    return item


def box(points: Points) -> tuple[float, float, float, float]:
    xs, ys = zip(*points, strict=True)
    return min(xs), min(ys), max(xs), max(ys)


def area(points: Points) -> float:
    pairs = zip(points, (*points[1:], points[0]), strict=True)
    return sum(x * v - u * y for (x, y), (u, v) in pairs) / 2


@pytest.mark.parametrize("release", RELEASES)
def test_a_line_keeps_its_ends_and_properties(release: str, reread: Reread) -> None:
    drawing = ezdxf.new(release)
    drawing.layers.add("A-WALL", color=3, linetype="Continuous")
    line = drawing.modelspace().add_line((1, 2, 9), (3, 4, 5), dxfattribs={"layer": "A-WALL"})
    path = only(reread(drawing))
    assert path.points == ((1.0, 2.0), (3.0, 4.0))
    tag = path.tag
    assert (tag.kind, tag.layer, tag.linetype, tag.color) == ("LINE", "A-WALL", "CONTINUOUS", 3)
    assert (tag.handle, tag.block) == (line.dxf.handle, "")


def test_a_circle_is_a_ring_within_the_sagitta(drawing: Drawing, reread: Reread) -> None:
    drawing.modelspace().add_circle((10, 20), 5000)
    path = only(reread(drawing, sagitta=0.5))
    assert path.closed
    assert {round(math.dist(point, (10, 20)), 6) for point in path.points} == {5000.0}
    pairs = zip(path.points, (*path.points[1:], path.points[0]), strict=True)
    half = max(math.dist(one, two) for one, two in pairs) / 2
    assert 5000 - math.sqrt(5000**2 - half**2) <= 0.5


def test_an_arc_runs_anticlockwise_from_its_start_angle(drawing: Drawing, reread: Reread) -> None:
    drawing.modelspace().add_arc((0, 0), 10, 350, 90)
    path = only(reread(drawing))
    assert not path.closed
    assert path.points[0] == pytest.approx((10 * math.cos(math.radians(350)), -1.7364817766693))
    assert path.points[-1] == pytest.approx((0, 10))
    assert box(path.points)[2] == pytest.approx(10, abs=0.1)


def test_an_arc_seen_from_behind_is_mirrored(drawing: Drawing, reread: Reread) -> None:
    """Extrusion -Z turns x round: the arc from 0 to 90 degrees stands left of its centre."""
    drawing.modelspace().add_arc((5, 0), 10, 0, 90, dxfattribs={"extrusion": (0, 0, -1)})
    path = only(reread(drawing))
    assert path.points[0] == pytest.approx((-15, 0))
    assert path.points[-1] == pytest.approx((-5, 10))


def test_a_circle_seen_askew_is_an_ellipse(drawing: Drawing, reread: Reread) -> None:
    """Tilted by 60 degrees about x, a circle of radius 10 is 10 wide and 5 high."""
    tilt = math.radians(60)
    drawing.modelspace().add_circle(
        (0, 0), 10, dxfattribs={"extrusion": (0, -math.sin(tilt), math.cos(tilt))}
    )
    assert box(only(reread(drawing)).points) == pytest.approx((-10, -5, 10, 5), abs=0.1)


def test_an_ellipse_is_measured_along_its_axes(drawing: Drawing, reread: Reread) -> None:
    drawing.modelspace().add_ellipse((1, 1), (0, 8), 0.5, 0, math.pi / 2)
    path = only(reread(drawing))
    assert path.points[0] == pytest.approx((1, 9))
    assert path.points[-1] == pytest.approx((-3, 1))


def test_a_clamped_spline_ends_on_its_end_points(drawing: Drawing, reread: Reread) -> None:
    """A cubic with four control points is a Bézier curve: its middle is (P0+3P1+3P2+P3)/8."""
    drawing.modelspace().add_open_spline([(0, 0), (0, 40), (40, 40), (40, 0)])
    path = only(reread(drawing, sagitta=0.001))
    assert (path.points[0], path.points[-1]) == ((0.0, 0.0), (40.0, 0.0))
    assert min(math.dist(point, (20, 30)) for point in path.points) < 0.5
    assert box(path.points)[3] == pytest.approx(30, abs=0.001)


def test_a_rational_spline_draws_a_true_quarter_circle(drawing: Drawing, reread: Reread) -> None:
    """Weights 1, 1/sqrt(2), 1 over a square corner are a quarter circle (Piegl and Tiller, 7.5)."""
    spline = drawing.modelspace().add_rational_spline(
        [(100, 0), (100, 100), (0, 100)], [1, math.sqrt(0.5), 1], degree=2
    )
    assert spline.dxf.degree == 2
    points = only(reread(drawing, sagitta=0.05)).points
    assert [math.hypot(*point) for point in points] == pytest.approx([100] * len(points))
    for (a, b), (c, d) in pairwise(points):
        assert 100 - math.hypot((a + c) / 2, (b + d) / 2) <= 0.05


@pytest.mark.parametrize("release", RELEASES)
def test_a_polyline_with_a_bulge_swells_to_the_right(release: str, reread: Reread) -> None:
    """Anticlockwise from (0, 0) to (10, 0): the half circle hangs down to (5, -5)."""
    drawing = ezdxf.new(release)
    drawing.modelspace().add_polyline2d([(0, 0, 1), (10, 0, 0), (10, 5, 0)], format="xyb")
    path = only(reread(drawing, sagitta=0.01))
    assert path.points[-2:] == ((10.0, 0.0), (10.0, 5.0))
    assert box(path.points) == pytest.approx((0, -5, 10, 5), abs=0.01)


def test_a_closed_lwpolyline_does_not_repeat_its_first_point(
    drawing: Drawing, reread: Reread
) -> None:
    drawing.modelspace().add_lwpolyline([(0, 0), (4, 0), (4, 3), (0, 0)], close=True)
    path = only(reread(drawing))
    assert path.closed
    assert path.points == ((0.0, 0.0), (4.0, 0.0), (4.0, 3.0))
    assert type(path.points[0][0]) is float


def test_a_constant_width_is_kept(drawing: Drawing, reread: Reread) -> None:
    space = drawing.modelspace()
    space.add_lwpolyline([(0, 0), (9, 0)], dxfattribs={"const_width": 1.5})
    space.add_lwpolyline([(0, 0, 2, 2), (9, 0, 2, 2)], format="xyse")
    space.add_polyline2d([(0, 0), (9, 0)]).dxf.default_start_width = 3
    space.query("POLYLINE")[0].dxf.default_end_width = 3
    read = reread(drawing)
    assert [(path.width, path.filled) for path in read.items] == [
        (1.5, False), (2.0, False), (3.0, False),
    ]  # fmt: skip


def test_a_varying_width_is_a_filled_outline(drawing: Drawing, reread: Reread) -> None:
    """An arrow: a shaft of 2 over 10, then a head from 6 to 0 over 4: 20 + 12 in area."""
    drawing.modelspace().add_lwpolyline([(0, 0, 2, 2), (10, 0, 6, 0), (14, 0)], format="xyse")
    path = only(reread(drawing))
    assert path.filled
    assert path.closed
    assert box(path.points) == pytest.approx((0, -3, 14, 3))
    assert abs(area(path.points)) == pytest.approx(32)


def test_a_three_dimensional_polyline_is_seen_from_above(drawing: Drawing, reread: Reread) -> None:
    drawing.modelspace().add_polyline3d([(0, 0, 0), (5, 0, 7), (5, 5, 9)], close=True)
    path = only(reread(drawing))
    assert (path.points, path.closed) == (((0.0, 0.0), (5.0, 0.0), (5.0, 5.0)), True)


def test_the_control_frame_of_a_fitted_polyline_is_not_drawn(
    drawing: Drawing, reread: Reread
) -> None:
    polyline = drawing.modelspace().add_polyline2d([(0, 9), (1, 1), (2, 1), (9, 9)])
    polyline.dxf.flags |= 4
    for vertex, flag in zip(polyline.vertices, (16, 8, 8, 16), strict=True):
        vertex.dxf.flags |= flag
    assert only(reread(drawing)).points == ((1.0, 1.0), (2.0, 1.0))


def test_each_element_of_a_multi_line_is_a_polyline(drawing: Drawing, reread: Reread) -> None:
    """The standard style has two elements at +0.5 and -0.5, drawn at scale 2."""
    drawing.modelspace().add_mline(
        [(0, 0), (10, 0), (10, 10)], dxfattribs={"scale_factor": 2, "justification": 1}
    )
    first, second = reread(drawing).items
    assert isinstance(first, RawPath)
    assert isinstance(second, RawPath)
    assert sum(first.points, ()) == pytest.approx((0, 1, 9, 1, 9, 10))
    assert sum(second.points, ()) == pytest.approx((0, -1, 11, -1, 11, 10))
    assert second.tag.handle == f"{first.tag.handle}.2"


@pytest.mark.parametrize("kind", ["SOLID", "TRACE"])
def test_a_solid_is_not_crossed(kind: str, drawing: Drawing, reread: Reread) -> None:
    corners = [(0, 0), (4, 0), (0, 3), (4, 3)]
    add = {"SOLID": drawing.modelspace().add_solid, "TRACE": drawing.modelspace().add_trace}
    add[kind](corners)
    path = only(reread(drawing))
    assert path.filled
    assert area(path.points) == pytest.approx(12)


def test_a_solid_of_three_corners_is_a_triangle(drawing: Drawing, reread: Reread) -> None:
    drawing.modelspace().add_solid([(0, 0), (4, 0), (0, 3)])
    assert area(only(reread(drawing)).points) == pytest.approx(6)


def test_a_face_is_an_outline(drawing: Drawing, reread: Reread) -> None:
    drawing.modelspace().add_3dface([(0, 0, 1), (4, 0, 1), (4, 3, 2), (0, 3, 2)])
    path = only(reread(drawing))
    assert (path.closed, path.filled) == (True, False)
    assert path.points == ((0.0, 0.0), (4.0, 0.0), (4.0, 3.0), (0.0, 3.0))


def test_what_has_no_length_is_left_out_and_said(drawing: Drawing, reread: Reread) -> None:
    line = drawing.modelspace().add_line((1, 1, 0), (1, 1, 5))
    read = reread(drawing)
    assert read.items == ()
    assert [note.text for note in read.notes] == [
        f"Left out: 1 entity without length or area (first: {line.dxf.handle})."
    ]
