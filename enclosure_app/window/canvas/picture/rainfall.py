"""Rain as drops that run along their routes: for a short while in motion, then at rest.

The drops stand evenly along each route; in motion all of them move on by the same step and come
to rest where the next one stood, so that the picture at rest is that of the sheet.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from math import ceil

from PySide6.QtCore import QObject, QPointF, QRect, QSizeF, Qt, QTimer, Signal
from PySide6.QtGui import QColor, QGuiApplication, QPainter, QPixmap, QPolygonF, QRegion

from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.section.rain_marks import DROP, EVERY
from enclosure_app.drawing.section.ways import Way
from enclosure_app.drawing.shapes import drop
from enclosure_app.model.place import Point
from enclosure_app.model.product import Control
from enclosure_app.model.report import RainRoute, SectionResult
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.ink.look import DOTS, Look
from enclosure_app.window.canvas.picture.near_view import way_of

TICK = 40  # ms from one picture to the next
ROUND = 28  # ticks until every drop is where the next one stood
ROUNDS = 5  # and so often, before they rest
MOST = 600  # drops in view; more of them rest at once
_ROOM = 3  # dots around a drop that are painted anew with it
_SQUARE = 24  # dots: what is painted anew is told in squares of this size


@dataclass(frozen=True, slots=True)
class _Route:
    """The way of a drop, in mm of the section."""

    way: Way

    def places(self, first: float, step: float, window: Box | None) -> Iterator[Point]:
        """Yield the places at `first` and every `step` mm after it that lie in `window`."""
        way = self.way
        for number in way.near(window) if window else range(len(way) - 1):
            a, b = way.part(number, number + 2)
            start, end = way.stations[number : number + 2].tolist()
            low, high = _within(a, b, window) if window else (0.0, 1.0)
            size = end - start
            k = ceil((start + low * size - first) / step)
            along = first + max(k, 0) * step
            while along < start + high * size or (high == 1.0 and along == end):
                share = (along - start) / size
                yield a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])
                along += step


class Rainfall(QObject):
    """The drops of one section. `moved`: this region is to be painted anew."""

    moved = Signal(QRegion)

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self.allowed = True
        self._routes: tuple[_Route, ...] = ()
        self._shape, self._colour = QPolygonF(), QColor()
        self._stamp: QPixmap | None = None
        self._tick = 0
        self._painted = QRegion()
        self._known: tuple[tuple[int, Camera], tuple[list[QPointF], QRegion]] | None = None
        self._camera: Camera | None = None
        self._told: Sequence[RainRoute] = ()
        self._timer = QTimer(self)
        self._timer.setInterval(TICK)
        self._timer.timeout.connect(self._move)

    @property
    def moving(self) -> bool:
        """Whether the drops are in motion."""
        return self._timer.isActive()

    def show_result(self, result: SectionResult, look: Look) -> None:
        """Show the rain of a section; other rain than before is shown in motion."""
        gravity = result.section.gravity or (0.0, -1.0)
        outline = drop((0.0, 0.0), DROP * DOTS, gravity)
        self._shape = QPolygonF([QPointF(x, -y) for x, y in outline])
        self._colour = QColor(look.theme.pen("rain").colour)
        self._stamp = self._known = None
        rain = result.rain if look.only in (None, Control.WATER) else ()
        if rain != self._told:
            self._told = rain
            self._routes = tuple(_routes(rain))
            self.start()

    def start(self) -> None:
        """Let the drops run for a while, if they may; those that run already go on from there."""
        self._tick %= ROUND
        if self.allowed and self._routes:
            self._timer.start()

    def allow(self, *, motion: bool) -> None:
        """Let drops run, or have them at rest always."""
        self.allowed = motion
        if not motion:
            self._rest()

    def paint(self, painter: QPainter, camera: Camera) -> None:
        """Paint the drops that are in view."""
        self._camera = camera
        places, self._painted = self._drops(camera)
        if not places:
            return
        stamp = self._made_stamp(painter.device().devicePixelRatio())
        corner = self._shape.boundingRect().topLeft() - QPointF(_ROOM, _ROOM)
        for place in places:
            painter.drawPixmap(place + corner, stamp)

    def _made_stamp(self, ratio: float) -> QPixmap:
        """Return the picture of one drop, made once: a stamp is put down faster than a shape."""
        if self._stamp is None or self._stamp.devicePixelRatio() != ratio:
            box = self._shape.boundingRect()
            size = box.size() + QSizeF(2 * _ROOM, 2 * _ROOM)
            stamp = QPixmap((size * ratio).toSize())
            stamp.setDevicePixelRatio(ratio)
            stamp.fill(Qt.GlobalColor.transparent)
            painter = QPainter(stamp)
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(self._colour)
            painter.drawPolygon(self._shape.translated(QPointF(_ROOM, _ROOM) - box.topLeft()))
            painter.end()
            self._stamp = stamp
        return self._stamp

    def places(self, camera: Camera, window: Box | None = None) -> list[Point]:
        """Return where the drops are now, in mm of the section: all, or those in a window."""
        step = EVERY * DOTS / camera.zoom
        first = step * (0.5 + (self._tick % ROUND) / ROUND)
        first -= step if first >= step else 0.0
        return [p for route in self._routes for p in route.places(first, step, window)]

    def _drops(self, camera: Camera) -> tuple[list[QPointF], QRegion]:
        """Return where drops are in view, and the region around them; worked out once for a tick."""
        now = self._tick, camera
        if self._known is None or self._known[0] != now:
            window = camera.window.inset(-DROP * DOTS / camera.zoom)
            places = [camera.seen(place) for place in self.places(camera, window)]
            self._known = now, (places, _around(places, self._shape))
        return self._known[1]

    def _move(self) -> None:
        """Move the drops on, and have painted anew where they were and where they are."""
        self._tick += 1
        if self._tick >= ROUND * ROUNDS or self._camera is None:
            self._rest()
            return
        places, around = self._drops(self._camera)
        if len(places) > MOST:
            self._rest()
            return
        self.moved.emit(self._painted.united(around))

    def _rest(self) -> None:
        self._timer.stop()
        self._tick = 0
        if self._camera is not None:
            self.moved.emit(self._painted.united(self._drops(self._camera)[1]))


def _routes(rain: Sequence[RainRoute]) -> Iterator[_Route]:
    for route in rain:
        way = way_of(route.points)
        if len(way) > 1:
            yield _Route(way)


def _within(a: Point, b: Point, box: Box) -> tuple[float, float]:
    """Return which part of the way from `a` to `b` lies in a box, as shares; (1, 0) for none."""
    low, high = 0.0, 1.0
    sides = ((a[0], b[0], box.left, box.right), (a[1], b[1], box.bottom, box.top))
    for start, end, least, most in sides:
        step = end - start
        if step == 0.0:
            if not least <= start <= most:
                return 1.0, 0.0
            continue
        first, last = sorted(((least - start) / step, (most - start) / step))
        low, high = max(low, first), min(high, last)
    return (low, high) if low <= high else (1.0, 0.0)


def _around(places: Sequence[QPointF], shape: QPolygonF) -> QRegion:
    """Return the region of the drops in small squares, which joins faster than a box for each."""
    box = shape.boundingRect().toAlignedRect().adjusted(-_ROOM, -_ROOM, _ROOM, _ROOM)
    squares = {
        (row, column)
        for place in places[: MOST + 1]
        for around in (box.translated(place.toPoint()),)
        for row in range(around.top() // _SQUARE, around.bottom() // _SQUARE + 1)
        for column in range(around.left() // _SQUARE, around.right() // _SQUARE + 1)
    }
    region = QRegion()
    for row, column in sorted(squares):
        region += QRect(column * _SQUARE, row * _SQUARE, _SQUARE, _SQUARE)
    return region


def system_wants_motion() -> bool:
    """Whether the desktop lets things move; Qt knows from its version 6.12 on."""
    hints = QGuiApplication.styleHints().accessibility()
    wish = getattr(hints, "motionPreference", None)
    return wish is None or wish().name != "ReducedMotion"
