"""What is painted over the drawing at every frame: what is picked, the place gone to, the scale."""

from math import cos, floor, log10, radians, sin

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen, QPolygonF

from enclosure_app.drawing.lengths import format_length
from enclosure_app.model.edits.looking_up import runs_of
from enclosure_app.model.place import Point, Points
from enclosure_app.model.report import SectionResult
from enclosure_app.model.section import Section
from enclosure_app.reports.pdf_fonts import font
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.lettering import words
from enclosure_app.window.canvas.look import DOTS, Look
from enclosure_app.window.canvas.snapping import Catch, Kind
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.words import word

_PICKED = QColor(214, 51, 132)  # apart from every control's hue, by day and by night
_LIT = QColor(214, 51, 132, 120)


class Overlay:
    """Paints over the drawing. `lit` are names of layers to light up, `place_gone_to` a ring."""

    def __init__(self, place: Workplace) -> None:
        self._place = place
        self.look = Look()
        self.lit: frozenset[str] = frozenset()
        self.place_gone_to: Point | None = None

    @property
    def paper(self) -> QColor:
        """The colour of the sheet."""
        return QColor(self.look.theme.paper)

    def paint(self, painter: QPainter, camera: Camera, result: SectionResult | None) -> None:
        """Paint what is lit and picked, the ring about the place gone to, and the scale."""
        section = self._place.section
        if section:
            self._layers(painter, camera, section)
            self._picked(painter, camera, section)
        if self.place_gone_to and result:
            at = camera.seen(self.place_gone_to)
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(_PICKED, 2.0))
            painter.drawEllipse(at, 25.0, 25.0)
        self._scale(painter, camera)

    def paint_catch(self, painter: QPainter, camera: Camera, catch: Catch) -> None:
        """Paint what the pointer caught: a shape for each kind, and its name."""
        at = camera.seen(catch.at)
        painter.setPen(QPen(_PICKED, 1.8))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPath(_catch_shape(catch.kind, at))
        words(painter, at + QPointF(14, -12), word(catch.kind.value))

    def _layers(self, painter: QPainter, camera: Camera, section: Section) -> None:
        if not self.lit:
            return
        runs = [s.points for s in section.strokes if s.layer in self.lit]
        for piece in section.pieces:
            if piece.layer in self.lit:
                runs += runs_of(piece.shape)
        _trace(painter, camera, runs, QPen(_LIT, 4.0))

    def _picked(self, painter: QPainter, camera: Camera, section: Section) -> None:
        runs = [s.points for s in section.strokes if s.handle in self._place.picked_lines]
        for name in self._place.picked:
            if name in section.by_name:
                runs += runs_of(section.by_name[name].shape)
        _trace(painter, camera, runs, QPen(_PICKED, 2.4))
        painter.setPen(QPen(_PICKED, 1.2))
        painter.setBrush(self.paper)
        for run in runs[:60]:
            for point in run[:200]:
                at = camera.seen(point)
                painter.drawRect(QRectF(at.x() - 2.5, at.y() - 2.5, 5.0, 5.0))

    def _scale(self, painter: QPainter, camera: Camera) -> None:
        """Paint a bar of a round length in the lower left corner."""
        length = round_length(110 / camera.zoom, imperial=self.look.units.imperial)
        left, y = 18.0, camera.size.height() - 16.0
        right = left + length * camera.zoom
        pen = QPen(QColor(self.look.theme.quiet), 1.6)
        painter.setPen(pen)
        painter.drawPolyline(
            [QPointF(left, y - 5), QPointF(left, y), QPointF(right, y), QPointF(right, y - 5)]
        )
        face = font(self.look.theme.small * 1.15, DOTS, bold=True)
        painter.setFont(face)
        painter.setPen(QColor(self.look.theme.ink))
        painter.drawText(QPointF(left + 4, y - 5), format_length(length, self.look.units))


def round_length(wanted: float, *, imperial: bool) -> float:
    """Return the round length (mm) next below `wanted`: 1, 2 or 5 times a power of ten, or inches."""
    if imperial:
        inches = (1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 2, 3, 6, 12, 24, 48, 120, 240, 600, 1200, 6000)
        return max((n * 25.4 for n in inches if n * 25.4 <= wanted), default=inches[0] * 25.4)
    power = 10.0 ** floor(log10(wanted))
    return max((n * power for n in (1, 2, 5) if n * power <= wanted), default=power)


def _trace(painter: QPainter, camera: Camera, runs: list[Points], pen: QPen) -> None:
    path = QPainterPath()
    for run in runs:
        path.addPolygon(QPolygonF([camera.seen(point) for point in run]))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.strokePath(path, pen)


_RAYS = {  # degrees: rays about the dot, as many as tell the kinds apart
    Kind.END: (135,),
    Kind.MIDDLE: (0, 180),
    Kind.SQUARE: (0, 90, 180),
    Kind.CROSSING: (45, 135, 225, 315),
    Kind.BESIDE: (60, 120, 240, 300),
    Kind.LINE: (),
}


def _catch_shape(kind: Kind, at: QPointF) -> QPainterPath:
    """Return a ring about the place, with rays that tell what it is."""
    path = QPainterPath()
    path.addEllipse(at, 4.5, 4.5)
    for degrees in _RAYS[kind]:
        ray = QPointF(cos(radians(degrees)), -sin(radians(degrees)))
        path.moveTo(at + ray * 4.5)
        path.lineTo(at + ray * 10.0)
    return path
