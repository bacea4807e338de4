"""Photographs of a stop: small in a row."""

from collections.abc import Sequence

from PySide6.QtCore import QBuffer, QByteArray, QSize, Qt, Signal
from PySide6.QtGui import QIcon, QImageReader, QPixmap
from PySide6.QtWidgets import QPushButton, QWidget

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


def pixmap_of(photograph: Photograph, within: QSize | None = None) -> QPixmap:
    """Return a photograph as Qt paints it; `within` some dots it is read small, in a tenth of the time."""
    held = QBuffer()
    held.setData(QByteArray(photograph.data))
    reader = QImageReader(held)
    if within is not None:
        reader.setScaledSize(reader.size().scaled(within, Qt.AspectRatioMode.KeepAspectRatio))
    return QPixmap.fromImage(reader.read())
