"""Turns hatches into filled regions with holes."""

import math
from collections.abc import Iterator

from ezdxf.entities.boundary_paths import (
    AbstractBoundaryPath,
    AbstractEdge,
    ArcEdge,
    EdgePath,
    EllipseEdge,
    LineEdge,
    PolylinePath,
    SplineEdge,
)
from ezdxf.entities.polygon import DXFPolygon
from ezdxf.math import BSpline, Matrix44, Vec3, fit_points_to_cad_cv

from enclosure_app.files.dxf.curves import (
    ellipse_points,
    join_ends,
    spline_points,
    turn,
    without_repeats,
)
from enclosure_app.files.dxf.placement import Placement, Plane
from enclosure_app.files.dxf.raw import RawPath, Tag
from enclosure_app.files.dxf.regions import Vertex, regions, run_points
from enclosure_app.model.place import Point, Points

_SLACK = 1e-6


def hatch_paths(entity: DXFPolygon, tag: Tag, placement: Placement) -> Iterator[RawPath]:
    """Yield one filled path for each outer ring of a HATCH or MPOLYGON."""
    dxf = entity.dxf
    plane = placement.plane(dxf.get("extrusion"), Vec3(dxf.get("elevation", (0, 0, 0))).z)
    if dxf.hasattr("offset_vector"):
        plane = Plane(plane.u, plane.v, plane.point(*Vec3(dxf.offset_vector).vec2))
    rings = [
        ring for path in entity.paths.paths for ring in _rings(path, plane, placement.sagitta)
    ]
    for outer, holes in regions(rings, dxf.get("hatch_style", 0)):
        yield RawPath(tag, outer, closed=True, filled=True, holes=holes)


def _rings(path: AbstractBoundaryPath, plane: Plane, sagitta: float) -> list[Points]:
    if isinstance(path, PolylinePath):
        local = sagitta / plane.stretch if plane.stretch else sagitta
        vertices = [Vertex(x, y, bulge=bulge) for x, y, bulge in path.vertices]
        points = plane.points(run_points(vertices, local, closed=True))
        return [without_repeats(points, closed=True)]
    if isinstance(path, EdgePath):
        return join_ends((_edge_points(edge, plane, sagitta) for edge in path.edges), _SLACK)
    return []


def _edge_points(edge: AbstractEdge, plane: Plane, sagitta: float) -> list[Point]:
    match edge:
        case LineEdge():
            return plane.points([(edge.start.x, edge.start.y), (edge.end.x, edge.end.y)])
        case ArcEdge():
            axes = (edge.radius, 0.0), (0.0, edge.radius)
            return _arc_points(edge, axes, plane, sagitta)
        case EllipseEdge():
            x, y = edge.major_axis.x, edge.major_axis.y
            axes = (x, y), (-y * edge.ratio, x * edge.ratio)
            return _arc_points(edge, axes, plane, sagitta)
        case SplineEdge():
            curve = _curve(edge).transform(_matrix(plane))
            return [(point.x, point.y) for point in spline_points(curve, sagitta)]
    return []


def _arc_points(
    edge: ArcEdge | EllipseEdge, axes: tuple[Point, Point], plane: Plane, sagitta: float
) -> list[Point]:
    u, v = axes
    start, end = edge.start_angle, edge.end_angle
    if isinstance(edge, EllipseEdge):
        start, end = math.degrees(edge.start_param), math.degrees(edge.end_param)
    span = turn(start, end)
    center = plane.point(edge.center.x, edge.center.y)
    return ellipse_points(center, (plane.direction(*u), plane.direction(*v)), span, sagitta)


def _curve(edge: SplineEdge) -> BSpline:
    if edge.control_points:
        return BSpline(
            Vec3.generate(edge.control_points),
            order=edge.degree + 1,
            knots=edge.knot_values or None,
            weights=edge.weights or None,
        )
    tangents = [edge.start_tangent, edge.end_tangent]
    known = [Vec3(tangent) for tangent in tangents if tangent is not None]
    return fit_points_to_cad_cv(
        Vec3.list(edge.fit_points), tangents=known if len(known) == 2 else None
    )


def _matrix(plane: Plane) -> Matrix44:
    return Matrix44(
        (*plane.u, 0, 0, *plane.v, 0, 0, 0, 0, 1, 0, *plane.origin, 0, 1),
    )
