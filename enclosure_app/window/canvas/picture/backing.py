"""The picture behind the canvas: painted in short turns, moved and stretched while it is stale.

Panning and zooming only move or stretch the picture that is there, which takes no time to speak
of; a new one is painted meanwhile and takes its place when it is whole. It reaches beyond the
view on every side, so that panning a little needs no new one.
"""

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from time import perf_counter

from PySide6.QtCore import QObject, QRectF, QSize, QSizeF, QTimer, Signal
from PySide6.QtGui import QColor, QImage, QPainter, QRegion, QTransform

from enclosure_app.drawing.marks import Flag, Label, Mark
from enclosure_app.drawing.placement import Box, Placement, box_around
from enclosure_app.model.report import SectionResult
from enclosure_app.model.underlay import Underlay
from enclosure_app.reports.pdf.painter import MarkPainter
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.ink.look import DOTS, Look
from enclosure_app.window.canvas.picture.composition import Composed, composing
from enclosure_app.window.canvas.picture.flag_places import box_of
from enclosure_app.window.canvas.picture.linework import Linework, office_pen

_TURN = 0.010  # seconds of painting at a time
_BEYOND = 0.25  # of the view's side, that the picture reaches beyond it
_AT_ONCE = 60  # marks painted before looking at the clock
_CLEAR = 1  # dots round flags and words


@dataclass(frozen=True, slots=True)
class Scene:
    """What is to be seen: a section's result, its lines, and how it looks."""

    result: SectionResult
    linework: Linework
    look: Look
    underlays: tuple[Underlay, ...] = ()


class Signs:
    """Where flags and our own words stand, in dots from the middle of a picture, y down."""

    def __init__(self) -> None:
        self.flags: list[tuple[QRectF, str]] = []
        self.room = QRegion()

    def take(self, parts: Composed) -> None:
        """Look where they stand in what was composed."""
        self.flags = [
            (_dots(box_around(m.shape)), m.source) for m in parts.flags if isinstance(m, Flag)
        ]
        words = [m for m in (*parts.layers, *parts.flags) if isinstance(m, Label) and m.halo]
        boxes = [box for box, _ in self.flags] + [_dots(box_of(m)) for m in words if not m.angle]
        self.room = QRegion()
        for box in boxes:
            self.room += box.toAlignedRect().adjusted(-_CLEAR, -_CLEAR, _CLEAR, _CLEAR)


def _dots(box: Box) -> QRectF:
    return QRectF(box.left * DOTS, -box.top * DOTS, box.width * DOTS, box.height * DOTS)


Below = Callable[[QImage, Camera, Scene], Iterator[None]]
"""Paints in turns, on a sheet that is still empty, what lies under the drawing."""


@dataclass(slots=True)
class _Work:
    """A picture that is being painted: of which scene, from where, and what is left to do."""

    scene: Scene
    camera: Camera
    image: QImage
    steps: Iterator[None]
    signs: Signs


class Backing(QObject):
    """The picture of one scene; `ready` says that a new one can be shown."""

    ready = Signal()

    def __init__(self, parent: QObject, below: Below) -> None:
        super().__init__(parent)
        self._below = below
        self._shown: _Work | None = None
        self._work: _Work | None = None
        self._spare = QImage()
        self._next: tuple[Scene, Camera, float] | None = None
        self._timer = QTimer(self)
        self._timer.setInterval(0)
        self._timer.timeout.connect(self._turn)

    def request(self, scene: Scene, camera: Camera, ratio: float) -> None:
        """Begin a picture for a look at a scene.

        One that is under way from the same place is finished first, so that there is something
        new to be seen while changes come faster than pictures; from another place it is given up.
        """
        if self._work and self._work.scene is not scene and self._sees_as(camera, ratio):
            self._next = (scene, camera, ratio)
            return
        self._next = None
        wide = camera.resized(camera.size * (1 + 2 * _BEYOND))
        image = self._sheet((wide.size * ratio).toSize())
        image.setDevicePixelRatio(ratio)
        signs = Signs()
        steps = _painted(scene, wide, image, self._below, signs)
        self._work = _Work(scene, wide, image, steps, signs)
        self._timer.start()

    def finish(self) -> None:
        """Paint the picture that is under way to its end."""
        while self._work:
            self._turn()

    def serves(self, scene: Scene, camera: Camera) -> bool:
        """Whether the picture that is there, or under way, is the right one for a look."""
        last = self._work or self._shown
        coming = self._next[0] if self._next else last.scene if last else None
        if last is None or coming is not scene or last.camera.zoom != camera.zoom:
            return False
        target = camera.target(last.camera)
        return target.contains(QRectF(0, 0, camera.size.width(), camera.size.height()))

    def paint(self, painter: QPainter, camera: Camera) -> None:
        """Paint the picture where it belongs in another look."""
        if self._shown:
            image = self._shown.image
            painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform, on=False)
            target = camera.target(self._shown.camera)
            if self._shown.camera.zoom == camera.zoom:
                painter.drawImage(target.topLeft().toPoint(), image)
            else:
                painter.drawImage(target, image, QRectF(image.rect()))

    def flags(self, camera: Camera) -> list[tuple[QRectF, str]]:
        """Return where the flags that can be seen stand in another look, and whose they are."""
        if self._shown is None:
            return []
        way = self._way(self._shown, camera)
        return [(way.mapRect(box), key) for box, key in self._shown.signs.flags]

    def written(self, camera: Camera) -> QRegion:
        """Return the room of flags and of our own words in another look."""
        if self._shown is None:
            return QRegion()
        return self._way(self._shown, camera).map(self._shown.signs.room)

    @staticmethod
    def _way(work: _Work, camera: Camera) -> QTransform:
        """Return the way from dots of a picture, counted from its middle, to dots of a look."""
        target = camera.target(work.camera)
        by = camera.zoom / work.camera.zoom
        return QTransform(by, 0.0, 0.0, by, target.center().x(), target.center().y())

    def _turn(self) -> None:
        """Paint for a short while; show the picture when it is whole."""
        work, until = self._work, perf_counter() + _TURN
        while work and perf_counter() < until:
            if next(work.steps, _END) is _END:
                self._spare = self._shown.image if self._shown else QImage()
                self._shown, self._work, work = work, None, None
                self._timer.stop()
                self.ready.emit()
                if self._next:
                    self.request(*self._next)

    def _sheet(self, size: QSize) -> QImage:
        """Return a sheet to paint on: the one shown before, since new memory takes long to fill."""
        sheet, self._spare = self._spare, QImage()
        return sheet if sheet.size() == size else QImage(size, QImage.Format.Format_RGB32)

    def _sees_as(self, camera: Camera, ratio: float) -> bool:
        """Whether the picture under way is seen from the same place as `camera` sees."""
        work = self._work
        same = work and (work.camera.centre, work.camera.zoom) == (camera.centre, camera.zoom)
        return bool(same) and work is not None and work.image.devicePixelRatio() == ratio


_END = object()


def _painted(
    scene: Scene, camera: Camera, image: QImage, below: Below, signs: Signs
) -> Iterator[None]:
    """Paint a scene: what lies under it, the ground, the office's lines, the layers and what is wrong with them."""
    look = scene.look
    image.fill(QColor(look.theme.paper))
    origin = camera.centre
    placement = Placement(DOTS / camera.zoom, origin)
    parts = yield from composing(scene.result, placement, camera.window, look)
    signs.take(parts)
    yield
    yield from below(image, camera, scene)
    yield from _marks(parts.ground, image, camera.size)
    painter = QPainter(image)
    for _ in scene.linework.paint(painter, camera, office_pen(look.theme.pen("office").colour)):
        painter.end()
        yield
        painter.begin(image)
    painter.end()
    yield from _marks(parts.layers, image, camera.size)
    yield from _marks(parts.flags, image, camera.size)


def _marks(marks: tuple[Mark, ...], image: QImage, size: QSizeF) -> Iterator[None]:
    for first in range(0, len(marks), _AT_ONCE):
        painter = QPainter(image)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.translate(size.width() / 2, size.height() / 2)
        MarkPainter(painter, DOTS, 0.0).paint(marks[first : first + _AT_ONCE])
        painter.end()
        yield
