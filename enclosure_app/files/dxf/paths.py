"""Turns the entities that draw lines into flattened paths, one function for each type."""

import math
from collections.abc import Callable, Iterable, Iterator, Sequence
from typing import Any

from ezdxf.entities.arc import Arc
from ezdxf.entities.circle import Circle
from ezdxf.entities.ellipse import Ellipse
from ezdxf.entities.line import Line
from ezdxf.entities.lwpolyline import LWPolyline
from ezdxf.entities.mline import MLine
from ezdxf.entities.polyline import Polyline
from ezdxf.entities.solid import Face3d, Solid
from ezdxf.entities.spline import Spline
from ezdxf.math import Vec3

from enclosure_app.files.dxf.curves import (
    ellipse_points,
    is_full,
    spline_points,
    turn,
    without_repeats,
)
from enclosure_app.files.dxf.hatches import hatch_paths
from enclosure_app.files.dxf.placement import Placement, Plane
from enclosure_app.files.dxf.raw import RawPath, Tag
from enclosure_app.files.dxf.regions import Vertex, outline, ring_size, run_points
from enclosure_app.model.place import Point

# Each converter takes entities of its own type; the table below holds them all.
Converter = Callable[[Any, Tag, Placement], Iterable[RawPath]]

_CONTROL_POINT = 16


def _line(entity: Line, tag: Tag, placement: Placement) -> Iterable[RawPath]:
    dxf = entity.dxf
    return _bare(tag, placement.world((dxf.start, dxf.end)))


def _circle(entity: Circle, tag: Tag, placement: Placement) -> Iterable[RawPath]:
    return _arc_of(entity, tag, placement, (0.0, math.tau))


def _arc(entity: Arc, tag: Tag, placement: Placement) -> Iterable[RawPath]:
    return _arc_of(entity, tag, placement, turn(entity.dxf.start_angle, entity.dxf.end_angle))


def _arc_of(
    entity: Circle, tag: Tag, placement: Placement, span: tuple[float, float]
) -> Iterable[RawPath]:
    dxf = entity.dxf
    center = dxf.center
    radius = abs(dxf.radius)
    plane = placement.plane(dxf.get("extrusion"), center.z)
    axes = plane.direction(radius, 0.0), plane.direction(0.0, radius)
    points = ellipse_points(plane.point(center.x, center.y), axes, span, placement.sagitta)
    return _bare(tag, points, closed=is_full(span))


def _ellipse(entity: Ellipse, tag: Tag, placement: Placement) -> Iterable[RawPath]:
    dxf = entity.dxf
    major = dxf.major_axis
    minor = Vec3(dxf.extrusion).cross(major).normalize(major.magnitude * dxf.ratio)
    center, u, v = placement.world((dxf.center, dxf.center + major, dxf.center + minor))
    axes = (u[0] - center[0], u[1] - center[1]), (v[0] - center[0], v[1] - center[1])
    span = turn(math.degrees(dxf.start_param), math.degrees(dxf.end_param))
    points = ellipse_points(center, axes, span, placement.sagitta)
    return _bare(tag, points, closed=is_full(span))


def _spline(entity: Spline, tag: Tag, placement: Placement) -> Iterable[RawPath]:
    curve = entity.construction_tool()
    if placement.matrix is not None:
        curve = curve.transform(placement.matrix)
    points = [(point.x, point.y) for point in spline_points(curve, placement.sagitta)]
    closed = entity.closed or (len(points) > 2 and math.dist(points[0], points[-1]) < 1e-9)
    return _bare(tag, points, closed=closed)


def _lwpolyline(entity: LWPolyline, tag: Tag, placement: Placement) -> Iterable[RawPath]:
    dxf = entity.dxf
    plane = placement.plane(dxf.get("extrusion"), dxf.get("elevation", 0.0))
    vertices = [Vertex(*row) for row in entity.lwpoints.values.tolist()]
    width = float(dxf.get("const_width", 0.0))
    if width and not any(vertex.start_width or vertex.end_width for vertex in vertices):
        vertices = [Vertex(v.x, v.y, width, width, v.bulge) for v in vertices]
    return _polyline_2d(vertices, tag, (placement.sagitta, plane), closed=entity.closed)


def _polyline(entity: Polyline, tag: Tag, placement: Placement) -> Iterable[RawPath]:
    rows = [vertex.dxf for vertex in entity.vertices]
    rows = [row for row in rows if not row.get("flags", 0) & _CONTROL_POINT] or rows
    if entity.is_3d_polyline:
        points = placement.world([Vec3(row.location) for row in rows])
        return _bare(tag, points, closed=entity.is_closed)
    dxf = entity.dxf
    start, end = dxf.get("default_start_width", 0.0), dxf.get("default_end_width", 0.0)
    vertices = [
        Vertex(
            row.location.x,
            row.location.y,
            row.get("start_width", start),
            row.get("end_width", end),
            row.get("bulge", 0.0),
        )
        for row in rows
    ]
    plane = placement.plane(dxf.get("extrusion"), Vec3(dxf.get("elevation", (0, 0, 0))).z)
    return _polyline_2d(vertices, tag, (placement.sagitta, plane), closed=entity.is_closed)


def _polyline_2d(
    vertices: Sequence[Vertex], tag: Tag, view: tuple[float, Plane], *, closed: bool
) -> Iterable[RawPath]:
    sagitta, plane = view
    local = sagitta / plane.stretch if plane.stretch else sagitta
    drawn = vertices if closed else vertices[:-1]
    widths = {width for vertex in drawn for width in (vertex.start_width, vertex.end_width)}
    if len(widths) > 1:
        region = outline(vertices, local, closed=closed)
        if region is not None:
            outer, holes = region
            placed = tuple(tuple(plane.points(hole)) for hole in holes)
            yield RawPath(tag, tuple(plane.points(outer)), closed=True, filled=True, holes=placed)
        return
    width = widths.pop() * plane.scale if widths else 0.0
    points = plane.points(run_points(vertices, local, closed=closed))
    yield from _bare(tag, points, closed=closed, width=abs(width))


def _mline(entity: MLine, tag: Tag, placement: Placement) -> Iterator[RawPath]:
    """Each element of a multi-line is one polyline; its caps are left to the eye."""
    count = min((len(vertex.line_params) for vertex in entity.vertices), default=0)
    for element in range(count):
        points = [
            vertex.location + vertex.miter_direction * (vertex.line_params[element] or [0.0])[0]
            for vertex in entity.vertices
        ]
        yield from _bare(tag, placement.world(points), closed=entity.is_closed)


def _solid(entity: Solid, tag: Tag, placement: Placement) -> Iterable[RawPath]:
    """The third and fourth corner of a SOLID or TRACE are written crosswise."""
    dxf = entity.dxf
    corners = [Vec3(dxf.get(name, dxf.vtx2)) for name in ("vtx0", "vtx1", "vtx3", "vtx2")]
    plane = placement.plane(dxf.get("extrusion"), corners[0].z)
    ring = without_repeats(plane.points((c.x, c.y) for c in corners), closed=True)
    return (RawPath(tag, ring, closed=True, filled=True),) if ring_size(ring) else ()


def _face(entity: Face3d, tag: Tag, placement: Placement) -> Iterable[RawPath]:
    dxf = entity.dxf
    corners = [Vec3(dxf.get(name, dxf.vtx2)) for name in ("vtx0", "vtx1", "vtx2", "vtx3")]
    return _bare(tag, placement.world(corners), closed=True)


def _bare(
    tag: Tag, points: Sequence[Point], *, closed: bool = False, width: float = 0.0
) -> tuple[RawPath, ...]:
    """Return one path, or none where it has no length; a closed path of two points is a line."""
    kept = without_repeats(points, closed=closed)
    if len(kept) < 2:
        return ()
    return (RawPath(tag, kept, closed=closed and len(kept) > 2, width=width),)


CONVERTERS: dict[str, Converter] = {
    "LINE": _line,
    "CIRCLE": _circle,
    "ARC": _arc,
    "ELLIPSE": _ellipse,
    "SPLINE": _spline,
    "HELIX": _spline,
    "LWPOLYLINE": _lwpolyline,
    "POLYLINE": _polyline,
    "MLINE": _mline,
    "HATCH": hatch_paths,
    "MPOLYGON": hatch_paths,
    "SOLID": _solid,
    "TRACE": _solid,
    "3DFACE": _face,
}
