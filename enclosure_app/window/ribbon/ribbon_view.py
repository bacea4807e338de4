"""The ribbon along the foot: each control layer unrolled, walked with the mouse or the arrows."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import islice
from time import perf_counter

from PySide6.QtCore import QEvent, QPointF, QSize, Qt, QTimer, Signal
from PySide6.QtGui import (
    QColor,
    QHelpEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QPixmap,
    QResizeEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QScrollArea, QSizePolicy, QToolTip, QWidget

from enclosure_app.drawing.marks import Mark
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.polylines import foot, walk_to
from enclosure_app.drawing.ribbon.band import HEIGHT
from enclosure_app.drawing.ribbon.ribbon import marks_in_turn
from enclosure_app.drawing.ribbon.unrolled import Unrolled, unrolled
from enclosure_app.model.place import Point
from enclosure_app.model.product import Control
from enclosure_app.model.report import SectionResult
from enclosure_app.reports.pdf.painter import MarkPainter
from enclosure_app.window.canvas.ink.look import DOTS, Look, legible
from enclosure_app.window.canvas.picture.composition import numbers_of
from enclosure_app.window.ribbon.ribbon_told import stops, told_at

_EDGE = 6.0  # mm on either side of the bands
_BAND = (5.6, 13.0)  # mm below the top of a ribbon, between which its band lies
_STEP = 0.01  # of the walk, that an arrow key goes
_LEAST = 1.35  # bands that the strip shows at first in a window of the height _SMALL,
_SMALL, _SHARE = 768, 0.4  # and the share of what a window is higher that goes to the strip
_NOTCH = 0.02  # of the walk, that one notch of the wheel goes
_ONWARD = {Qt.Key.Key_Right: _STEP, Qt.Key.Key_Left: -_STEP}
_TURN = {Qt.Key.Key_Down: 1, Qt.Key.Key_Up: -1}
_LEAP = {Qt.Key.Key_PageDown: 1, Qt.Key.Key_PageUp: -1}
_ENDS = {Qt.Key.Key_Home: 0.0, Qt.Key.Key_End: 1.0}
_SPELL = 0.010  # seconds of painting at a time
_AT_ONCE = 100  # marks painted before looking at the clock
_WHOLE = object()
_WALKING = frozenset((*_ONWARD, *_TURN, *_LEAP, *_ENDS))


@dataclass(frozen=True, slots=True)
class _Band:
    """One layer that has a walk, and the box of its ribbon in mm from the lower left corner."""

    control: Control
    laid: Unrolled
    box: Box


class RibbonView(QWidget):
    """Paints the ribbons of one section. `walked`: show this place in the drawing.

    `reached`: the band with this number is to be seen.
    """

    walked = Signal(object)
    reached = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._result: SectionResult | None = None
        self._look = Look()
        self._bands: list[_Band] = []
        self._picture = QPixmap()  # the last that is whole
        self._steps: Iterator[None] | None = None  # of the one that is being painted
        self._timer = QTimer(self)
        self._timer.setInterval(0)
        self._timer.timeout.connect(self._turn)
        self._at: tuple[int, float] | None = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAccessibleName(self.tr("The layers unrolled"))
        self.setStatusTip(
            self.tr(
                "Click, turn the wheel or use the arrows to walk along a layer; Page Down leaps to "
                "the next lap or gap, Shift and the wheel turn to the other layers."
            )
        )
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setCursor(Qt.CursorShape.PointingHandCursor)

    @property
    def at(self) -> tuple[int, float] | None:
        """The band and the place along it (mm) that is marked, None before one was."""
        return self._at

    def show_result(self, result: SectionResult, look: Look) -> None:
        """Show the layers of a section, or the one that is shown alone."""
        self._result, self._look = result, look
        self._begin()
        # and all that the strip has, if it is more
        self.setMinimumHeight(self.sizeHint().height())
        self.update()

    def show_place(self, at: Point, control: Control | None) -> None:
        """Mark where a place of the drawing stands along the band of a control, else the first."""
        self._lay()
        numbers = [i for i, band in enumerate(self._bands) if control in (None, band.control)]
        self._at = (numbers[0], self._bands[numbers[0]].laid.along(at)) if numbers else None
        self.update()
        if numbers:
            self.reached.emit(numbers[0])

    def show_piece(self, name: str, near: Point | None) -> None:
        """Mark where a sheet of the drawing stands along the first band that follows it.

        `near` says where along the sheet; without it its beginning is marked.
        """
        self._lay()
        for number, band in enumerate(self._bands):
            courses = band.laid.courses
            parts = [c for c in courses if c.piece == name and len(c.points) > 1]
            if parts:
                feet = [(foot(p.points, near), p) for p in parts] if near else []
                nearest = min(feet, key=lambda pair: pair[0].off, default=None)
                on = nearest[1].start + nearest[0].along if nearest else parts[0].start
                self._at = (number, on)
                self.update()
                self.reached.emit(number)
                return

    def sizeHint(self) -> QSize:
        """Return the room for every layer that is shown."""
        count = max(len(self._controls()), 1)
        return QSize(600, round(count * HEIGHT * DOTS) + 6)

    def _controls(self) -> list[Control]:
        if self._result is None:
            return []
        layers = self._result.layers
        return [
            control
            for control in Control
            if control in layers and layers[control].walk and self._look.only in (None, control)
        ]

    def _lay(self) -> None:
        """Give every band its box."""
        if self._result is None:
            return
        height, width = self.height() / DOTS, self.width() / DOTS
        self._bands = [
            _Band(
                control,
                unrolled(self._result.layers[control]),
                Box(_EDGE, height - (i + 1) * HEIGHT, width - _EDGE, height - i * HEIGHT - 1.0),
            )
            for i, control in enumerate(self._controls())
        ]

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the bands, from the picture that is kept of them, and the place that is shown."""
        painter = QPainter(self)
        ratio = self.devicePixelRatioF()
        if self._steps is None and self._picture.size() != (self.size() * ratio):
            self._begin()
        painter.fillRect(event.rect(), QColor(self._look.theme.paper))
        painter.drawPixmap(0, 0, self._picture)
        if self._at is not None:
            self._paint_place(painter, *self._at)
        if self.hasFocus():
            painter.setPen(QPen(self.palette().accent().color(), 2.0))
            painter.drawRect(self.rect().adjusted(1, 1, -1, -1))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Paint another picture; the last one is seen until it is whole."""
        super().resizeEvent(event)
        self._begin()

    @property
    def whole(self) -> bool:
        """Whether the picture that is seen is that of what is shown."""
        return self._steps is None

    def finish_painting(self) -> None:
        """Paint the picture that is under way to its end."""
        while self._steps is not None:
            self._turn()

    def _begin(self) -> None:
        """Begin a picture: it is painted in turns, since many sheets take long."""
        self._steps = self._painting(self.devicePixelRatioF())
        self._timer.start()

    def _turn(self) -> None:
        until = perf_counter() + _SPELL
        while self._steps is not None and perf_counter() < until:
            if next(self._steps, _WHOLE) is _WHOLE:
                self._steps = None
                self._timer.stop()
                self.update()

    def _painting(self, ratio: float) -> Iterator[None]:
        self._lay()
        picture = QPixmap(self.size() * ratio)
        picture.setDevicePixelRatio(ratio)
        picture.fill(QColor(self._look.theme.paper))
        for band in self._bands:
            marks = self._marks(band)
            while some := list(islice(marks, _AT_ONCE)):  # made before a painter is at work
                self._paint_marks(picture, some)
                yield
        if not self._bands:
            painter = QPainter(picture)
            painter.setPen(QColor(self._look.theme.quiet))
            text = self.tr("A layer is unrolled here once it runs from one edge to the other.")
            painter.drawText(self.rect(), int(Qt.AlignmentFlag.AlignCenter), text)
            painter.end()
        self._picture = picture

    def _paint_marks(self, picture: QPixmap, marks: Sequence[Mark]) -> None:
        painter = QPainter(picture)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        MarkPainter(painter, DOTS, self.height() / DOTS).paint(marks)
        painter.end()

    def _marks(self, band: _Band) -> Iterator[Mark]:
        if self._result is None:
            return
        numbers, look = dict(numbers_of(self._result.findings)), self._look
        layer = self._result.layers[band.control]
        for mark in marks_in_turn(
            self._result, layer, numbers, band.box, (look.units, look.theme)
        ):
            yield legible(mark, dark=look.dark)

    def _paint_place(self, painter: QPainter, number: int, along: float) -> None:
        if number >= len(self._bands):
            return
        shown = self._bands[number]
        share = along / max(shown.laid.length, 1e-9)
        x = (shown.box.left + share * shown.box.width) * DOTS
        top = self.height() - shown.box.top * DOTS
        painter.setPen(QPen(QColor(214, 51, 132), 2.0))
        band = QPointF(x, top + _BAND[0] * DOTS), QPointF(x, top + _BAND[1] * DOTS)
        painter.drawLine(*band)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Go to the place that is clicked."""
        self.setFocus()
        self._go(event.position())

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Walk along the layer while the button is held."""
        if event.buttons() & Qt.MouseButton.LeftButton:
            self._go(event.position())

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Walk with the arrows, from lap to lap with the page keys; up and down change the layer."""
        self._lay()
        number, along = self._at or (0, 0.0)
        key = Qt.Key(event.key())
        if not self._bands or key not in _WALKING:
            super().keyPressEvent(event)
            return
        number = min(max(number + _TURN.get(key, 0), 0), len(self._bands) - 1)
        length = self._bands[number].laid.length
        if key in _LEAP:
            along = self._next_stop(number, along, _LEAP[key])
        elif key in _ENDS:
            along = _ENDS[key] * length
        self._walk(number, along + _ONWARD.get(key, 0.0) * length)
        if key in _TURN:
            self.reached.emit(number)

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Walk along the layer below the mouse; with Shift turn to the other layers."""
        turns = event.angleDelta().y() or event.angleDelta().x()
        number = self._band_at(event.position())
        if number is None or event.modifiers() & Qt.KeyboardModifier.ShiftModifier:
            event.ignore()  # the strip scrolls
            return
        along = self._at[1] if self._at and self._at[0] == number else self._along(number, event)
        self._walk(number, along - turns / 120 * _NOTCH * self._bands[number].laid.length)
        event.accept()

    def event(self, event: QEvent) -> bool:
        """Say what stands below the mouse; keep from the menus the keys that walk."""
        wanted = event.type() == QEvent.Type.ShortcutOverride
        if wanted and isinstance(event, QKeyEvent) and Qt.Key(event.key()) in _WALKING:
            event.accept()
            return True
        if isinstance(event, QHelpEvent) and event.type() == QEvent.Type.ToolTip:
            QToolTip.showText(event.globalPos(), self.told(QPointF(event.pos())), self)
            return True
        return super().event(event)

    def told(self, dot: QPointF) -> str:
        """Return what stands at a dot of the view, in words."""
        number = self._band_at(dot)
        if number is None or self._result is None:
            return ""
        band = self._bands[number]
        along = self._share(number, dot.x()) * band.laid.length
        layer = self._result.layers[band.control]
        return told_at(self._result, layer, band.laid, along, self._look.units)

    def _next_stop(self, number: int, along: float, sense: int) -> float:
        """Return the next lap, lift, joint or end along a walk."""
        band = self._bands[number]
        layer = self._result.layers[band.control] if self._result else None
        places = stops(layer, band.laid) if layer else ()
        ahead = [at for at in places if (at - along) * sense > 1e-6]
        return min(ahead, key=lambda at: abs(at - along), default=along)

    def _along(self, number: int, event: QWheelEvent) -> float:
        return self._share(number, event.position().x()) * self._bands[number].laid.length

    def _share(self, number: int, x: float) -> float:
        box = self._bands[number].box
        return min(max((x / DOTS - box.left) / box.width, 0.0), 1.0)

    def _band_at(self, dot: QPointF) -> int | None:
        """Return the number of the ribbon that is at a dot of the view."""
        self._lay()
        y = (self.height() - dot.y()) / DOTS
        found = (
            i for i, band in enumerate(self._bands) if band.box.bottom - 1.0 <= y <= band.box.top
        )
        return next(found, None)

    def _go(self, dot: QPointF) -> None:
        number = self._band_at(dot)
        if number is not None:
            self._walk(number, self._share(number, dot.x()) * self._bands[number].laid.length)

    def _walk(self, number: int, along: float) -> None:
        along = min(max(along, 0.0), self._bands[number].laid.length)
        self._at = (number, along)
        place = place_along(self._bands[number].laid, along)
        self.update()
        if place is not None:
            self.walked.emit(place)


def place_along(laid: Unrolled, along: float) -> Point | None:
    """Return the place of the drawing that stands `along` mm from the start of a walk."""
    for part in laid.parts:
        if part.start <= along <= part.end and len(part.points) > 1:
            return walk_to(part.points, along - part.start)[0]
    return None


class RibbonStrip(QScrollArea):
    """The ribbons in a strip that scrolls where there is room for one or two only."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("ribbon")
        self.view = RibbonView(self)
        self.setWidget(self.view)
        self.setWidgetResizable(True)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setMinimumHeight(round(0.6 * HEIGHT * DOTS))  # a small screen shows a band at a time
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.view.reached.connect(self._scroll_to)

    def wished_height(self, room: int) -> int:
        """Return how high the strip is at first in a window `room` dots high: one band, or all.

        In a small window it stays as it stands, which is told as 0.
        """
        most = round(len(Control) * HEIGHT * DOTS) + 8
        if room <= _SMALL:
            return 0
        least = round(_LEAST * HEIGHT * DOTS)
        return max(least, min(most, least + round(_SHARE * (room - _SMALL))))

    def _scroll_to(self, number: int) -> None:
        """Scroll so that a whole band is seen."""
        self.verticalScrollBar().setValue(round(number * HEIGHT * DOTS))

    def sizeHint(self) -> QSize:
        """Return the room for one and a half bands, so that it is seen that there are more."""
        return QSize(600, round(_LEAST * HEIGHT * DOTS))
