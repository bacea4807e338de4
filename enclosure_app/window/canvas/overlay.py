"""What is painted over the drawing at every frame: what is picked, the place gone to, the scale."""

from math import floor, log10

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen

from enclosure_app.drawing.lengths import format_length
from enclosure_app.model.edits.looking_up import runs_of
from enclosure_app.model.place import Point, Points
from enclosure_app.model.report import SectionResult
from enclosure_app.model.section import Section
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.catching.catches import Catch
from enclosure_app.window.canvas.catching.grid import paint_grid
from enclosure_app.window.canvas.ink.catch_marks import catch_words, paint_catch
from enclosure_app.window.canvas.ink.layer_preview import Lit, lit_pens, lit_runs
from enclosure_app.window.canvas.ink.lettering import face
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.canvas.workplace import Workplace

_PICKED = QColor(214, 51, 132)  # apart from every control's hue, by day and by night
_MOST = 300  # points of what is picked that are shown
_SCALE_SIZE = 2.1  # mm, of the capitals at the scale bar


class Overlay:
    """Paints over the drawing. `lit` are layers to light up, `place_gone_to` a ring."""

    def __init__(self, place: Workplace) -> None:
        self._place = place
        self.look = Look()
        self.lit: tuple[Lit, ...] = ()
        self.place_gone_to: Point | None = None
        self._gathered: object = None
        self._lit_paths: list[QPainterPath] = []
        self._picked_path = QPainterPath()
        self._runs: list[Points] = []

    @property
    def paper(self) -> QColor:
        """The colour of the sheet."""
        return QColor(self.look.theme.paper)

    def paint(self, painter: QPainter, camera: Camera, result: SectionResult | None) -> None:
        """Paint what is lit and picked, the ring about the place gone to, and the scale."""
        section, aids = self._place.section, self._place.aids
        if aids.grid_shown:
            ink = QColor(self.look.theme.quiet)
            paint_grid(painter, camera, aids.spacing(self.look.units), ink)
        if section:
            self._gather(section)
            for lit, path in zip(self.lit, self._lit_paths, strict=True):
                for pen in lit_pens(lit, self.look.theme):
                    _trace(painter, camera, path, pen)
            _trace(painter, camera, self._picked_path, QPen(_PICKED, 2.4))
            self._points(painter, camera)
        if self.place_gone_to and result:
            at = camera.seen(self.place_gone_to)
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(_PICKED, 2.0))
            painter.drawEllipse(at, 25.0, 25.0)
        self._scale(painter, camera)

    def paint_catch(self, painter: QPainter, camera: Camera, catch: Catch) -> None:
        """Paint what the pointer caught: a shape for each kind, and its name."""
        told = catch_words(catch.kind, self._place.aids.beside, self.look.units)
        paint_catch(painter, camera.seen(catch.at), catch, told)

    def _gather(self, section: Section) -> None:
        """Gather the lines that are lit and picked, once for as long as these stay the same."""
        picked = self._place.picked, self._place.picked_lines
        wanted = (id(section), self.lit, picked)
        if wanted == self._gathered:
            return
        self._gathered = wanted
        names, handles = picked
        lines = section.strokes if handles else ()
        self._lit_paths = [_path(lit_runs(section, lit)) for lit in self.lit]
        self._runs = [stroke.points for stroke in lines if stroke.handle in handles]
        self._runs += _runs(section, [name for name in names if name in section.by_name])
        self._picked_path = _path(self._runs)

    def _points(self, painter: QPainter, camera: Camera) -> None:
        """Show the points of what is picked, unless they are too many to be told apart."""
        painter.setPen(QPen(_PICKED, 1.2))
        painter.setBrush(self.paper)
        points = [point for run in self._runs[:_MOST] for point in run[:_MOST]]
        for point in points if len(points) <= _MOST else ():
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
        painter.setFont(face(_SCALE_SIZE))
        painter.setPen(QColor(self.look.theme.ink))
        painter.drawText(QPointF(left + 4, y - 5), format_length(length, self.look.units))


def round_length(wanted: float, *, imperial: bool) -> float:
    """Return the round length (mm) next below `wanted`: 1, 2 or 5 times a power of ten, or inches."""
    if imperial:
        inches = (1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 2, 3, 6, 12, 24, 48, 120, 240, 600, 1200, 6000)
        return max((n * 25.4 for n in inches if n * 25.4 <= wanted), default=inches[0] * 25.4)
    power = 10.0 ** floor(log10(wanted))
    return max((n * power for n in (1, 2, 5) if n * power <= wanted), default=power)


def _runs(section: Section, names: list[str]) -> list[Points]:
    return [run for name in names for run in runs_of(section.by_name[name].shape)]


def _path(runs: list[Points]) -> QPainterPath:
    path = QPainterPath()
    for run in runs:
        path.moveTo(*run[0])
        for point in run[1:]:
            path.lineTo(*point)
    return path


def _trace(painter: QPainter, camera: Camera, path: QPainterPath, pen: QPen) -> None:
    """Paint a path of the section (mm) with a pen of so many dots at every zoom."""
    if path.isEmpty():
        return
    pen.setCosmetic(True)
    painter.save()
    painter.setTransform(camera.transform(), combine=True)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.strokePath(path, pen)
    painter.restore()
