"""Cuts marks off at the edges of an upright box."""

from collections.abc import Iterable, Iterator
from itertools import pairwise
from math import cos, radians, sin

from enclosure_app.drawing.marks import Anchor, Fill, Label, Mark, Stroke
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.polylines import moved
from enclosure_app.drawing.typeface import text_width
from enclosure_app.model.place import Point, Points


def clipped(marks: Iterable[Mark], box: Box) -> Iterator[Mark]:
    """Yield the marks as far as they lie in `box`; texts only where they lie in it as a whole."""
    for mark in marks:
        match mark:
            case Stroke():
                yield from _clip_stroke(mark, box)
            case Fill():
                rings = tuple(filter(None, (clip_ring(ring, box) for ring in mark.rings)))
                if rings:
                    yield Fill(rings, mark.colour, mark.source, mark.overlays)
            case Label():
                if all(box.holds(end) for end in _base_line(mark)):
                    yield mark
            case _:
                yield mark


def _clip_stroke(mark: Stroke, box: Box) -> Iterator[Stroke]:
    if all(box.holds(p) for p in mark.points):
        yield mark
        return
    run = (*mark.points, mark.points[0]) if mark.closed else mark.points
    for part in clip_line(run, box):
        yield Stroke(part, mark.pen, mark.source, overlays=mark.overlays)


def _base_line(label: Label) -> Points:
    """Return where the base line of a label starts and ends."""
    width = text_width(label.text, label.size, bold=label.bold)
    share = {Anchor.START: 0.0, Anchor.MIDDLE: 0.5, Anchor.END: 1.0}[label.anchor]
    along = cos(radians(label.angle)), sin(radians(label.angle))
    return moved(label.at, along, -share * width), moved(label.at, along, (1 - share) * width)


def clip_line(points: Points, box: Box) -> Iterator[Points]:
    """Yield the parts of a polyline that lie in `box`, in order."""
    if all(box.holds(p, 0.0) for p in points):
        yield points
        return
    part: list[Point] = []
    for a, b in pairwise(points):
        inside = _clip_segment(a, b, box)
        if inside is None:
            continue
        start, end = inside
        if part and part[-1] != start:
            yield tuple(part)
            part = []
        part = part or [start]
        part.append(end)
    if len(part) > 1:
        yield tuple(part)


def _clip_segment(a: Point, b: Point, box: Box) -> tuple[Point, Point] | None:
    """Cut one segment by the four edges (Liang and Barsky's parameters)."""
    dx, dy = b[0] - a[0], b[1] - a[1]
    first, last = 0.0, 1.0
    left, right = (-dx, a[0] - box.left), (dx, box.right - a[0])
    below, above = (-dy, a[1] - box.bottom), (dy, box.top - a[1])
    for towards, room in (left, right, below, above):
        if towards == 0:
            if room < 0:
                return None
        elif towards < 0:
            first = max(first, room / towards)
        else:
            last = min(last, room / towards)
    if first > last:
        return None
    start = a if first == 0 else (a[0] + first * dx, a[1] + first * dy)
    return start, b if last == 1 else (a[0] + last * dx, a[1] + last * dy)


def clip_ring(ring: Points, box: Box) -> Points:
    """Return the part of a ring that lies in `box` (Sutherland and Hodgman); () if there is none."""
    if all(box.holds(point, 0.0) for point in ring):
        return ring if len(ring) > 2 else ()
    for axis, limit, sign in (
        (0, box.left, 1),
        (0, box.right, -1),
        (1, box.bottom, 1),
        (1, box.top, -1),
    ):
        ring = tuple(_clip_edge(ring, axis, limit, sign))
    return ring if len(ring) > 2 else ()


def _clip_edge(ring: Points, axis: int, limit: float, sign: int) -> Iterator[Point]:
    for a, b in zip(ring, ring[1:] + ring[:1], strict=True):
        in_a, in_b = ((p[axis] - limit) * sign >= 0 for p in (a, b))
        if in_a:
            yield a
        if in_a != in_b:
            t = (limit - a[axis]) / (b[axis] - a[axis])
            yield a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])
