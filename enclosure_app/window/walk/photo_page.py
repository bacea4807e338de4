"""One photograph, large: looked at closer with the fingers, the wheel or the keys."""

from dataclasses import replace

from PySide6.QtCore import QPointF, QRectF, QSize, QSizeF, Qt, Signal
from PySide6.QtGui import QPainter, QPaintEvent, QPixmap, QResizeEvent, QWheelEvent
from PySide6.QtWidgets import QLabel, QPushButton, QVBoxLayout, QWidget

from enclosure_app.drawing.placement import Box
from enclosure_app.model.said.photograph import Photograph
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.walk.by_hand import ByHand
from enclosure_app.window.walk.photo_strip import pixmap_of

_NOTCH = 1.25  # times nearer by one notch of the wheel


class PhotoView(ByHand):
    """Shows a picture whole, until a hand looks closer. Its places are the picture's dots."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.picture = QPixmap()
        self.camera = Camera((0.0, 0.0), 1.0, QSizeF(1, 1))
        self._small: tuple[QSize, QPixmap] | None = None
        self._whole = True
        self.setMinimumSize(QSize(220, 120))

    def show_picture(self, picture: QPixmap) -> None:
        """Show a picture, whole."""
        self.picture, self._small = picture, None
        self.come_back()

    def pan(self, by: QPointF) -> None:
        """Move the picture by so many dots, where it is not whole; never out of sight."""
        if not self._whole:
            moved = self.camera.panned(by)
            kept = replace(moved, centre=self._box.clamp(moved.centre))
            self._look_from(kept, whole=False)

    def zoom(self, factor: float, about: QPointF | None = None) -> None:
        """Look closer or wider; never so wide that the picture is smaller than the view."""
        middle = QPointF(self.width() / 2, self.height() / 2)
        closer = self.camera.zoomed(factor, middle if about is None else about)
        if closer.zoom <= self._fitted().zoom:
            self.come_back()
        else:
            self._look_from(closer, whole=False)

    def come_back(self) -> None:
        """Show the whole picture."""
        self._look_from(self._fitted(), whole=True)

    @property
    def filled(self) -> QRectF:
        """The dots of the view that the picture fills."""
        size = self.picture.size()
        return QRectF(
            self.camera.seen((0.0, float(size.height()))),
            self.camera.seen((float(size.width()), 0.0)),
        )

    @property
    def _box(self) -> Box:
        size = self.picture.size()
        return Box(0.0, 0.0, max(size.width(), 1), max(size.height(), 1))

    def _fitted(self) -> Camera:
        box = self._box
        zoom = min(self.width() / box.width, self.height() / box.height)
        return Camera(box.centre, max(zoom, 1e-3), QSizeF(self.size()))

    def _look_from(self, camera: Camera, *, whole: bool) -> None:
        self.camera, self._whole = camera, whole
        self.update()

    def _sharp(self, size: QSize) -> QPixmap:
        """Return the picture in so many dots of the screen: made small, it is not painted coarse."""
        if size.width() >= self.picture.width():
            return self.picture
        if self._small is None or self._small[0] != size:
            ways = Qt.AspectRatioMode.IgnoreAspectRatio, Qt.TransformationMode.SmoothTransformation
            self._small = size, self.picture.scaled(size, *ways)
        return self._small[1]

    # ---- Qt's events ---------------------------------------------------------------------------

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the picture."""
        del event
        if not self.picture.isNull():
            painter, filled = QPainter(self), self.filled
            painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
            size = (filled.size() * self.devicePixelRatioF()).toSize()
            sharp = self._sharp(size)
            painter.drawPixmap(filled, sharp, QRectF(sharp.rect()))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Fill the room there is."""
        super().resizeEvent(event)
        self.camera = self.camera.resized(QSizeF(event.size()))
        if self._whole:
            self.come_back()

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Look closer or wider about the mouse."""
        self.zoom(_NOTCH ** (event.angleDelta().y() / 120), event.position())
        event.accept()


class PhotoPage(QWidget):
    """One photograph, as large as there is room. `closed`: back to the drawing."""

    closed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.view = PhotoView(self)
        self.told = QLabel(self)
        self.back = QPushButton(self.tr("Back to the drawing"), self)
        self.back.clicked.connect(self.closed)
        column = QVBoxLayout(self)
        column.setContentsMargins(8, 8, 8, 8)
        column.addWidget(self.view, 1)
        column.addWidget(self.told)
        column.addWidget(self.back)

    def show_photograph(self, photograph: Photograph) -> None:
        """Show one photograph, with the name of its file and the camera's time."""
        taken = photograph.taken.replace("T", " ")
        self.told.setText(f"{photograph.name}   {taken}".strip())
        self.view.setAccessibleName(self.tr("Photograph {}").format(photograph.name))
        self.view.show_picture(pixmap_of(photograph))
