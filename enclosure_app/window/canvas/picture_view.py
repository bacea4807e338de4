"""A view of one section's picture: it is looked at, nearer and from further away, and no more."""

from collections.abc import Iterator
from dataclasses import replace

from PySide6.QtCore import QPointF, QSizeF, Qt, QTimer, Signal
from PySide6.QtGui import QImage, QWheelEvent
from PySide6.QtWidgets import QWidget

from enclosure_app.model.report import SectionResult
from enclosure_app.model.underlay import Underlay
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.canvas.made_ready import made_of
from enclosure_app.window.canvas.picture.backing import Backing, Scene
from enclosure_app.window.canvas.picture.linework import Linework
from enclosure_app.window.canvas.underlay.layer import UnderlayLayer, without_texts_of

_REST = 70  # ms without another zoom after which a new picture is painted
_NOTCH = 1.25  # times nearer by one notch of the wheel


class PictureView(QWidget):
    """Keeps the picture of a scene, painted in turns, for whoever paints it on the screen.

    `looked`: another part of the section is in view.
    """

    looked = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.camera = Camera((0.0, 0.0), 1.0, QSizeF(1, 1))
        self.scene: Scene | None = None
        self.below = UnderlayLayer(self)
        self.below.ready.connect(self._show_below)
        self.backing = Backing(self, self._paint_below)
        self.backing.ready.connect(self.update)
        self._rest = QTimer(self)
        self._rest.setSingleShot(True)
        self._rest.setInterval(_REST)
        self._rest.timeout.connect(self.renew)
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)

    def show_scene(self, result: SectionResult, look: Look, under: tuple[Underlay, ...]) -> None:
        """Show a section with what lies under it; the office's lines are kept while they are."""
        last = self.scene
        kept = last and last.result.section.strokes is result.section.strokes
        lines = last.linework if last and kept else made_of(result.section.strokes, Linework)
        self.scene = Scene(without_texts_of(under, result), lines, look, under)
        self.renew()

    def look_from(self, camera: Camera) -> None:
        """Look at another part at once; a zoom is painted sharp soon after it."""
        zoomed = camera.zoom != self.camera.zoom
        self.camera = camera
        if zoomed:
            self.renew_soon()
        elif self.scene and not self.backing.serves(self.scene, camera):
            self.renew()
        self.update()
        self.looked.emit()

    def zoom(self, factor: float, about: QPointF | None = None) -> None:
        """Look closer or wider, about a dot of the view or its middle."""
        middle = QPointF(self.width() / 2, self.height() / 2)
        self.look_from(self.camera.zoomed(factor, middle if about is None else about))

    def renew(self) -> None:
        """Paint a new picture where the one there is serves no more."""
        if self.scene and self.width() > 1 and not self.backing.serves(self.scene, self.camera):
            self.backing.request(self.scene, self.camera, self.devicePixelRatioF())

    def renew_soon(self) -> None:
        """Paint a new picture once the view has come to rest."""
        self._rest.start()

    def finish_painting(self) -> None:
        """Wait until the picture is whole, for printing and for tests."""
        self.renew()
        self.backing.finish()

    def _show_below(self) -> None:
        """Paint anew what was painted without a picture that is there now."""
        if self.scene:
            self.scene = replace(self.scene)
            self.renew()

    def _paint_below(self, image: QImage, camera: Camera, scene: Scene) -> Iterator[None]:
        yield from self.below.paint(image, camera, scene.underlays, scene.look)

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Zoom about the mouse."""
        notches = event.angleDelta().y() / 120
        if notches:
            self.zoom(_NOTCH**notches, event.position())
        event.accept()
