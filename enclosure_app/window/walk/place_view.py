"""The place of a stop, large: the drawing's own marks, moved and pinched with the fingers."""

from PySide6.QtCore import QPointF, QSize, QSizeF
from PySide6.QtGui import (
    QColor,
    QPainter,
    QPaintEvent,
    QPen,
    QPolygonF,
    QResizeEvent,
)
from PySide6.QtWidgets import QWidget

from enclosure_app.drawing.placement import box_around
from enclosure_app.model.place import Point, Points
from enclosure_app.model.report import SectionResult
from enclosure_app.model.underlay import Underlay
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.canvas.picture_view import PictureView
from enclosure_app.window.walk.by_hand import ByHand

_ACROSS = 420.0  # mm that are seen at least about a place
_ROOM = 2.6  # times the size of what shows the place
_RING, _RING_WIDTH, _LINE_WIDTH = 34.0, 3.0, 5.0  # dots
_MARK = QColor(214, 51, 132)  # apart from every control's hue, by day and by night


class PlaceView(ByHand, PictureView):
    """Shows one place of a section. It changes nothing: it is only looked at."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._shown: tuple[Point, tuple[Points, ...]] | None = None
        self.setMinimumSize(QSize(220, 160))
        self.setAccessibleName(self.tr("The place in the drawing"))

    def show_result(
        self, result: SectionResult, look: Look, under: tuple[Underlay, ...] = ()
    ) -> None:
        """Show a section; only what is another than before is painted anew."""
        last = self.scene
        if last and (last.result, last.look, last.underlays) == (result, look, under):
            return
        self.below.forget_others(under)
        self.show_scene(result, look, under)
        self.update()

    def go_to(self, at: Point, extent: tuple[Points, ...]) -> None:
        """Bring a place into the middle, with all that shows it and some room around it."""
        if (at, extent) != self._shown:
            self._shown = (at, extent)
            self._look_at_place()

    def go_nowhere(self) -> None:
        """Show the whole section, and no place in it."""
        self._shown = None
        self.show_all()

    def show_all(self) -> None:
        """Show the whole section."""
        if self.scene:
            self.look_from(self.camera.fitted(box_around(self.scene.result.section.frame)))

    def pan(self, by: QPointF) -> None:
        """Move the paper by so many dots."""
        self.look_from(self.camera.panned(by))

    def zoom(self, factor: float, about: QPointF | None = None) -> None:
        """Look closer or wider."""
        PictureView.zoom(self, factor, about)

    def come_back(self) -> None:
        """Go back to the place."""
        self._look_at_place()

    def _look_at_place(self) -> None:
        if self._shown is None:
            return
        at, extent = self._shown
        off = [max(abs(x - at[0]), abs(y - at[1])) for run in extent for x, y in run]
        across = min(max(_ACROSS, _ROOM * max(off, default=0.0)), 2 * _ACROSS)
        side = max(min(self.width(), self.height()), 1)
        self.look_from(Camera(at, side / across, self.camera.size))

    # ---- Qt's events ---------------------------------------------------------------------------

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the drawing, and what shows the place over it."""
        painter = QPainter(self)
        theme = self.scene.look.theme if self.scene else Look().theme
        painter.fillRect(event.rect(), QColor(theme.paper))
        if self.scene:
            self.backing.paint(painter, self.camera)
        if self._shown:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            self._paint_place(painter, *self._shown)

    def _paint_place(self, painter: QPainter, at: Point, extent: tuple[Points, ...]) -> None:
        see_through = QColor(_MARK)
        see_through.setAlpha(90)
        painter.setPen(QPen(see_through, _LINE_WIDTH))
        for run in extent:
            painter.drawPolyline(QPolygonF([self.camera.seen(point) for point in run]))
        painter.setPen(QPen(_MARK, _RING_WIDTH))
        painter.drawEllipse(self.camera.seen(at), _RING, _RING)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Look at the place anew: there is more or less room for it."""
        super().resizeEvent(event)
        self.camera = self.camera.resized(QSizeF(event.size()))
        if self._shown:
            self._look_at_place()
        else:
            self.show_all()
        self.renew_soon()
