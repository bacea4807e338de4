"""Which picture under the drawing a gesture means, and how it is told of."""

from math import dist

from PySide6.QtCore import Qt
from PySide6.QtGui import QPainter, QPolygonF

from enclosure_app.geometry.similarity import Similarity
from enclosure_app.model.place import Point
from enclosure_app.model.underlay import Underlay
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.ink.ink import pen
from enclosure_app.window.canvas.workplace import Workplace


def movable(place: Workplace) -> list[tuple[int, Underlay]]:
    """Return what lies under the section in view, is shown and not locked, the uppermost first."""
    section = place.section
    if section is None:
        return []
    found = [
        (index, each)
        for index, each in enumerate(place.document.project.underlays)
        if each.shown and not each.locked and each.section in (section.name, "")
    ]
    return found[::-1]


def underlay_meant(place: Workplace, at: Point) -> int | None:
    """Return which underlay a click means: the uppermost there, else the only one there is."""
    there = movable(place)
    hit = [index for index, each in there if _holds(each, at)]
    if hit:
        return hit[0]
    return there[0][0] if len(there) == 1 else None


def paint_outline(
    painter: QPainter, camera: Camera, underlay: Underlay, similar: Similarity
) -> None:
    """Paint where the edge of an underlay will lie."""
    corners = [camera.seen(corner) for corner in similar.places(underlay.outline)]
    painter.setPen(pen(1.4, Qt.PenStyle.DashLine))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawPolygon(QPolygonF(corners))


def apart(a: Point | None, b: Point | None, least: float) -> bool:
    """Whether there are two places further apart than `least`."""
    return a is not None and b is not None and dist(a, b) > least


def _holds(underlay: Underlay, at: Point) -> bool:
    ring = underlay.outline
    sides = [
        (bx - ax) * (at[1] - ay) - (by - ay) * (at[0] - ax)
        for (ax, ay), (bx, by) in zip(ring, (*ring[1:], ring[0]), strict=True)
    ]
    return all(side >= 0 for side in sides)
