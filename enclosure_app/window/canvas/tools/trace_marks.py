"""What tracing shows and says: the way that is followed, where nothing is drawn, how a sheet lies."""

from math import dist

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QPainter, QPolygonF

from enclosure_app.drawing.lengths import format_length
from enclosure_app.model.drawing import Units
from enclosure_app.model.place import Point, Points
from enclosure_app.planning.tracing.guiding import Lay
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.ink.ink import pen
from enclosure_app.window.canvas.ink.lettering import words
from enclosure_app.window.canvas.tools.tool import say


def paint_start(painter: QPainter, camera: Camera, start: Point | None) -> None:
    """Paint a ring where the next leg goes from."""
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(pen(2.0))
    if start is not None:
        painter.drawEllipse(camera.seen(start), 6.0, 6.0)


def paint_way(painter: QPainter, camera: Camera, run: Points) -> None:
    """Paint a way that is shown before it is clicked."""
    painter.setPen(pen(2.4, Qt.PenStyle.DashLine))
    painter.drawPolyline(QPolygonF([camera.seen(point) for point in run]))


def paint_gap(painter: QPainter, camera: Camera, gap: tuple[Point, Point], units: Units) -> None:
    """Paint where nothing is drawn: a dotted line between two rings, with its length."""
    ends = [camera.seen(point) for point in gap]
    painter.setPen(pen(2.0, Qt.PenStyle.DotLine))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawLine(*ends)
    for end in ends:
        painter.drawEllipse(end, 4.0, 4.0)
    told = say("{} not drawn").format(format_length(dist(*gap), units))
    words(painter, (ends[0] + ends[1]) / 2 + QPointF(10, -8), told)


def lay_words(lay: Lay, *, marked: bool) -> str:
    """Return how a sheet lies at its line, with a place for the distance.

    Where neither inside nor outside is marked, sides are told as they are seen along the line.
    """
    if lay is Lay.ON:
        return say("D lays it beside the line.")
    if lay is Lay.OUTSIDE:
        return (
            say("It lies {} outside of the line (D, or type a length).")
            if marked
            else say("It lies {} to the left of the line (D, or type a length).")
        )
    return (
        say("It lies {} inside of the line (D, or type a length).")
        if marked
        else say("It lies {} to the right of the line (D, or type a length).")
    )
