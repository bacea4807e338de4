"""Hatches come out as regions with holes, whatever their boundary is made of."""

import math
from collections.abc import Callable

import ezdxf
import pytest
from ezdxf.document import Drawing
from ezdxf.entities import Hatch

from enclosure_app.files.dxf.content import Content
from enclosure_app.files.dxf.raw import RawPath
from enclosure_app.model.place import Points

Reread = Callable[..., Content]


@pytest.fixture
def drawing() -> Drawing:
    return ezdxf.new("R2010")


@pytest.fixture
def hatch(drawing: Drawing) -> Hatch:
    return drawing.modelspace().add_hatch()


def square(corner: float, size: float) -> list[tuple[float, float]]:
    end = corner + size
    return [(corner, corner), (end, corner), (end, end), (corner, end)]


def area(points: Points) -> float:
    pairs = zip(points, (*points[1:], points[0]), strict=True)
    return abs(sum(x * v - u * y for (x, y), (u, v) in pairs)) / 2


def filled(path: object) -> float:
    assert isinstance(path, RawPath)
    assert path.filled
    return area(path.points) - sum(map(area, path.holes))


def test_rings_inside_rings_are_holes_and_islands(
    drawing: Drawing, hatch: Hatch, reread: Reread
) -> None:
    for corner, size in ((20, 60), (0, 100), (40, 20)):
        hatch.paths.add_polyline_path(square(corner, size))
    read = reread(drawing)
    assert [filled(path) for path in read.items] == pytest.approx([10000 - 3600, 400])
    assert [path.tag.handle for path in read.items] == [
        hatch.dxf.handle, f"{hatch.dxf.handle}.2",
    ]  # fmt: skip


@pytest.mark.parametrize(("style", "areas"), [(0, [6400, 400]), (1, [6400]), (2, [10000])])
def test_the_hatch_style_says_what_is_filled(
    style: int, areas: list[float], drawing: Drawing, hatch: Hatch, reread: Reread
) -> None:
    for corner, size in ((0, 100), (20, 60), (40, 20)):
        hatch.paths.add_polyline_path(square(corner, size))
    hatch.dxf.hatch_style = style
    assert [filled(path) for path in reread(drawing).items] == pytest.approx(areas)


def test_a_boundary_of_bulges_is_round(drawing: Drawing, hatch: Hatch, reread: Reread) -> None:
    hatch.paths.add_polyline_path([(-10, 0, 1), (10, 0, 1)])
    (path,) = reread(drawing, sagitta=0.001).items
    assert filled(path) == pytest.approx(math.pi * 100, rel=1e-3)


def test_an_edge_path_of_lines_and_an_arc_is_closed(
    drawing: Drawing, hatch: Hatch, reread: Reread
) -> None:
    """A quarter disc of radius 10: pi * 100 / 4."""
    edges = hatch.paths.add_edge_path()
    edges.add_line((0, 0), (10, 0))
    edges.add_arc((0, 0), 10, 0, 90)
    edges.add_line((0, 10), (0, 0))
    (path,) = reread(drawing, sagitta=0.001).items
    assert filled(path) == pytest.approx(25 * math.pi, rel=1e-3)


def test_a_clockwise_arc_edge_is_the_same_arc(
    drawing: Drawing, hatch: Hatch, reread: Reread
) -> None:
    edges = hatch.paths.add_edge_path()
    edges.add_line((0, 0), (0, 10))
    edges.add_arc((0, 0), 10, 0, 90, ccw=False)
    edges.add_line((10, 0), (0, 0))
    (path,) = reread(drawing, sagitta=0.001).items
    assert filled(path) == pytest.approx(25 * math.pi, rel=1e-3)


def test_a_full_ellipse_edge_is_a_region(drawing: Drawing, hatch: Hatch, reread: Reread) -> None:
    hatch.paths.add_edge_path().add_ellipse((5, 5), (0, 20), 0.25, 0, 360)
    (path,) = reread(drawing, sagitta=0.001).items
    assert filled(path) == pytest.approx(math.pi * 20 * 5, rel=1e-3)


def test_part_of_an_ellipse_edge_is_measured_from_its_axis(
    drawing: Drawing, hatch: Hatch, reread: Reread
) -> None:
    """A quarter of an ellipse with half axes 20 and 5: pi * 100 / 4."""
    edges = hatch.paths.add_edge_path()
    edges.add_line((0, 0), (20, 0))
    edges.add_ellipse((0, 0), (20, 0), 0.25, 0, 90)
    edges.add_line((0, 5), (0, 0))
    (path,) = reread(drawing, sagitta=0.001).items
    assert filled(path) == pytest.approx(25 * math.pi, rel=1e-3)


def test_a_spline_edge_bounds_the_area_under_its_curve(
    drawing: Drawing, hatch: Hatch, reread: Reread
) -> None:
    """The Bézier curve (0,0) (0,10) (10,10) (10,0) holds 3/20 (sum of cross terms) = 60."""
    edges = hatch.paths.add_edge_path()
    edges.add_spline(
        control_points=[(0, 0), (0, 10), (10, 10), (10, 0)], knot_values=[0] * 4 + [1] * 4
    )
    edges.add_line((10, 0), (0, 0))
    (path,) = reread(drawing, sagitta=0.0005).items
    assert filled(path) == pytest.approx(60, rel=1e-3)


def test_a_spline_edge_of_fit_points_passes_through_them(
    drawing: Drawing, hatch: Hatch, reread: Reread
) -> None:
    edges = hatch.paths.add_edge_path()
    edges.add_spline(fit_points=[(0, 0), (5, 5), (10, 0)], knot_values=[0] * 4 + [1] * 4)
    edges.add_line((10, 0), (0, 0))
    (path,) = reread(drawing, sagitta=0.001).items
    assert isinstance(path, RawPath)
    assert min(math.dist(point, (5, 5)) for point in path.points) < 0.1


def test_a_polygon_entity_is_moved_by_its_offset(drawing: Drawing, reread: Reread) -> None:
    polygon = drawing.modelspace().add_mpolygon()
    polygon.paths.add_polyline_path(square(0, 10))
    polygon.dxf.offset_vector = (100, 50)
    (path,) = reread(drawing).items
    assert isinstance(path, RawPath)
    assert path.points == ((100.0, 50.0), (110.0, 50.0), (110.0, 60.0), (100.0, 60.0))


def test_a_hatch_and_its_bounding_polyline_are_both_read(
    drawing: Drawing, hatch: Hatch, reread: Reread
) -> None:
    hatch.paths.add_polyline_path(square(0, 10))
    drawing.modelspace().add_lwpolyline(square(0, 10), close=True)
    kinds = [(path.tag.kind, path.points) for path in reread(drawing).items]
    ring = ((0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (0.0, 10.0))
    assert kinds == [("HATCH", ring), ("LWPOLYLINE", ring)]
