"""How joints are shown: an open ring where nothing seals, a dot where products seal, a square by hand.

The square says that a person declared the joint sealed. Whatever tool is in hand it is seen among
the marks of the drawing (`drawing/section/sealed_marks.py`); here it is painted as soon as it is said.
"""

from collections.abc import Mapping

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter

from enclosure_app.model.report import Joint, SectionResult
from enclosure_app.model.section import Section
from enclosure_app.window.canvas.ink.ink import INK, pen

Pair = tuple[str, str]
"""The names of two pieces that meet, in sorted order."""


def pair_of(joint: Joint) -> Pair:
    """Return the names of the two pieces of a joint."""
    return min(joint.a, joint.b), max(joint.a, joint.b)


def joints_of(result: SectionResult | None, section: Section) -> Mapping[Pair, list[Joint]]:
    """Return the joints of all layers whose pieces are both still there, by their names."""
    found: dict[Pair, list[Joint]] = {}
    for layer in result.layers.values() if result else ():
        for joint in layer.joints:
            if joint.a in section.by_name and joint.b in section.by_name:
                found.setdefault(pair_of(joint), []).append(joint)
    return found


def paint_joint(painter: QPainter, at: QPointF, *, sealed: bool, said: bool) -> None:
    """Paint a joint at a dot of the view."""
    painter.setPen(pen(1.8))
    painter.setBrush(INK if sealed and not said else Qt.BrushStyle.NoBrush)
    if said:
        painter.drawRect(QRectF(at.x() - 5.0, at.y() - 5.0, 10.0, 10.0))
        painter.drawPolyline([at + QPointF(-3, 0), at + QPointF(-1, 3), at + QPointF(4, -4)])
    else:
        painter.drawEllipse(at, *((3.0, 3.0) if sealed else (6.0, 6.0)))
