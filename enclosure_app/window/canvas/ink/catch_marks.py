"""How what the pointer caught is shown: a shape for each kind, and its name beside it."""

from math import cos, radians, sin

from PySide6.QtCore import QCoreApplication, QPointF, Qt
from PySide6.QtGui import QPainter, QPainterPath

from enclosure_app.drawing.lengths import format_length
from enclosure_app.model.drawing import Units
from enclosure_app.window.canvas.catching.catches import Catch, Kind
from enclosure_app.window.canvas.ink.ink import pen
from enclosure_app.window.canvas.ink.lettering import words

_RAYS: dict[Kind, tuple[int, ...]] = {  # degrees: rays about the dot, that tell the kinds apart
    Kind.END: (135,),
    Kind.MIDDLE: (0, 180),
    Kind.SQUARE: (0, 90, 180),
    Kind.CROSSING: (45, 135, 225, 315),
    Kind.MEETS: (90,),
    Kind.OFF_END: (60, 120, 240),
    Kind.OFF_CROSSING: (60, 120, 240, 300, 0, 180),
    Kind.OFF_MEETS: (60, 120, 270),
    Kind.OFF_LINE: (60, 120, 240, 300),
    Kind.LINE: (),
    Kind.GRID: (0, 90, 180, 270),
}


def paint_catch(painter: QPainter, at: QPointF, catch: Catch, told: str) -> None:
    """Paint the shape of what was caught at a dot of the view, with its name beside it."""
    painter.setPen(pen(1.8))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawPath(catch_shape(catch.kind, at))
    words(painter, at + QPointF(14, -12), told)


def catch_words(kind: Kind, beside: float, units: Units) -> str:
    """Return the name of what was caught; `beside` (mm) is how far off boards sheets are drawn."""
    names = {
        Kind.END: say("end"),
        Kind.MIDDLE: say("middle"),
        Kind.SQUARE: say("square to the line"),
        Kind.CROSSING: say("crossing"),
        Kind.MEETS: say("meets the line"),
        Kind.OFF_END: say("{} beside the end"),
        Kind.OFF_CROSSING: say("{} beside, where lines cross"),
        Kind.OFF_MEETS: say("meets the line {} beside"),
        Kind.OFF_LINE: say("{} beside the line"),
        Kind.LINE: say("on the line"),
        Kind.GRID: say("grid"),
    }
    return names[kind].format(format_length(beside, units)) if kind.off else names[kind]


def catch_shape(kind: Kind, at: QPointF) -> QPainterPath:
    """Return a ring about the place, with rays that tell what it is."""
    path = QPainterPath()
    path.addEllipse(at, 4.5, 4.5)
    for degrees in _RAYS[kind]:
        ray = QPointF(cos(radians(degrees)), -sin(radians(degrees)))
        path.moveTo(at + ray * 4.5)
        path.lineTo(at + ray * 10.0)
    return path


def say(text: str) -> str:
    """Return a text in the language of the window."""
    return QCoreApplication.translate("Catches", text)
