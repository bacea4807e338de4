"""Paints marks with Qt. It decides nothing: order, pens and places are in the marks."""

from collections.abc import Iterable

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QBrush, QColor, QFontMetricsF, QPainter, QPainterPath, QPen, QPolygonF

from enclosure_app.drawing.marks import Anchor, Fill, Flag, Label, Mark, Picture, Stroke
from enclosure_app.drawing.theme import Pen
from enclosure_app.model.place import Point, Points
from enclosure_app.reports.pdf.fonts import font
from enclosure_app.reports.pdf.pictures import paint_picture

_HALO = 0.35  # mm around letters


class MarkPainter:
    """Paints marks in sheet mm onto a device of `dots_per_mm`, `height` mm high."""

    def __init__(self, painter: QPainter, dots_per_mm: float, height: float) -> None:
        self._painter = painter
        self._dots = dots_per_mm
        self._height = height

    def paint(self, marks: Iterable[Mark]) -> None:
        """Paint `marks` in their order."""
        for mark in marks:
            match mark:
                case Stroke():
                    self._stroke(mark)
                case Fill():
                    self._fill(mark)
                case Label():
                    self._label(mark)
                case Flag():
                    self.paint(mark.parts)
                case Picture():
                    self._picture(mark)

    def _picture(self, mark: Picture) -> None:
        paint_picture(
            self._painter, mark, self._at(mark.at), self._dots, self._polygon(mark.within)
        )

    def _at(self, point: Point) -> QPointF:
        return QPointF(point[0] * self._dots, (self._height - point[1]) * self._dots)

    def _polygon(self, points: Points) -> QPolygonF:
        return QPolygonF([self._at(point) for point in points])

    def _pen(self, pen: Pen) -> QPen:
        line = QPen(QColor(pen.colour), pen.width * self._dots)
        line.setCapStyle(Qt.PenCapStyle.FlatCap)
        line.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
        if pen.dash:
            line.setDashPattern([part / pen.width for part in pen.dash])
        return line

    def _stroke(self, mark: Stroke) -> None:
        self._painter.setPen(self._pen(mark.pen))
        self._painter.setBrush(Qt.BrushStyle.NoBrush)
        polygon = self._polygon(mark.points)
        if mark.closed:
            self._painter.drawPolygon(polygon)
        else:
            self._painter.drawPolyline(polygon)

    def _fill(self, mark: Fill) -> None:
        path = QPainterPath()
        path.setFillRule(Qt.FillRule.OddEvenFill)
        for ring in mark.rings:
            path.addPolygon(self._polygon(ring))
            path.closeSubpath()
        self._painter.fillPath(path, QBrush(QColor(mark.colour)))

    def _label(self, mark: Label) -> None:
        face = font(mark.size, self._dots, bold=mark.bold)
        share = {Anchor.START: 0.0, Anchor.MIDDLE: 0.5, Anchor.END: 1.0}[mark.anchor]
        shift = QPointF(-share * QFontMetricsF(face).horizontalAdvance(mark.text), 0.0)
        self._painter.save()
        self._painter.translate(self._at(mark.at))
        self._painter.rotate(-mark.angle)
        if mark.halo:
            path = QPainterPath()
            path.addText(shift, face, mark.text)
            around = QPen(QColor(mark.halo), 2 * _HALO * self._dots)
            around.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
            self._painter.strokePath(path, around)
        self._painter.setFont(face)
        self._painter.setPen(QColor(mark.colour))
        # a space parts what is read aloud from the next line of the same words
        self._painter.drawText(shift, f"{mark.text} " if mark.tag else mark.text)
        self._painter.restore()
