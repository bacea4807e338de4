"""The walk at a glance: a band from end to end with a mark for each stop, and where one is."""

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QMouseEvent, QPainter, QPaintEvent, QPalette, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from enclosure_app.window.walk.stops import Round, Stop, Which

_HIGH, _EDGE = 44, 18.0  # dots
_SIZE, _LEAST, _HERE = 6.5, 1.5, 13.0
_FINGER = 22.0


class Overview(QWidget):
    """Stops stand in walking order: triangles are findings, discs are places to look.

    What is done is filled. `taken`: the key of the stop that was touched.
    """

    taken = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._round: Round | None = None
        self._stops: tuple[Stop, ...] = ()
        self._here = ""
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setMinimumHeight(_HIGH)
        self.setToolTip(
            self.tr("Triangles are findings, discs are places to look at; filled ones are done")
        )
        self.setAccessibleName(self.tr("Where you are on the walk"))

    def show_round(self, walked: Round, which: Which, here: str) -> None:
        """Show the stops that are walked, and which of them one is at."""
        self._round, self._stops, self._here = walked, walked.shown(which), here
        self.setAccessibleDescription(
            self.tr("{} of {} are done").format(
                len(walked.stops) - len(walked.left), len(walked.stops)
            )
        )
        self.update()

    def sizeHint(self) -> QSize:
        """Return a band as high as a finger is wide."""
        return QSize(240, _HIGH)

    def x_of(self, stop: Stop) -> float:
        """Return where a stop stands, in dots from the left: as far from the next as all others."""
        at, gaps = self._stops.index(stop), len(self._stops) - 1
        share = at / gaps if gaps else 0.5
        return _EDGE + share * (self.width() - 2 * _EDGE)

    @property
    def _size(self) -> float:
        """Half a mark's width, dots: many stops are smaller, so that they are still told apart."""
        gaps = max(len(self._stops) - 1, 1)
        return max(min(_SIZE, 0.42 * (self.width() - 2 * _EDGE) / gaps), _LEAST)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Go to the stop nearest to the finger."""
        x = event.position().x()
        near = min(self._stops, key=lambda stop: abs(self.x_of(stop) - x), default=None)
        if near and abs(self.x_of(near) - x) <= _FINGER:
            self.taken.emit(near.key)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the band and the stops."""
        del event
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        y, ink = self.height() / 2, self.palette().color(QPalette.ColorRole.WindowText)
        painter.setPen(QPen(ink, 1.2))
        painter.drawLine(QPointF(_EDGE, y), QPointF(self.width() - _EDGE, y))
        for stop in self._stops:
            self._paint_stop(painter, stop, QPointF(self.x_of(stop), y))

    def _paint_stop(self, painter: QPainter, stop: Stop, at: QPointF) -> None:
        roles = QPalette.ColorRole
        ink, ground = self.palette().color(roles.WindowText), self.palette().color(roles.Window)
        done = self._round is not None and self._round.is_done(stop)
        if stop.key == self._here:
            painter.setPen(QPen(self.palette().color(roles.Accent), 3.0))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(
                QRectF(at.x() - _HERE, at.y() - _HERE, 2 * _HERE, 2 * _HERE), 5, 5
            )
        painter.setPen(QPen(ink, 1.8))
        painter.setBrush(ink if done else ground)
        if stop.finding is None:
            painter.drawEllipse(at, 0.85 * self._size, 0.85 * self._size)
        else:
            flag = (at + QPointF(x * self._size, y * self._size) for x, y in _FLAG)
            painter.drawPolygon(QPolygonF(list(flag)))


_FLAG = ((0.0, -1.1), (1.1, 0.9), (-1.1, 0.9))
