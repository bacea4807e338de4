"""Photographs of a stop: small in a row, each large at a touch."""

from collections.abc import Sequence

from PySide6.QtCore import QBuffer, QByteArray, QSize, Qt, Signal
from PySide6.QtGui import QIcon, QImageReader, QPixmap, QResizeEvent
from PySide6.QtWidgets import QLabel, QPushButton, QSizePolicy, QVBoxLayout, QWidget

from enclosure_app.model.said.photograph import Photograph
from enclosure_app.window.surround.flow_layout import FlowLayout

_SMALL = QSize(104, 78)


class PhotoStrip(QWidget):
    """A row of photographs. `opened`: the one that was touched."""

    opened = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._row = FlowLayout()
        self.setLayout(self._row)
        self._shown: tuple[Photograph, ...] = ()
        self.hide()

    def show_photographs(self, photographs: Sequence[Photograph]) -> None:
        """Show photographs, the earliest first."""
        if tuple(photographs) == self._shown:
            return
        self._shown = tuple(photographs)
        while (item := self._row.takeAt(0)) is not None:
            widget = item.widget()
            if widget:
                widget.hide()
                widget.deleteLater()
        for photograph in self._shown:
            self._row.addWidget(self._made(photograph))
        self.setVisible(bool(self._shown))

    @property
    def buttons(self) -> list[QPushButton]:
        """The small photographs."""
        return self.findChildren(QPushButton)

    def _made(self, photograph: Photograph) -> QPushButton:
        button = QPushButton(self)
        button.setIcon(QIcon(pixmap_of(photograph, _SMALL * self.devicePixelRatioF())))
        button.setIconSize(_SMALL)
        button.setObjectName("photograph")
        words = self.tr("Photograph {}").format(photograph.name)
        button.setAccessibleName(words)
        button.setToolTip(words)
        button.clicked.connect(lambda: self.opened.emit(photograph))
        button.show()
        return button


class PhotoPage(QWidget):
    """One photograph, as large as there is room. `closed`: back to the drawing."""

    closed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._picture = QPixmap()
        self.picture = QLabel(self)
        self.picture.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.picture.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Ignored)
        self.told = QLabel(self)
        self.back = QPushButton(self.tr("Back to the drawing"), self)
        self.back.clicked.connect(self.closed)
        column = QVBoxLayout(self)
        column.setContentsMargins(8, 8, 8, 8)
        column.addWidget(self.picture, 1)
        column.addWidget(self.told)
        column.addWidget(self.back)

    def show_photograph(self, photograph: Photograph) -> None:
        """Show one photograph, with the name of its file and the camera's time."""
        self._picture = pixmap_of(photograph)
        taken = photograph.taken.replace("T", " ")
        self.told.setText(f"{photograph.name}   {taken}".strip())
        self.picture.setAccessibleName(self.tr("Photograph {}").format(photograph.name))
        self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Fill the room there is."""
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        if not self._picture.isNull():
            ratio = self.devicePixelRatioF()
            small = self._picture.scaled(
                self.picture.size() * ratio,
                Qt.AspectRatioMode.KeepAspectRatio,
                Qt.TransformationMode.SmoothTransformation,
            )
            small.setDevicePixelRatio(ratio)
            self.picture.setPixmap(small)


def pixmap_of(photograph: Photograph, within: QSize | None = None) -> QPixmap:
    """Return a photograph as Qt paints it; `within` some dots it is read small, in a tenth of the time."""
    held = QBuffer()
    held.setData(QByteArray(photograph.data))
    reader = QImageReader(held)
    if within is not None:
        reader.setScaledSize(reader.size().scaled(within, Qt.AspectRatioMode.KeepAspectRatio))
    return QPixmap.fromImage(reader.read())
